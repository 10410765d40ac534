// Offcuts: a passage is copied as text; a page that came before all were gathered looks again by itself.
import { say } from "./messages.js";

const AGAIN = 700; // milliseconds

export function offcuts() {
  for (const button of document.querySelectorAll("[data-copy]")) {
    button.hidden = false;
    button.addEventListener("click", () => copy(button.closest("[data-unit]").querySelector("[data-text]")));
  }
  if (document.querySelector("[data-gathering]")) setTimeout(() => location.reload(), AGAIN);
}

async function copy(passage) {
  try {
    await navigator.clipboard.writeText(passage.textContent);
    say("Copied.");
  } catch {
    getSelection().selectAllChildren(passage);
    say("It could not be copied by itself. It is selected now: copy it as you copy other text.");
  }
}
