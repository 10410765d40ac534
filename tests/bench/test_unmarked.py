"""The bench of unmarked breaks: what it removes, how it scores, and that its floor finds what it should."""

import pytest

from bench.corpus import Break, Chapter, Novel
from bench.unmarked import texttiling
from bench.unmarked.measures import Case, count, masses, measured
from bench.unmarked.truth import Stretch, blind


def _novel(*kinds: str) -> Novel:
    """A chapter of scenes that begin so, two paragraphs each."""
    scenes = tuple((f"*{n}a*", f"{n}b") for n in range(len(kinds)))
    breaks = tuple(Break(kind, "") for kind in kinds)
    return Novel("x", "Dracula", "", (), (), (Chapter(1, "", "", "", "chapter", (), None, scenes, breaks),))


def test_breaks_of_one_kind_are_removed_and_the_others_stay() -> None:
    novel = _novel("start", "hr", "section", "hr-inset")
    first, second = ("0a", "0b", "1a", "1b"), ("2a", "2b", "3a", "3b")
    assert blind(novel, "hr").stretches == (Stretch(first, (2,)), Stretch(second, (2,)))
    assert [one.breaks for one in blind(novel, "section").stretches] == [(), (2,), ()]


@pytest.mark.parametrize(
    ("true", "found", "right"),
    [((5,), (5,), 1), ((5,), (4, 6), 1), ((5,), (7,), 0), ((5, 6), (5,), 1), ((4, 6), (5, 5), 2), ((), (3,), 0)],
)
def test_a_break_counts_once_and_within_one_paragraph(
    true: tuple[int, ...], found: tuple[int, ...], right: int
) -> None:
    counted = count(Case(10, true, found))
    assert (counted.right, counted.found, counted.expected) == (right, len(found), len(true))


def test_all_found_is_the_best_of_every_measure_and_nothing_found_is_worse() -> None:
    best, none = (measured([Case(10, (5,), found)]) for found in ((5,), ()))
    assert (best.count.f1, best.pk, best.window_diff, best.similarity) == (1, 0, 0, 1)
    assert (none.count.f1, none.similarity) == (0, 0)
    assert none.pk > 0
    assert none.window_diff > 0


def test_masses_are_the_lengths_between_breaks() -> None:
    assert masses(10, (3, 7)) == (3, 4, 3)


def test_texttiling_finds_where_every_word_changes() -> None:
    ferry = (
        "The ferry crosses water while ropes, rings, planks, gulls, tar and lanterns creak above grey tidal mud. " * 3
    )
    soup = "Soup needs turnips, pepper, mace, caraway, butter, onions, bones; kettle, ladle, stove and apron wait. " * 3
    texts = [ferry] * 8 + [soup] * 8
    assert texttiling.ranked(texts)[0][0] == 8
    assert 8 in texttiling.boundaries(texts)
    assert texttiling.boundaries(["Short."]) == []
