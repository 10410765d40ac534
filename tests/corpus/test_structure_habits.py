"""Novels of the corpus in all the other habits, which leave signs out, divided as they were written."""

import pytest

from bench.structure.writers.habits import BLANK, HABITS, Habit
from tests.corpus.test_structure import FIRST
from tests.corpus.written import TUNED, hold_tuned, measured

pytestmark = [pytest.mark.corpus, pytest.mark.slow]


@pytest.mark.parametrize("habit", [one for one in HABITS if one not in FIRST], ids=lambda habit: habit.name)
def test_novels_in_every_other_habit_are_divided_as_they_were_written(habit: Habit) -> None:
    hold_tuned(habit)


def test_where_blank_lines_mark_chapters_and_scenes_a_doubt_is_shown() -> None:
    """Boundaries are scored above, whatever their level; the writer is asked which they are."""
    assert all(measured(name, BLANK)[1].asked for name in TUNED)
