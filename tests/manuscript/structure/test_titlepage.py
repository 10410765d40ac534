import pytest

from afterdraft.manuscript.blocks import Block, Blocks, Look
from afterdraft.manuscript.structure import structure
from tests.manuscript.build import TOLD, draft, told


@pytest.mark.parametrize(
    ("on_page", "in_properties", "name", "expected"),
    [
        ("THE EEL YEAR", "The Eel Year", "draft.txt", "The Eel Year"),
        ("THE EEL YEAR", "", "The Eel Year draft 2.txt", "The Eel Year"),
        ("THE EEL YEAR", "", "the_eel_year.txt", "THE EEL YEAR"),
        ("THE EEL YEAR", "Something else", "draft.txt", "THE EEL YEAR"),
        ("The Eel Year", "THE EEL YEAR", "draft.txt", "The Eel Year"),
        ("THE EEL YEAR", "THE EEL YEAR", "draft.txt", "THE EEL YEAR"),
    ],
)
def test_a_title_in_capitals_is_given_as_it_is_written_elsewhere(
    on_page: str, in_properties: str, name: str, expected: str
) -> None:
    told = "The water had come up in the night as far as the second ring, and nobody slept. " * 12
    lines = (on_page, "by Odile Farrant", "CHAPTER ONE", told, "CHAPTER TWO", told, "CHAPTER THREE", told)
    blocks = tuple(Block(text) for text in lines)
    assert structure(Blocks(name, "txt", "", 0, blocks, title=in_properties)).title == expected


@pytest.mark.parametrize(
    "page",
    [
        [Block("Low Water", look=Look(level=1)), Block("by Ilse Tovik")],
        [Block("Low Water", look=Look(level=1)), Block("Ilse Tovik")],
        [Block("# Low Water"), Block("by Ilse Tovik")],
        [Block("Low Water"), Block("by Ilse Tovik"), Block("Contents", look=Look(level=1))],
    ],
    ids=["by", "a name", "a sign", "contents of nothing"],
)
@pytest.mark.parametrize("first", [TOLD, "“Who has taken the rope?”"], ids=["told", "talk"])
def test_a_book_without_headings_begins_under_its_title(page: list[Block], first: str) -> None:
    book = draft(*page, Block(first), *told(520))  # longer than a chapter
    assert [chapter.at for chapter in book.division.chapters] == [len(page)]
    assert (book.title, book.author) == ("Low Water", "Ilse Tovik")
