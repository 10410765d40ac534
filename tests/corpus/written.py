"""Novels of the corpus written in a habit and read back, held to what the bench holds all of them to."""

from functools import cache, reduce
from operator import add

from bench import corpus
from bench.structure.decisions import Tally, tally
from bench.structure.manuscripts import make
from bench.structure.run import read_back
from bench.structure.score import Score, score
from bench.structure.section import TARGETS
from bench.structure.writers.habits import Habit
from tests.support import need

# Of the novels for tuning: letters; titled sections; parts; numbered sections; breaks in diaries; names with numbers.
TUNED = ("frankenstein", "beautiful-and-damned", "house-of-mirth", "old-wives", "dracula", "room-with-a-view")
ALL_BUT_A_THOUSANDTH = 0.999


@cache
def measured(named: str, habit: Habit) -> tuple[Score, Tally]:
    """Of one novel, written in the habit and read back."""
    found = [path for path in corpus.paths() if named in path.name]
    need(found, "the corpus folder beside the checkout")
    (path,) = found
    made = make(corpus.novel(path), habit)
    draft = read_back(made)
    return score(draft, made.plan), tally(draft, made.plan)


def hold(habit: Habit, named: tuple[str, ...]) -> Score:
    """The sum of the scores, which reach the targets."""
    total = reduce(add, (measured(name, habit)[0] for name in named), Score())
    assert total.chapters.f1 >= TARGETS["chapter F1"], total.faults
    assert total.titles.f1 >= TARGETS["titles"], total.faults
    assert total.breaks.f1 >= TARGETS["break F1"], total.faults
    assert total.texts.recall == TARGETS["text kept"], total.faults
    return total


def hold_tuned(habit: Habit) -> None:
    total = hold(habit, TUNED)
    assert total.story.recall >= ALL_BUT_A_THOUSANDTH
    assert total.front.recall >= ALL_BUT_A_THOUSANDTH
