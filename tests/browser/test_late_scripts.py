"""Whoever types before the scripts of a page are there loses no word: they look at what stands when they begin."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from playwright.sync_api import Page, Route, expect

from tests.browser.test_table import EXTRA, manuscript, scene_list, to_columns
from tests.browser.walk import begun, bring_in, saved, summary
from tests.server import Server

pytestmark = pytest.mark.browser
SCRIPT = "**/js/main.js*"


@contextmanager
def late(page: Page) -> Iterator[None]:
    """Within, pages come without their scripts, which arrive at its end."""
    held: list[Route] = []
    page.route(SCRIPT, lambda route: held.append(route))
    yield
    assert held, "no script was asked for"
    for route in held:
        route.continue_()
    page.unroute(SCRIPT)
    page.wait_for_load_state("load")


@pytest.fixture
def cards(page: Page) -> Page:
    bring_in(page)
    page.get_by_role("navigation", name="Screens").get_by_role("link", name="Cards").click()
    expect(page.get_by_role("heading", name="Cards")).to_be_visible()
    return page


def test_a_file_that_was_chosen_is_brought_in(page: Page, server: Server) -> None:
    with late(page):
        page.goto(server.address, wait_until="commit")
        page.get_by_label("Choose the file of your draft").set_input_files(begun())
    expect(page.get_by_role("heading", name="The split")).to_be_visible()


def test_what_was_typed_on_a_card_saves_itself(page: Page) -> None:
    bring_in(page)
    with late(page):
        page.get_by_role("link", name="Go on to the scenes").first.click()
        summary(page).fill("Typed at once.")
    saved(page)
    page.reload()
    expect(summary(page)).to_have_value("Typed at once.")


def test_a_code_typed_beside_a_row_is_named(page: Page, tmp_path: Path) -> None:
    draft, table = tmp_path / "salt.docx", tmp_path / "scenes.xlsx"
    manuscript(draft)
    scene_list().save(table)
    bring_in(page, draft)
    page.keyboard.press("t")
    to_columns(page, table)
    page.get_by_label("What goes on is").select_option(label="Summary")
    extra = page.get_by_role("listitem").filter(has_text=EXTRA)
    with late(page):
        page.get_by_role("button", name="See the rows beside the scenes").click()
        extra.get_by_role("combobox").fill("Z11")
    expect(extra.get_by_text("no scene of this code")).to_be_visible()


def test_codes_typed_are_checked(cards: Page) -> None:
    with late(cards):
        cards.get_by_role("link", name="Lay by codes").click()
        cards.get_by_label("Codes, a line for each chapter").fill("Z11")
    expect(cards.get_by_role("heading", name="No card has this code")).to_be_visible()


def test_filters_that_were_taken_off_dim_nothing(cards: Page) -> None:
    cards.locator("[data-pick]").first.check()
    cards.get_by_label("Intent", exact=True).last.select_option("cut")
    cards.get_by_role("button", name="Set the intent").click()
    expect(cards.locator(".sheet .intent")).to_have_count(1)
    with late(cards):
        cards.goto(cards.url.partition("#")[0] + "?intent=cut", wait_until="commit")
        expect(cards.locator("[data-sheet][data-dim]").first).to_be_visible()
        cards.locator("#f-intent").select_option("")
    expect(cards.locator("[data-sheet][data-dim]")).to_have_count(0)


def test_words_chosen_in_the_text_are_fastened_to(page: Page) -> None:
    bring_in(page)
    with late(page):
        page.get_by_role("link", name="Go on to the scenes").first.click()
        page.get_by_role("article").locator("p").first.dblclick(position={"x": 60, "y": 14})
        word = page.evaluate("getSelection().toString()").strip()
        assert word
    expect(page.locator("#note-words")).to_have_value(word)
    expect(page.get_by_role("button", name="Note these words")).to_be_visible()


def test_a_text_taken_back_meanwhile_does_not_come_back_with_the_page(page: Page) -> None:
    """Browsers put what was typed back into a page that is gone back to; here the book says what stands."""
    bring_in(page)
    page.get_by_role("link", name="Go on to the scenes").first.click()
    summary(page).fill("Thought better of.")
    saved(page)
    page.get_by_role("link", name="Next scene").first.click()
    expect(page.get_by_role("heading", name="Scene 2", exact=True)).to_be_visible()
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_role("status").get_by_text("Taken back:")).to_be_visible()
    page.go_back()
    page.go_back()
    expect(page.get_by_role("heading", name="Scene 1", exact=True)).to_be_visible()
    expect(summary(page)).to_have_value("")


def test_a_note_being_written_outlives_what_another_window_did(page: Page) -> None:
    bring_in(page)
    page.get_by_role("link", name="Go on to the scenes").first.click()
    page.get_by_text("Notes on this scene").click()
    page.get_by_label("A note on this scene").fill("Half a thought")
    page.get_by_label("A note on this scene").blur()
    page.locator("#runs > summary").click()
    page.get_by_label("Thread", exact=True).fill("The lost sugar")
    page.get_by_label("Thread", exact=True).blur()
    other = page.context.new_page()
    other.goto(page.url)
    summary(other).fill("From the second window.")
    saved(other)
    page.evaluate("dispatchEvent(new Event('focus'))")  # what the browser does when the window comes to the front
    page.wait_for_timeout(300)  # long enough for a page that is loaded anew
    expect(page.get_by_label("Thread", exact=True)).to_have_value("The lost sugar")
    expect(page.get_by_label("A note on this scene")).to_have_value("Half a thought")
