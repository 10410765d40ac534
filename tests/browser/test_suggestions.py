"""Scenes that may begin unmarked: closed until opened, taken or declined by key and by button, in the split and in a
scene; nothing is cut by itself, everything is taken back."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, bring_in
from tests.manuscript.unmarked.test_unmarked import BOOK

pytestmark = pytest.mark.browser
PERHAPS = "Perhaps a scene begins here: 1 place"


@pytest.fixture
def split(page: Page, tmp_path: Path) -> Page:
    """The split of a manuscript of one scene that may be two, once the place has been found."""
    file = tmp_path / "quay.txt"
    file.write_text("THE QUAY\n\nby Odile Farrant\n\n\nCHAPTER ONE\n\n" + "\n\n".join(BOOK[0]), "utf-8")
    bring_in(page, file)
    for _ in range(20):
        if page.get_by_text(PERHAPS).count():
            break
        with anew(page):
            page.get_by_role("link", name="Look again").click()
    expect(page.get_by_text(PERHAPS)).to_be_visible()
    return page


def scenes(page: Page) -> Locator:
    return page.get_by_role("article", name=re.compile("^Scene "))


def test_it_is_closed_until_opened_and_says_what_it_rests_on(split: Page) -> None:
    take = split.get_by_role("button", name="A scene begins here: Three weeks later")
    expect(take).to_be_hidden()
    clean(split, "split, suggestions closed")
    split.get_by_text(PERHAPS).click()
    expect(take).to_be_visible()
    expect(split.get_by_text("time: “Three weeks later”")).to_be_visible()
    clean(split, "split, suggestions open")
    split.set_viewport_size({"width": 360, "height": 740})
    clean(split, "split, suggestions open, narrow")
    assert split.evaluate("document.documentElement.scrollWidth <= innerWidth")


def test_one_key_takes_it_and_undo_brings_it_back(split: Page) -> None:
    expect(scenes(split)).to_have_count(1)
    split.get_by_text(PERHAPS).press("Enter")
    split.keyboard.press("j")
    with anew(split):
        split.keyboard.press("y")
    expect(scenes(split)).to_have_count(2)
    expect(split.get_by_text("No scene is thought to begin unmarked any more.")).to_be_visible()
    split.keyboard.press("Control+z")
    expect(scenes(split)).to_have_count(1)
    expect(split.get_by_text(PERHAPS)).to_be_visible()


def test_one_key_declines_it_and_undo_asks_again(split: Page) -> None:
    split.get_by_text(PERHAPS).press("Enter")
    split.keyboard.press("j")
    with anew(split):
        split.keyboard.press("x")
    expect(split.get_by_text("No scene is thought to begin unmarked any more.")).to_be_visible()
    expect(scenes(split)).to_have_count(1)
    split.keyboard.press("Control+z")
    expect(split.get_by_text(PERHAPS)).to_be_visible()


def test_a_mark_in_the_margin_of_the_scene_opens_to_the_same_answers(split: Page) -> None:
    split.get_by_role("link", name="Go on to the scenes").first.click()
    mark = split.locator("summary").filter(has_text="Perhaps a scene begins here")
    take = split.get_by_role("button", name="A scene begins here: Three weeks later")
    expect(mark).to_be_visible()
    expect(take).to_be_hidden()
    clean(split, "scene, suggestion closed")
    mark.press("Enter")
    expect(take).to_be_visible()
    clean(split, "scene, suggestion open")
    with anew(split):
        split.get_by_role("button", name="Not a break: Three weeks later").click()
    expect(mark).to_have_count(0)
    with anew(split):
        split.keyboard.press("Control+z")
    mark.click()
    take.click()
    expect(split.get_by_text("of 2", exact=False).first).to_be_visible()
    expect(mark).to_have_count(0)
