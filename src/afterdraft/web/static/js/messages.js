// The message region: what happened, said once, put away by hand or after a while.
const QUIET_AFTER = 8000; // milliseconds; long enough to read two sentences

const region = () => document.getElementById("messages");

export function messages() {
  for (const told of region().querySelectorAll(".message")) dress(told, QUIET_AFTER);
}

// Say something. A message with `stay` remains until it is put away or `unsay` is called with its name.
export function say(text, { name = "", stay = false } = {}) {
  if (name) unsay(name);
  const told = document.createElement("p");
  told.className = "message";
  if (name) told.dataset.name = name;
  told.textContent = text;
  region().append(told);
  dress(told, stay ? 0 : QUIET_AFTER);
}

export function unsay(name) {
  for (const told of region().querySelectorAll(`[data-name="${name}"]`)) told.remove();
}

export function putAway() {
  const told = region().querySelector(".message");
  told?.remove();
  return Boolean(told);
}

function dress(told, after) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = "Put away";
  button.addEventListener("click", () => told.remove());
  told.append(button);
  if (!after) return;
  let timer = setTimeout(() => told.remove(), after);
  told.addEventListener("pointerenter", () => clearTimeout(timer));
  told.addEventListener("focusin", () => clearTimeout(timer));
  told.addEventListener("pointerleave", () => { timer = setTimeout(() => told.remove(), after); });
}
