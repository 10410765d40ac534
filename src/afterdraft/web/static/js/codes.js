// Lay by codes: what is typed is checked a while after each key, by the same form that the Check button sends.
import { changed } from "./typed.js";

const AFTER = 400; // milliseconds without a key

export function codes() {
  const form = document.querySelector("[data-codes]");
  if (!form) return;
  const found = form.querySelector("[data-found]");
  let timer = 0;
  let latest = 0;

  async function check() {
    const own = ++latest;
    const body = new URLSearchParams(new FormData(form));
    body.set("act", "check");
    const answer = await fetch(form.action, { method: "POST", body, headers: { Accept: "text/html" } }).catch(() => null);
    if (!answer?.ok || own !== latest) return; // the button still works, and says what is wrong
    const told = new DOMParser().parseFromString(await answer.text(), "text/html").querySelector("[data-found]");
    if (told && own === latest && told.innerHTML !== found.innerHTML) found.replaceChildren(...told.childNodes);
  }

  form.addEventListener("input", () => { clearTimeout(timer); timer = setTimeout(check, AFTER); });
  if ([...form.querySelectorAll("textarea, [type=radio]")].some(changed)) check();
}
