// A loose note from anywhere: `n` or the button opens a small dialog; without scripts the link leads to the Notes page.
export function noteDialog() {
  const dialog = document.getElementById("loose-note");
  const link = document.querySelector("[data-note]");
  if (!dialog || !link) return;
  link.dataset.key = "n";
  link.setAttribute("aria-haspopup", "dialog");
  link.addEventListener("click", (event) => {
    event.preventDefault();
    dialog.showModal();
    dialog.querySelector("textarea").focus();
  });
  dialog.querySelector("[data-dismiss]").addEventListener("click", () => dialog.close());
}
