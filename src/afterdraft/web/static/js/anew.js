// A card written anew: as soon as its summary is saved, the old one, which was kept back until then, comes to stand beside it.
export function anew() {
  for (const form of document.querySelectorAll("form[data-saves]")) {
    form.addEventListener("saved", () => { if (form.querySelector('[data-anew="kept"]') && form.elements.summary?.value.trim()) show(form); });
  }
}

async function show(form) {
  const answer = await fetch(location.href).catch(() => null);
  if (!answer?.ok) return;
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const there = [...page.querySelectorAll("form[data-saves]")].find((one) => one.getAttribute("action") === form.getAttribute("action"));
  for (const part of ["[data-old]", "[data-anew]"]) {
    const old = form.querySelector(part), made = there?.querySelector(part);
    if (old && made) old.replaceWith(document.adoptNode(made));
  }
}
