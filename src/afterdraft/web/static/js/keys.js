// Keys: single letters outside text boxes (they can be turned off), and a few with Ctrl or Command.
import { putAway } from "./messages.js";

const SCREENS = { s: "/scenes", c: "/cards", p: "/split", t: "/outline", h: "/threads", w: "/people", r: "/reading", g: "/plan", d: "/drafts", q: "/questions" };
const EDITABLE = "input:not([type=button]):not([type=submit]), textarea, select, [contenteditable]";

export function keys() {
  document.addEventListener("keydown", (event) => {
    if (event.defaultPrevented || event.isComposing) return;
    const done = event.ctrlKey || event.metaKey ? withControl(event) : event.altKey ? false : alone(event);
    if (done) event.preventDefault();
  });
}

const typing = () => document.activeElement?.matches(EDITABLE);

function withControl(event) {
  if (event.key === "Enter") return advance();
  if (typing() || event.key.toLowerCase() !== "z") return false;
  return press(event.shiftKey ? "redo" : "undo");
}

function press(act) {
  const button = document.querySelector(`form[data-act="${act}"] button:not([disabled])`);
  button?.form.requestSubmit(button);
  return Boolean(button);
}

// From the card: save what is there, go to the next scene, ready to write. From a note: keep it.
function advance() {
  const box = document.activeElement;
  if (!box?.matches("textarea")) return false;
  const link = box.closest("[data-card]")?.querySelector("[data-advance]");
  if (!link) { box.form?.requestSubmit(); return Boolean(box.form); }
  sessionStorage.setItem("afterdraft-write", "1");
  link.click();
  return true;
}

function alone(event) {
  if (event.key === "Escape") return escape();
  if (typing() || document.querySelector("dialog[open]") || document.body.dataset.letters === "off") return false;
  const marked = document.querySelector(`[data-key="${CSS.escape(event.key)}"]`);
  if (marked) return use(marked);
  if (event.key === "?") return go(document.querySelector('.bar a[href^="/keys"]')?.href);
  if (event.key === "b") return go("/");
  const base = document.body.dataset.book;
  return base && SCREENS[event.key] ? go(base + SCREENS[event.key]) : false;
}

function use(element) {
  element.closest("details")?.setAttribute("open", "");
  if (element.matches("a, button")) element.click();
  else element.focus();
  return true;
}

function go(path) {
  if (path) location.href = path;
  return Boolean(path);
}

function escape() {
  if (document.querySelector("dialog[open]")) return false;
  return typing() ? leave(document.activeElement) : putAway();
}

// Out of a box; in a list back to its line, so that the next key goes on from there.
function leave(box) {
  box.blur();
  box.closest("[data-unit]")?.focus({ preventScroll: true });
  return true;
}

// Arrived by Ctrl+Enter: the summary is ready to be written.
if (sessionStorage.getItem("afterdraft-write")) {
  sessionStorage.removeItem("afterdraft-write");
  document.getElementById("card-summary")?.focus({ preventScroll: true });
}
