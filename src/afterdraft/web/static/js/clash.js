// The same text was changed in another window: show both, let her choose. Nothing is overwritten until she does.
export function clash(box, other, choose) {
  const region = box.parentElement.querySelector("[data-choice]");
  const mine = box.value;
  region.replaceChildren(
    line("p", "This was changed in another window. There it says:"),
    line("blockquote", other || "(nothing)"),
    row([
      button("Let the other stand", () => end(other)),
      button("Let mine stand", () => end(box.value)),
      button("Keep both, one under the other", () => end(`${other}\n${mine}`)),
    ]),
  );
  region.className = "clash";
  region.setAttribute("role", "group");
  region.setAttribute("aria-label", "Two texts: choose which shall stand");
  region.querySelector("button").focus();

  function end(text) {
    region.replaceChildren();
    region.className = "";
    region.removeAttribute("role");
    region.removeAttribute("aria-label");
    choose(text);
  }
}

function line(tag, text) {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}

function row(buttons) {
  const made = document.createElement("div");
  made.className = "row";
  made.append(...buttons);
  return made;
}

function button(text, act) {
  const made = line("button", text);
  made.type = "button";
  made.addEventListener("click", act);
  return made;
}
