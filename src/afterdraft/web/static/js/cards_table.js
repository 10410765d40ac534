// The cards as they lie: lines of sheets, the slot where held ones would come to lie, and the form that lays them there.
const TOLD = "afterdraft-put-down";
const AFTER = 300; // milliseconds; a reader that is still reading the new page out would swallow it

export class Table {
  constructor(element) {
    this.element = element;
    this.form = document.getElementById("lay");
    this.live = document.querySelector("[data-live]");
    this.slot = document.createElement("div");
    this.slot.className = "slot";
    this.slot.hidden = true;
    element.append(this.slot);
    const told = sessionStorage.getItem(TOLD);
    sessionStorage.removeItem(TOLD);
    if (told) setTimeout(() => this.say(told), AFTER); // the page came anew with the cards where they were put
  }

  lines() { return [...this.element.querySelectorAll("[data-line]")]; }
  sheets(within = this.element) { return [...within.querySelectorAll("[data-sheet]")]; }
  sheetOf(target) { return target.closest?.("[data-sheet]"); }
  face(sheet) { return sheet.querySelector(".face"); }
  called(sheet) { return this.face(sheet).getAttribute("aria-label"); }

  // Where one would lie: a line, and how many of the sheets that stay come before.
  spotOf(sheet, held) {
    const line = sheet.closest("[data-line]");
    const before = this.sheets(line).slice(0, this.sheets(line).indexOf(sheet));
    return { line, at: before.filter((one) => !held.includes(one)).length };
  }

  staying(line, held) { return this.sheets(line).filter((one) => !held.includes(one)); }

  // Show the slot at a spot; `rect` of a sheet may be handed in where it was measured before.
  show({ line, at }, held, rects) {
    const staying = this.staying(line, held);
    const rect = (sheet) => rects?.get(sheet) ?? this.measured(sheet);
    const home = rects?.get(this.element) ?? this.element.getBoundingClientRect();
    const next = staying[at] && rect(staying[at]);
    const last = !next && staying[at - 1] && rect(staying[at - 1]);
    const bare = !next && !last && this.measured(line);
    const x = next ? next.left - 8 : last ? last.right + 5 : bare.left;
    const { top, height } = next || last || bare;
    this.slot.hidden = false;
    if (this.slot.dataset.height !== String(height)) { this.slot.style.height = `${height}px`; this.slot.dataset.height = height; }
    this.slot.style.transform = `translate3d(${Math.max(x - home.left, -6)}px, ${top - home.top}px, 0)`;
  }

  measured(element) { return element.getBoundingClientRect(); }
  hide() { this.slot.hidden = true; }

  // Where held sheets would lie, in words.
  where({ line, at }, held) {
    const staying = this.staying(line, held);
    if (!line.dataset.line) return "Set aside.";
    const beside = at ? `, after ${this.called(staying[at - 1])}` : staying.length ? `, before ${this.called(staying[0])}` : "";
    return `${line.dataset.name}, place ${at + 1} of ${staying.length + held.length}${beside}.`;
  }

  // Lay the held sheets at a spot. Says whether that changes anything.
  lay(held, { line, at }) {
    const staying = this.staying(line, held);
    const now = [...staying.slice(0, at), ...held, ...staying.slice(at)];
    const was = this.sheets(line);
    if (now.length === was.length && now.every((sheet, n) => sheet === was[n])) return false;
    for (const old of this.form.querySelectorAll("[data-filled]")) old.remove();
    for (const sheet of held) this.fill("card", sheet.dataset.code);
    if (line.dataset.line) {
      this.fill("row", line.dataset.line);
      if (staying[at]) this.fill("before", staying[at].dataset.code);
    }
    this.form.action = this.form.action.replace(/[^/]*$/, line.dataset.line ? "move" : "set-aside");
    sessionStorage.setItem(TOLD, `Put down. ${this.where({ line, at }, held)}`);
    this.form.requestSubmit();
    return true;
  }

  fill(name, value) {
    const input = document.createElement("input");
    Object.assign(input, { type: "hidden", name, value });
    input.dataset.filled = "";
    this.form.append(input);
  }

  say(text) { this.live.textContent = text; }
}
