"""A sample of the corpus's novels in every habit, held to what the bench holds all of them to."""

from functools import reduce
from operator import add

import pytest

from afterdraft.formats.table import read
from afterdraft.manuscript.structure import structure
from bench import corpus
from bench.structure.manuscripts import make
from bench.structure.score import Score, score
from bench.structure.section import TARGETS
from bench.structure.writers.habits import HABITS, Habit
from tests.support import need

pytestmark = [pytest.mark.corpus, pytest.mark.slow]

# Bare numbers; letters before chapters; names, no numbers; nested parts, a prologue; titled sections; no chapter.
SAMPLE = ("great-gatsby", "frankenstein", "dr-jekyll", "moonstone", "beautiful-and-damned", "mrs-dalloway")


@pytest.mark.parametrize("habit", HABITS, ids=lambda habit: habit.name)
def test_novels_are_divided_as_they_were_written(habit: Habit) -> None:
    paths = [path for path in corpus.paths() if any(name in path.name for name in SAMPLE)]
    need(len(paths) == len(SAMPLE), "the corpus folder beside the checkout")
    made = [make(corpus.novel(path), habit) for path in paths]
    scores = [score(structure(read(one.data, one.name)), one.plan) for one in made]
    total = reduce(add, scores, Score())
    assert total.chapters.f1 >= TARGETS["chapter F1"], total.faults
    assert total.titles.f1 >= TARGETS["titles"], total.faults
    assert total.breaks.f1 >= TARGETS["break F1"], total.faults
    assert total.texts.recall == TARGETS["text kept"], total.faults
    assert total.story.recall == 1.0
    assert total.front.recall == 1.0
