"""Books of kinds that leave their division open: a diary, a story in documents, letters, a book without chapters.

Texts of our own; the kinds are common practice of novels. What is asked is mended by its other reading.
"""

from afterdraft.manuscript.blocks import Block, Gap, Look
from afterdraft.manuscript.division import Doubt
from afterdraft.manuscript.draft import Draft
from tests.manuscript.build import CENTRED, HEADING, PAGE, SPACE, draft, heading, line, told

LARGE = Look(align="center", bold=True, size=16)
WIDE = Gap(blanks=2)


def titles(book: Draft) -> list[tuple[str, int | None, str]]:
    """Part, number and title of each chapter."""
    parts = {part.id: part.title for part in book.division.parts}
    return [(parts.get(one.part or "", ""), one.number, one.title) for one in book.division.chapters]


def asked(book: Draft, word: str) -> list[Doubt]:
    return [doubt for doubt in book.doubts if word in doubt.what]


def documents() -> list[Block]:
    """Three narratives of some 12,000 words, with chapters numbered anew in each."""
    names = ("The Narrative of Ilse Tovik", "The Harbour Book", "Mr. Harm’s Statement")
    chapters = [[heading(number, CENTRED, SPACE), *told(75)] for number in ("ONE", "TWO", "THREE", "FOUR")]
    return [block for name in names for block in (heading(name), *(one for chapter in chapters for one in chapter))]


def test_narratives_that_hold_chapters_are_parts_though_they_do_not_say_so() -> None:
    book = draft(documents())
    assert titles(book)[3:6] == [
        ("The Narrative of Ilse Tovik", 4, ""),
        ("The Harbour Book", 1, ""),
        ("The Harbour Book", 2, ""),
    ]
    doubts = asked(book, "was taken for a part")
    assert [doubt.paragraph for doubt in doubts] == [one.at for one in book.division.chapters[::4]]
    assert {(doubt.chosen, doubt.other) for doubt in doubts} == {("chapter", "scene")}


def test_names_right_above_each_chapter_one_are_parts() -> None:
    bold = Look(bold=True)
    names = ("The Narrative of Ilse Tovik", "The Harbour Book", "Mr. Harm’s Statement")
    chapters = [[Block(f"Chapter {number}", look=bold), *told(20)] for number in (1, 2, 3)]
    pieces = [piece for name in names for piece in ([Block(name, look=bold)], *chapters)]
    book = draft(Block("Low Water", look=HEADING), Block("by Ilse Orme", look=CENTRED), *pieces)
    assert [(part, number) for part, number, _ in titles(book)] == [(name, n) for name in names for n in (1, 2, 3)]


def test_an_epilogue_of_several_statements_holds_them() -> None:
    statements = [heading(f"WHAT {who} SAW", CENTRED, SPACE) for who in ("THE FERRYMAN", "THE MATE", "THE CLERK")]
    epilogue = [heading("Epilogue: The Lamp Again", LARGE), statements[0], *told(20)]
    book = draft(documents(), epilogue, statements[1], told(20), statements[2], told(20))
    assert titles(book)[-3:] == [
        ("Epilogue: The Lamp Again", None, f"WHAT {who} SAW") for who in ("THE FERRYMAN", "THE MATE", "THE CLERK")
    ]


def test_a_book_without_headings_is_asked_where_it_begins() -> None:
    page = [Block(told(1)[0].text, gap=PAGE), *told(4)]
    story = [Block("The ferry was late.", gap=PAGE), *told(60)]
    book = draft(Block("The Salt Road", look=HEADING), page, story)
    doubts = asked(book, "No heading shows where the story begins")
    assert [(doubt.paragraph, doubt.other) for doubt in doubts] == [(1, "text"), (6, "chapter")]


def test_a_text_of_one_piece_is_asked_nothing() -> None:
    assert draft(told(600)).doubts == ()


def test_names_that_space_alone_sets_apart_are_asked_about() -> None:
    names = ("Ilse’s Notebook", "The Ferryman’s Log", "Ilse’s Notebook", "The Mate’s Tale", "Ilse’s Notebook")
    book = draft(*[[Block(name, gap=SPACE), *told(18)] for name in names])
    assert [title for _, _, title in titles(book)] == list(names)
    doubts = asked(book, "because of the space above it")
    assert [doubt.paragraph for doubt in doubts] == [one.at for one in book.division.chapters[1:]]
    assert {doubt.other for doubt in doubts} == {"scene"}


def test_names_that_leave_one_chapter_most_of_a_book_are_asked_about() -> None:
    short = [[Block(name, look=CENTRED), *told(20)] for name in ("September 2nd", "September 5th", "September 9th")]
    book = draft(Block("To Mrs. Harm", look=CENTRED), told(600), *short)
    assert len(book.division.chapters) == 4
    assert len(asked(book, "very unequal length")) == 4


def test_a_first_name_with_hardly_a_page_under_it_may_be_front_matter() -> None:
    named = [[heading(name, CENTRED), *told(60)] for name in ("The Weir", "The Lamp", "The Orchard", "The Ferry")]
    book = draft(heading("To Ilse Tovik", CENTRED), told(3), *named)
    assert [(doubt.paragraph, doubt.other) for doubt in asked(book, "little text")] == [(0, "front matter")]


def test_sections_as_long_as_chapters_are_asked_about() -> None:
    parted = [line("1"), *told(90), line("2"), *told(90)]
    book = draft(*[[heading(f"Chapter {number}"), *parted] for number in ("One", "Two", "Three")])
    doubts = asked(book, "heading of a section")
    assert len(doubts) == 3
    assert {(doubt.chosen, doubt.other) for doubt in doubts} == {("scene", "chapter")}


def test_a_page_where_a_number_is_missing_may_begin_that_chapter() -> None:
    lost = [Block("The ferry was late.", gap=PAGE), *told(40)]
    book = draft(heading("1"), told(40), heading("2"), told(40), lost, heading("4"), told(40))
    (doubt,) = book.doubts
    assert book.source.blocks[doubt.paragraph].text == "The ferry was late."
    assert (doubt.chosen, doubt.other) == ("scene", "chapter")
    assert doubt.what.startswith("Chapter 3 is missing")


def test_dates_over_the_days_of_a_diary_may_be_headings() -> None:
    days = [[Block(f"Tuesday, {day} May"), *told(40)] for day in range(1, 20)]
    book = draft(*days)
    assert len(book.division.chapters) == 1
    doubts = asked(book, "may be the heading of a chapter")
    assert len(doubts) > 3
    assert {(doubt.chosen, doubt.other) for doubt in doubts} == {("text", "chapter")}


def test_short_sentences_that_come_again_are_no_headings() -> None:
    said = ("He laughed.", "Nobody spoke.", "Oh!", "“The Weir”")
    assert draft(*[[Block(text), *told(20)] for text in said * 8]).doubts == ()


def test_what_is_asked_of_a_long_book_is_no_more_than_a_handful() -> None:
    days = [[Block(f"Tuesday, {day} May"), *told(40)] for day in range(1, 31)]
    assert len(draft(*days).doubts) == 8
