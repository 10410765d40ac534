"""The whole desk in one sitting: twenty mixed edits, all taken back, all done again, closed, reopened: as it was."""

import re
import sqlite3
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect

from tests.browser.walk import anew, bring_in, saved, summary
from tests.server import running

pytestmark = [pytest.mark.browser, pytest.mark.slow]
TWENTY = 20
Rows = dict[str, list[str]]


def desk(home: Path) -> Rows:
    """Every row of the writer's half, read from the file while the program has it open."""
    with closing(sqlite3.connect(f"file:{_file(home)}?mode=ro", uri=True)) as db:
        named = "SELECT name FROM sqlite_schema WHERE type = 'table' AND name GLOB 'desk_*'"
        tables = [name for (name,) in db.execute(named)]
        return {table: sorted(map(repr, db.execute(f"SELECT * FROM {table}"))) for table in tables}  # noqa: S608


def edits(home: Path) -> int:
    """How many edits can be taken back."""
    with closing(sqlite3.connect(f"file:{_file(home)}?mode=ro", uri=True)) as db:
        return int(db.execute("SELECT count(*) FROM undo_step WHERE NOT undone").fetchone()[0])


def _file(home: Path) -> Path:
    """The book, not its backups."""
    (file,) = (one for one in home.rglob("*.afterdraft") if "backups" not in one.parts)
    return file


def test_twenty_mixed_edits_are_taken_back_done_again_and_there_after_reopening(
    browser: Browser, context: BrowserContext, home: Path
) -> None:
    with running(home) as server:
        page = context.new_page()
        page.goto(server.address)
        bring_in(page)
        before, first = desk(home), edits(home)
        base = page.url.partition("/split")[0]
        for act in ACTS:
            act(page, base)
        after = desk(home)
        assert after != before
        assert edits(home) - first >= TWENTY
        page.goto(f"{base}/notes")  # it is there anew sooner than the split, some fifty times
        _press_until(page, "Undo", lambda: edits(home) == first)
        assert desk(home) == before
        done = edits(home)
        _press_until(page, "Redo", lambda: page.get_by_role("button", name="Redo").is_disabled())
        assert desk(home) == after
        assert edits(home) > done
        page.get_by_role("button", name="Close", exact=True).click()
        assert server.ended() == 0
    with running(home) as again:
        page = context.new_page()
        page.goto(again.address)
        page.get_by_role("link", name="Tare").first.click()
        assert desk(home) == after
        page.get_by_role("button", name="Undo").click()
        expect(page.get_by_text("Taken back:")).to_be_visible()
        assert desk(home) != after


def test_two_windows_see_each_others_desk(context: BrowserContext, page: Page, home: Path) -> None:
    bring_in(page)
    base = page.url.partition("/split")[0]
    other = context.new_page()
    for window in (page, other):
        window.goto(f"{base}/cards")
    code = other.locator("[data-code]").first.get_attribute("data-code") or ""
    _set_aside(page, base)
    other.goto(f"{base}/cards")
    expect(other.get_by_role("heading", name=re.compile("Set aside .1"))).to_be_visible()
    assert edits(home) >= 1
    other.goto(f"{base}/cards/{code}")
    expect(other.get_by_role("heading", name="Next", exact=True)).to_be_visible()
    page.goto(f"{base}/cards/{code}")
    page.get_by_label("What shall happen").fill("It snows.")
    page.get_by_label("What shall happen").blur()
    saved(page)
    other.evaluate("dispatchEvent(new Event('focus'))")  # what the browser does when the window comes to the front
    expect(other.get_by_label("What shall happen")).to_have_value("It snows.")


def _scene(page: Page, base: str, n: int = 0) -> None:
    page.goto(f"{base}/outline")
    with anew(page):
        page.locator("a.code").nth(n).click()
    expect(summary(page)).to_be_visible()


def _write(page: Page, base: str) -> None:
    _scene(page, base)
    summary(page).fill("She weighs the sack again.")
    summary(page).blur()
    saved(page)
    page.get_by_text("More on the page").click()
    page.get_by_label("Leaves with").first.fill("The second sack.")
    page.get_by_label("Leaves with").first.blur()
    saved(page)


def _inks(page: Page, base: str) -> None:
    page.goto(f"{base}/notes")
    page.get_by_role("button", name="Begin with Motive, Timeline, Voice, Pace").click()
    expect(page.get_by_label("Name of the ink Motive")).to_be_visible()
    page.get_by_label("A note", exact=True).fill("Does the frost come too late?")
    page.get_by_role("button", name="Keep the note").first.click()
    expect(page.locator(".words", has_text="Does the frost come too late?")).to_be_visible()


def _note_on_words(page: Page, base: str) -> None:
    _scene(page, base)
    _choose(page, 0, 4, 12)
    page.keyboard.press("2")
    page.keyboard.type("Which Monday?")
    page.keyboard.press("Control+Enter")
    expect(page.locator(".noted").first).to_be_visible()
    _choose(page, 2, 0, 9)
    page.keyboard.press("k")
    expect(page.get_by_text("The passage is guarded.")).to_be_visible()


def _choose(page: Page, paragraph: int, start: int, end: int) -> None:
    page.evaluate(
        """([n, start, end]) => {
          const paragraph = document.querySelectorAll("article p")[n];
          const node = document.createTreeWalker(paragraph, NodeFilter.SHOW_TEXT).nextNode();
          const range = document.createRange();
          range.setStart(node, start); range.setEnd(node, end);
          getSelection().removeAllRanges(); getSelection().addRange(range); }""",
        [paragraph, start, end],
    )


def _mark(page: Page, base: str) -> None:
    _scene(page, base, 1)
    page.keyboard.press("l")
    page.keyboard.type("The lost sugar")
    with anew(page):
        page.keyboard.press("Enter")
    expect(page.locator("#runs")).to_contain_text("The lost sugar opens")
    page.keyboard.press("Escape")
    page.keyboard.press("i")
    page.keyboard.type("Denholm Rudd")
    page.keyboard.press("Enter")
    expect(page.get_by_role("group", name="Denholm Rudd in this scene")).to_be_visible()


def _link(page: Page, base: str) -> None:
    _scene(page, base)
    code = page.locator(".card-top .code").first.inner_text()
    _scene(page, base, 2)
    page.keyboard.press("f")
    page.keyboard.type(code)
    page.keyboard.press("Enter")
    expect(page.locator("#follows")).to_contain_text(code)


def _plan(page: Page, base: str) -> None:
    page.goto(f"{base}/plan")
    page.get_by_label("What is wrong?").fill("The frost comes too late.")
    page.get_by_role("button", name="Plan the change").click()
    expect(page.get_by_label("What is wrong", exact=True)).to_have_value("The frost comes too late.")


def _tick(page: Page, base: str) -> None:
    page.goto(f"{base}/plan")
    page.get_by_text("Add places").first.click()
    page.get_by_label("A place in words").or_(page.get_by_label(re.compile("in words"))).first.fill("every letter")
    page.get_by_role("button", name="Add it in words").click()
    with anew(page):
        page.get_by_role("checkbox").first.click()
    expect(page.get_by_role("checkbox").first).to_be_checked()


def _note_done(page: Page, base: str) -> None:
    page.goto(f"{base}/notes")
    with anew(page):
        page.get_by_role("button", name=re.compile("^Done: Does the frost")).click()
    page.get_by_role("link", name=re.compile("^Done")).click()
    expect(page.locator(".words", has_text="Does the frost come too late?")).to_be_visible()


def _letter(page: Page, base: str) -> None:
    page.goto(f"{base}/notes")
    page.locator("#inks > summary").click()
    page.get_by_label("Letter of Pace").fill("X")
    with anew(page):
        page.get_by_role("button", name="Change the look of Pace").click()
    expect(page.get_by_label("Letter of Pace")).to_have_value("X")


def _row(page: Page, base: str, n: int) -> str:
    """Code of the n-th card."""
    page.goto(f"{base}/cards")
    return page.locator("[data-code]").nth(n).get_attribute("data-code") or ""


def _move(page: Page, base: str) -> None:
    code, beside = _row(page, base, 0), _row(page, base, 6)
    page.goto(f"{base}/cards/move?card={code}")
    page.get_by_label("the card, or at the beginning of the chapter").select_option(label=_option(page, beside))
    with anew(page):
        page.get_by_role("button", name="Move", exact=True).click()
    expect(page.get_by_role("heading", name="Cards")).to_be_visible()


def _option(page: Page, code: str) -> str:
    return page.locator("#move-to option", has_text=re.compile(f"^{code} ")).inner_text()


def _set_aside(page: Page, base: str) -> None:
    page.goto(f"{base}/cards/{_row(page, base, 3)}")
    with anew(page):
        page.get_by_role("button", name="Set aside", exact=True).click()
    expect(page.get_by_role("heading", name=re.compile("Set aside"))).to_be_visible()


def _bring_back(page: Page, base: str) -> None:
    page.goto(f"{base}/cards")
    code = page.locator("[data-name='Set aside'] [data-code]").first.get_attribute("data-code")
    page.goto(f"{base}/cards/{code}")
    with anew(page):
        page.get_by_role("button", name="Bring back", exact=True).click()
    expect(page.get_by_role("heading", name="Set aside", exact=True)).to_be_visible()


def _intent_and_next(page: Page, base: str) -> None:
    page.goto(f"{base}/cards/{_row(page, base, 4)}")
    with anew(page):
        page.get_by_role("button", name="Tighten").click()
    expect(page.get_by_role("button", name="Tighten")).to_have_attribute("aria-pressed", "true")
    page.get_by_label("What shall happen").fill("Half as long.")
    page.get_by_label("What shall happen").blur()
    saved(page)


def _join_and_split(page: Page, base: str) -> None:
    page.goto(f"{base}/cards/{_row(page, base, 8)}")
    with anew(page):
        page.get_by_role("button", name="Split in two").click()
    expect(page.get_by_text("Of scene").first).to_be_visible()


def _mend(page: Page, base: str) -> None:
    page.goto(f"{base}/split")
    with anew(page):
        page.get_by_role("button", name=re.compile("^Join")).nth(3).click()
    expect(page.get_by_role("heading", name="The split")).to_be_visible()


ACTS: tuple[Callable[[Page, str], None], ...] = (
    _write,
    _inks,
    _note_on_words,
    _mark,
    _link,
    _plan,
    _tick,
    _note_done,
    _letter,
    _move,
    _set_aside,
    _bring_back,
    _intent_and_next,
    _join_and_split,
    _mend,
)


def _press_until(page: Page, name: str, done: Callable[[], bool]) -> None:
    for _ in range(3 * TWENTY):
        if done():
            return
        button = page.get_by_role("button", name=name, exact=True)
        title = button.get_attribute("title")
        button.click()
        expect(page.get_by_role("button", name=name, exact=True)).not_to_have_attribute("title", title or "")
    raise AssertionError(f"{name} comes to no end")
