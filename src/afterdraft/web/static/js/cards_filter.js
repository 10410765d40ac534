// Filters of the cards at once, without asking the server: what does not match is dimmed; the address keeps what is asked, and acts come back to it.
import { changed } from "./typed.js";

export function filtering() {
  const form = document.querySelector("[data-filters] form");
  if (!form) return;
  const boxes = [...form.querySelectorAll("[data-filter]")];
  const sheets = [...document.querySelectorAll("[data-sheet]")];
  const told = form.querySelector("[data-matching]");
  const clear = form.querySelector("[data-clear]");

  function show() {
    const asked = boxes.filter((box) => box.value).map((box) => `${box.dataset.filter}:${box.value}`);
    let matching = 0;
    for (const sheet of sheets) {
      const has = (sheet.dataset.has ?? "").split("|");
      const matches = asked.every((one) => has.includes(one));
      sheet.toggleAttribute("data-dim", !matches);
      sheet.querySelector("[data-dimmed]").hidden = matches;
      matching += matches;
    }
    told.textContent = asked.length ? `${matching.toLocaleString("en")} of ${sheets.length.toLocaleString("en")} cards` : "";
    clear.hidden = !asked.length;
    keep();
  }

  function keep() {
    const address = new URL(location.href);
    for (const box of boxes) if (box.value) address.searchParams.set(box.name, box.value); else address.searchParams.delete(box.name);
    address.hash = "";
    history.replaceState(null, "", address);
    for (const back of document.querySelectorAll('input[name="back"]')) if (back.value.split(/[?#]/)[0] === address.pathname) back.value = address.pathname + address.search;
  }

  form.addEventListener("change", show);
  form.addEventListener("submit", (event) => { event.preventDefault(); show(); });
  clear.addEventListener("click", (event) => {
    event.preventDefault();
    for (const box of boxes) box.value = "";
    show();
    boxes[0].focus();
  });
  if (boxes.some((box) => box.value || changed(box))) show(); // chosen before this was there, or kept by the browser
}
