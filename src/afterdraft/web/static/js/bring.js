// Bringing files in: choosing is enough, dropping too. A file dropped anywhere on the page counts. A form that asks which
// draft it is takes them and waits for the answer.
import { say } from "./messages.js";

export function bring() {
  const form = document.querySelector("[data-bring]");
  if (!form) return;
  const box = document.querySelector("[data-drop]");
  const input = form.querySelector("input[type=file]");
  const asks = form.dataset.bring === "ask";
  const chosen = () => { if (input.files.length && !asks) send(form); };
  form.addEventListener("submit", () => { form.querySelector("[data-bringing]").hidden = false; });
  input.addEventListener("change", chosen);
  document.addEventListener("dragover", (event) => { if (hasFiles(event)) { event.preventDefault(); box.dataset.over = ""; } });
  document.addEventListener("dragleave", (event) => { if (!event.relatedTarget) delete box.dataset.over; });
  document.addEventListener("drop", async (event) => {
    if (!hasFiles(event)) return;
    event.preventDefault();
    delete box.dataset.over;
    const files = await dropped(event.dataTransfer);
    if (!files.length) { say("There was no file in what you dropped. Nothing was changed."); return; }
    const held = new DataTransfer();
    for (const file of files) held.items.add(file);
    input.files = held.files;
    if (asks) ask(form);
    else send(form);
  });
  chosen();
}

const hasFiles = (event) => [...(event.dataTransfer?.types ?? [])].includes("Files");

const send = (form) => form.requestSubmit();

function ask(form) {
  form.closest("details")?.setAttribute("open", "");
  form.querySelector("[name=how]:checked").focus();
  say("Which draft is it? Say so, then bring it in.");
}

// Files and the files inside dropped folders, one level of folders after another.
async function dropped(transfer) {
  const entries = [...transfer.items].map((item) => item.webkitGetAsEntry?.()).filter(Boolean);
  if (!entries.some((entry) => entry.isDirectory)) return [...transfer.files];
  const files = [];
  for (const entry of entries) await gather(entry, files);
  return files;
}

async function gather(entry, files) {
  if (entry.isFile) { files.push(await new Promise((done, fail) => entry.file(done, fail))); return; }
  const reader = entry.createReader();
  for (;;) {
    const some = await new Promise((done, fail) => reader.readEntries(done, fail));
    if (!some.length) return;
    for (const one of some) await gather(one, files);
  }
}
