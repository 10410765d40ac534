"""Chapters headed with the names of those who tell them."""

import pytest

from afterdraft.whole.book import read_book
from afterdraft.whole.headed import names_over
from tests.reading.hand import scenes

FORMS = {"ada", "ada lamb", "pike", "miss clay", "leeds"}
ADA = ["I rose late. I saw my aunt at once, and I knew my boots were wet.", "Then Pike came in. “Sit,” said Pike."]
PIKE = ["I went down. I saw my boat was gone, and I knew my uncle had it.", "Then Ada came in. “No,” said Ada."]


@pytest.mark.parametrize(
    ("heads", "names"),
    [
        ([["Ada"], ["Pike"], ["Ada"]], ["ada", "pike", "ada"]),
        ([["ADA"], [], ["PIKE"]], ["ada", "ada", "pike"]),
        ([["Chapter One", "Ada Lamb"], ["Chapter Two", "Pike"]], ["ada lamb", "pike"]),
        ([["1. Ada"], ["2. Pike"]], ["ada", "pike"]),
        ([["Chapter 1: Ada"], ["Chapter 2: Pike"]], ["ada", "pike"]),
        ([["Ada — Tuesday, 12 October"], ["Pike, Wednesday"]], ["ada", "pike"]),
        ([["The Narrative of Miss Clay"], ["Pike’s Diary"]], ["miss clay", "pike"]),
        ([["Told by Ada"], ["contributed by Pike"]], ["ada", "pike"]),
        ([["Ada"], ["Pike"], ["The Letter"]], ["ada", "pike", ""]),
    ],
)
def test_a_heading_says_whose_the_chapter_is(heads: list[list[str]], names: list[str]) -> None:
    assert list(names_over(heads, FORMS)) == names


@pytest.mark.parametrize(
    "heads",
    [
        [["Ada"], ["The Mill"], ["The Flood"]],  # what one chapter is about
        [["Ada"], ["Ada"]],  # nobody else's
        [["Chapter One"], ["Chapter Two"]],
        [[], []],
        [],
    ],
)
def test_headings_that_say_nothing_of_whose_chapters_are(heads: list[list[str]]) -> None:
    assert list(names_over(heads, FORMS)) == [""] * len(heads)


def test_each_chapter_is_told_by_whom_it_is_headed_with() -> None:
    told = scenes([ADA, ADA, PIKE, PIKE])
    found = read_book(told, heads=[["Ada"], [], ["Pike"], []])
    narrators = [cast.narrator for cast in found.told]
    assert [one.name for one in narrators if one] == ["ada", "ada", "pike", "pike"]
    assert all(person.name != "the narrator" for person in found.cast.people)
    views = [(one.scene, one.person) for one in found.appearances if one.presence == "point of view"]
    assert views == [(0, "read:ada"), (1, "read:ada"), (2, "read:pike"), (3, "read:pike")]


def test_without_headings_one_narrator_tells_all() -> None:
    found = read_book(scenes([ADA, ADA, PIKE, PIKE]))
    assert {cast.narrator.name for cast in found.told if cast.narrator} == {"the narrator"}


def test_a_chapter_told_of_others_is_seen_by_whom_it_is_headed_with() -> None:
    told = ["Then Ada came in. “Sit,” said Pike.", "Pike thought of his boat. He knew it was gone. He felt cold."]
    heads = [["Ada"], [], ["Pike"]]
    found = read_book(scenes([told, told, told]), heads=heads)
    views = [(one.scene, one.person) for one in found.appearances if one.presence == "point of view"]
    assert views == [(0, "read:ada"), (1, "read:ada"), (2, "read:pike")]
    without = read_book(scenes([told, told, told]))
    assert {one.person for one in without.appearances if one.presence == "point of view"} == {"read:pike"}
