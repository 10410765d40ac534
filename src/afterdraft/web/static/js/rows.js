// The split's list by keys: j and k along the lines, m joins, o opens or shuts.
export function rows() {
  const list = document.querySelector("[data-rows]");
  if (!list) return;
  const units = () => [...list.querySelectorAll("[data-unit]")];
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || document.body.dataset.letters === "off") return;
    if (event.target.closest("input, textarea, dialog")) return;
    const here = document.activeElement?.closest("[data-unit]");
    const act = { m: "join", o: "open" }[event.key];
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
