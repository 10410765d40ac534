// The key of an ink: a note in it, on the words that are chosen, else on the scene. `k` guards the words that are chosen.
// While words are chosen, both acts stand at hand for who has no keys.
import { say } from "./messages.js";

const EDITABLE = "input:not([type=radio]), textarea, select";

export function inks() {
  const form = document.querySelector("[data-new-note]");
  if (!form) return;
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || document.body.dataset.letters === "off") return;
    if (document.activeElement?.matches(EDITABLE) || document.querySelector("dialog[open]")) return;
    const ink = form.querySelector(`[data-ink-key="${CSS.escape(event.key)}"]`);
    if (!ink) return;
    event.preventDefault();
    ink.checked = true;
    write(form);
  });
  form.querySelector("[data-guard]")?.addEventListener("click", (event) => {
    if (form.querySelector("[data-words]").value.trim()) return;
    event.preventDefault();
    say("Choose the words in the text first; then press k.", { name: "guard" });
  });
  atHand(form);
}

function write(form) {
  form.closest("details")?.setAttribute("open", "");
  form.querySelector("textarea[name=text]").focus();
}

function atHand(form) {
  const bar = document.querySelector("[data-on-chosen]");
  const article = document.querySelector("article.manuscript");
  if (!bar || !article) return;
  const offer = () => {
    const chosen = getSelection();
    bar.hidden = chosen.isCollapsed || !article.contains(chosen.anchorNode);
  };
  document.addEventListener("selectionchange", offer);
  offer();
  bar.addEventListener("pointerdown", (event) => event.preventDefault()); // the words stay chosen
  bar.querySelector("[data-for=note]").addEventListener("click", () => write(form));
  bar.querySelector("[data-for=guard]").addEventListener("click", () => form.querySelector("[data-guard]").click());
}
