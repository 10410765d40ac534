"""Manuscripts in many authors' habits, and how each divides. The habits are common practice of typescripts."""

import pytest

from afterdraft.manuscript.blocks import Block, Gap, Look
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.structure import structure
from tests.manuscript.build import CENTRED, HEADING, PAGE, SPACE, draft, heading, line, made, scenes, styled, told


def chapters(found: Draft) -> list[tuple[int | None, str, str]]:
    return [(chapter.number, chapter.title, chapter.kind) for chapter in found.division.chapters]


def test_an_empty_file_has_an_empty_division() -> None:
    assert draft().division.roles == ()


def test_text_without_headings_is_one_chapter() -> None:
    assert chapters(draft(told())) == [(None, "", "chapter")]


@pytest.mark.parametrize(
    ("first", "second", "found"),
    [
        ("Chapter One", "Chapter Two", [(1, ""), (2, "")]),
        ("CHAPTER THE FIRST", "CHAPTER THE SECOND", [(1, ""), (2, "")]),
        ("Chapter 1: The Ferry", "Chapter 2: The Weir", [(1, "The Ferry"), (2, "The Weir")]),
        ("Chapter 1 The Ferry", "Chapter 2 The Weir", [(1, "The Ferry"), (2, "The Weir")]),
        ("CHAPTER I.—The Ferry", "CHAPTER II.—The Weir", [(1, "The Ferry"), (2, "The Weir")]),
        ("Chapter Twenty-One\nThe Ferry", "Chapter Twenty-Two\nThe Weir", [(21, "The Ferry"), (22, "The Weir")]),
        ("1", "2", [(1, ""), (2, "")]),
        ("I", "II", [(1, ""), (2, "")]),
        ("One", "Two", [(1, ""), (2, "")]),
        ("- 1 -", "- 2 -", [(1, ""), (2, "")]),
        ("1. The Ferry", "2. The Weir", [(1, "The Ferry"), (2, "The Weir")]),
        ("The Ferry", "The Weir", [(None, "The Ferry"), (None, "The Weir")]),
    ],
)
@pytest.mark.parametrize("look", [HEADING, CENTRED, Look()], ids=["bold centred", "centred", "page only"])
def test_headings_on_a_new_page(first: str, second: str, found: list[tuple[int | None, str]], look: Look) -> None:
    book = draft(heading(first, look), told(20), heading(second, look), told(20))
    assert [(number, title) for number, title, _ in chapters(book)] == found
    assert scenes(book) == [(0, "heading"), (21, "heading")]


def test_plain_roman_numbers_parted_by_blank_lines_only() -> None:
    texts = [piece for number in ("I", "II", "III", "IV") for piece in [line(number), *told(15)]]
    assert [number for number, _, _ in chapters(draft(texts))] == [1, 2, 3, 4]


def test_a_paragraph_that_is_the_word_i_is_no_chapter() -> None:
    book = draft(line("I"), told(12), line("II"), told(6), Block("I"), told(6), line("III"), told(12))
    assert [number for number, _, _ in chapters(book)] == [1, 2, 3]
    assert book.division.roles[20] == "story"


def test_page_numbers_typed_into_the_text_are_no_chapters() -> None:
    broken = Block(
        "She had gone as far as the second bridge when the rain, which had been waiting all day for her, came"
    )
    book = draft(*[[*told(5), broken, Block(str(page))] for page in range(1, 12)])
    assert chapters(book) == [(None, "", "chapter")]


def test_a_title_on_the_line_under_the_number() -> None:
    book = draft(
        *[
            [heading(f"CHAPTER {number}"), Block(title, look=HEADING), *told(10)]
            for number, title in (("ONE", "The Ferry"), ("TWO", "The Weir"))
        ]
    )
    assert chapters(book) == [(1, "The Ferry", "chapter"), (2, "The Weir", "chapter")]
    assert book.division.roles[:3] == ("heading", "heading", "story")


def test_a_plain_title_under_a_plain_number() -> None:
    titles = ("The Ferry", "The Weir", "“It’s Mother!”")
    book = draft(*[[heading(str(n), Look()), Block(title), *told(10)] for n, title in enumerate(titles, start=1)])
    assert [title for _, title, _ in chapters(book)] == list(titles)


def test_a_short_first_line_is_no_title_when_other_chapters_have_none() -> None:
    book = draft(heading("1"), Block("Nobody came"), told(10), heading("2"), told(10), heading("3"), told(10))
    assert [title for _, title, _ in chapters(book)] == ["", "", ""]


def test_lines_under_the_heading_are_kept_as_head() -> None:
    italic = Look(align="center", italic=True)
    book = draft(
        heading("Chapter 1"),
        Block("In which a ferry is late", look=italic),
        told(10),
        heading("Chapter 2"),
        Block("Mara’s Notebook", look=italic),
        Block("(Written at night.)", look=italic),
        told(10),
    )
    assert [chapter.head for chapter in book.division.chapters] == [
        ("In which a ferry is late",),
        ("Mara’s Notebook", "(Written at night.)"),
    ]


def test_parts_numbers_that_begin_anew_and_a_conclusion() -> None:
    book = draft(
        heading("PART ONE"),
        Block("The Crossing", look=HEADING),
        heading("1"), told(20), heading("2"), told(20),
        heading("PART TWO: The Shore"),
        heading("1"), told(20), heading("2"), told(20),
        heading("Epilogue"), told(10),
    )  # fmt: skip
    assert [part.title for part in book.division.parts] == ["PART ONE: The Crossing", "PART TWO: The Shore"]
    assert [(c.part, c.number, c.kind) for c in book.division.chapters] == [
        ("part-0", 1, "chapter"),
        ("part-0", 2, "chapter"),
        ("part-1", 1, "chapter"),
        ("part-1", 2, "chapter"),
        ("part-1", None, "epilogue"),
    ]


def test_a_part_that_holds_text_and_no_chapters_is_a_chapter() -> None:
    book = draft(heading("PART ONE"), heading("1"), told(20), heading("2"), told(20), heading("PART TWO"), told(20))
    assert [part.title for part in book.division.parts] == ["PART ONE"]
    assert chapters(book)[-1] == (None, "PART TWO", "other")


def test_heading_styles_and_their_levels() -> None:
    book = draft(
        styled("The Shore", 1), styled("Ferry", 2), told(30), styled("Weir", 2), told(30),
        styled("The Hills", 1), styled("Path", 2), told(30), styled("Stile", 2), told(30), styled("Gate", 2), told(30),
    )  # fmt: skip
    assert [part.title for part in book.division.parts] == ["The Shore", "The Hills"]
    assert [title for _, title, _ in chapters(book)] == ["Ferry", "Weir", "Path", "Stile", "Gate"]


def test_levels_below_the_chapters_are_sections() -> None:
    book = draft(
        styled("Chapter 1", 1), told(5), styled("Morning", 2), told(5), styled("Noon", 2), told(5),
        styled("Chapter 2", 1), styled("Night", 2), told(5),
    )  # fmt: skip
    assert scenes(book) == [(0, "heading"), (6, "heading"), (12, "heading"), (18, "heading")]
    assert [scene.title for scene in book.division.scenes] == ["", "Morning", "Noon", "Night"]


def test_a_title_in_a_style_of_its_own_under_each_number() -> None:
    book = draft(styled("1", 1), styled("Ferry", 2), told(10), styled("2", 1), styled("Weir", 2), told(10))
    assert chapters(book) == [(1, "Ferry", "chapter"), (2, "Weir", "chapter")]


def test_automatic_numbers() -> None:
    book = draft(styled("Ferry", 1, "Chapter 1"), told(5), styled("", 1, "Chapter 2"), told(5))
    assert chapters(book) == [(1, "Ferry", "chapter"), (2, "", "chapter")]


def test_a_chapter_whose_style_was_forgotten() -> None:
    book = draft(
        *[[styled(f"Chapter {number}", 1), *told(10)] for number in (1, 2, 3)],
        Block("Chapter 4"), told(10), styled("Chapter 5", 1), told(10),
    )  # fmt: skip
    assert [number for number, _, _ in chapters(book)] == [1, 2, 3, 4, 5]


def test_sections_that_begin_anew_in_each_chapter() -> None:
    book = draft(
        *[
            [heading(f"Chapter {chapter}"), line("I"), *told(8), line("II"), *told(8), line("III"), *told(8)]
            for chapter in (1, 2)
        ]
    )
    assert len(book.division.chapters) == 2
    assert [began for _, began in scenes(book)] == ["heading"] * 6
    assert [scene.title for scene in book.division.scenes][:3] == ["I", "II", "III"]


def test_contents_are_no_chapters() -> None:
    names = ("Chapter 1 The Ferry", "Chapter 2 The Weir", "Chapter 3 The Gate")
    book = draft(
        heading("The Salt Road"), Block("Contents"), *[Block(name) for name in names],
        *[[heading(name), *told(10)] for name in names],
    )  # fmt: skip
    assert [number for number, _, _ in chapters(book)] == [1, 2, 3]
    assert [matter.kind for matter in book.division.matter] == ["title page", "contents"]


def test_contents_with_page_numbers() -> None:
    entries = [Block(f"{number}. The Ferry\t{number * 12}") for number in (1, 2, 3)]
    book = draft(entries, *[[heading(f"{number}. The Ferry"), *told(10)] for number in (1, 2, 3)])
    assert [number for number, _, _ in chapters(book)] == [1, 2, 3]
    assert book.division.roles[:3] == ("matter",) * 3


def test_front_and_back_matter() -> None:
    book = draft(
        Block("The Salt Road", look=Look(align="center", size=24)),
        Block("by Ilse Maren Tovik", look=CENTRED),
        Block("about 90,000 words"),
        Block("For my sister", look=Look(align="center", italic=True), gap=PAGE),
        heading("Foreword"), told(4),
        heading("Chapter 1"), told(20), heading("Chapter 2"), told(20),
        Block("THE END", look=CENTRED),
        heading("Acknowledgements"), told(2), heading("About the Author"), told(1),
    )  # fmt: skip
    assert [(matter.where, matter.kind) for matter in book.division.matter] == [
        ("front", "title page"),
        ("front", "dedication"),
        ("front", "preface"),
        ("back", "other"),
        ("back", "other"),
    ]
    assert (book.title, book.author) == ("The Salt Road", "Ilse Maren Tovik")
    assert book.division.roles[book.division.matter[3].at - 1] == "mark"
    assert len(book.division.scenes) == 2


def test_title_from_properties_or_file_name() -> None:
    assert structure(made(told(), title="Salt")).title == "Salt"
    assert structure(made(told(), title="Document1", name="the_salt_road draft 2.docx")).title == "the salt road"


def test_numbers_skipped_or_typed_twice_are_doubts() -> None:
    book = draft(*[[heading(f"Chapter {number}"), *told(10)] for number in (1, 2, 2, 5)])
    assert [number for number, _, _ in chapters(book)] == [1, 2, 2, 5]
    assert [doubt.what.split(".")[0] for doubt in book.doubts] == [
        "Chapter 2 comes twice",
        "Chapter 5 follows chapter 2",
    ]


def test_an_ordinary_book_gives_no_doubts() -> None:
    assert draft(*[[heading(f"Chapter {number}"), *told(10)] for number in range(1, 9)]).doubts == ()


def test_an_inscription_in_the_text_is_no_heading() -> None:
    sign = Block("NO FERRY TODAY", look=CENTRED)
    book = draft(heading("Chapter 1"), told(4), sign, told(4), heading("Chapter 2"), told(4))
    assert (len(book.division.scenes), len(book.division.chapters)) == (2, 2)


def test_days_of_a_diary_are_no_chapter_numbers() -> None:
    book = draft(*[[Block(f"{day} May", gap=SPACE), *told(3)] for day in (3, 4, 5, 7)])
    assert [chapter.number for chapter in book.division.chapters] == [None]


def test_each_of_several_files_without_headings_is_a_chapter() -> None:
    second = Block("She woke.", gap=Gap(file=True))
    assert [chapter.at for chapter in draft(told(4), second, told(4)).division.chapters] == [0, 4]


def test_names_of_viewpoints_as_headings() -> None:
    book = draft(*[[heading(name, Look(bold=True), Gap()), *told(15)] for name in ("MARA", "JONAS", "MARA", "JONAS")])
    assert [title for _, title, _ in chapters(book)] == ["MARA", "JONAS", "MARA", "JONAS"]


def test_running_headers_typed_into_the_text_are_no_chapters() -> None:
    header = Block("Tovik / The Salt Road", look=Look(align="right"))
    book = draft(heading("Chapter 1"), *[[header, *told(6)] for _ in range(8)], heading("Chapter 2"), told(6))
    assert [number for number, _, _ in chapters(book)] == [1, 2]


def test_sections_numbered_like_the_chapters_are_told_from_them_by_the_page() -> None:
    parted = [line("I"), *told(8), line("II"), *told(8)]
    book = draft(*[[heading(roman, CENTRED), *parted] for roman in ("I", "II", "III")])
    assert [number for number, _, _ in chapters(book)] == [1, 2, 3]
    assert [began for _, began in scenes(book)] == ["heading"] * 6


def test_names_over_numbers_that_begin_anew_are_the_chapters() -> None:
    parted = [line("1"), *told(10), line("2"), *told(10)]
    book = draft(*[[heading(name, Look(bold=True)), *parted] for name in ("Low Water", "The Rope", "Salt")])
    assert [title for _, title, _ in chapters(book)] == ["Low Water", "The Rope", "Salt"]
    assert len(book.division.scenes) == 6


def test_many_unnumbered_lines_in_the_chapters_look_are_sections() -> None:
    titles = [Block(title, look=CENTRED, gap=SPACE) for title in ("Low Water", "The Rope", "Salt")]
    titled = [block for title in titles for block in (title, *told(5))]
    book = draft(*[[heading(f"Chapter {n}", CENTRED, Gap()), *told(5), *titled] for n in (1, 2, 3, 4)])
    assert [number for number, _, _ in chapters(book)] == [1, 2, 3, 4]
    assert len(book.division.scenes) == 16


def test_letters_before_chapters_that_are_bare_numbers() -> None:
    letters = [[heading(f"Letter {n}", CENTRED), *told(10)] for n in (1, 2)]
    book = draft(*letters, *[[heading(str(n), CENTRED), *told(20)] for n in (1, 2, 3)])
    assert [(number, kind) for number, _, kind in chapters(book)] == [
        (1, "letter"), (2, "letter"), (1, "chapter"), (2, "chapter"), (3, "chapter"),
    ]  # fmt: skip


def test_a_title_that_names_its_number_again() -> None:
    book = draft(heading("Chapter 3"), told(10), heading("Chapter 4"), Block("Fourth Chapter", look=HEADING), told(10))
    assert chapters(book)[1] == (4, "Fourth Chapter", "chapter")


def test_a_very_long_title() -> None:
    title = "In Which Mr. Harm, Miss Tovik, the Ferryman, Two Dogs and the Whole of the Parish Council Drive Out to See the Old Weir, and Find It Gone"  # noqa: E501
    book = draft(heading("Low Water", Look()), told(20), heading(title, Look()), told(20))
    assert [found for _, found, _ in chapters(book)] == ["Low Water", title]


def test_capitals_within_a_sentence_are_no_heading() -> None:
    caps = [[Block(f"CHAPTER {n}"), *told(10)] for n in ("ONE", "TWO", "THREE")]
    book = draft(*caps, Block("NO FERRY"), Block("said the board on the quay."), told(3))
    assert len(book.division.chapters) == 3


def test_an_epilogue_among_plain_headings() -> None:
    plain = [[Block(f"Chapter {n}"), *told(10)] for n in (1, 2, 3)]
    assert chapters(draft(*plain, Block("Epilogue"), told(3)))[-1] == (None, "", "epilogue")


def test_capitals_tell_chapters_from_sections() -> None:
    pieces = [
        [
            heading(title, CENTRED, SPACE),
            *told(15),
            *[x for s in sections for x in (heading(s, CENTRED, SPACE), *told(5))],
        ]
        for title, sections in (
            ("THE FERRY", ("A Late Boat", "The Rope")),
            ("THE WEIR", ("Low Water", "A Lamp")),
            ("THE ORCHARD", ("Windfalls", "The Gate")),
        )
    ]
    book = draft(told(1), *pieces)
    assert [title for _, title, _ in chapters(book) if title] == ["THE FERRY", "THE WEIR", "THE ORCHARD"]


def test_names_in_a_louder_look_with_no_text_of_their_own_are_parts() -> None:
    loud = Look(align="center", bold=True, italic=True)
    parts = [
        [heading(part, loud), *[x for name in names for x in (heading(name), *told(40))]]
        for part, names in (
            ("The Spring", ("The Ferry", "The Weir", "The Rope")),
            ("The Summer", ("The Orchard", "The Lamp", "The Gate")),
            ("The Autumn", ("The Ledger", "The Quarry", "The Bell")),
        )
    ]
    book = draft(*parts)
    assert [part.title for part in book.division.parts] == ["The Spring", "The Summer", "The Autumn"]
    assert len(chapters(book)) == 9


def test_a_lone_first_heading_of_a_whole_book_names_the_book() -> None:
    book = draft(styled("The Weir", 1), Block("by Ilse Tovik"), told(600))
    assert (book.title, chapters(book)) == ("The Weir", [(None, "", "chapter")])


def test_a_lone_first_heading_of_a_chapters_length_names_the_chapter() -> None:
    assert chapters(draft(styled("The Weir", 1), told(60))) == [(None, "The Weir", "chapter")]


def test_a_title_over_several_lines_is_one() -> None:
    rows = ("Chapter 3: Mr. Harm, Miss Tovik, and the Ferryman of", "Lower Quay")
    later = [heading(f"Chapter {n}: The Weir", CENTRED) for n in (4, 5)]
    book = draft(
        [heading(rows[0], CENTRED), Block(rows[1], look=CENTRED)], told(20), later[0], told(20), later[1], told()
    )
    assert chapters(book)[0][:2] == (3, "Mr. Harm, Miss Tovik, and the Ferryman of Lower Quay")


def test_a_file_that_begins_with_another_look_is_a_chapter_among_files_that_are() -> None:
    first = Gap(file=True)
    pieces = [[heading(f"Chapter {n}", HEADING, first), *told(20)] for n in (1, 2, 3)]
    book = draft(*pieces, [Block("The Weir", gap=first), *told(20)])
    assert [title or number for number, title, _ in chapters(book)] == [1, 2, 3, "The Weir"]


def test_files_whose_headings_differ_in_look_are_chapters_all() -> None:
    looks = (CENTRED, HEADING, CENTRED, HEADING, CENTRED, HEADING, CENTRED)
    names = ("The Weir", "Low Water", "The Lamp", "The Rope", "The Ferry", "Salt", "The Bell")
    files = [[Block(name, look=look, gap=Gap(file=True)), *told(20)] for name, look in zip(names, looks, strict=True)]
    assert [title for _, title, _ in chapters(draft(*files))] == list(names)


def test_a_title_may_end_in_an_abbreviation() -> None:
    titles = ("The Weir Company, Ltd.", "The Lamp", "The Orchard")
    book = draft(*[[heading(f"Chapter {n}"), Block(title), *told(18)] for n, title in enumerate(titles, 1)])
    assert [chapter.title for chapter in book.division.chapters] == list(titles)
