// The fore-edge: one tab stop, arrows along it, and the name of the scene under pointer or focus.
export function foreEdge() {
  const edge = document.querySelector("[data-fore-edge]");
  if (!edge) return;
  const leaves = [...edge.querySelectorAll("a")];
  const name = edge.querySelector("[data-name]");
  const tell = (event) => { const leaf = event.target.closest("a"); if (leaf) name.textContent = leaf.getAttribute("aria-label"); };
  const rest = () => { name.textContent = name.dataset.rest; };
  edge.addEventListener("pointerover", tell);
  edge.addEventListener("focusin", tell);
  edge.addEventListener("pointerleave", rest);
  edge.addEventListener("focusout", rest);
  edge.addEventListener("keydown", (event) => {
    const to = next(event.key, leaves.indexOf(event.target.closest("a")), leaves.length);
    if (to === undefined) return;
    event.preventDefault();
    for (const leaf of leaves) leaf.tabIndex = -1;
    leaves[to].tabIndex = 0;
    leaves[to].focus();
  });
}

function next(key, at, count) {
  if (at < 0) return undefined;
  return { ArrowLeft: Math.max(0, at - 1), ArrowRight: Math.min(count - 1, at + 1), Home: 0, End: count - 1 }[key];
}

// After a save: the strip and the count show whether this scene is written now.
export function mark(written, progress) {
  const edge = document.querySelector("[data-fore-edge]");
  edge?.querySelector('[aria-current="true"]')?.classList.toggle("written", written);
  const count = edge?.querySelector("[data-progress]");
  if (count && progress) count.textContent = `${progress[0].toLocaleString()} of ${progress[1].toLocaleString()} ${progress[1] === 1 ? "scene" : "scenes"} outlined`;
}
