"""Figures of doubt. Expected calibration error after Naeini, Cooper & Hauskrecht (2015), risk and coverage after
El-Yaniv & Wiener (2010); the expected values here are worked out by hand from those definitions."""

from dataclasses import replace

import pytest

from afterdraft.manuscript.division import Doubt
from bench.structure.decisions import Tally, calibration_error, reliability, risk_against_coverage, tally
from bench.structure.manuscripts import make
from bench.structure.writers.habits import BLANK, HABITS
from tests.bench.test_structure import NOVEL, perfect

PLAN = make(NOVEL, HABITS[1]).plan
DRAFT = perfect(PLAN)
SURE = {(1.0, True): 60, (0.9, True): 27, (0.9, False): 3, (0.6, True): 3, (0.6, False): 7}


def test_a_perfect_draft_has_no_wrong_decision() -> None:
    found = tally(DRAFT, PLAN)
    assert (found.right, found.wrong, found.caught, found.asking) == (3, 0, 1.0, 0.0)


def test_a_break_missed_is_wrong_and_caught_where_a_doubt_asks_for_it() -> None:
    line = next(i for i, one in enumerate(PLAN.lines) if one.scene)
    scenes = tuple(scene for scene in DRAFT.division.scenes if scene.at != line)
    without = replace(DRAFT, division=replace(DRAFT.division, scenes=scenes))
    asked = replace(without, doubts=(Doubt("A break?", line, "text", "scene"),))
    elsewhere = replace(without, doubts=(Doubt("A chapter?", 0, "text", "chapter"),))
    assert [(t.wrong, t.doubted, t.mended) for t in (tally(d, PLAN) for d in (without, asked, elsewhere))] == [
        (1, 0, 0),
        (1, 1, 1),
        (1, 0, 0),
    ]


def test_where_nothing_tells_levels_any_boundary_is_right() -> None:
    plan = make(NOVEL, BLANK).plan
    assert not plan.levels
    told = tally(perfect(plan), plan)
    assert (told.right, told.wrong) == (3, 0)


def test_tallies_add_up() -> None:
    both = Tally(right=3, wrong=1, sure={(1.0, True): 2}) + Tally(right=4, doubts=2, sure={(1.0, True): 1})
    assert (both.right, both.wrong, both.doubts, both.sure) == (7, 1, 2, {(1.0, True): 3})


def test_calibration_by_hand() -> None:
    # classes: 60 at 1.0, all right: gap 0; 30 at 0.9, 27 right: gap 0; 10 at 0.6, 3 right: gap 0.3, weight 10/100
    assert calibration_error(SURE) == pytest.approx(0.03)
    assert calibration_error(SURE, below=0.95) == pytest.approx(0.075)
    assert [row[1] for row in reliability(SURE)] == [10, 30, 60]


def test_risk_and_coverage_by_hand() -> None:
    rows = risk_against_coverage(SURE)
    assert [row[0] for row in rows] == [1.0, 0.9, 0.6]
    assert [row[1] for row in rows] == pytest.approx([0.6, 0.9, 1.0])
    assert [row[2] for row in rows] == pytest.approx([0.0, 3 / 90, 10 / 100])
