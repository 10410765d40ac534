// Nearer and further: + and − by key, or the signs above the cards. Kept in a cookie, so that the page comes back the same.
const KEPT = 400 * 24 * 3600; // seconds; browsers keep a cookie no longer

export function zooming(element) {
  const links = [...document.querySelectorAll("[data-zoom-to]")];
  const now = () => links.findIndex((link) => link.dataset.zoomTo === element.dataset.zoom);

  function to(link) {
    if (!link) return;
    const held = document.activeElement?.closest?.("[data-sheet]") ?? inSight(element);
    element.dataset.zoom = link.dataset.zoomTo;
    for (const other of links) other.toggleAttribute("aria-current", false);
    link.setAttribute("aria-current", "true");
    document.cookie = `afterdraft-zoom=${link.dataset.zoomTo}; path=/; max-age=${KEPT}; samesite=strict`;
    held?.scrollIntoView({ block: "center", behavior: "instant" });
  }

  for (const link of links) link.addEventListener("click", (event) => { if (event.ctrlKey || event.metaKey || event.shiftKey) return; event.preventDefault(); to(link); });
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || document.body.dataset.letters === "off" || event.target.closest("input:not([type=checkbox]), textarea, select, dialog")) return;
    const step = { "+": 1, "=": 1, "-": -1 }[event.key];
    if (!step) return;
    event.preventDefault();
    to(links[now() + step]);
  });
}

// The first card that is wholly in the window, so that the eye keeps its place.
function inSight(element) {
  if (scrollY === 0) return null;
  return [...element.querySelectorAll("[data-sheet]")].find((sheet) => sheet.getBoundingClientRect().top > 80);
}
