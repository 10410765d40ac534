"""Books of kinds that leave their division open: a diary, a story in documents, letters, a book without chapters.

Texts of our own; the kinds are common practice of novels. What is asked is mended by its other reading.
"""

import pytest

from afterdraft.manuscript.blocks import Block, Gap, Look
from afterdraft.manuscript.division import Doubt
from afterdraft.manuscript.draft import Draft
from tests.manuscript.build import CENTRED, HEADING, PAGE, SPACE, draft, heading, line, styled, told

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
    doubts = asked(book, "aken for a part")
    assert [doubt.paragraph for doubt in doubts] == [part.at for part in book.division.parts]
    assert {(doubt.chosen, doubt.other) for doubt in doubts} == {("part", "chapter")}


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
    doubts = asked(book, "the heading of a chapter")
    assert len(doubts) > 3
    assert {(doubt.chosen, doubt.other) for doubt in doubts} == {("text", "chapter")}


def test_short_sentences_that_come_again_are_no_headings() -> None:
    said = ("He laughed.", "Nobody spoke.", "Oh!", "“The Weir”")
    assert draft(*[[Block(text), *told(20)] for text in said * 8]).doubts == ()


def test_what_is_asked_of_alike_lines_is_one_question_with_all_of_them() -> None:
    days = [[Block(f"Tuesday, {day} May"), *told(40)] for day in range(1, 31)]
    book = draft(*days)
    assert len({(doubt.what, doubt.other) for doubt in book.doubts}) == 1
    assert [doubt.paragraph for doubt in book.doubts] == [41 * day for day in range(1, 30)]


def test_what_is_asked_of_a_long_book_is_no_more_than_a_handful() -> None:
    skipped = [[heading(f"Chapter {number}"), *told(10)] for number in range(1, 60, 3)]
    lost = [[*told(2), Block("The ferry was late.", gap=PAGE), *told(40)] for _ in range(6)]
    assert 1 < len({doubt.what for doubt in draft(*skipped, *lost).doubts}) <= 8


def test_a_first_name_in_a_heading_style_with_hardly_a_page_under_it_may_be_front_matter() -> None:
    """Styles say that it is a heading, not of what."""
    named = [[styled(name, 1), *told(60)] for name in ("The Weir", "The Lamp", "The Orchard", "The Ferry")]
    book = draft(styled("To Ilse Tovik", 1), told(3), *named)
    assert [(doubt.paragraph, doubt.other) for doubt in asked(book, "little text")] == [(0, "front matter")]
    prologue = draft(styled("Prologue", 1), told(3), *named)
    assert prologue.doubts == ()


def test_a_name_over_verse_alone_heads_no_first_chapter() -> None:
    verse = [Block("The tide goes out,\nThe tide comes in,"), Block("To\nIlse Tovik,\nwho kept the lamp")]
    named = [[styled(name, 2), *told(60)] for name in ("The Weir", "The Lamp", "The Orchard", "The Ferry")]
    book = draft(styled("Low Water", 1), Block("Ilse Orme"), styled("To the Reader Who Waits", 2), verse, *named)
    assert [title for _, _, title in titles(book)] == ["The Weir", "The Lamp", "The Orchard", "The Ferry"]
    assert {book.division.roles[at] for at in range(5)} == {"matter"}


def test_statements_after_the_last_number_are_chapters_of_the_epilogue_in_one_look() -> None:
    """Nothing but bold type, as in a plain file with marks of emphasis."""
    bold = Look(bold=True)
    names = ("The Narrative of Ilse Tovik", "The Harbour Book", "Mr. Harm’s Statement")
    chapters = [[Block(f"Chapter {number}", look=bold), *told(36)] for number in (1, 2, 3)]
    parts = [[Block(name, look=bold), *(one for chapter in chapters for one in chapter)] for name in names]
    whos = ("The Ferryman", "The Mate", "The Clerk", "Ilse", "The Boy")
    said = [[Block(f"The Statement of {who}", look=bold), *told(36)] for who in whos]
    page = [Block("The Salt Road", look=bold), Block("Ilse Orme", look=bold)]
    book = draft(page, *parts, Block("Epilogue: The Lamp Again", look=bold), *said)
    assert titles(book)[-5:] == [("Epilogue: The Lamp Again", None, f"The Statement of {who}") for who in whos]
    assert len(book.division.chapters) == 14


def test_a_line_under_an_epilogue_s_title_is_no_chapter_where_no_other_follows() -> None:
    bold = Look(bold=True)
    chapters = [[Block(f"Chapter {number}", look=bold), *told(36)] for number in (1, 2, 3)]
    book = draft(*chapters, Block("Epilogue: The Lamp", look=bold), Block("A Year After", look=bold), told(36))
    assert [number for _, number, _ in titles(book)] == [1, 2, 3, None]


NAMES = ["The Weir", "The Lamp", "The Orchard", "Ebb", "The Ferry", "Low Water", "The Rope"]


@pytest.mark.parametrize("opens", ["“Who has the rope?” she said.", told(1)[0].text])
def test_a_book_s_title_and_author_in_the_look_of_the_names_head_nothing(opens: str) -> None:
    bold = Look(bold=True)
    named = [[Block(name, look=bold), Block(opens), *told(30)] for name in NAMES]
    book = draft(Block("The Salt Road", look=bold), Block("Ilse Orme", look=bold), *named)
    assert [title for _, _, title in titles(book)] == NAMES
    assert (book.title, book.author) == ("The Salt Road", "Ilse Orme")


def test_nor_where_a_preface_in_plain_type_stands_between() -> None:
    bold = Look(bold=True)
    named = [[Block(name, look=bold), *told(30)] for name in NAMES]
    page = [Block("The Salt Road", look=bold), Block("Ilse Orme", look=bold)]
    book = draft(page, Block("Preface"), told(12), Block("I. O."), *named)
    assert [title for _, _, title in titles(book)] == NAMES
    assert {book.division.roles[at] for at in range(16)} == {"matter"}


def test_names_that_each_have_a_second_line_head_chapters_from_the_first_on() -> None:
    bold = Look(bold=True)
    named = [[Block(name, look=bold), Block("A Night", look=bold), *told(30)] for name in NAMES]
    assert [title for _, _, title in titles(draft(*named))] == NAMES


def test_the_same_in_plain_type_with_space_above() -> None:
    names = ("The Narrative of Ilse Tovik", "The Harbour Book", "Mr. Harm’s Statement")
    gap = Gap(blanks=3)
    chapters = [[Block(f"Chapter {number}", gap=gap), *told(36)] for number in (1, 2, 3)]
    parts = [[heading(name), *(one for chapter in chapters for one in chapter)] for name in names]
    said = [[Block(f"The Statement of {who}", gap=gap), *told(36)] for who in ("The Ferryman", "The Mate")]
    book = draft(heading("The Salt Road"), Block("Ilse Orme"), *parts, heading("Epilogue: The Lamp Again"), *said)
    assert titles(book)[-2:] == [
        ("Epilogue: The Lamp Again", None, f"The Statement of {who}") for who in ("The Ferryman", "The Mate")
    ]


def test_numbers_of_the_first_document_count_where_its_one_begins_a_page() -> None:
    """The others stand with space above them."""
    names = ("The Narrative of Ilse Tovik", "The Harbour Book", "Mr. Harm’s Statement", "The Mate’s Tale")
    chapters = [[Block(f"{number}.", gap=Gap(blanks=2)), *told(72)] for number in (1, 2, 3)]
    first = [Block("1.", gap=PAGE), *told(72), *chapters[1], *chapters[2]]
    rest = [[heading(name), *(one for chapter in chapters for one in chapter)] for name in names]
    book = draft(heading("The Salt Road"), heading("Prologue: The Lamp (1799)"), first, *rest)
    assert [number for _, number, _ in titles(book)] == [1, 2, 3] * 5
    assert book.division.parts[0].title == "Prologue: The Lamp (1799)"


def test_names_over_short_numbered_pages_are_parts() -> None:
    """A number that begins a page begins no section."""
    names = ("The Narrative of Ilse Tovik", "The Harbour Book", "Mr. Harm’s Statement")
    pages = [[heading(number, CENTRED), *told(36)] for number in ("1", "2", "3")]
    book = draft(*[[Block(name, gap=PAGE), *(one for page in pages for one in page)] for name in names])
    assert [number for _, number, _ in titles(book)] == [1, 2, 3] * 3
    assert [part.title for part in book.division.parts] == list(names)


@pytest.mark.parametrize("label", ["Chapter {}", "{}."])
def test_documents_of_several_chapters_and_of_one_stand_side_by_side(label: str) -> None:
    """Two parts; in each a document with numbered chapters, and two of one piece."""

    def document(name: str, chapters: int) -> list[Block]:
        numbered = [[heading(label.format(n), CENTRED, SPACE), *told(72)] for n in range(1, chapters + 1)]
        return [heading(name, CENTRED), *(one for chapter in numbered for one in chapter)]

    def part(word: str, *names: str) -> list[Block]:
        single = [block for name in names[1:] for block in (heading(name, CENTRED), *told(72))]
        return [heading(f"{word} Part", LARGE), *document(names[0], 4), *single]

    book = draft(
        part("First", "The Narrative of Ilse Tovik", "The Mate’s Letter", "What the Boy Saw"),
        part("Second", "The Harbour Book", "Mr. Harm’s Statement", "The Clerk’s Account"),
    )
    assert titles(book) == [
        *(("The Narrative of Ilse Tovik", n, "") for n in (1, 2, 3, 4)),
        ("The Narrative of Ilse Tovik", None, "The Mate’s Letter"),
        ("The Narrative of Ilse Tovik", None, "What the Boy Saw"),
        *(("The Harbour Book", n, "") for n in (1, 2, 3, 4)),
        ("The Harbour Book", None, "Mr. Harm’s Statement"),
        ("The Harbour Book", None, "The Clerk’s Account"),
    ]


def test_named_chapters_of_which_some_have_long_sections_stay_chapters() -> None:
    def chapter(name: str, sections: int) -> list[Block]:
        parts = [[heading(f"{n}.", CENTRED, SPACE), *told(36)] for n in range(1, sections + 1)]
        return [heading(name), *(one for part in parts for one in part)] if sections else [heading(name), *told(150)]

    book = draft(chapter("The Weir", 4), chapter("The Lamp", 0), chapter("The Orchard", 0), chapter("Ebb", 4))
    assert [title for _, _, title in titles(book)] == ["The Weir", "The Lamp", "The Orchard", "Ebb"]


def test_a_part_that_begins_with_a_document_of_one_piece_keeps_it() -> None:
    numbered = [block for n in (1, 2, 3) for block in (heading(f"Chapter {n}", CENTRED, SPACE), *told(72))]
    one = [heading("The Mate’s Letter", CENTRED), *told(72)]
    book = draft(
        [heading("First Part", LARGE), heading("The Narrative of Ilse Tovik", CENTRED), *numbered],
        [heading("Second Part", LARGE), *one, heading("The Harbour Book", CENTRED), *numbered],
    )
    assert titles(book)[3] == ("Second Part", None, "The Mate’s Letter")
    assert len(titles(book)) == 7
