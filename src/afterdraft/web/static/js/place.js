// After a form the page comes back: keep the eye where it was, and put the focus on what the act was about.
const KEPT = "afterdraft-scroll";

export function place() {
  document.addEventListener("submit", (event) => {
    if (event.target.method === "post") sessionStorage.setItem(KEPT, JSON.stringify([location.pathname, scrollY]));
  });
  const kept = JSON.parse(sessionStorage.getItem(KEPT) ?? "null");
  sessionStorage.removeItem(KEPT);
  if (kept && kept[0] === location.pathname) scrollTo({ top: kept[1], behavior: "instant" });
  const target = location.hash && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (!target) return;
  target.closest("details")?.setAttribute("open", "");
  if (target.matches("details")) target.open = true;
  if (!target.matches("a, button, input, textarea")) target.tabIndex = -1;
  target.focus({ preventScroll: Boolean(kept) });
  if (kept) target.scrollIntoView({ block: "nearest" });
}
