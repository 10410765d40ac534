// Cards by key: one tab stop, arrows from card to card; Space picks up, arrows move, Space or Enter puts down, Escape leaves it there.
export function byKey(table, chosen) {
  let held = null; // { sheet, sheets, spot }
  const faces = () => table.sheets().map((sheet) => table.face(sheet));

  for (const face of faces()) { face.tabIndex = -1; face.setAttribute("aria-describedby", "cards-how"); }
  rest(document.activeElement?.closest?.("[data-sheet]") ?? table.sheets()[0]);

  table.element.addEventListener("focusin", (event) => { const sheet = table.sheetOf(event.target); if (sheet && event.target === table.face(sheet)) rest(sheet); });
  table.element.addEventListener("focusout", () => { if (held) cancel(); });
  table.element.addEventListener("keydown", (event) => {
    const sheet = table.sheetOf(event.target);
    if (!sheet || event.target !== table.face(sheet) || event.ctrlKey || event.metaKey || event.altKey) return;
    if (held ? move(event.key) : look(event.key, sheet)) event.preventDefault();
  });

  // The card that Tab comes to; its tick box and menu are the next stops.
  function rest(sheet) {
    for (const other of table.sheets()) for (const stop of other.querySelectorAll(".face, [data-pick], .menu > summary")) stop.tabIndex = other === sheet ? 0 : -1;
  }

  function look(key, sheet) {
    const all = table.sheets();
    const at = all.indexOf(sheet);
    const line = table.sheets(sheet.closest("[data-line]"));
    const to = { ArrowRight: all[at + 1], ArrowLeft: all[at - 1], Home: line[0], End: line.at(-1), ArrowDown: beyond(sheet, 1), ArrowUp: beyond(sheet, -1) };
    if (key in to) { to[key]?.querySelector(".face").focus(); return true; }
    if (key === " ") return pickUp(sheet);
    if (key === "Escape") return chosen.none();
    if (key !== "x" || document.body.dataset.letters === "off") return false;
    chosen.toggle(sheet);
    return true;
  }

  // The card that lies over or under this one, in this line or the next that has any.
  function beyond(sheet, way) {
    const own = sheet.getBoundingClientRect();
    const middle = (own.left + own.right) / 2;
    let best = null;
    for (const other of table.sheets()) {
      const rect = other.getBoundingClientRect();
      const down = way * (rect.top - own.top);
      if (down < own.height / 2) continue;
      const across = Math.abs((rect.left + rect.right) / 2 - middle);
      if (!best || down < best.down - 4 || (Math.abs(down - best.down) <= 4 && across < best.across)) best = { other, down, across };
    }
    return best?.other;
  }

  function pickUp(sheet) {
    const sheets = chosen.with(sheet);
    held = { sheet, sheets, spot: table.spotOf(sheet, sheets) };
    for (const one of sheets) one.dataset.held = "";
    table.show(held.spot, sheets);
    table.say(`Picked up ${sheets.length > 1 ? `${sheets.length} cards` : table.called(sheet)}. ${where()} Arrow keys move, Space puts down, Escape leaves it where it was.`);
    return true;
  }

  function move(key) {
    if (key === " " || key === "Enter") return putDown();
    if (key === "Escape") { cancel(); return true; }
    const spot = next(key, held.spot);
    if (spot === undefined) return key !== "Tab";
    if (spot) {
      held.spot = spot;
      table.show(spot, held.sheets);
      table.slot.scrollIntoView({ block: "nearest" });
      table.say(where());
    }
    return true;
  }

  function next(key, { line, at }) {
    const lines = table.lines();
    const n = lines.indexOf(line);
    const size = (one) => table.staying(one, held.sheets).length;
    const within = (one, place) => one && { line: one, at: Math.max(0, Math.min(place, size(one))) };
    if (key === "ArrowRight") return at < size(line) ? { line, at: at + 1 } : within(lines[n + 1], 0) ?? null;
    if (key === "ArrowLeft") return at > 0 ? { line, at: at - 1 } : within(lines[n - 1], Infinity) ?? null;
    if (key === "ArrowDown") return within(lines[n + 1], at) ?? null;
    if (key === "ArrowUp") return within(lines[n - 1], at) ?? null;
    if (key === "Home") return { line, at: 0 };
    if (key === "End") return { line, at: size(line) };
    return undefined;
  }

  const where = () => table.where(held.spot, held.sheets);

  function putDown() {
    const { sheets, spot } = held;
    letGo();
    if (!table.lay(sheets, spot)) table.say("Left where it was.");
    return true;
  }

  function cancel() {
    letGo();
    table.say("Left where it was.");
  }

  function letGo() {
    for (const sheet of held.sheets) delete sheet.dataset.held;
    held = null;
    table.hide();
  }
}
