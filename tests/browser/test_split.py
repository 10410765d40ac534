"""The split mended by hand: each act seen in the list, each taken back."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, bring_in, saved, summary

pytestmark = pytest.mark.browser

# An invented manuscript: two chapters, a scene break of each kind, one pair of scenes to join.
MANUSCRIPT = """\
THE WEIR KEEPER

by Odile Farrant


CHAPTER ONE

The water had come up in the night as far as the second ring, and Bastian wrote it down.

* * *

In the afternoon a man came about the eels.

He had a letter, and the letter had a stamp on it that nobody in the valley had seen since the old mill shut.

The Lock House

Behind the house the nets hung stiff with salt, though the sea was forty miles away.

* * *

By evening it was raining again.


CHAPTER TWO

On Thursday the gauge was gone.

* * *

They found it in the reeds, bent like a spoon.
"""


@pytest.fixture
def manuscript(tmp_path: Path) -> Path:
    file = tmp_path / "weir.txt"
    file.write_text(MANUSCRIPT, encoding="utf-8")
    return file


@pytest.fixture
def split(page: Page, manuscript: Path) -> Page:
    bring_in(page, manuscript)
    expect(scenes(page)).to_have_count(5)
    return page


def scenes(page: Page) -> Locator:
    return page.get_by_role("article", name=re.compile("^Scene "))


def undo(page: Page) -> None:
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_role("status").get_by_text("Taken back:")).to_be_visible()


def test_joining_keeps_both_cards_words(split: Page) -> None:
    for nth, words in ((1, "A man comes about eels."), (2, "It rains.")):
        scenes(split).nth(nth).get_by_role("link").first.click()
        summary(split).fill(words)
        saved(split)
        split.get_by_role("link", name="The split").click()
    scenes(split).nth(2).get_by_role("button", name=re.compile("^Join")).click()
    expect(scenes(split)).to_have_count(4)
    scenes(split).nth(1).get_by_role("link").first.click()
    expect(summary(split)).to_have_value(re.compile("A man comes about eels.\\s+It rains."))
    undo(split)
    expect(summary(split)).to_have_value("A man comes about eels.")
    split.get_by_role("link", name="The split").click()
    expect(scenes(split)).to_have_count(5)


def test_splitting_at_a_paragraph(split: Page) -> None:
    second = scenes(split).nth(1)
    code = second.get_by_role("link").first.inner_text()
    second.get_by_role("link", name=re.compile("^Split")).click()
    line = split.get_by_role("listitem").filter(has_text="Behind the house the nets")
    line.get_by_role("button", name="A scene begins here").click()
    expect(scenes(split)).to_have_count(6)
    expect(scenes(split).nth(1).get_by_role("link").first).to_have_text(code)
    expect(scenes(split).nth(2)).to_be_focused()
    undo(split)
    expect(scenes(split)).to_have_count(5)
    split.get_by_role("button", name="Redo").click()
    expect(scenes(split)).to_have_count(6)


def test_a_line_becomes_a_chapter_heading_and_a_chapter_none(split: Page) -> None:
    scenes(split).nth(1).get_by_role("link", name=re.compile("^Split")).click()
    line = split.get_by_role("listitem").filter(has_text="The Lock House")
    line.get_by_role("button", name="A chapter heading").click()
    expect(split.get_by_role("heading", name="The Lock House")).to_be_visible()
    split.get_by_label("Mend The Lock House").click()
    split.get_by_role("button", name="No chapter begins here").click()
    expect(split.get_by_role("heading", name="The Lock House")).not_to_be_visible()


def test_titles_of_chapters_and_scenes(split: Page) -> None:
    split.get_by_label("Mend Chapter 1").click()
    split.get_by_placeholder("Title of the chapter").first.fill("High water")
    split.get_by_role("button", name="Keep the title").first.click()
    expect(split.get_by_role("heading", name="Chapter 1: High water")).to_be_visible()
    scenes(split).nth(1).get_by_role("link", name=re.compile("^Split")).click()
    split.get_by_placeholder("Title of the scene").fill("The eel man")
    split.get_by_placeholder("Title of the scene").press("Enter")
    expect(split.get_by_role("article", name=re.compile("The eel man"))).to_be_visible()


def test_front_matter_and_back(split: Page) -> None:
    front = split.get_by_role("article", name=re.compile("^Front matter"))
    expect(front).to_have_count(1)
    scenes(split).last.get_by_role("link", name=re.compile("^Split")).click()
    split.get_by_role("button", name="as back matter").click()
    expect(split.get_by_role("article", name=re.compile("^Back matter"))).to_have_count(1)
    expect(scenes(split)).to_have_count(4)
    split.get_by_role("article", name=re.compile("^Back matter")).get_by_role("button", name="It is story").click()
    expect(scenes(split)).to_have_count(5)


def test_the_list_by_keys_alone(split: Page) -> None:
    split.keyboard.press("j")
    split.keyboard.press("j")
    split.keyboard.press("j")
    expect(scenes(split).nth(1)).to_be_focused()
    with anew(split):
        split.keyboard.press("o")
    expect(split.get_by_role("list", name="Paragraphs")).to_be_visible()
    with anew(split):
        split.keyboard.press("o")
    expect(split.get_by_role("list", name="Paragraphs")).not_to_be_visible()
    with anew(split):
        split.keyboard.press("m")
    expect(scenes(split)).to_have_count(4)
    split.keyboard.press("Control+z")
    expect(scenes(split)).to_have_count(5)


def test_a_question_about_several_lines_is_answered_once(page: Page, tmp_path: Path) -> None:
    told = "\n\n".join(f"On day {number} the gauge stood where it had stood." for number in range(12))
    letter = "\n\n\n“Come at once,” he had written.\n\nThe ink had run.\n\n\nShe put the paper down.\n\n"
    file = tmp_path / "gauge.txt"
    file.write_text(f"CHAPTER ONE\n\n{told}{letter}{told}\n\n\nCHAPTER TWO\n\n{told}\n", encoding="utf-8")
    bring_in(page, file)
    unsure = page.get_by_role("region", name="Not sure of 2 places")
    expect(unsure.get_by_role("button", name="Make it")).to_have_count(2)
    clean(page, "split, a question about several lines")
    before = scenes(page).count()
    unsure.get_by_role("button", name="Make all 2 new scenes").click()
    expect(scenes(page)).to_have_count(before + 2)
    expect(unsure).not_to_be_visible()
    undo(page)
    expect(scenes(page)).to_have_count(before)
    expect(unsure).to_be_visible()
