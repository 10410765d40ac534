// A scene list read in: the name of the scene follows the code that is typed beside a row.
export function table() {
  const form = document.querySelector("[data-table]");
  if (!form) return;
  const names = new Map([...document.querySelectorAll("#scenes option")].map((option) => [option.value, option.textContent]));
  form.addEventListener("input", (event) => {
    const place = event.target.closest(".table-scene");
    if (!place || !event.target.name?.startsWith("code-")) return;
    const code = event.target.value.trim().toUpperCase();
    place.querySelector("[data-name]").textContent = code ? (names.get(code) ?? "no scene of this code") : "no scene";
    place.querySelector("[data-why]")?.remove();
  });
}
