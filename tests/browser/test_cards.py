"""Cards as a person moves them: by pointer, by key, by form without scripts; several at once; and what is said."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, opens, saved
from tests.server import Server

__all__ = ["opens"]
pytestmark = pytest.mark.browser

LINES = """() => Object.fromEntries([...document.querySelectorAll("[data-line]")].map((line) =>
  [line.dataset.name, [...line.querySelectorAll("[data-code]")].map((sheet) => sheet.dataset.code).join(" ")]))"""


def lying(page: Page) -> dict[str, list[str]]:
    """Codes by chapter, as they lie."""
    found: dict[str, str] = page.evaluate(LINES)
    return {name: codes.split() for name, codes in found.items()}


def face(code: str) -> str:
    return f"#c-{code}"


@pytest.fixture
def cards(page: Page) -> Page:
    with anew(page):
        page.get_by_role("navigation", name="Screens").get_by_role("link", name="Cards").click()
    expect(page.get_by_role("heading", name="Cards")).to_be_visible()
    return page


def drag(page: Page, code: str, to: str, *, side: float) -> None:
    """From the middle of a card to beside another: `side` 0.1 is its left, 0.9 its right edge."""
    start, end = page.locator(face(code)), page.locator(face(to))
    end.scroll_into_view_if_needed()
    start.scroll_into_view_if_needed()
    boxes = [one.locator("xpath=ancestor::li").bounding_box() for one in (start, end)]
    assert boxes[0] and boxes[1]
    page.mouse.move(boxes[0]["x"] + 40, boxes[0]["y"] + 40)
    page.mouse.down()
    for share in (0.3, 0.7, 1.0):
        x = boxes[0]["x"] + 40 + share * (boxes[1]["x"] + side * boxes[1]["width"] - boxes[0]["x"] - 40)
        y = boxes[0]["y"] + 40 + share * (boxes[1]["y"] + 30 - boxes[0]["y"] - 40)
        page.mouse.move(x, y, steps=4)
    page.wait_for_timeout(60)
    page.mouse.up()


def names(page: Page) -> list[str]:
    return [name for name in lying(page) if name != "Set aside"]


def test_a_card_is_dragged_to_another_chapter_and_the_move_taken_back(cards: Page) -> None:
    cards.get_by_role("link", name="Smaller").click()
    before = lying(cards)
    first, second = names(cards)[:2]
    moved, beside = before[first][0], before[second][1]
    with anew(cards):
        drag(cards, moved, beside, side=0.1)
    expect(cards.locator(face(moved))).to_be_focused()
    after = lying(cards)
    assert after[first] == before[first][1:]
    assert after[second] == [before[second][0], moved, *before[second][1:]]
    undo = cards.get_by_role("button", name="Undo")
    expect(undo).to_have_attribute("title", re.compile(f"^Undo: Move “.*” to {second}$"))
    undo.click()
    expect(cards.get_by_text("Taken back: Move")).to_be_visible()
    assert lying(cards) == before
    expect(cards.get_by_text("The draft’s own order")).to_be_visible()


def test_a_drag_that_leads_nowhere_changes_nothing_and_opens_no_card(cards: Page) -> None:
    before, address = lying(cards), cards.url
    code = before[names(cards)[0]][1]
    drag(cards, code, code, side=0.6)
    cards.wait_for_timeout(200)
    assert (lying(cards), cards.url) == (before, address)
    cards.locator(face(code)).click()
    expect(cards.get_by_role("heading", name="On the page")).to_be_visible()


def test_cards_are_moved_by_key_with_words_for_what_happens(cards: Page) -> None:
    before = lying(cards)
    first, second = names(cards)[:2]
    code = before[first][-1]
    said = cards.locator("[data-live]")
    cards.locator(face(code)).focus()
    cards.keyboard.press("Space")
    expect(said).to_contain_text(f"Picked up {code}")
    cards.keyboard.press("ArrowRight")
    expect(said).to_contain_text(f"{second}, place 1 of {len(before[second]) + 1}, before {before[second][0]}")
    cards.keyboard.press("Escape")
    expect(said).to_have_text("Left where it was.")
    assert lying(cards) == before
    for key in ("Space", "ArrowDown", "Home", "ArrowRight", "Enter"):
        cards.keyboard.press(key)
    expect(said).to_contain_text(f"Put down. {second}, place 2 of {len(before[second]) + 1}")
    expect(cards.locator(face(code))).to_be_focused()
    assert lying(cards)[second] == [before[second][0], code, *before[second][1:]]
    cards.keyboard.press("ArrowLeft")
    expect(cards.locator(face(before[second][0]))).to_be_focused()


def test_several_chosen_cards_are_set_aside_brought_back_and_joined(cards: Page) -> None:
    before = lying(cards)
    first = names(cards)[0]
    one, two = before[first][:2]
    cards.locator(face(one)).focus()
    cards.keyboard.press("x")
    cards.keyboard.press("ArrowRight")
    cards.keyboard.press("x")
    expect(cards.get_by_text("2 cards chosen")).to_be_visible()
    chosen = cards.get_by_role("form", name="What to do with the chosen cards")
    chosen.get_by_role("button", name="Set aside").click()
    expect(cards.get_by_role("heading", name="Set aside (2)")).to_be_visible()
    assert lying(cards)["Set aside"] == [one, two]
    for code in (one, two):
        cards.get_by_role("checkbox", name=f"Choose {code}").check()
    with anew(cards):
        chosen.get_by_role("button", name="Bring back").click()
    expect(cards.get_by_role("heading", name="Set aside", exact=True)).to_be_visible()
    assert lying(cards)[first] == before[first]
    cards.locator(face(one)).click(modifiers=["Control"], position={"x": 4, "y": 4})
    cards.locator(face(two)).click(modifiers=["Control"], position={"x": 4, "y": 4})
    chosen.get_by_role("button", name="Join").click()
    expect(cards.get_by_text("in one")).to_be_visible()
    assert lying(cards)[first] == [one, *before[first][2:]]


def test_the_next_side_makes_the_arrangement_and_saves_itself(cards: Page) -> None:
    code = lying(cards)[names(cards)[0]][0]
    cards.locator(face(code)).focus()
    cards.keyboard.press("Enter")
    expect(cards.get_by_role("heading", name="Next", exact=True)).to_be_visible()
    cards.get_by_label("What shall happen").fill("It snows before noon.")
    saved(cards)
    cards.get_by_label("Viewpoint", exact=True).fill("Gwenda")
    cards.get_by_label("What happens here, and what changes?").focus()
    expect(cards.get_by_role("status").get_by_text("Saved", exact=True)).to_be_visible()
    cards.get_by_role("button", name="Rewrite").click()
    expect(cards.get_by_role("button", name="Rewrite")).to_have_attribute("aria-pressed", "true")
    expect(cards.get_by_label("What shall happen")).to_have_value("It snows before noon.")
    cards.get_by_role("link", name="To all cards").click()
    expect(cards.locator(face(code))).to_be_focused()
    expect(cards.get_by_text("It snows before noon.")).to_be_visible()
    cards.goto(cards.url.partition("/cards")[0] + f"/scenes/{code}")
    cards.get_by_role("link", name="Both sides").click()
    expect(cards.get_by_label("What shall happen")).to_have_value("It snows before noon.")


def test_how_near_the_cards_are_is_kept(cards: Page) -> None:
    table = cards.locator(".table")
    cards.keyboard.press("-")
    expect(table).to_have_attribute("data-zoom", "2")
    for _ in range(4):
        cards.keyboard.press("+")
    expect(table).to_have_attribute("data-zoom", "5")
    cards.reload()
    expect(table).to_have_attribute("data-zoom", "5")
    expect(cards.get_by_role("link", name="One chapter")).to_have_attribute("aria-current", "true")


@pytest.fixture
def plain(browser: Browser, cards: Page, server: Server) -> Iterator[Page]:
    """The same screen in a window without scripts."""
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(server.address)
    page.goto(cards.url)
    yield page
    context.close()


def test_all_of_it_works_by_forms_without_scripts(plain: Page, cards: Page) -> None:
    before = lying(cards)
    first, second = names(cards)[:2]
    code, beside = before[first][0], before[second][0]
    plain.get_by_role("listitem").filter(has=plain.locator(f"#c-{code}")).locator("summary").click()
    plain.get_by_role("link", name="Move…").first.click()
    places = plain.get_by_label("the card, or at the beginning of the chapter")
    places.select_option(places.locator("option", has_text=beside).get_attribute("value"))
    with anew(plain):
        plain.get_by_role("button", name="Move", exact=True).click()
    cards.reload()
    assert lying(cards)[second][:2] == [beside, code]
    plain.get_by_role("listitem").filter(has=plain.locator(f"#c-{code}")).locator("summary").click()
    plain.get_by_role("button", name="Set aside").last.click()
    expect(plain.get_by_role("heading", name="Set aside (1)")).to_be_visible()
    plain.get_by_role("button", name=f"New card in {second}").click()
    plain.get_by_label("Title").fill("The weir")
    plain.get_by_label("What shall happen").fill("She falls in.")
    plain.get_by_role("button", name="Save this side").last.click()
    expect(plain.get_by_role("heading", name="The weir")).to_be_visible()


def test_a_card_that_is_gone_in_another_window_is_told(cards: Page) -> None:
    before = lying(cards)
    first = names(cards)[0]
    other = cards.context.new_page()
    other.goto(cards.url)
    for code in before[first][:2]:
        other.get_by_role("checkbox", name=f"Choose {code}").check()
    other.get_by_role("form", name="What to do with the chosen cards").get_by_role("button", name="Join").click()
    expect(other.get_by_text("in one")).to_be_visible()
    drag(cards, before[first][1], before[first][2], side=0.9)
    expect(cards.get_by_text(f"The card {before[first][1]} is not there.")).to_be_visible()


def test_nothing_is_found_on_any_state(cards: Page) -> None:
    for zoom in ("The whole book", "Smaller", "Middle", "Larger", "One chapter"):
        cards.get_by_role("link", name=zoom).click()
        clean(cards, f"cards, {zoom}")
    cards.get_by_role("link", name="Middle").click()
    first = names(cards)[0]
    cards.locator(face(lying(cards)[first][0])).focus()
    cards.keyboard.press("Space")
    clean(cards, "cards, one held")
    cards.keyboard.press("Escape")
    cards.get_by_role("button", name=f"Choose all cards of {first}").click()
    clean(cards, "cards, some chosen")
    form = cards.get_by_role("form", name="What to do with the chosen cards")
    form.get_by_role("button", name="Set aside").click()
    expect(cards.get_by_text("No card lies here.")).to_be_visible()
    clean(cards, "cards, a chapter empty, some set aside")
    cards.get_by_label("Acts for").first.click()
    clean(cards, "cards, a chapter's acts")
    cards.keyboard.press("Escape")
    cards.locator(".menu > summary").first.click()
    clean(cards, "cards, a card's acts")
    cards.get_by_text("This arrangement…").click()
    clean(cards, "cards, the arrangement's acts")
    cards.get_by_role("link", name="The draft’s own order").click()
    expect(cards.get_by_role("link", name="The draft’s own order")).to_have_attribute("aria-current", "page")
    clean(cards, "cards, the draft's own order")
    with anew(cards):
        cards.locator(".face").first.click()
    clean(cards, "a card of the draft's own order")
    cards.go_back()
    with anew(cards):
        cards.get_by_role("link", name="Next draft").click()
    with anew(cards):
        cards.locator(".face").first.click()
    clean(cards, "a card, both sides")
    with anew(cards):
        cards.get_by_role("link", name="Move…").click()
    clean(cards, "where to move a card")
