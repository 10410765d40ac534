"""Take the pictures of every screen for README and manual: `python -m scripts.pictures [folder]`.

The real server with an empty home, the real browser; light, dark and narrow; the demonstration book, a book of three
scenes, one of a hundred with long titles, and no book at all.
"""

import shutil
import sys
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from itertools import cycle
from pathlib import Path
from tempfile import gettempdir

from playwright.sync_api import Browser, Locator, Page, sync_playwright

from demo.source import read_chapters
from scripts import browser as browser_finder
from tests.server import Server, running

WIDE = {"width": 1280, "height": 800}
NARROW = {"width": 390, "height": 800}
TITLES = (
    "The Lock House",
    "The Year the River Came Up as Far as the Second Ring and Stayed There Until June",
    "Nobody Came",
    "In Which a Man Comes about the Eels and Goes Away Again without Them",
)
Screens = Sequence[tuple[str, Callable[[Page], object]]]  # a name, and how to come there
TEXT = Path(__file__).parents[1] / "demo" / "first"  # its paragraphs fill the other two books


def main(folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    home = Path(gettempdir()) / "ursula"  # seen in the pictures
    shutil.rmtree(home, ignore_errors=True)
    books = {"AFTERDRAFT_HOME": str(home / "Documents" / "Afterdraft"), "AFTERDRAFT_READING": "on"}
    with running(home, variables=books) as server, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=browser_finder.find(), args=["--no-sandbox"])
        try:
            _empty(browser, server, folder)
            _demonstration(browser, server, folder)
            _others(browser, server, folder, home)
        finally:
            browser.close()


def _empty(browser: Browser, server: Server, folder: Path) -> None:
    for look in ("light", "dark"):
        with _window(browser, server, look) as page:
            _take(page, folder / f"books-empty-{look}.png")


def _demonstration(browser: Browser, server: Server, folder: Path) -> None:
    with _window(browser, server, "light") as page:
        page.get_by_role("button", name="Open the demonstration book").click()
        page.wait_for_url("**/scenes/*")
        book = page.url.partition("/scenes")[0]
        _until_read(page, book)
    _in_every_look(browser, server, folder, _screens(book))
    with _window(browser, server, "light") as page:
        page.goto(f"{book}/drafts")
        page.get_by_role("button", name="Bring in the demonstration’s second draft").click()
        page.get_by_text("Draft 2 is in").wait_for()
        _until_read(page, book)
    _in_every_look(browser, server, folder, _screens_of_two_drafts(book))


def _until_read(page: Page, book: str) -> None:
    while page.evaluate("async (url) => (await (await fetch(url)).json()).state", f"{book}/read") != "done":
        page.wait_for_timeout(500)


def _in_every_look(browser: Browser, server: Server, folder: Path, screens: Screens) -> None:
    for look, size in (("light", WIDE), ("dark", WIDE), ("narrow", NARROW)):
        with _window(browser, server, look, size) as page:
            for name, show in screens:
                show(page)
                _take(page, folder / f"{name}-{look}.png")


def _screens(book: str) -> Screens:
    return (
        ("books", lambda page: page.goto(f"{book.partition('/books')[0]}/")),
        ("split", lambda page: page.goto(f"{book}/split")),
        ("split-open", _split_open),
        ("scene", lambda page: _second_scene(page, book)),
        ("outline", lambda page: page.goto(f"{book}/outline")),
        ("reading", lambda page: page.goto(f"{book}/reading")),
        ("cards", lambda page: page.goto(f"{book}/cards")),
        ("cards-far", lambda page: page.goto(f"{book}/cards?zoom=1")),
        ("card", lambda page: _first_intent(page, book)),
        ("whole", lambda page: _unfolded(page, book)),
        ("edges", lambda page: page.goto(f"{book}/edges")),
        ("arrangements", lambda page: page.goto(f"{book}/arrangements")),
        ("codes", lambda page: page.goto(f"{book}/codes?from=now")),
        ("threads", lambda page: _first_line(page, f"{book}/threads")),
        ("people", lambda page: _first_line(page, f"{book}/people")),
        ("read", lambda page: _read(page, book)),
        ("runs", lambda page: _runs(page, book)),
        ("notes", lambda page: page.goto(f"{book}/notes")),
        ("plan", lambda page: page.goto(f"{book}/plan")),
        ("drafts-one", lambda page: page.goto(f"{book}/drafts")),
        ("questions", lambda page: _questions(page, book)),
        ("question-open", lambda page: _question_open(page, book)),
        ("questions-checks", lambda page: page.goto(f"{book}/questions/checks")),
        ("questions-shown", lambda page: page.goto(f"{book}/questions/shown")),
        ("asked-here", lambda page: _asked_here(page, book)),
        ("table", lambda page: page.goto(f"{book}/table")),
        ("noted", lambda page: _noted(page, book)),
        ("note-loose", lambda page: page.get_by_role("link", name="Note", exact=True).click()),
        ("search", lambda page: page.goto(f"{book}/search?q=weighbridge")),
        ("about", lambda page: page.goto(f"{book}/about")),
        ("keys", lambda page: page.goto(f"{book.partition('/books')[0]}/keys")),
        ("trouble", lambda page: page.goto(f"{book}/scenes/Z22")),
    )


def _screens_of_two_drafts(book: str) -> Screens:
    return (
        ("drafts", lambda page: page.goto(f"{book}/drafts")),
        ("drafts-picture", lambda page: page.locator(".ribbons").evaluate("e => e.scrollIntoView({ block: 'start' })")),
        ("drafts-chapters", lambda page: page.goto(f"{book}/drafts?by=chapters")),
        ("drafts-book", lambda page: page.goto(f"{book}/drafts?by=book")),
        ("side", lambda page: _first_change(page, book)),
        ("drafts-plan", lambda page: page.goto(f"{book}/drafts/plan")),
        ("drafts-plan-texts", lambda page: page.locator("[data-unit] a[data-act=open]").first.click()),
        ("offcuts", lambda page: _gathered(page, f"{book}/drafts/offcuts")),
        ("rounds", lambda page: _gathered(page, f"{book}/drafts/rounds")),
        ("anew", lambda page: _anew(page, book)),
        ("anew-shown", lambda page: page.goto(f"{page.url}?old=shown")),
        ("outline-then", lambda page: page.goto(f"{book}/drafts/1")),
        ("scene-then", lambda page: page.locator(".outline-chapter a.code").nth(8).click()),
    )


def _first_change(page: Page, book: str) -> None:
    """Both texts of the first scene that changed, where they first differ."""
    page.goto(f"{book}/drafts/side")
    page.locator(".beside .changed").first.evaluate("e => e.scrollIntoView({ block: 'center' })")


def _gathered(page: Page, address: str) -> None:
    """A page that comes before all on it is gathered, once it is."""
    page.goto(address)
    page.locator("[data-gathering]").wait_for(state="detached")
    page.wait_for_load_state("load")


def _anew(page: Page, book: str) -> None:
    """The second scene with its card kept back."""
    page.goto(f"{book}/outline")
    page.locator(".outline-chapter a.code").nth(1).click()
    page.wait_for_load_state("load")


def _noted(page: Page, book: str) -> None:
    """The scene of the first note that is on one, with the note beside it."""
    page.goto(f"{book}/notes")
    page.locator(".note-group h2 a").nth(2).click()


def _questions(page: Page, book: str) -> None:
    page.goto(f"{book}/questions")
    while page.evaluate("async (url) => (await (await fetch(url)).json()).running", f"{book}/questions/state"):
        page.wait_for_timeout(300)
    page.goto(f"{book}/questions")


def _about_eyes(page: Page, book: str) -> Locator:
    """It may not be among the first seven."""
    _questions(page, book)
    asked = page.locator("article.question").filter(has_text=" eyes in ")
    while not asked.count():
        page.get_by_role("link", name="Leave these for now and see others").click()
        page.wait_for_load_state("load")
    return asked.first


def _question_open(page: Page, book: str) -> None:
    """The one about what two passages say of one person, with what stands round them and how it is found."""
    asked = _about_eyes(page, book)
    for summary in asked.locator("summary").all():
        summary.click()
    asked.focus()
    asked.evaluate("e => e.scrollIntoView({ block: 'start' })")


def _asked_here(page: Page, book: str) -> None:
    """The scene of that question, with the mark in its margin opened."""
    _about_eyes(page, book).locator(".passage-scene").first.click()
    page.locator(".asked-here > summary").first.click()


def _split_open(page: Page) -> None:
    page.get_by_role("link", name="Split…").nth(1).click()


def _unfolded(page: Page, book: str) -> None:
    page.goto(f"{book}/whole")
    page.locator(".unit-fold > summary").first.click()


def _first_line(page: Page, address: str) -> None:
    page.goto(address)
    page.locator("details.line > summary").first.click()


def _runs(page: Page, book: str) -> None:
    """What runs through the second scene, unfolded and in sight."""
    page.goto(f"{book}/outline")
    page.locator(".outline-chapter a.code").nth(1).click()
    summary = page.locator("#runs > summary")
    summary.click()
    summary.evaluate("e => e.scrollIntoView({ block: 'start' })")


def _read(page: Page, book: str) -> None:
    """The third scene with what was read of it, beside the card and in the text."""
    page.goto(f"{book}/outline")
    page.locator(".outline-chapter a.code").nth(2).click()
    page.goto(f"{page.url.partition('?')[0]}?show=people+speech")
    page.locator("#who > summary").click()


def _second_scene(page: Page, book: str) -> None:
    page.goto(f"{book}/scenes")
    for _ in range(2):
        page.get_by_role("link", name="Next scene").last.click()


def _first_intent(page: Page, book: str) -> None:
    """The first card that the next draft is to do something with."""
    page.goto(f"{book}/cards")
    page.locator("[data-sheet]", has=page.locator(".intent")).first.locator(".face").click()


def _others(browser: Browser, server: Server, folder: Path, home: Path) -> None:
    for name, text in (("three", manuscript(1, 3)), ("hundred", manuscript(25, 4))):
        file = home / f"{name}.txt"
        file.write_text(text, encoding="utf-8")
        with _window(browser, server, "light") as page:
            page.get_by_label("Choose the file of your draft").set_input_files(file)
            page.wait_for_url("**/split")
            _take(page, folder / f"split-{name}.png")
            page.get_by_role("link", name="Go on to the scenes").first.click()
            _take(page, folder / f"scene-{name}.png")
            page.get_by_role("link", name="Reverse outline").click()
            _take(page, folder / f"outline-{name}.png")
            page.get_by_role("link", name="Cards", exact=True).click()
            _take(page, folder / f"cards-{name}.png")


def manuscript(chapters: int, scenes: int) -> str:
    """Plain text of so many chapters and scenes, from the demonstration book's paragraphs over and over."""
    told = [line.text for chapter in read_chapters(TEXT) for line in chapter.lines if len(line.text) > 200]
    paragraphs = cycle(told)
    pieces = []
    for chapter in range(1, chapters + 1):
        pieces.append(f"CHAPTER {chapter}\n\n{TITLES[(chapter - 1) % len(TITLES)]}")
        bodies = ["\n\n".join(next(paragraphs) for _ in range(2 + (chapter * scene) % 7)) for scene in range(scenes)]
        pieces.append("\n\n***\n\n".join(bodies))
    return "\n\n\n".join(pieces)


@contextmanager
def _window(browser: Browser, server: Server, look: str, size: dict[str, int] = WIDE) -> Iterator[Page]:
    context = browser.new_context(
        viewport={"width": size["width"], "height": size["height"]},
        color_scheme="dark" if look == "dark" else "light",
    )
    page = context.new_page()
    page.goto(server.address)
    yield page
    context.close()


def _take(page: Page, path: Path) -> None:
    page.evaluate("document.fonts.ready")
    page.screenshot(path=path)


if __name__ == "__main__":
    main(Path(sys.argv[1] if len(sys.argv) > 1 else "docs/pictures"))
