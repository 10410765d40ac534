// Times are kept in UTC; show them as this machine's clock and language have them.
export function times() {
  const shown = new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" });
  for (const time of document.querySelectorAll("time[data-when]")) {
    const when = new Date(time.dateTime);
    if (!Number.isNaN(when.valueOf())) time.textContent = shown.format(when);
  }
}
