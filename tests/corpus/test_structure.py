"""A sample of the corpus's novels in habits whose every sign is in the file, divided as they were written."""

import pytest

from bench.structure.writers.habits import BARE, BOLD, NUMBERED, ROMAN, STYLES, Habit
from tests.corpus.written import hold, hold_tuned

pytestmark = [pytest.mark.corpus, pytest.mark.slow]

# Bare numbers; letters before chapters; names, no numbers; nested parts, a prologue; titled sections; no chapter.
SAMPLE = ("great-gatsby", "frankenstein", "dr-jekyll", "moonstone", "beautiful-and-damned", "mrs-dalloway")
FIRST = (STYLES, BOLD, NUMBERED, BARE, ROMAN)  # habits whose every sign is in the file, whatever the novel


@pytest.mark.parametrize("habit", FIRST, ids=lambda habit: habit.name)
def test_novels_are_divided_as_they_were_written(habit: Habit) -> None:
    total = hold(habit, SAMPLE)
    assert total.story.recall == 1.0
    assert total.front.recall == 1.0


@pytest.mark.parametrize("habit", FIRST, ids=lambda habit: habit.name)
def test_novels_for_tuning_are_divided_as_they_were_written(habit: Habit) -> None:
    hold_tuned(habit)
