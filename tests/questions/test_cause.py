"""What follows from what, and what people carry from scene to scene."""

import pytest

from afterdraft.questions.each import carried, loose_scene, no_cause
from afterdraft.questions.marks import Carried, Marks
from tests.questions.marked import found_of, line

FOLLOWS = ((1, 0), (2, 1), (3, 2), (5, 3), (6, 5), (7, 6))


def test_asks_about_a_scene_that_hangs_on_nothing() -> None:
    one = found_of(loose_scene.CHECK, Marks(follows=FOLLOWS), scenes=8)
    assert [finding.scenes for finding in one] == [(4,)]


def test_is_silent_about_a_scene_that_carries_a_thread_and_where_links_are_only_begun() -> None:
    thread = line("thread", "The key", (4, "carries"))
    assert not found_of(loose_scene.CHECK, Marks(follows=FOLLOWS, lines=(thread,)), scenes=8)
    assert not found_of(loose_scene.CHECK, Marks(follows=FOLLOWS[:1]), scenes=8)
    assert not found_of(loose_scene.CHECK, Marks(), scenes=8)


def test_asks_about_the_longest_run_without_cause() -> None:
    (one,) = found_of(no_cause.CHECK, Marks(follows=((1, 0), (2, 1), (9, 2), (10, 9))), scenes=12)
    assert one.scenes == (2, 3, 4, 5, 6, 7, 8)


def test_is_silent_where_one_follows_from_another() -> None:
    assert not found_of(no_cause.CHECK, Marks(follows=FOLLOWS), scenes=8)


@pytest.mark.parametrize(
    ("leaves", "comes_in", "asks"),
    [
        ("the drawing, and a promise", "angry", True),
        ("the drawing", "the wet coat", False),
        ("angry", "angry with him still", False),
        ("a promise", "", False),
    ],
)
def test_asks_where_somebody_comes_in_as_they_did_not_leave(leaves: str, comes_in: str, *, asks: bool) -> None:
    marks = Marks(carried=(Carried(3, "ilse", leaves=leaves), Carried(5, "ilse", comes_in=comes_in)))
    assert bool(found_of(carried.CHECK, marks)) is asks


def test_is_silent_where_much_lies_between() -> None:
    marks = Marks(carried=(Carried(3, "ilse", leaves="a promise"), Carried(15, "ilse", comes_in="angry")))
    assert not found_of(carried.CHECK, marks)
