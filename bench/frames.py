"""`python -m bench.frames`: how smoothly a card is dragged among 300, in a real browser.

The intervals between animation frames are recorded while the pointer carries a card all over the screen for four
seconds, at each zoom. 60 frames a second are one frame each 16.7 ms (the display rate of a headless browser).
"""

import sys
import tempfile
import time
from dataclasses import dataclass
from pathlib import Path
from statistics import median

from playwright.sync_api import Browser, Page, sync_playwright

from scripts import browser as browser_finder
from scripts.pictures import manuscript
from tests.server import running

CHAPTERS, SCENES = 60, 5
SECONDS = 4.0
FRAME = 1000 / 60  # milliseconds
LATE = 1.5  # times a frame: later than that, one was left out
LEAST = 0.95  # of the frames in time
RECORD = """() => {
  window.intervals = [];
  let last = performance.now();
  const frame = (now) => { intervals.push(now - last); last = now; requestAnimationFrame(frame); };
  requestAnimationFrame(frame);
}"""


@dataclass(frozen=True, slots=True)
class Smoothness:
    zoom: int
    cards: int
    intervals: tuple[float, ...]  # milliseconds

    @property
    def in_time(self) -> float:
        """Share of the frames."""
        return sum(1 for one in self.intervals if one <= LATE * FRAME) / len(self.intervals)


def main() -> int:
    with tempfile.TemporaryDirectory() as folder, running(Path(folder)) as server, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=browser_finder.find(), args=["--no-sandbox"])
        file = Path(folder) / "long.txt"
        file.write_text(manuscript(CHAPTERS, SCENES), encoding="utf-8")
        found = measure(browser, server.address, file)
        browser.close()
    for one in found:
        print(
            f"zoom {one.zoom}: {one.cards} cards, {len(one.intervals)} frames, median {median(one.intervals):.1f} ms, "
            f"worst {max(one.intervals):.1f} ms, {one.in_time:.1%} in time"
        )
    return 0 if all(one.in_time >= LEAST for one in found) else 1


def measure(browser: Browser, address: str, manuscript: Path) -> list[Smoothness]:
    page = browser.new_page(viewport={"width": 1440, "height": 900})
    page.goto(address)
    page.get_by_label("Choose the file of your draft").set_input_files(manuscript)
    page.wait_for_url("**/split", timeout=120_000)
    cards = page.url.replace("/split", "/cards")
    return [_dragged(page, f"{cards}?zoom={zoom}", zoom) for zoom in (1, 2, 3, 4)]


def _dragged(page: Page, address: str, zoom: int) -> Smoothness:
    page.goto(address)
    sheets = page.locator("[data-sheet]")
    box = sheets.nth(1).bounding_box()
    assert box
    page.mouse.move(box["x"] + 20, box["y"] + 10)
    page.mouse.down()
    page.mouse.move(box["x"] + 60, box["y"] + 30)
    page.evaluate(RECORD)
    began, step = time.monotonic(), 0
    while time.monotonic() - began < SECONDS:
        step += 1
        page.mouse.move(200 + step * 13 % 1000, 320 + step * 7 % 420)
        page.wait_for_timeout(4)
    intervals: list[float] = page.evaluate("intervals")
    page.keyboard.press("Escape")
    page.mouse.up()
    return Smoothness(zoom, sheets.count(), tuple(intervals[1:]))


if __name__ == "__main__":
    sys.exit(main())
