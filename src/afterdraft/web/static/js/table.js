// A scene list read in: the name of the scene follows the code that is typed beside a row.
import { changed } from "./typed.js";

export function table() {
  const form = document.querySelector("[data-table]");
  if (!form) return;
  const names = new Map([...document.querySelectorAll("#scenes option")].map((option) => [option.value, option.textContent]));
  const tell = (box) => {
    const place = box.closest(".table-scene");
    const code = box.value.trim().toUpperCase();
    place.querySelector("[data-name]").textContent = code ? (names.get(code) ?? "no scene of this code") : "no scene";
    place.querySelector("[data-why]")?.remove();
  };
  form.addEventListener("input", (event) => { if (event.target.matches("[name^=code-]")) tell(event.target); });
  for (const box of form.querySelectorAll("[name^=code-]")) if (changed(box)) tell(box);
}
