"""Where scenes begin within a chapter: marks, space, rules, pages, lines of place and date."""

import pytest

from afterdraft.manuscript.blocks import Block, Gap, Look
from tests.manuscript.build import CENTRED, PAGE, SPACE, draft, heading, line, scenes, told


@pytest.mark.parametrize("sign", ["* * *", "#", "⁂", "~", "———", "***", "•", "oOo"])
def test_typed_breaks(sign: str) -> None:
    book = draft(heading("Chapter 1"), told(3), Block(sign, look=CENTRED), told(3), heading("Chapter 2"), told(3))
    assert scenes(book) == [(0, "heading"), (4, "mark"), (8, "heading")]
    assert book.division.roles[4] == "mark"


def test_a_mark_under_a_heading_or_at_the_end_begins_no_scene() -> None:
    book = draft(heading("Chapter 1"), Block("***"), told(3), Block("***"), heading("Chapter 2"), told(3))
    assert scenes(book) == [(0, "heading"), (6, "heading")]


def test_space_is_a_break_where_it_is_rare() -> None:
    book = draft(told(12), Block("Later she slept.", gap=SPACE), told(12))
    assert scenes(book) == [(0, "none"), (12, "space")]


def test_space_is_no_break_where_it_is_everywhere() -> None:
    text = "She waited on the quay until it was dark, with the basket on her knees, and heard the bell twice."
    book = draft([Block(text, gap=SPACE)] * 12)
    assert len(book.division.scenes) == 1


def test_space_of_points_is_a_break() -> None:
    later = Block("Later she slept.", look=Look(space_before=24))
    assert scenes(draft(told(12), later, told(12))) == [(0, "none"), (12, "space")]


def test_a_rule_and_a_new_page_are_breaks() -> None:
    ruled, turned = Block("Later.", gap=Gap(rule=True)), Block("Much later.", gap=PAGE)
    book = draft(heading("Chapter 1"), told(12), ruled, told(12), turned, told(12), heading("Chapter 2"), told(12))
    assert scenes(book) == [(0, "heading"), (13, "mark"), (26, "page"), (39, "heading")]


def test_lines_of_place_and_date_begin_scenes() -> None:
    slug = Look(bold=True)
    book = draft(
        heading("Chapter 1"), told(5), Block("Odda, 4 May", look=slug), told(5), Block("Quay, Night", look=slug),
        told(5), Block("Odda, 6 May", look=slug), told(5), heading("Chapter 2"), told(5),
    )  # fmt: skip
    assert [scene.title for scene in book.division.scenes] == ["", "Odda, 4 May", "Quay, Night", "Odda, 6 May", ""]


def test_titles_in_a_look_of_their_own_begin_scenes() -> None:
    titled = [Block(text, look=CENTRED, gap=SPACE) for text in ("A Late Ferry", "The Rope", "Low Water")]
    book = draft(heading("Chapter 1"), told(4), *[[title, *told(4)] for title in titled], heading("Chapter 2"), told(4))
    assert [scene.title for scene in book.division.scenes] == ["", "A Late Ferry", "The Rope", "Low Water", ""]


def test_space_around_a_letter_or_a_verse_is_no_break() -> None:
    letter = [Block("“Dear Mara,—The rope is gone.”", gap=SPACE), Block("She read it twice.", gap=SPACE)]
    verse = [Block("Low water, low water,\nand nobody home.", gap=SPACE), Block("So he sang.", gap=SPACE)]
    led = [Block("It was plain what he had to say:"), Block("No ferry today.", gap=SPACE)]
    book = draft(told(20), letter, told(20), verse, told(20), led, told(20))
    assert len(book.division.scenes) == 1


def test_the_end_is_a_mark_and_no_chapter() -> None:
    caps = [[Block(f"CHAPTER {n}", gap=SPACE), *told(10)] for n in ("ONE", "TWO", "THREE")]
    book = draft(*caps, Block("THE END", gap=SPACE))
    assert len(book.division.chapters) == 3
    assert book.division.roles[-1] == "mark"


def test_blank_lines_alone_divide_into_scenes_and_a_doubt_is_shown() -> None:
    book = draft(*[[*told(20), line(f"The tide turned on the {day}, and she went down to the quay again.")]
                   for day in ("Monday", "Tuesday", "Friday")], told(20))  # fmt: skip
    assert [(doubt.chosen, doubt.other) for doubt in book.doubts] == [("scene", "chapter")]
    assert book.doubts[0].paragraph == book.division.scenes[1].at


def test_few_headings_for_a_long_text_are_a_doubt_where_blank_lines_divide_it() -> None:
    scenes = [[line("The tide turned, and she went down to the quay again."), *told(60)] for _ in range(10)]
    book = draft(heading("Chapter 1"), *scenes, heading("Chapter 2"), *scenes)
    assert [(doubt.chosen, doubt.other) for doubt in book.doubts] == [("scene", "chapter")]
    assert draft(heading("Chapter 1"), *scenes[:4], heading("Chapter 2"), *scenes[:4]).doubts == ()


def test_a_scene_that_opens_with_talk_is_no_quoted_letter() -> None:
    talk = [line("“The rope is gone,” she said, “and the lamp.”"), *told(2)]
    book = draft(heading("Chapter 1"), told(20), talk, line("By noon the tide had turned."), told(20))
    assert [at for at, _ in scenes(book)] == [0, 21, 24]


def test_a_gap_that_begins_no_scene_is_a_doubt() -> None:
    letter = [line("“Come at once,” he had written."), *told(1)]
    book = draft(
        [heading("Chapter 1"), *told(30), *letter, line("She put it down."), *told(30)], heading("Chapter 2"), told()
    )
    assert {doubt.other for doubt in book.doubts} == {"scene"}
