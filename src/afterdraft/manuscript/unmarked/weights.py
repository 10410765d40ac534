"""How much each sign of a new scene weighs.

Learned by `python -m bench.unmarked.learn` on the tune half of the corpus folder's novels (public domain), rounded to
two places. Each weight is what one unit of the sign adds to the natural logarithm of the odds that a scene begins at
the gap; signs and their scales stand in `features.Gap`. The odds are those of a break that the author marked, at the
places that `choose.peaks` picks; they are low because authors leave most of their changes of scene unmarked.
"""

from dataclasses import dataclass
from typing import Literal

Why = Literal["place", "time", "cast", "words"]


@dataclass(frozen=True, slots=True)
class Weight:
    sign: str  # a field of `features.Gap`
    weight: float
    usual: float  # its mean over all gaps: what the sign says where nothing is the matter
    why: Why | None = None  # the reason it belongs to; None where it is no reason that can be shown


BIAS = -4.48
WEIGHTS = (
    Weight("leap", 1.74, usual=0.01, why="time"),
    Weight("when", 0.62, usual=0.01, why="time"),
    Weight("entry", 2.01, usual=0.01, why="time"),
    Weight("site", 0.58, usual=0.05, why="place"),
    Weight("new_place", 0.41, usual=0.05, why="place"),
    Weight("name_opens", 0.21, usual=0.11, why="cast"),
    Weight("name_first", 0.44, usual=0.14, why="cast"),
    Weight("new_people", 0.26, usual=0.47, why="cast"),
    Weight("apart", 0.34, usual=0.80, why="words"),
    Weight("dip", 3.86, usual=0.00, why="words"),
    Weight("speech_before", -0.34, usual=0.49),
    Weight("talk_after", -0.68, usual=0.49),
    Weight("talk_long_before", 0.17, usual=0.47),
    Weight("trails", 0.24, usual=0.06),
    Weight("long", 0.27, usual=0.46),
)

APART = 200  # words: no two places are nearer, nor nearer to a scene's ends; the best of 200, 300, 500 on the tune half
LEAST = 0.06  # strength from which a place is offered; the best by cross-validation on the tune half
WORDS_EACH = 3_000  # at most one place for so many words of the book: more would be noise (chosen, not learned)
REASON = 0.3  # what a reason must add to be named: the odds become a third better (exp 0.3 = 1.35)
