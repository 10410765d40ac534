// Two windows on one book: when this one comes back to the front and the book has changed meanwhile, load it anew.
import { words } from "./typed.js";

export function fresh(saving) {
  const base = document.body.dataset.book;
  if (!base) return;
  document.addEventListener("visibilitychange", () => { if (!document.hidden) look(base, saving); });
  addEventListener("focus", () => look(base, saving));
  addEventListener("pageshow", (event) => { if (event.persisted) look(base, saving); });
}

async function look(base, saving) {
  const busy = () => saving.busy() || words() || document.querySelector("dialog[open]");
  if (busy()) return;
  const answer = await fetch(`${base}/edits.json`).catch(() => null);
  if (!answer?.ok) return;
  const top = (await answer.json()).undo?.number ?? 0;
  if (String(top) !== document.body.dataset.edit && !busy()) location.reload();
}
