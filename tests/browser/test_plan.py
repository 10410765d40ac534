"""Plan: changes made straight and from a note, with places ticked off, moved about, taken back; by keys; axe."""

import re

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, opens

__all__ = ["opens"]
pytestmark = pytest.mark.browser


@pytest.fixture
def book(page: Page) -> Page:
    return page


def plan(page: Page, wrong: str, when: str = "must") -> Locator:
    """Plan a change on the Plan screen; its place in the list."""
    page.get_by_label("What is wrong?").fill(wrong)
    page.get_by_label("When", exact=True).select_option(when)
    with anew(page):
        page.get_by_role("button", name="Plan the change").click()
    return change(page, wrong)


def change(page: Page, wrong: str) -> Locator:
    return page.get_by_role("article", name=re.compile(f"^{re.escape(wrong[:40])}"))


def add(row: Locator, places: str, how: str = "Add the scenes") -> None:
    row.get_by_label(re.compile("^Scenes by code")).fill(places)
    with anew(row.page):
        row.get_by_role("button", name=how).click()


def order(page: Page) -> list[str]:
    return [box.input_value() for box in page.get_by_label("What is wrong", exact=True).all()]


def test_a_change_its_places_and_each_ticked_off(book: Page) -> None:
    codes = [link.inner_text() for link in book.locator("a.code").all()[1:4]]
    book.keyboard.press("g")
    expect(book.get_by_text("Nothing is planned yet.")).to_be_visible()
    row = plan(book, "She knows about the second ledger too soon.")
    add(row, f"{codes[0].lower()}, {codes[1]}")
    add(row, "every letter", "Add it in words")
    expect(row.get_by_role("checkbox")).to_have_count(3)
    decide = row.get_by_label("What I decide")
    decide.fill("She finds it herself.")
    decide.blur()
    expect(row.get_by_text("Saved", exact=True)).to_be_visible()
    row.get_by_label("The work, as you guess it").fill("a morning")
    row.get_by_label("The work, as you guess it").blur()
    for nth in range(2):
        with anew(book):
            row.get_by_role("checkbox").nth(nth).click()
        expect(row.get_by_role("checkbox").nth(nth)).to_be_checked()
    expect(book.get_by_text("1 change: 1 must · 2 of 3 places ticked off")).to_be_visible()
    row.get_by_role("checkbox").nth(2).click()
    expect(book.get_by_text("1 change: 1 must · 3 of 3 places ticked off · 1 done")).to_be_visible()
    book.get_by_role("button", name="Undo").click()
    expect(row.get_by_role("checkbox").nth(2)).not_to_be_checked()
    row.get_by_role("link", name=re.compile(f"^{codes[0]}")).click()
    book.get_by_text("Planned here").click()
    expect(book.get_by_role("link", name="She knows about the second ledger too soon.")).to_be_visible()
    expect(book.get_by_text("She finds it herself.")).to_be_visible()


def test_a_change_from_a_note_and_one_from_a_scene(book: Page) -> None:
    book.get_by_role("link", name="Go on to the scenes").first.click()
    book.get_by_text("Notes on this scene").click()
    book.get_by_label("A note on this scene").fill("Why does she stay?")
    book.get_by_role("button", name="Keep the note").first.click()
    book.get_by_role("button", name="Make a change of this: Why does she stay?").click()
    expect(change(book, "Why does she stay?").get_by_role("checkbox")).to_have_count(1)
    change(book, "Why does she stay?").get_by_role("link").first.click()
    book.get_by_text("Planned here").click()
    book.get_by_label("What is wrong here?").fill("Too many sacks.")
    book.get_by_role("button", name="Plan a change").click()
    expect(book.get_by_text("Planned here (2)")).to_be_visible()


def test_a_place_that_is_not_there_is_told(book: Page) -> None:
    book.keyboard.press("g")
    add(plan(book, "One"), "the ferry man")
    expect(book.get_by_text("There is no scene called “the ferry man”. Nothing was changed.")).to_be_visible()


def test_the_order_by_buttons_and_to_another_group(book: Page) -> None:
    book.keyboard.press("g")
    for wrong in ("One", "Two", "Three"):
        plan(book, wrong)
    three = change(book, "Three")
    three.get_by_text("Move or remove").click()
    three.get_by_role("button", name="Up: Three").click()
    expect(book.get_by_label("What is wrong", exact=True).nth(1)).to_have_value("Three")
    one = change(book, "One")
    one.get_by_text("Move or remove").click()
    expect(one.get_by_label("To place")).to_have_value("1")
    one.get_by_label("To place").fill("2")
    one.get_by_role("button", name="Move: One").click()
    expect(book.get_by_label("What is wrong", exact=True).nth(0)).to_have_value("Three")
    assert order(book) == ["Three", "One", "Two"]
    one.get_by_text("Move or remove").click()
    one.get_by_role("button", name="To Later: One").click()
    expect(book.get_by_text("3 changes: 2 must, 1 later")).to_be_visible()
    one.get_by_text("Move or remove").click()
    one.get_by_role("button", name="Remove One").click()
    expect(book.get_by_text("2 changes: 2 must")).to_be_visible()
    book.get_by_role("button", name="Undo").click()
    expect(book.get_by_text("3 changes: 2 must, 1 later")).to_be_visible()


def test_intents_stand_below_the_changes_and_search_finds_a_change(book: Page) -> None:
    base = book.url.partition("/split")[0]
    code = book.locator("a.code").nth(2).inner_text()
    book.goto(f"{base}/cards/{code}")
    book.get_by_role("button", name="tighten").click()
    expect(book.get_by_role("button", name="tighten")).to_have_attribute("aria-pressed", "true")
    book.wait_for_load_state("load")
    book.keyboard.press("g")
    expect(book.get_by_role("listitem").filter(has_text=code).get_by_text("tighten")).to_be_visible()
    plan(book, "The gasometer is too near.")
    book.get_by_role("searchbox").fill("gasometer")
    book.keyboard.press("Enter")
    book.get_by_role("link", name="Planned change").click()
    expect(change(book, "The gasometer is too near.")).to_be_focused()


def test_axe_finds_nothing(book: Page) -> None:
    codes = [link.inner_text() for link in book.locator("a.code").all()[1:4]]
    book.keyboard.press("g")
    expect(book.get_by_role("heading", name="Plan", exact=True)).to_be_visible()
    clean(book, "plan, empty")
    row = plan(book, "The harvest comes twice.")
    add(row, ", ".join(codes))
    with anew(book):
        row.get_by_role("checkbox").first.click()
    row.get_by_text("Move or remove").click()
    clean(book, "plan, one change, everything open")
    add(plan(book, "Quiet", "later"), codes[0])
    with anew(book):
        change(book, "Quiet").get_by_role("checkbox").click()
    book.get_by_text("Done (1)").click()
    clean(book, "plan, one done")
    book.goto(book.url.partition("/plan")[0] + f"/scenes/{codes[0]}")
    book.get_by_text("Planned here").click()
    clean(book, "a scene's changes")
