// Cards by pointer. All is measured once when the drag begins; after that only transforms change, one write a frame.
const SLACK = 6; // pixels before a press becomes a drag
const HOLD = 350; // milliseconds a finger rests before it picks a card up; sooner it scrolls
const EDGE = 72; // pixels from the window's edge where the page scrolls along
const SPEED = 18; // pixels a frame at the very edge

export function byPointer(table, chosen) {
  let press = null;
  let drag = null;

  table.element.addEventListener("pointerdown", (event) => {
    const sheet = table.sheetOf(event.target);
    if (!sheet || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.target.closest("input, details, button")) return;
    press = { sheet, x: event.clientX, y: event.clientY, touch: event.pointerType === "touch" };
    if (press.touch) press.timer = setTimeout(() => begin(), HOLD);
  });
  document.addEventListener("pointermove", (event) => {
    if (drag) { drag.x = event.clientX; drag.y = event.clientY; return; }
    if (!press || Math.hypot(event.clientX - press.x, event.clientY - press.y) < SLACK) return;
    if (press.touch) drop(); else begin(event);
  });
  document.addEventListener("pointerup", () => { if (drag) end(true); drop(); });
  document.addEventListener("pointercancel", () => { if (drag) end(false); drop(); });
  document.addEventListener("keydown", (event) => { if (drag && event.key === "Escape") { event.preventDefault(); end(false); } });
  table.element.addEventListener("dragstart", (event) => event.preventDefault());
  table.element.addEventListener("touchmove", (event) => { if (drag) event.preventDefault(); }, { passive: false });
  table.element.addEventListener("contextmenu", (event) => { if (drag) event.preventDefault(); });

  function drop() { clearTimeout(press?.timer); press = null; }

  function begin(event) {
    const held = chosen.with(press.sheet);
    const rect = press.sheet.getBoundingClientRect();
    drag = {
      held, x: event?.clientX ?? press.x, y: event?.clientY ?? press.y, dx: press.x - rect.left, dy: press.y - rect.top, spot: table.spotOf(press.sheet, held),
      places: measure(table, held), ghost: ghostOf(press.sheet, held, rect), frame: 0,
    };
    for (const sheet of held) sheet.dataset.held = "";
    document.body.dataset.dragging = "";
    drag.frame = requestAnimationFrame(follow);
  }

  function follow() {
    if (!drag) return;
    scrollAlong(drag.y);
    drag.ghost.style.transform = `translate3d(${drag.x - drag.dx}px, ${drag.y - drag.dy}px, 0)`;
    const spot = spotAt(drag.places, drag.x, drag.y);
    if (spot && (spot.line !== drag.spot.line || spot.at !== drag.spot.at || table.slot.hidden)) {
      drag.spot = spot;
      place(table, spot);
    }
    drag.frame = requestAnimationFrame(follow);
  }

  function end(down) {
    const { held, spot, ghost, frame } = drag;
    cancelAnimationFrame(frame);
    drag = null;
    ghost.remove();
    table.hide();
    delete document.body.dataset.dragging;
    for (const sheet of held) delete sheet.dataset.held;
    addEventListener("click", stopped, { capture: true });
    setTimeout(() => removeEventListener("click", stopped, { capture: true }));
    if (down) table.lay(held, spot);
  }
}

const stopped = (event) => { event.preventDefault(); event.stopPropagation(); };

// Every line and sheet in page coordinates; what sticks to the window (the tray) in the window's.
function measure(table, held) {
  const home = table.element.getBoundingClientRect();
  return table.lines().map((line) => {
    const tray = line.closest("[data-tray]");
    const fixed = Boolean(tray) && getComputedStyle(tray).position === "sticky"; // in a narrow window it lies at the end of the page
    const y = fixed ? 0 : scrollY;
    const box = (tray ?? line).getBoundingClientRect();
    const sheets = table.staying(line, held).map((sheet) => moved(sheet.getBoundingClientRect(), y));
    return { line, fixed, box: moved(box, y), bare: moved(line.getBoundingClientRect(), y), sheets, home: { left: home.left, top: home.top + scrollY } };
  });
}

const moved = (rect, y) => ({ left: rect.left, right: rect.right, top: rect.top + y, bottom: rect.bottom + y, height: rect.height });

// The line under the pointer, or the nearest above or below; in it the place before the first sheet that lies behind the pointer.
function spotAt(places, x, windowY) {
  const tray = places.find((one) => one.fixed && windowY >= one.box.top && windowY <= one.box.bottom);
  const y = tray ? windowY : windowY + scrollY;
  const free = places.filter((one) => !one.fixed);
  const found = tray ?? free.reduce((best, one) => (distance(one.box, x, y) < distance(best.box, x, y) ? one : best), free[0]);
  if (!found) return null;
  const at = found.sheets.findIndex((rect) => y < rect.top || (y <= rect.bottom && x < (rect.left + rect.right) / 2));
  return { line: found.line, at: at < 0 ? found.sheets.length : at, found };
}

const beyond = (from, to, at) => (at < from ? from - at : at > to ? at - to : 0);
const distance = (box, x, y) => Math.hypot(beyond(box.left, box.right, x), beyond(box.top, box.bottom, y));

function place(table, { at, found }) {
  const next = found.sheets[at];
  const rect = next ?? found.sheets[at - 1] ?? found.bare;
  const x = next ? next.left - 8 : found.sheets.length ? rect.right + 5 : rect.left;
  const top = rect.top + (found.fixed ? scrollY : 0);
  table.slot.hidden = false;
  table.slot.style.height = `${rect.height}px`;
  table.slot.style.transform = `translate3d(${Math.max(x - found.home.left, -6)}px, ${top - found.home.top}px, 0)`;
}

function scrollAlong(y) {
  const bottom = innerHeight - EDGE;
  const over = y < EDGE ? y - EDGE : y > bottom ? y - bottom : 0;
  if (over) scrollBy({ top: (over / EDGE) * SPEED, behavior: "instant" });
}

function ghostOf(sheet, held, rect) {
  const ghost = sheet.cloneNode(true);
  for (const named of ghost.querySelectorAll("[id], input")) { named.removeAttribute("id"); named.removeAttribute("form"); named.removeAttribute("name"); }
  ghost.classList.add("ghost");
  ghost.setAttribute("aria-hidden", "true");
  ghost.removeAttribute("data-sheet");
  ghost.style.width = `${rect.width}px`;
  ghost.style.height = `${rect.height}px`;
  ghost.style.transform = `translate3d(${rect.left}px, ${rect.top}px, 0)`;
  if (held.length > 1) ghost.append(Object.assign(document.createElement("span"), { className: "ghost-count", textContent: held.length }));
  sheet.closest(".table").append(ghost);
  return ghost;
}
