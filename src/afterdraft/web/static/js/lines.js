// Words chosen in the scene's text are what the next thread, setup or reveal is fastened to: they are shown in its form, where they can be taken off again.
export function lines() {
  const article = document.querySelector("article.manuscript");
  const box = document.querySelector("[data-words]");
  const passage = document.querySelector("[data-passage]");
  if (!article || !box || !passage) return;
  let filled = "";
  const take = () => {
    const selection = getSelection();
    if (!selection.rangeCount || !article.contains(selection.anchorNode)) return; // gone to the form: what was chosen stays
    const chosen = passages(article, selection.getRangeAt(0));
    if (!chosen.length && box.value !== filled) return; // she typed there herself
    filled = box.value = chosen.map((one) => one.words).join("\n");
    passage.value = chosen.length ? JSON.stringify(chosen.map(({ paragraph, start, end }) => ({ paragraph, start, end }))) : "";
  };
  document.addEventListener("selectionchange", take);
  document.addEventListener("keydown", take, { capture: true }); // a key may lead to the form before the change is told
  box.addEventListener("input", () => { passage.value = ""; });
}

// The stretch of each paragraph within the range, counted in code points.
function passages(article, range) {
  return [...article.querySelectorAll("p[id^=p]:not(.mark)")].filter((p) => range.intersectsNode(p)).map((p) => {
    const start = p.contains(range.startContainer) ? before(p, range.startContainer, range.startOffset) : 0;
    const end = p.contains(range.endContainer) ? before(p, range.endContainer, range.endOffset) : p.textContent.length;
    const words = p.textContent.slice(start, end);
    const from = points(p.textContent.slice(0, start));
    return { paragraph: Number(p.id.slice(1)), start: from, end: from + points(words), words };
  }).filter((one) => one.end > one.start);
}

const points = (text) => [...text].length;

function before(p, node, offset) {
  const range = document.createRange();
  range.setStart(p, 0);
  range.setEnd(node, offset);
  return range.toString().length;
}
