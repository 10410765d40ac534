"""The whole loop by keyboard: draft one outlined and planned, a part of draft two in, then all of it; cards anew and
carried; the plan ticked; an old sentence found among the offcuts and put on a card; axe on the way."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.access import clean
from tests.browser.walk import PATIENT, anew, bring_in, saved, summary
from tests.web.two_drafts import REWORDED, typed
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER

pytestmark = pytest.mark.browser
BOOTS = "dreamed of nothing"


def written(folder: Path, name: str, manuscript: bytes) -> Path:
    file = folder / f"{name}.txt"
    file.write_bytes(manuscript)
    return file


def press(page: Page, key: str) -> None:
    """A key that leads to another page, or to this one anew."""
    with anew(page):
        page.keyboard.press(key)


def bring(page: Page, file: Path, which: str) -> None:
    press(page, "d")
    more = page.get_by_text("Bring in a draft", exact=True)
    if more.count():
        more.press("Enter")
    page.get_by_label("Choose the files of the draft").set_input_files(file)
    page.get_by_label(re.compile(f"^{which}")).press("Space")
    with anew(page):
        page.get_by_role("button", name="Bring it in").press("Enter")
    expect(page.get_by_text(re.compile("^Draft 2 is in"))).to_be_visible(timeout=PATIENT)


def test_round_the_loop(page: Page, tmp_path: Path) -> None:
    bring_in(page, written(tmp_path, "first", typed([FERRY, PIER], [LOCK, HOUSE])))

    # Draft one: outlined, and a change planned in two places
    press(page, "s")
    page.keyboard.press("e")
    page.keyboard.type("She counts the lamps.")
    press(page, "Control+Enter")
    page.keyboard.type("She buys a lantern.")
    page.keyboard.press("Escape")
    saved(page)
    codes = [code.inner_text() for code in page.locator(".scene-head .code").all()]
    press(page, "g")
    page.keyboard.press("a")
    page.keyboard.type("The fair is dull.")
    with anew(page):
        page.get_by_role("button", name="Plan the change").press("Enter")
    page.get_by_label(re.compile("^Scenes by code")).fill(f"{codes[0]}, Ottla came down")
    with anew(page):
        page.get_by_role("button", name="Add the scenes").press("Enter")

    # A part of draft two, then all of it
    bring(page, written(tmp_path, "part", typed([FERRY, REWORDED])), "A part of the next draft so far")
    bring(page, written(tmp_path, "whole", typed([FERRY, REWORDED], [LOCK, NEW])), "Draft 2 whole")

    # One card anew: the old one comes to stand beside it. One carried by key.
    press(page, "s")
    if page.get_by_role("heading", name="Scene 2", exact=True).count():
        press(page, "[")
    expect(page.get_by_text("Your card of draft 1 is kept back until you have written this one.")).to_be_visible()
    expect(page.get_by_text("She counts the lamps.")).to_have_count(0)
    clean(page, "a card is kept back")
    page.keyboard.press("e")
    page.keyboard.type("She writes a number on her wrist.")
    page.keyboard.press("Escape")
    saved(page)
    beside = page.get_by_role("region", name="What you wrote of draft 1")
    expect(beside.get_by_text("She counts the lamps.")).to_be_visible()
    expect(page.get_by_text("is kept back")).to_have_count(0)
    clean(page, "both cards")
    press(page, "]")
    press(page, "o")
    expect(summary(page)).to_have_value("She buys a lantern.")
    expect(page.get_by_text("About a twentieth of the words changed since you wrote this card.")).to_be_visible()
    press(page, "t")
    press(page, "v")
    expect(page.get_by_text("She counts the lamps.")).to_be_visible()
    clean(page, "the outline beside draft 1")

    # The plan beside the draft: one place changed, one did not; she ticks
    press(page, "d")
    with anew(page):
        page.get_by_role("link", name="The plan beside it").press("Enter")
    expect(page.get_by_text("The text here changed.")).to_be_visible()
    expect(page.get_by_text("Planned; the text here is as it was.")).to_be_visible()
    clean(page, "the plan beside the draft")
    page.keyboard.press("j")
    press(page, "y")
    expect(page.get_by_role("checkbox").first).to_be_checked()
    page.keyboard.press("j")
    press(page, "o")
    expect(page.get_by_role("table")).to_be_visible()
    clean(page, "the plan beside the draft, texts open")

    # An old sentence, found and put on a card
    with anew(page):
        page.get_by_role("link", name="Offcuts").press("Enter")
    expect(page.get_by_label("With the words")).to_be_visible(timeout=PATIENT)
    page.wait_for_load_state("load")
    page.keyboard.press("e")
    page.keyboard.type(BOOTS)
    press(page, "Enter")
    expect(page.get_by_text(BOOTS)).to_have_count(1)
    page.keyboard.press("j")
    page.keyboard.press("o")
    page.get_by_label("The Next side of").press_sequentially(codes[0])
    clean(page, "offcuts")
    press(page, "Enter")
    expect(page.get_by_text(f"It stands on the Next side of the card {codes[0]} now.")).to_be_visible()
    with anew(page):
        page.get_by_role("link", name="Rounds").press("Enter")
    expect(page.get_by_role("row").filter(has_text="Draft 1 to 2")).to_have_count(1)
    clean(page, "rounds")
    press(page, "c")
    expect(page.get_by_text(BOOTS)).to_have_count(1)


def test_words_typed_in_a_window_of_an_older_draft_are_not_saved_there_and_not_lost(page: Page, tmp_path: Path) -> None:
    bring_in(page, written(tmp_path, "first", typed([FERRY, PIER], [LOCK, HOUSE])))
    press(page, "s")
    page.keyboard.press("e")
    other = page.context.new_page()
    other.goto(page.url)
    other.wait_for_load_state("load")
    bring(other, written(tmp_path, "second", typed([FERRY, REWORDED], [LOCK, NEW])), "The next draft")
    summary(page).press_sequentially("She counts the lamps.")
    page.keyboard.press("Escape")
    expect(page.get_by_text("This is of draft 1, which is only read since draft 2 came in.")).to_be_visible()
    expect(summary(page)).to_have_value("She counts the lamps.")
