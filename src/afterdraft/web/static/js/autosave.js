// What she types saves itself, in each form marked data-saves: a while after typing, on leaving the box, and when the page is left. "Saved" is said only when
// the server has it for good. One save of a form is under way at a time; each field keeps only its latest text.
import { clash } from "./clash.js";
import { mark } from "./fore_edge.js";
import { say, unsay } from "./messages.js";

const AFTER = 600; // milliseconds without a key
const TRY_AGAIN = [1000, 1000, 2000, 3000, 5000]; // milliseconds, the last one for good
const GONE = "Afterdraft is not answering. Your words are kept in this window, and saving is tried again until it works.";
const STARTED_ANEW = "Afterdraft was started anew. Your words are kept in this window, and are saved once you have looked into the new one.";
const client = crypto.randomUUID();

export function autosave() {
  const forms = [...document.querySelectorAll("[data-saves]")].map((form) => new Saving(form));
  return { busy: () => forms.some((form) => form.unsaved()) || Boolean(document.activeElement?.closest("[data-saves]")) };
}

class Saving {
  constructor(form) {
    this.form = form;
    this.path = form.action;
    this.sequence = 0;
    this.waiting = new Map(); // field name → whether the edit is complete
    this.running = false;
    this.failures = 0;
    this.leaving = false; // an answer that this page does not live to see is no failure
    this.timer = 0;
    for (const box of form.querySelectorAll("[data-field]")) this.watch(box);
    form.addEventListener("submit", (event) => { event.preventDefault(); this.flush(); });
    document.addEventListener("visibilitychange", () => { if (document.hidden) this.leave(); });
    addEventListener("pagehide", () => { this.leaving = true; this.leave(); });
    addEventListener("pageshow", () => { this.leaving = false; });
    addEventListener("beforeunload", (event) => { if (this.failures && this.unsaved()) event.preventDefault(); });
    this.bringBack();
  }

  boxes() { return [...this.form.querySelectorAll("[data-field]")]; }
  box(name) { return this.form.querySelector(`[data-field="${name}"]`); }
  dirty(box) { return box.value !== box.dataset.saved; }
  unsaved() { return this.running || this.boxes().some((box) => this.dirty(box)); }

  watch(box) {
    box.dataset.revision = this.form.dataset.revision; // each field remembers which state of the card it has seen
    box.addEventListener("input", () => {
      this.say("");
      clearTimeout(this.timer);
      this.timer = setTimeout(() => this.queue(box, false), AFTER);
    });
    box.addEventListener("change", () => this.queue(box, true));
    box.addEventListener("blur", () => this.queue(box, true));
  }

  queue(box, done) {
    if (box.dataset.clash || (!this.dirty(box) && !(done && box.dataset.open))) return;
    this.waiting.set(box.dataset.field, done);
    this.run();
  }

  flush() { for (const box of this.boxes()) this.queue(box, true); }

  async run() {
    if (this.running) return;
    this.running = true;
    while (this.waiting.size && (await this.saveNext()));
    this.running = false;
  }

  async saveNext() {
    const [name, done] = this.waiting.entries().next().value;
    this.waiting.delete(name);
    const text = this.box(name).value;
    const answer = await this.send(name, text, done).catch(() => null);
    if (answer?.status === 204) return this.saved(name, text, done, answer);
    if (answer?.status === 409) return this.stale(name, text, await answer.json());
    return this.failed(name, done, answer);
  }

  send(name, text, done, keepalive = false) {
    const body = new URLSearchParams({ text, revision: this.box(name).dataset.revision, client, sequence: ++this.sequence, done: done ? "1" : "0" });
    return fetch(`${this.path}/${name}`, { method: "POST", body, keepalive, headers: { Accept: "application/json" } });
  }

  saved(name, text, done, answer) {
    const box = this.box(name);
    box.dataset.saved = text;
    box.dataset.open = done ? "" : "1"; // an edit still being typed; leaving the box completes it
    box.dataset.revision = answer.headers.get("Afterdraft-Revision");
    this.failures = 0;
    unsay("gone");
    sessionStorage.removeItem(this.kept(name));
    this.say(this.dirty(box) ? "" : "Saved");
    this.form.dispatchEvent(new Event("saved"));
    if (this.dirty(box) && !this.waiting.has(name)) this.waiting.set(name, false);
    edits(JSON.parse(answer.headers.get("Afterdraft-Edits")));
    if (this.form.dataset.card) mark(Boolean(this.box("summary").dataset.saved.trim()), answer.headers.get("Afterdraft-Progress")?.split(" ").map(Number));
    return true;
  }

  stale(name, text, told) {
    const box = this.box(name);
    box.dataset.revision = told.revision;
    if (told.stands === box.dataset.saved && told.error) { this.waiting.set(name, true); return true; } // changed, and changed back
    box.dataset.clash = "1";
    this.say("Not saved yet: choose which text shall stand");
    clash(box, told.stands, (chosen) => {
      delete box.dataset.clash;
      box.dataset.saved = told.stands;
      box.value = chosen;
      this.queue(box, true);
      if (!this.dirty(box)) this.say("Saved");
      box.focus();
    });
    return true;
  }

  async failed(name, done, answer) {
    if (this.leaving) return false;
    const told = await answer?.json().catch(() => null);
    if (answer && answer.status < 500 && answer.status !== 403) {
      this.say("Not saved");
      say(told?.error ?? "This could not be saved. Your words are still here.", { name: "gone", stay: true });
      return false;
    }
    sessionStorage.setItem(this.kept(name), this.box(name).value);
    say(answer?.status === 403 ? STARTED_ANEW : (told?.error ?? GONE), { name: "gone", stay: true });
    this.say("Not saved yet");
    this.waiting.set(name, done);
    setTimeout(() => this.run(), TRY_AGAIN[Math.min(this.failures++, TRY_AGAIN.length - 1)]);
    return false;
  }

  // The page is being left: send what is not saved in a way that outlives it.
  leave() {
    clearTimeout(this.timer);
    for (const box of this.boxes()) {
      if (box.dataset.clash || (!this.dirty(box) && !box.dataset.open)) continue;
      const name = box.dataset.field, text = box.value;
      this.waiting.delete(name);
      this.send(name, text, true, true).then((answer) => { if (answer.status === 204) this.saved(name, text, true, answer); }).catch(() => { if (!this.leaving) this.failed(name, true, null); });
    }
  }

  kept(name) { return `afterdraft-unsaved:${this.path}:${name}`; }

  // Words typed before this script was there, and those that could not be saved before this window was loaded anew.
  bringBack() {
    for (const box of this.boxes()) {
      const text = sessionStorage.getItem(this.kept(box.dataset.field));
      if (text === null || text === box.value) { sessionStorage.removeItem(this.kept(box.dataset.field)); this.queue(box, false); continue; }
      const stands = box.dataset.saved;
      const own = !this.dirty(box) ? "" : box.value.startsWith(stands) ? box.value.slice(stands.length) : `\n${box.value}`;
      box.value = text + own;
      if (!stands || text.startsWith(stands)) this.queue(box, true);
      else this.stale(box.dataset.field, box.value, { stands, revision: box.dataset.revision });
    }
  }

  say(text) { this.form.querySelector("[data-state]").textContent = text; }
}

// The undo and redo buttons name the edits that are on top now.
function edits(told) {
  document.body.dataset.edit = told.undo?.number ?? 0;
  for (const [act, edit] of Object.entries(told)) {
    const form = document.querySelector(`form[data-act="${act}"]`);
    if (!form) continue;
    const button = form.querySelector("button");
    form.elements.number.value = edit?.number ?? "";
    button.disabled = !edit;
    button.title = edit ? `${button.textContent}: ${edit.name}` : button.textContent;
  }
}
