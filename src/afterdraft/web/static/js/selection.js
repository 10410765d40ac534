// Words chosen in the scene's text. Every form with a box [data-words] and a hidden [data-passage] takes them, so that a
// note, a guarded passage, a thread's point are fastened to them; there they can be taken off again.
import { changed } from "./typed.js";

export function selection() {
  const article = document.querySelector("article.manuscript");
  const forms = [...document.querySelectorAll("form:has([data-words])")];
  if (!article || !forms.length) return;
  const take = () => {
    const chosen = getSelection();
    if (!chosen.rangeCount || !article.contains(chosen.anchorNode)) return; // gone to a form: what was chosen stays
    const found = passages(article, chosen.getRangeAt(0));
    for (const form of forms) fill(form, found);
  };
  document.addEventListener("selectionchange", take);
  document.addEventListener("keydown", take, { capture: true }); // a key may lead to a form before the change is told
  for (const form of forms) {
    const box = form.querySelector("[data-words]");
    const own = () => { form.querySelector("[data-passage]").value = ""; };
    box.addEventListener("input", own);
    if (changed(box)) own();
  }
  take();
}

function fill(form, found) {
  const box = form.querySelector("[data-words]");
  if (!found.length && box.value !== (box.dataset.filled ?? "")) return; // she typed there herself
  box.dataset.filled = box.value = found.map((one) => one.words).join("\n");
  form.querySelector("[data-passage]").value = found.length ? JSON.stringify(found.map(({ paragraph, start, end }) => ({ paragraph, start, end }))) : "";
  const fold = box.closest("details.on-words");
  if (fold) fold.open = Boolean(box.value);
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
