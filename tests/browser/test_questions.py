"""Questions by key: seven answered, one stands, notes and a change are made, evidence opened in place; axe."""

from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from afterdraft.work.notes.mix_ink import mix_ink
from tests.browser.access import clean
from tests.browser.walk import PATIENT, anew, bring_in
from tests.web.asked import begun

pytestmark = pytest.mark.browser


@pytest.fixture
def book(page: Page, tmp_path: Path) -> Page:
    """Of ten scenes; nothing of it is read."""
    with begun(tmp_path) as made:
        mix_ink(made, "Continuity")
    bring_in(page, Path(made.path))
    return page


def waiting(page: Page) -> Locator:
    return page.locator("article.question:not(.answered)")


def here(page: Page) -> Locator:
    """The question that has the focus."""
    return page.locator("article.question:focus")


def test_the_first_seven_by_key(book: Page) -> None:
    book.keyboard.press("q")
    expect(waiting(book)).to_have_count(7, timeout=PATIENT)  # found by the real child; the page looks on by itself
    book.wait_for_load_state("load")
    clean(book, "seven questions")
    book.keyboard.press("j")
    expect(here(book).get_by_role("heading")).to_contain_text("The lamp over the lock swung…")
    # its evidence is opened in place, its check as well
    book.keyboard.press("o")
    expect(here(book).locator(".evidence .around").first).to_contain_text("Bram shut the ledger.")
    expect(here(book).locator(".evidence .asked").first).to_contain_text("The lamp over the lock swung twice")
    book.keyboard.press("x")
    expect(here(book).get_by_text("What it cannot see:")).to_be_visible()
    clean(book, "a question with all of it open")
    # it stands, for a reason
    book.keyboard.press("j")
    book.keyboard.press("k")
    book.keyboard.press("e")
    book.keyboard.type("It is the same night.")
    with anew(book):
        book.keyboard.press("Enter")
    expect(waiting(book)).to_have_count(6)
    expect(book.get_by_text("It stands: It is the same night.")).to_be_visible()
    # the next has the focus, and is noted in an ink; then one in pencil, one as a change, the others stand
    for left, key in zip(range(5, -1, -1), ("1", "a", "v", "y", "y", "y"), strict=True):
        expect(here(book)).to_have_count(1)
        with anew(book):
            book.keyboard.press(key)
        expect(waiting(book)).to_have_count(left)
    clean(book, "all seven answered")
    expect(book.get_by_text("Noted.")).to_have_count(2)
    expect(book.get_by_text("In the plan.")).to_have_count(1)
    book.keyboard.press("]")
    expect(waiting(book)).to_have_count(2)
    book.get_by_role("button", name="Undo").click()
    expect(waiting(book)).to_have_count(3)
    with anew(book):
        book.get_by_role("link", name="Answered", exact=True).click()
    expect(book.get_by_text("It is the same night.")).to_be_visible()
    expect(book.get_by_role("region", name="Noted").get_by_role("listitem")).to_have_count(3)
    clean(book, "answers")
    book.get_by_role("link", name="The note").first.click()
    expect(book.locator("li:target .note-line")).to_contain_text("What is to stand there?")


def test_what_keys_open_comes_into_sight_and_the_place_is_kept(book: Page) -> None:
    book.set_viewport_size({"width": 390, "height": 600})
    book.keyboard.press("q")
    expect(waiting(book)).to_have_count(7, timeout=PATIENT)
    book.wait_for_load_state("load")
    book.keyboard.press("j")
    book.keyboard.press("o")
    expect(here(book).locator(".evidence .around").first).to_be_in_viewport()
    book.keyboard.press("x")
    expect(here(book).get_by_text("What it cannot see:")).to_be_in_viewport()
    book.keyboard.press("e")
    expect(book.locator("input:focus")).to_have_attribute("name", "why")
    book.keyboard.press("Escape")
    expect(here(book).get_by_role("heading")).to_contain_text("The lamp over the lock swung…")


def test_kinds_are_turned_off_and_a_scene_has_its_mark(book: Page) -> None:
    book.keyboard.press("q")
    expect(waiting(book)).to_have_count(7, timeout=PATIENT)
    book.wait_for_load_state("load")
    with anew(book):
        book.get_by_role("link", name="How they are found").click()
    clean(book, "the checks")
    with anew(book):
        book.get_by_role("button", name="Do not ask: Words to be written later").click()
    pressed = book.get_by_role("button", name="Do not ask: Words to be written later")
    expect(pressed).to_have_attribute("aria-pressed", "true")
    book.get_by_role("link", name="Asked", exact=True).click()
    expect(waiting(book)).to_have_count(2)
    with anew(book):
        book.locator(".passage-scene").first.click()
    mark = book.locator(".asked-here summary")
    mark.click()
    expect(book.locator(".asked-here .asks")).to_contain_text("The lamp over the lock")
    clean(book, "a question in a scene")
    book.locator(".asked-here").get_by_role("button", name="Let it stand").click()
    expect(book.locator(".asked-here")).to_have_count(0)
