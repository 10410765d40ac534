"""A new user's path, from an empty home: every control is found by what it says, no address, no test id."""

from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.walk import MANUSCRIPT, anew, bring_in, saved
from tests.server import Server, running

pytestmark = pytest.mark.browser


def test_four_acts_from_the_start_to_the_first_written_card(page: Page) -> None:
    expect(page.get_by_role("heading", name="Books")).to_be_visible()
    page.get_by_label("Choose the file of your draft").set_input_files(MANUSCRIPT)  # 1: choose the file
    page.get_by_role("link", name="Go on to the scenes").first.click()  # 2
    page.get_by_label("What happens here, and what changes?").click()  # 3
    page.keyboard.type("Gwenda weighs her first sack and is disliked for it.")  # 4
    saved(page)


def test_what_was_written_is_there_after_closing_and_starting_again(page: Page, server: Server, home: Path) -> None:
    bring_in(page, MANUSCRIPT)
    page.get_by_role("link", name="Go on to the scenes").first.click()
    page.get_by_label("What happens here, and what changes?").fill("She weighs her first sack.")
    saved(page)
    page.get_by_role("button", name="Close").click()
    expect(page.get_by_role("heading", name="Afterdraft is closed")).to_be_visible()
    assert server.ended() == 0
    with running(home) as second:
        page.goto(second.address)
        page.get_by_role("main").get_by_role("link", name="Tare").click()
        expect(page.get_by_label("What happens here, and what changes?")).to_have_value("She weighs her first sack.")


def test_the_whole_walk_by_keyboard(page: Page) -> None:
    page.keyboard.press("Tab")
    expect(page.get_by_role("link", name="To the page")).to_be_focused()
    bring_in(page, MANUSCRIPT)
    with anew(page):
        page.keyboard.press("s")
    expect(page.get_by_role("heading", name="Scene 1", exact=True)).to_be_visible()
    page.keyboard.press("e")
    page.keyboard.type("First.")
    with anew(page):
        page.keyboard.press("Control+Enter")
    expect(page.get_by_role("heading", name="Scene 2", exact=True)).to_be_visible()
    expect(page.get_by_label("What happens here, and what changes?")).to_be_focused()
    page.keyboard.type("Second.")
    page.keyboard.press("Escape")
    saved(page)
    with anew(page):
        page.keyboard.press("[")
    expect(page.get_by_label("What happens here, and what changes?")).to_have_value("First.")
    with anew(page):
        page.keyboard.press("t")
    expect(page.get_by_role("heading", name="Reverse outline")).to_be_visible()
    expect(page.get_by_text("Second.", exact=True)).to_be_visible()
    page.keyboard.press("n")
    page.keyboard.type("Look up the price of beet.")
    with anew(page):
        page.keyboard.press("Control+Enter")
    expect(page.get_by_role("status").get_by_text("The note is kept")).to_be_visible()
    page.keyboard.press("/")
    page.keyboard.type("price of be")
    with anew(page):
        page.keyboard.press("Enter")
    expect(page.get_by_role("link", name="Loose note")).to_be_visible()
    page.keyboard.press("Escape")
    with anew(page):
        page.keyboard.press("Control+z")
    expect(page.get_by_role("status").get_by_text("Taken back: Loose note")).to_be_visible()
    page.keyboard.press("?")
    expect(page.get_by_role("heading", name="Keys")).to_be_visible()


def test_single_letters_can_be_turned_off(page: Page) -> None:
    bring_in(page)
    page.get_by_role("link", name="Keys").click()
    page.get_by_role("button", name="Turn them off").click()
    expect(page.get_by_text("Single-letter keys are off. Those")).to_be_visible()
    with anew(page):
        page.get_by_role("link", name="Back").click()
    page.keyboard.press("s")
    expect(page.get_by_role("heading", name="The split")).to_be_visible()
