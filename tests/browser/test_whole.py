"""The book by its cards as a person uses it: units that save themselves, first and last lines, arrangements side by
side, codes typed in, filters; by pointer, by key, without scripts; and nothing that axe finds."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, opens
from tests.server import Server

__all__ = ["opens"]
pytestmark = pytest.mark.browser


@pytest.fixture
def cards(page: Page) -> Page:
    with anew(page):
        page.get_by_role("navigation", name="Screens").get_by_role("link", name="Cards").click()
    expect(page.get_by_role("heading", name="Cards")).to_be_visible()
    return page


@pytest.fixture
def plain(browser: Browser, cards: Page, server: Server) -> Iterator[Page]:
    """The same screen in a window without scripts."""
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(server.address)
    page.goto(cards.url)
    yield page
    context.close()


def to(page: Page, name: str) -> None:
    with anew(page):
        page.get_by_role("navigation", name="Ways to see the cards").get_by_role("link", name=name).click()
    expect(page.get_by_role("heading", name=name, level=1)).to_be_visible()


def codes(page: Page) -> list[str]:
    found: list[str] = page.evaluate("[...document.querySelectorAll('[data-sheet]')].map((one) => one.dataset.code)")
    return found


def dimmed(page: Page) -> int:
    return page.locator("[data-sheet][data-dim]").count()


def test_the_card_of_a_chapter_saves_itself_and_is_taken_back_as_one_edit(cards: Page) -> None:
    to(cards, "Chapters, parts, the book")
    chapter = cards.locator(".unit-fold").first
    chapter.locator("summary").click()
    form = chapter.get_by_role("form")
    form.get_by_label("What happens in this chapter, and what changes?").fill("She takes the post.")
    expect(form.get_by_text("Saved", exact=True)).to_be_visible()
    form.get_by_label("Whose story").fill("Gwenda’s")
    form.get_by_label("What they want").focus()
    undo = cards.get_by_role("button", name="Undo")
    expect(undo).to_have_attribute("title", re.compile("^Undo: “Whose story” of “Chapter 1"))
    chapter.locator("summary").click()
    expect(chapter.locator("summary")).to_contain_text("She takes the post.")
    cards.reload()
    expect(chapter.locator("summary")).to_contain_text("She takes the post.")
    expect(cards.get_by_role("region", name="Tare").or_(cards.locator(".the-book"))).to_contain_text(
        "She takes the post."
    )
    for _ in range(2):
        with anew(cards):
            undo.click()
        expect(cards.get_by_text("Taken back:")).to_be_visible()
    expect(chapter.locator("summary")).not_to_contain_text("She takes the post.")


def test_units_and_codes_work_by_forms_without_scripts(plain: Page, cards: Page) -> None:
    lying = codes(cards)
    to(plain, "Chapters, parts, the book")
    chapter = plain.locator(".unit-fold").nth(1)
    chapter.locator("summary").click()
    chapter.get_by_label("What the end answers").fill("Who took the gasket.")
    chapter.get_by_role("button", name="Save this card").click()
    expect(plain.get_by_text("Saved.")).to_be_visible()
    expect(chapter.get_by_label("What the end answers")).to_have_value("Who took the gasket.")
    to(plain, "Lay by codes")
    box = plain.get_by_label("Codes, a line for each chapter")
    box.fill(f"{lying[1]} Z11")
    plain.get_by_role("button", name="Lay the cards so").click()
    expect(plain.get_by_text("Nothing was changed.")).to_be_visible()
    expect(box).to_have_value(f"{lying[1]} Z11")
    expect(plain.get_by_role("listitem").filter(has_text="Z11")).to_contain_text("chapter 1, place 2")
    box.fill(f"{lying[1].lower()}, {lying[0].lower()}")
    plain.get_by_label("stay in their chapters").check()
    plain.get_by_role("button", name="Check").click()
    expect(plain.get_by_role("heading", name="So the cards would lie")).to_be_visible()
    plain.get_by_role("button", name="Lay the cards so").click()
    expect(plain.get_by_text("The cards lie as you typed them.")).to_be_visible()
    assert codes(cards) == lying
    cards.reload()
    assert codes(cards).index(lying[1]) < codes(cards).index(lying[0])
    assert sorted(codes(cards)) == sorted(lying)


def test_codes_are_checked_while_they_are_typed_and_laid_as_one_edit(cards: Page) -> None:
    lying = codes(cards)
    to(cards, "Lay by codes")
    cards.keyboard.press("e")
    cards.keyboard.type(f"{lying[2]} {lying[2]}")
    expect(cards.get_by_role("heading", name="Typed more than once")).to_be_visible()
    cards.keyboard.press("Backspace")
    expect(cards.get_by_role("heading", name="No card has this code")).to_be_visible()
    cards.get_by_label("Codes, a line for each chapter").fill(f"{lying[2]} {lying[0]}")
    expect(cards.get_by_role("heading", name=f"Not there yet: {len(lying) - 2}")).to_be_visible()
    cards.get_by_role("button", name="Lay the cards so").click()
    expect(cards.get_by_text(f"The cards lie as you typed them; {len(lying) - 2} cards set aside.")).to_be_visible()
    assert codes(cards)[:2] == [lying[2], lying[0]]
    cards.get_by_role("button", name="Undo").click()
    expect(cards.get_by_text("Taken back: Lay the cards by their codes")).to_be_visible()
    assert codes(cards) == lying


def test_lines_lead_to_their_scenes(cards: Page) -> None:
    to(cards, "First and last lines")
    first = cards.get_by_role("link", name=re.compile("^First line of Chapter 1:"))
    expect(first).to_contain_text("The sack came down the chute")
    cards.get_by_role("link", name="Of scenes").click()
    cards.get_by_role("link", name="The paragraph").click()
    lines = cards.get_by_role("link", name=re.compile("^Last line of"))
    target = lines.nth(1).get_attribute("href")
    lines.nth(1).click()
    assert target
    assert cards.url.endswith(target)
    expect(cards.locator(f"#{target.partition('#')[2]}")).to_be_in_viewport()


def test_what_is_moved_is_found_beside_the_drafts_own_order(cards: Page) -> None:
    moved = codes(cards)[0]
    to(cards, "Lay by codes")
    with anew(cards):
        cards.get_by_role("link", name="Begin with the codes as the cards lie now").click()
    box = cards.get_by_label("Codes, a line for each chapter")
    lines = box.input_value().splitlines()
    box.fill("\n".join([lines[0].removeprefix(moved), f"{lines[1]} {moved}", *lines[2:]]))
    with anew(cards):
        cards.get_by_role("button", name="Lay the cards so").click()
    to(cards, "Arrangements side by side")
    expect(cards.get_by_role("columnheader", name="Next draft")).to_contain_text("1 moved")
    cell = cards.get_by_role("listitem").filter(has_text="moved from Chapter 1")
    expect(cell).to_have_count(1)
    cell.get_by_role("link").click()
    expect(cards.get_by_text(moved, exact=True).first).to_be_visible()
    expect(cards.get_by_role("heading", name="Next", exact=True)).to_be_visible()


def test_filters_dim_at_once_and_stay_through_acts(cards: Page, plain: Page) -> None:
    lying = codes(cards)
    for code in lying[:2]:
        cards.get_by_role("checkbox", name=f"Choose {code}").check()
    cards.get_by_label("Intent", exact=True).last.select_option("rewrite")
    with anew(cards):
        cards.get_by_role("button", name="Set the intent").click()
    expect(cards.locator(".sheet .intent")).to_have_count(2)
    cards.keyboard.press("f")
    expect(cards.get_by_role("form", name="Filter the cards")).to_be_visible()
    cards.locator("#f-intent").select_option("rewrite")
    expect(cards.get_by_text(f"2 of {len(lying)} cards")).to_be_visible()
    assert dimmed(cards) == len(lying) - 2
    cards.get_by_role("checkbox", name=f"Choose {lying[0]}").check()
    chosen = cards.get_by_role("form", name="What to do with the chosen cards")
    with anew(cards):
        chosen.get_by_role("button", name="Set aside").click()
    expect(cards.get_by_role("heading", name="Set aside (1)")).to_be_visible()
    assert dimmed(cards) == len(lying) - 2
    cards.get_by_role("link", name="Show all alike").click()
    assert dimmed(cards) == 0
    assert "intent" not in cards.url
    plain.reload()
    plain.get_by_text("Filter", exact=True).click()
    plain.locator("#f-intent").select_option("rewrite")
    plain.get_by_role("button", name="Show").click()
    expect(plain.get_by_text(f"2 of {len(lying)} cards")).to_be_visible()
    assert dimmed(plain) == len(lying) - 2


def test_nothing_is_found_on_any_state(cards: Page) -> None:
    lying = codes(cards)
    to(cards, "Arrangements side by side")
    clean(cards, "arrangements, none yet")
    to(cards, "Chapters, parts, the book")
    clean(cards, "units, all folded")
    cards.locator(".unit-fold summary").first.click()
    clean(cards, "units, one open")
    to(cards, "First and last lines")
    clean(cards, "first and last lines")
    with anew(cards):
        cards.get_by_role("link", name="Of scenes").click()
    clean(cards, "first and last lines of scenes")
    to(cards, "Lay by codes")
    clean(cards, "codes, empty")
    box = cards.get_by_label("Codes, a line for each chapter")
    box.fill(f"{lying[0]} {lying[0]} Z11")
    expect(cards.get_by_role("heading", name="Typed more than once")).to_be_visible()
    clean(cards, "codes, not right")
    box.fill(f"{lying[3]} {lying[0]}")
    expect(cards.get_by_role("heading", name="So the cards would lie")).to_be_visible()
    clean(cards, "codes, shown before")
    cards.get_by_role("button", name="Lay the cards so").click()
    expect(cards.get_by_text("The cards lie as you typed them")).to_be_visible()
    cards.get_by_role("checkbox", name=f"Choose {lying[3]}").check()
    cards.get_by_label("Intent", exact=True).last.select_option("cut")
    with anew(cards):
        cards.get_by_role("button", name="Set the intent").click()
    expect(cards.locator(".sheet .intent")).to_have_count(1)
    cards.keyboard.press("f")
    cards.locator("#f-intent").select_option("cut")
    clean(cards, "cards, filtered")
    to(cards, "Arrangements side by side")
    clean(cards, "arrangements side by side")
