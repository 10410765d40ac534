// Chapters, parts, the book: a folded card says what was typed last. Side by side: the same card is found in every column.
import { changed } from "./typed.js";

export function whole() {
  for (const fold of document.querySelectorAll(".unit-fold")) {
    const line = fold.querySelector("[data-line]");
    const boxes = [...fold.querySelectorAll("[data-field]")];
    const tell = () => { line.textContent = boxes.map((box) => box.value.trim()).find(Boolean) ?? ""; };
    fold.addEventListener("toggle", tell);
    if (boxes.some(changed)) tell();
  }
}

export function sideBySide() {
  const table = document.querySelector("[data-side]");
  if (!table) return;
  const show = (event) => {
    const code = event.target.closest?.("[data-code]")?.dataset.code;
    for (const old of table.querySelectorAll("[data-same]")) delete old.dataset.same;
    if (code) for (const one of table.querySelectorAll(`[data-code="${code}"]`)) one.dataset.same = "";
  };
  table.addEventListener("pointerover", show);
  table.addEventListener("focusin", show);
  table.addEventListener("pointerleave", show);
}
