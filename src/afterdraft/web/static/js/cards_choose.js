// Several cards at once: tick them, click with Ctrl or Shift, x by key, or all of a chapter.
export function choosing(table) {
  const box = (sheet) => sheet.querySelector("[data-pick]");
  const boxes = () => [...table.element.querySelectorAll("[data-pick]")];
  const count = table.element.querySelector("[data-count]");
  let last = null;

  function tell() {
    const number = boxes().filter((one) => one.checked).length;
    count.textContent = number ? `${number} ${number === 1 ? "card" : "cards"} chosen` : "";
  }

  function toggle(sheet, wanted = !box(sheet).checked) {
    box(sheet).checked = wanted;
    last = sheet;
    tell();
  }

  function reach(sheet) {
    const all = table.sheets();
    const [from, to] = [all.indexOf(last ?? sheet), all.indexOf(sheet)].sort((a, b) => a - b);
    for (const one of all.slice(from, to + 1)) box(one).checked = true;
    tell();
  }

  table.element.addEventListener("change", (event) => { if (event.target.matches("[data-pick]")) { last = table.sheetOf(event.target); tell(); } });
  table.element.addEventListener("reset", () => setTimeout(tell));
  table.element.addEventListener("click", (event) => {
    const sheet = table.sheetOf(event.target);
    if (!sheet || event.target.closest("input, details, button") || !(event.ctrlKey || event.metaKey || event.shiftKey)) return;
    event.preventDefault();
    if (event.shiftKey) reach(sheet); else toggle(sheet);
  });
  for (const button of table.element.querySelectorAll("[data-choose-all]")) {
    button.hidden = false;
    button.addEventListener("click", () => {
      const own = table.sheets(button.closest(".cards-row"));
      const wanted = !own.every((sheet) => box(sheet).checked);
      for (const sheet of own) box(sheet).checked = wanted;
      tell();
    });
  }
  tell();
  return {
    // What goes along when this sheet is moved: all chosen, if it is one of them.
    with: (sheet) => (box(sheet).checked ? table.sheets().filter((one) => box(one).checked) : [sheet]),
    toggle,
    none() { const some = boxes().some((one) => one.checked); for (const one of boxes()) one.checked = false; tell(); return some; },
  };
}
