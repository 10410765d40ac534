"""A sample of the corpus's novels in every habit, held to what the bench holds all of them to."""

from functools import reduce
from operator import add

import pytest

from bench import corpus
from bench.structure.decisions import tally
from bench.structure.manuscripts import make
from bench.structure.run import read_back
from bench.structure.score import Score, score
from bench.structure.section import TARGETS
from bench.structure.writers.habits import BARE, BLANK, BOLD, HABITS, NUMBERED, ROMAN, STYLES, Habit
from tests.support import need

pytestmark = [pytest.mark.corpus, pytest.mark.slow]

# Bare numbers; letters before chapters; names, no numbers; nested parts, a prologue; titled sections; no chapter.
SAMPLE = ("great-gatsby", "frankenstein", "dr-jekyll", "moonstone", "beautiful-and-damned", "mrs-dalloway")
# Of the novels for tuning: letters; titled sections; parts; numbered sections; breaks in diaries; names with numbers.
TUNED = ("frankenstein", "beautiful-and-damned", "house-of-mirth", "old-wives", "dracula", "room-with-a-view")
ALL_BUT_A_THOUSANDTH = 0.999
FIRST = (STYLES, BOLD, NUMBERED, BARE, ROMAN)  # habits whose every sign is in the file, whatever the novel


def novels(named: tuple[str, ...]) -> list[corpus.Novel]:
    paths = [path for path in corpus.paths() if any(name in path.name for name in named)]
    need(len(paths) == len(named), "the corpus folder beside the checkout")
    return [corpus.novel(path) for path in paths]


def hold(habit: Habit, some: list[corpus.Novel]) -> Score:
    """The sum of the scores, which reach the targets."""
    made = [make(novel, habit) for novel in some]
    total = reduce(add, (score(read_back(one), one.plan) for one in made), Score())
    assert total.chapters.f1 >= TARGETS["chapter F1"], total.faults
    assert total.titles.f1 >= TARGETS["titles"], total.faults
    assert total.breaks.f1 >= TARGETS["break F1"], total.faults
    assert total.texts.recall == TARGETS["text kept"], total.faults
    return total


@pytest.mark.parametrize("habit", FIRST, ids=lambda habit: habit.name)
def test_novels_are_divided_as_they_were_written(habit: Habit) -> None:
    total = hold(habit, novels(SAMPLE))
    assert total.story.recall == 1.0
    assert total.front.recall == 1.0


@pytest.mark.parametrize("habit", HABITS, ids=lambda habit: habit.name)
def test_novels_in_every_habit_are_divided_as_they_were_written(habit: Habit) -> None:
    total = hold(habit, novels(TUNED))
    assert total.story.recall >= ALL_BUT_A_THOUSANDTH
    assert total.front.recall >= ALL_BUT_A_THOUSANDTH


def test_where_blank_lines_mark_chapters_and_scenes_a_doubt_is_shown() -> None:
    """Boundaries are scored above, whatever their level; the writer is asked which they are."""
    made = [make(novel, BLANK) for novel in novels(TUNED)]
    assert all(tally(read_back(one), one.plan).asked for one in made)
