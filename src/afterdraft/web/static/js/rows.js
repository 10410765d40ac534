// The split's lists by keys: j and k along the lines in sight, m joins, o opens or shuts; y takes a suggestion, x does not.
export function rows() {
  if (!document.querySelector("[data-rows]")) return;
  const units = () => [...document.querySelectorAll("[data-rows] [data-unit]")].filter((unit) => unit.checkVisibility());
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || document.body.dataset.letters === "off") return;
    if (event.target.closest("input, textarea, dialog")) return;
    const here = document.activeElement?.closest("[data-unit]");
    const act = { m: "join", o: "open", y: "take", x: "decline" }[event.key];
    if (act && here) press(here, act, event);
    else if (event.key === "j" || event.key === "k") move(units(), here, event);
  });
}

function press(unit, act, event) {
  const control = unit.querySelector(`[data-act="${act}"]`);
  if (!control) return;
  event.preventDefault();
  control.click();
}

function move(units, here, event) {
  const at = units.indexOf(here);
  const to = event.key === "j" ? at + 1 : at < 0 ? units.length - 1 : at - 1;
  if (!units[to]) return;
  event.preventDefault();
  units[to].focus();
  units[to].scrollIntoView({ block: "nearest" });
}
