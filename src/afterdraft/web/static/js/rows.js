// Lists by keys: j and k along the lines in sight, o opens or shuts. In the split m joins; y takes a suggestion, x does
// not. Of a fate: y as found, x cut, u not reached yet, l to the box that says where it lives on; side by side the lines
// are the changes. On a question: a a note of it, in the ink of a number, v a change, y it stands, e to the box that says
// why, x how it is found.
export function rows() {
  if (!document.querySelector("[data-rows]")) return;
  const units = () => [...document.querySelectorAll("[data-rows] [data-unit]")].filter((unit) => unit.checkVisibility());
  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || document.body.dataset.letters === "off") return;
    if (event.target.closest("input, textarea, dialog")) return;
    const here = document.activeElement?.closest("[data-unit]");
    const act = { m: "join", o: "open", y: "take", x: "decline", u: "later", l: "lives", a: "note", v: "plan", e: "why" }[event.key];
    if (act && here) press(here, act, event);
    else if (here && /^[1-9]$/.test(event.key)) inInk(here, event);
    else if (event.key === "j" || event.key === "k") move(units(), here, event);
  });
}

function press(unit, act, event) {
  const control = unit.querySelector(`[data-act="${act}"]`);
  if (!control) return;
  event.preventDefault();
  if (control.matches("input")) control.focus();
  else if (control.matches("summary")) unfold(control.parentElement);
  else control.click();
}

// Open or shut; what opens below the window comes into it.
function unfold(details) {
  details.toggleAttribute("open");
  details.scrollIntoView({ block: "nearest" });
}

function inInk(unit, event) {
  const ink = unit.querySelector(`[data-ink-key="${event.key}"]`);
  const control = unit.querySelector('[data-act="note"]');
  if (!ink || !control) return;
  event.preventDefault();
  ink.checked = true;
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
