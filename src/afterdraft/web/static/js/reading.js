// How far reading is: looked up now and then while it runs and the page is in sight; when it is done, the page is
// loaded anew if nothing is being written in it, and else says that there is more to see.
import { say } from "./messages.js";
import { words } from "./typed.js";

const EVERY = 1500; // milliseconds

export function reading(saving) {
  const places = [...document.querySelectorAll("[data-reading][data-running=yes]")];
  if (!places.length) return;
  const timer = setInterval(async () => {
    if (document.hidden) return;
    const answer = await fetch(places[0].dataset.reading, { headers: { Accept: "application/json" } }).catch(() => null);
    if (!answer?.ok) return;
    const state = await answer.json();
    for (const place of places) show(place, state);
    if (state.running) return;
    clearInterval(timer);
    done(saving, places[0].dataset.done ?? "The draft is read. What was found shows when the page is next loaded.");
  }, EVERY);
}

function show(place, state) {
  place.querySelector("[data-told]").textContent = state.told || "Everything is read.";
  const bar = place.querySelector("progress");
  if (bar) [bar.max, bar.value] = [state.words || 1, state.words_done];
}

function done(saving, told) {
  const busy = saving.busy() || words() || document.activeElement?.closest("input, textarea, select, dialog, details[open]");
  if (!busy && !document.querySelector("dialog[open]")) location.reload();
  else say(told);
}
