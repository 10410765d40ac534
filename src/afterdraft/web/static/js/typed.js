// What stands in a field that the page did not come with: typed or chosen by her, perhaps before the scripts were there.
export function changed(box) {
  if (box.matches("[type=checkbox], [type=radio]")) return box.checked !== box.defaultChecked;
  if (box.matches("select")) return box.selectedOptions[0] !== ([...box.options].find((option) => option.defaultSelected) ?? box.options[0]);
  return box.value !== box.defaultValue;
}

// Words that nobody but this window has, and that no form saves by itself.
export function words() {
  return [...document.querySelectorAll("input:not([type=hidden], [type=checkbox], [type=radio]), textarea")].some((box) => !box.closest("[data-saves]") && changed(box));
}
