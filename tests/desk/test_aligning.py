"""Which scene each row of a scene list means; the lists and books are invented."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.desk.aligning import Pair, Placed, aligned, meant, stems
from afterdraft.desk.scene_list import Kind, Listed
from afterdraft.manuscript.division import Chapter

CHAPTERS = (
    Chapter("c0", 0, None, "prologue", None, ""),
    Chapter("c1", 1, None, "chapter", 1, "The Lock House"),
    Chapter("c2", 2, None, "chapter", 2, "High Water"),
)
TEXTS = (
    (0, "The bell rang over the drowned village and nobody was there to hear it."),
    (1, "Bastian wrote the level of the water in the book."),
    (1, "A man came about the eels. He had a letter with a stamp."),
    (1, "Behind the house the nets hung stiff with salt."),
    (2, "On Thursday the gauge was gone, and the ferryman with it."),
    (2, "They found it in the reeds, bent like a spoon."),
)


def placed() -> list[Placed]:
    within: dict[int, int] = {}
    scenes = []
    for n, (chapter, text) in enumerate(TEXTS):
        within[chapter] = within.get(chapter, 0) + 1
        scenes.append(Placed(f"K{n + 2}", "The eel man" if n == 2 else "", chapter, within[chapter], stems(text)))
    return scenes


def row(**texts: str) -> Listed:
    named: dict[Kind, str] = {"first words" if kind == "first" else kind: text for kind, text in texts.items()}  # type: ignore[misc]
    return Listed(0, named, ())


def pairs(*rows: Listed) -> list[tuple[int, str] | None]:
    return [(pair.scene, pair.by) if pair else None for pair in aligned(rows, placed(), CHAPTERS)]


def test_a_code_is_believed_wherever_it_stands_also_twice() -> None:
    assert pairs(row(code=" k6 ", summary="eels"), row(code="K2"), row(code="K6")) == [
        (4, "code"),
        (0, "code"),
        (4, "code"),
    ]


def test_words_tell_which_scene_where_scenes_and_rows_are_missing() -> None:
    assert pairs(
        row(summary="A man brings a letter about eels"),
        row(summary="Zeppelins"),
        row(summary="The gauge has gone; so has the ferryman"),
        row(summary="The bent gauge is found among reeds"),
    ) == [(2, "words"), (3, "order"), (4, "words"), (5, "words")]


def test_a_title_and_a_number_tell_more_than_words() -> None:
    assert pairs(row(title="the  EEL man", summary="Bastian and the level of the water")) == [(2, "title")]
    assert pairs(*(row(number=str(n), summary="x") for n in (1, 2, 4, 6))) == [
        (0, "number"),
        (1, "number"),
        (3, "number"),
        (5, "number"),
    ]


def test_numbers_that_begin_anew_count_within_chapters() -> None:
    rows = [("Prologue", "1"), ("1", "1"), ("1", "3"), ("2", "1"), ("2", "2")]
    assert [pair and pair[0] for pair in pairs(*(row(chapter=chapter, number=number) for chapter, number in rows))] == [
        *(0, 1, 3, 4, 5)
    ]
    assert pairs(row(number="2.3"), row(number="3.2")) == [(3, "number"), (5, "number")]


def test_a_row_of_another_chapter_meets_nothing() -> None:
    assert pairs(row(chapter="High Water", summary="x"), row(chapter="High Water"), row(chapter="High Water")) == [
        (4, "order"),
        (5, "order"),
        None,
    ]


def test_in_order_where_nothing_else_is_known() -> None:
    assert pairs(*(row(summary="…") for _ in TEXTS)) == [(n, "order") for n in range(6)]


@pytest.mark.parametrize(
    ("text", "chapters"),
    [
        ("Prologue", {0}),
        ("1", {1}),
        ("Chapter One", {1}),
        ("ch. II", {2}),
        ("Chapter 2: High Water", {2}),
        ("high water", {2}),
        ("CHAPTER TWO — Something Else", {2}),
        ("3", {2}),
        ("Chapter 9", set()),
        ("Interlude", set()),
        ("", set()),
    ],
)
def test_which_chapter_is_meant(text: str, chapters: set[int]) -> None:
    assert meant(text, CHAPTERS) == chapters


WORDS = st.sampled_from(["eels", "reeds", "Bastian", "gauge", "nets", "bell", "zeppelin", ""])


@given(
    st.lists(st.tuples(WORDS, st.sampled_from(["", "1", "2", "Prologue", "9"]), st.sampled_from(["", "1", "2.1", "x"])))
)
def test_pairs_never_cross_and_no_scene_has_two_rows(rows: list[tuple[str, str, str]]) -> None:
    listed = [row(summary=summary, chapter=chapter, number=number) for summary, chapter, number in rows]
    found = [pair.scene for pair in aligned(listed, placed(), CHAPTERS) if pair]
    assert found == sorted(set(found))


@given(st.permutations(range(6)))
def test_codes_lead_anywhere(order: list[int]) -> None:
    found = aligned([row(code=f"K{n + 2}") for n in order], placed(), CHAPTERS)
    assert found == tuple(Pair(n, "code") for n in order)
