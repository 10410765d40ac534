"""Chapters that bear names and no numbers. Texts of our own; the ways of naming are common practice."""

from collections.abc import Sequence

import pytest

from afterdraft.manuscript.blocks import Block, Gap, Look
from afterdraft.manuscript.draft import Draft
from tests.manuscript.build import CENTRED, HEADING, draft, heading, line, told

NAMES = ("The Weir", "The Lamp", "The Orchard", "The Ferry", "The Letter")
APART = Gap(blanks=2)


def titles(book: Draft) -> list[str]:
    return [chapter.title for chapter in book.division.chapters]


def chapters(names: Sequence[str], look: Look = HEADING) -> list[Block]:
    return [block for name in names for block in (heading(name, look), *told(18))]


@pytest.mark.parametrize("said", ["“Who Was It, Then?”", "“I Won’t!” Said the Ferryman", "“He’s Gone.”"])
@pytest.mark.parametrize("look", [HEADING, CENTRED], ids=["bold centred", "centred"])
def test_a_title_may_be_something_said(said: str, look: Look) -> None:
    names = [*NAMES[:2], said, *NAMES[2:]]
    assert titles(draft(chapters(names, look))) == names


def test_what_is_said_in_the_look_of_the_text_is_no_title() -> None:
    book = draft(chapters(NAMES[:3]), Block("“Who Was It, Then?”", gap=Gap(blanks=1)), told(18))
    assert titles(book) == list(NAMES[:3])


def test_a_dedication_set_like_the_names_heads_nothing() -> None:
    before = [Block("To my sister,\nwho kept the lamp", look=CENTRED, gap=APART), *told(2)]
    named = [[Block(name, look=CENTRED, gap=APART), *told(18)] for name in NAMES]
    assert titles(draft(Block("Low Water", look=CENTRED, gap=APART), before, *named)) == list(NAMES)


def test_a_long_name_goes_on_in_the_next_line() -> None:
    rows = [
        Block("Mr. Anselm Harm, Miss Ilse Tovik, Mr. Brandt the Ferryman,", look=CENTRED, gap=APART),
        Block("and Two Geese Drive Out to See the Weir", look=CENTRED),
    ]
    named = [[Block(name, look=CENTRED, gap=APART), *told(18)] for name in NAMES]
    book = draft(*named[:3], rows, told(18), *named[3:])
    assert titles(book)[3] == " ".join(row.text for row in rows)
    assert len(titles(book)) == len(NAMES) + 1


def test_numbers_within_one_chapter_are_its_sections_where_names_divide_the_book() -> None:
    counted = [[line(number), *told(9)] for number in ("I", "II", "III", "IV")]
    book = draft(chapters(NAMES[:4]), heading(NAMES[4]), *counted)
    assert titles(book) == list(NAMES)
    assert len(book.division.scenes) == len(NAMES) + 3


def test_numbers_within_the_first_and_the_last_chapter_are_their_sections() -> None:
    counted = [[line(number), *told(9)] for number in ("I", "II", "III")]
    long = [[heading(name), *told(200)] for name in NAMES[1:4]]
    book = draft(heading(NAMES[0]), *counted, *long, heading(NAMES[4]), *counted)
    assert titles(book) == list(NAMES)
    assert len(book.division.scenes) == len(NAMES) + 4


def test_numbers_through_the_whole_book_are_its_chapters() -> None:
    counted = [[heading(number), *told(18)] for number in ("I", "II", "III", "IV")]
    named = [Block("The Weir", look=HEADING, gap=Gap(blanks=1)), *told(9)]
    book = draft(*counted, named)
    assert [chapter.number for chapter in book.division.chapters] == [1, 2, 3, 4]


@pytest.mark.parametrize("gap", [APART, Gap(turn="page")], ids=["space", "page"])
def test_a_lone_name_over_the_whole_text_heads_it(gap: Gap) -> None:
    page = [Block("Low Water", look=CENTRED, gap=APART), Block("by Ilse Tovik", look=CENTRED)]
    assert titles(draft(page, Block("The Weir", look=CENTRED, gap=gap), told(60))) == ["The Weir"]


def test_a_dedication_on_a_page_before_the_text_heads_nothing() -> None:
    page = [Block("Low Water", look=CENTRED, gap=APART), Block("by Ilse Tovik", look=CENTRED)]
    first = Block(told(1)[0].text, gap=Gap(turn="page"))
    book = draft(page, Block("Anselm Harm", look=CENTRED, gap=Gap(turn="page")), first, told(60))
    assert titles(book) == [""]


def test_a_plain_name_under_a_typed_break_heads_a_scene() -> None:
    names = ("Ilse’s Notebook", "The Ferryman’s Log", "Ilse’s Notebook", "The Mate’s Tale")
    book = draft(told(18), *[[Block("***", gap=Gap(blanks=1)), line(name), *told(18)] for name in names])
    assert titles(book) == [""]
    assert len(book.division.scenes) == 5


def test_the_first_name_may_stand_right_under_title_and_author() -> None:
    bold = Look(bold=True)
    page = [Block("Low Water", look=bold), Block("Ilse Tovik", look=bold)]
    book = draft(page, *[[Block(name, look=bold), *told(18)] for name in (*NAMES, "The Rope", "The Mill")])
    assert titles(book) == [*NAMES, "The Rope", "The Mill"]
