"""Setups, reveals and threads, from her marks."""

import pytest

from afterdraft.desk.lines import Does, LineKind
from afterdraft.questions.check import Check
from afterdraft.questions.each import payoff_alone, payoff_first, setup_open, setup_silent, thread_open, thread_silent
from afterdraft.questions.marks import Marks
from tests.questions.marked import found_of, line

ASKS: list[tuple[Check, LineKind, list[tuple[int, Does]]]] = [
    (setup_open.CHECK, "setup", [(2, "setup"), (4, "return")]),
    (payoff_alone.CHECK, "setup", [(9, "payoff")]),
    (payoff_first.CHECK, "setup", [(3, "payoff"), (9, "setup")]),
    (setup_silent.CHECK, "setup", [(1, "setup"), (15, "payoff")]),
    (thread_open.CHECK, "thread", [(1, "opens"), (5, "carries")]),
    (thread_silent.CHECK, "thread", [(1, "opens"), (10, "carries"), (12, "closes")]),
]
SILENT: list[tuple[Check, LineKind, list[tuple[int, Does]]]] = [
    (setup_open.CHECK, "setup", [(2, "setup"), (4, "payoff")]),
    (setup_open.CHECK, "setup", []),
    (payoff_alone.CHECK, "setup", [(2, "setup"), (9, "payoff")]),
    (payoff_first.CHECK, "setup", [(3, "setup"), (3, "payoff")]),
    (setup_silent.CHECK, "setup", [(1, "setup"), (8, "return"), (15, "payoff")]),
    (thread_open.CHECK, "thread", [(1, "opens"), (5, "closes")]),
    (thread_silent.CHECK, "thread", [(1, "opens"), (6, "carries"), (12, "closes")]),
]


@pytest.mark.parametrize(("check", "kind", "points"), ASKS)
def test_asks(check: Check, kind: LineKind, points: list[tuple[int, Does]]) -> None:
    (one,) = found_of(check, Marks(lines=(line(kind, "The key", *points),)))
    assert one.words["name"] == "The key"
    assert one.all_scenes


@pytest.mark.parametrize(("check", "kind", "points"), SILENT)
def test_is_silent(check: Check, kind: LineKind, points: list[tuple[int, Does]]) -> None:
    assert not found_of(check, Marks(lines=(line(kind, "The key", *points),)))


@pytest.mark.parametrize(("check", "kind", "points"), ASKS)
def test_other_kinds_of_lines_are_let_be(check: Check, kind: LineKind, points: list[tuple[int, Does]]) -> None:
    assert not found_of(check, Marks(lines=(line("reveal", "The key", *points),)))
