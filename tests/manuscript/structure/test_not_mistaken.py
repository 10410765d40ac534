"""What looks like a heading or a break and is none. Texts of our own; the traps are common practice."""

from collections.abc import Sequence

import pytest

from afterdraft.manuscript.blocks import Block, Gap, Look
from afterdraft.manuscript.draft import Draft
from tests.manuscript.build import CENTRED, HEADING, PAGE, SPACE, draft, heading, told

ITALIC = Look(italic=True)
RIGHT = Look(align="right")
TRAPS: dict[str, Sequence[Block]] = {
    "a letter": (
        Block("14 March", look=RIGHT), Block("Dear Ilse,", gap=SPACE), *told(3), Block("Yours,\nHarm", look=RIGHT),
    ),
    "days of a diary": (Block("3 May. Bistow."), *told(2), Block("4 May."), *told(2), Block("5 May."), *told(2)),
    "a play within": (
        Block("HARM. Who keeps the ferry?"), Block("TOVIK. I keep it."), Block("HARM. Then row."), Block("TOVIK. No."),
    ),
    "a numbered list": (
        Block("She wrote down what was missing:"), Block("1. the rope"), Block("2. the lamp"), Block("3. the oars"),
        Block("4. the ferryman"),
    ),
    "a list in capitals": (Block("On the wall it said"), Block("NO SMOKING"), Block("and under it in chalk.")),
    "a verse": (
        Block("She sang it over:", look=Look()),
        Block("The tide goes out, the tide comes in,\nThe ferry rocks upon its chain,", look=ITALIC, gap=SPACE),
        Block("And who goes over shall not win\nHis way across the weir again.", look=ITALIC),
    ),
    "the word I": (*told(1), Block("I"), *told(1), Block("“I."), Block("I. Me. Nobody else."), *told(1)),
    "chapters in dialogue": (
        Block("“Chapter One,” he read aloud."), *told(1), Block("“Chapter Two is worse,” she said."), *told(1),
        Block("Chapter three of her troubles began that night, and it was no shorter than the others."), *told(1),
    ),
    "numbers in dialogue": (Block("“One.”"), Block("“Two.”"), Block("“Three,” he counted."), *told(1)),
    "part of a sentence": (Block("Part of her was glad."), *told(1), Block("Book two seats, he had said."), *told(1)),
}  # fmt: skip
LABELLED = tuple(f"Chapter {n}" for n in (1, 2, 3, 4))
BARE = ("1", "2", "3", "4")


def numbers(book: Draft) -> list[int | None]:
    return [chapter.number for chapter in book.division.chapters]


@pytest.mark.parametrize("trap", TRAPS)
@pytest.mark.parametrize("names", [LABELLED, BARE], ids=["labelled", "bare numbers"])
@pytest.mark.parametrize("look", [HEADING, CENTRED], ids=["bold centred", "centred"])
def test_no_chapter_and_no_scene_is_begun(trap: str, names: Sequence[str], look: Look) -> None:
    pieces = [[heading(name, look), *told(18)] for name in names]
    within = [*pieces[0], *pieces[1], *TRAPS[trap], *told(18), *pieces[2], *pieces[3]]
    book = draft(within)
    assert numbers(book) == [1, 2, 3, 4]
    assert len(book.division.scenes) == 4


def test_an_epigraph_under_a_heading_is_its_head() -> None:
    motto = [Block("Who goes over comes not back.", look=ITALIC), Block("— a song of the ferrymen", look=RIGHT)]
    book = draft(*[[heading(name), *motto, *told(18)] for name in LABELLED])
    assert numbers(book) == [1, 2, 3, 4]
    assert [len(chapter.head) for chapter in book.division.chapters] == [2] * 4
    assert len(book.division.scenes) == 4


def test_sections_within_chapters_are_scenes() -> None:
    section = [Block("The Rope", look=Look(bold=True), gap=SPACE), *told(12)]
    other = [Block("Low Water", look=Look(bold=True), gap=SPACE), *told(12)]
    book = draft(*[[heading(name), *told(12), *section, *other] for name in LABELLED])
    assert numbers(book) == [1, 2, 3, 4]
    assert [scene.title for scene in book.division.scenes] == ["", "The Rope", "Low Water"] * 4


def test_a_contents_page_begins_no_chapter() -> None:
    entries = [Block(f"{name} · The Weir") for name in LABELLED]
    book = draft(
        heading("The Ferry"), heading("Contents"), *entries, *[[heading(name), *told(18)] for name in LABELLED]
    )
    assert numbers(book) == [1, 2, 3, 4]
    assert [piece.kind for piece in book.division.matter][-1] == "contents"


def test_several_books_in_one_file_count_their_chapters_anew() -> None:
    def book(number: int, title: str) -> list[Block]:
        part = Block(f"Book {number}: {title}", look=Look(align="center", bold=True, size=20), gap=PAGE)
        return [part, *[block for name in LABELLED[:3] for block in (heading(name), *told(18))]]

    both = draft(book(1, "The Ferry"), book(2, "The Weir"))
    assert numbers(both) == [1, 2, 3, 1, 2, 3]
    assert [part.title for part in both.division.parts] == ["Book 1: The Ferry", "Book 2: The Weir"]


def test_the_same_without_the_word_book() -> None:
    def book(title: str) -> list[Block]:
        part = Block(title, look=Look(level=1), gap=PAGE)
        heads = [Block(f"Chapter {n}", look=Look(level=2), gap=Gap(turn="page")) for n in (1, 2, 3)]
        return [part, *[block for head in heads for block in (head, *told(18))]]

    both = draft(book("The Ferry"), book("The Weir"))
    assert numbers(both) == [1, 2, 3, 1, 2, 3]
    assert [part.title for part in both.division.parts] == ["The Ferry", "The Weir"]


@pytest.mark.parametrize("said", ["Low Water", "Mara Oh, Yes."])
def test_a_size_that_told_paragraphs_have_as_well_is_no_heading_s(said: str) -> None:
    body, pasted = Look(size=10.0), Look(size=12.5)
    book = draft(
        *[
            [*(Block(told(1)[0].text, look=body) for _ in range(14)), Block(told(1)[0].text, look=pasted), short]
            for short in [Block(said, look=pasted)] * 12
        ]
    )
    assert len(book.division.chapters) == 1
    assert len(book.division.scenes) == 1
    assert book.doubts == ()
