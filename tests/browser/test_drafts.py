"""Drafts by keyboard: a part of the next draft in, then the whole; fates confirmed; both texts side by side; axe."""

import re
from pathlib import Path
from typing import Literal

import pytest
from playwright.sync_api import Page, expect

from tests.browser.access import clean
from tests.browser.walk import PATIENT, bring_in
from tests.web.two_drafts import REWORDED, typed
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER

pytestmark = pytest.mark.browser
SCHEMES: tuple[Literal["dark", "light"], ...] = ("dark", "light")
RETOLD = (
    "By noon the lock was under it, the gates with it, and the water stood at no step: there was none to be seen.",
)


@pytest.fixture
def book(page: Page, tmp_path: Path) -> Page:
    """A book of four scenes, just brought in."""
    bring_in(page, written(tmp_path, "first", typed([FERRY, PIER], [LOCK, HOUSE])))
    return page


def written(folder: Path, name: str, manuscript: bytes) -> Path:
    file = folder / f"{name}.txt"
    file.write_bytes(manuscript)
    return file


def bring(page: Page, file: Path, which: str) -> None:
    """On Drafts: choose the file, say which draft it is, bring it in."""
    page.get_by_label("Choose the files of the draft").set_input_files(file)
    page.get_by_label(re.compile(f"^{which}")).check()
    page.get_by_role("button", name="Bring it in").press("Enter")


def clean_in_both(page: Page, what: str) -> None:
    """axe finds nothing, light and dark."""
    for scheme in SCHEMES:
        page.emulate_media(color_scheme=scheme)
        clean(page, f"{what}, {scheme}")


def asked(page: Page, scenes: int) -> None:
    words = f"Not sure of {scenes} scene{'s' if scenes > 1 else ''}"
    expect(page.get_by_role("heading", name=words)).to_be_visible(timeout=PATIENT)
    page.wait_for_load_state("load")


def test_from_one_draft_to_the_next(book: Page, tmp_path: Path) -> None:
    book.keyboard.press("d")
    expect(book.get_by_role("heading", name="Bring in the next draft")).to_be_visible()
    clean_in_both(book, "drafts, one draft")

    bring(book, written(tmp_path, "part", typed([FERRY, REWORDED])), "A part of the next draft so far")
    expect(book.get_by_text("Draft 2 is in, as far as it goes")).to_be_visible(timeout=PATIENT)
    expect(book.get_by_role("row").filter(has_text="not reached yet")).to_have_count(2)

    book.get_by_text("Bring in a draft", exact=True).click()
    whole = typed([FERRY, REWORDED], [RETOLD, NEW])
    bring(book, written(tmp_path, "whole", whole), "Draft 2 whole")
    asked(book, 1)
    clean_in_both(book, "drafts, one scene is asked about")
    book.keyboard.press("j")
    line = book.locator(":focus")
    expect(line).to_contain_text("rewritten")
    book.keyboard.press("y")
    expect(book.get_by_role("heading", name="Every scene")).to_be_visible()
    book.wait_for_load_state("load")
    expect(book.get_by_role("row").filter(has_text="confirmed")).to_have_count(1)

    book.keyboard.press("Control+z")
    asked(book, 1)
    book.keyboard.press("j")
    book.keyboard.press("x")
    expect(book.get_by_role("heading", name="Every scene")).to_be_visible()
    book.wait_for_load_state("load")
    row = book.get_by_role("row").filter(has_text="you said so").filter(has_text="cut")
    row.focus()
    book.keyboard.press("o")
    expect(row.get_by_text("Lives on in")).to_be_visible()
    book.wait_for_load_state("load")
    row.focus()
    book.keyboard.press("l")
    expect(row.get_by_role("combobox")).to_be_focused()
    clean_in_both(book, "drafts, a line is opened")

    book.get_by_role("link", name=re.compile("^It rained on the pier.*: revised$")).press("Enter")
    expect(book.get_by_role("heading", level=1)).to_contain_text("It rained on the pier")
    expect(book.locator("del", has_text="fair")).to_be_visible()
    expect(book.locator("ins", has_text="regatta")).to_be_visible()
    clean_in_both(book, "side by side")
    book.keyboard.press("[")
    expect(book.get_by_role("heading", level=1)).to_contain_text("Ottla came down to the ferry")


def test_other_levels_and_an_older_draft(book: Page, tmp_path: Path) -> None:
    book.keyboard.press("d")
    bring(book, written(tmp_path, "second", typed([LOCK, FERRY], [NEW, REWORDED])), "The next draft")
    expect(book.get_by_text("Draft 2 is in")).to_be_visible(timeout=PATIENT)
    for level in ("By chapters", "The book"):
        book.get_by_role("link", name=level).click()
        expect(book.get_by_role("link", name=level)).to_have_attribute("aria-current", "true")
        clean_in_both(book, f"drafts, {level}")
    book.get_by_role("link", name="By scenes").click()
    book.get_by_role("link", name="Draft 1", exact=True).first.click()
    expect(book.get_by_role("heading", name="Reverse outline of draft 1")).to_be_visible()
    clean_in_both(book, "an older outline")
    book.get_by_role("link", name=re.compile("The house in Larder Street")).click()
    expect(book.get_by_text("Card of draft 1")).to_be_visible()
    clean_in_both(book, "a scene of an older draft")


def test_files_dropped_anywhere_wait_to_be_told_which_draft_they_are(book: Page) -> None:
    book.keyboard.press("d")
    expect(book.get_by_role("heading", name="Bring in the next draft")).to_be_visible()
    book.wait_for_load_state("load")
    book.evaluate(
        """(text) => {
          const held = new DataTransfer();
          held.items.add(new File([text], "second.txt", { type: "text/plain" }));
          document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: held, bubbles: true, cancelable: true }));
        }""",
        typed([LOCK, FERRY], [NEW, REWORDED]).decode(),
    )
    expect(book.get_by_text("Which draft is it? Say so, then bring it in.")).to_be_visible()
    expect(book.get_by_label(re.compile("^The next draft"))).to_be_focused()
    book.get_by_role("button", name="Bring it in").press("Enter")
    expect(book.get_by_text("Draft 2 is in")).to_be_visible(timeout=PATIENT)
