// The small menus of cards and chapters: one open at a time, shut by Escape or a press elsewhere, wholly in sight when open.
export function menus(element) {
  const open = () => element.querySelector("[data-menu][open]");
  element.addEventListener("toggle", (event) => {
    if (event.target.matches("[data-menu]") && event.target.open) event.target.querySelector(".menu-acts").scrollIntoView({ block: "nearest" });
  }, { capture: true });
  document.addEventListener("pointerdown", (event) => { const menu = open(); if (menu && !menu.contains(event.target)) menu.open = false; });
  element.addEventListener("keydown", (event) => {
    const menu = event.key === "Escape" && event.target.closest("[data-menu][open]");
    if (!menu) return;
    event.preventDefault();
    menu.open = false;
    menu.querySelector("summary").focus();
  });
}
