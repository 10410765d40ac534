"""How sure it is who speaks: what the odds among those near come to, by what stands beside the words.

The shares are set by hand from how often each kind was right on the tuning half, a little below it, since other books
are harder than those a rule was made on.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Mapping

from afterdraft.whole.speaking import Heard
from afterdraft.whole.speaking_signs import kind
from afterdraft.whole.turns import Turn

NAMED = 0.955  # by a name
SELDOM = 0.86  # by that of somebody the book hardly names: two may still be one, or one two
BY_ROLE = 0.86  # by a role: 'the captain'
BEFORE, BEHIND = 12, 4  # paragraphs around a turn in which somebody must be named to be near
FEW = 3  # people near; among more, whose turn it is says less
SHARES: Mapping[str, tuple[float, float, float]] = {  # at odds of 0, what odds of 1 add, the most
    "none": (0.40, 0.46, 0.82),
    "pronoun": (0.25, 0.75, 0.90),
    "role": (0.0, 0.75, 0.70),
    "act": (0.0, 0.90, 0.82),
    "told": (0.0, 0.90, 0.82),  # an I where nobody is known to tell
}
CROWDED = 0.88  # of all that, where more than a few are near


def of_name(turn: Turn, person: str, seen: Heard) -> float:
    """Where a name or an I beside the words tells."""
    if person in seen.seldom:
        return SELDOM
    return BY_ROLE if turn.by_role else NAMED


def of_odds(odds: float, turn: Turn, seen: Heard) -> float:
    """Where somebody is the likeliest of several; `odds` is their share, 0…1."""
    start, more, most = SHARES[kind(turn)]
    sure = min(most, start + more * odds)
    return sure if _near(turn.paragraph, seen) <= FEW else CROWDED * sure


def _near(paragraph: int, seen: Heard) -> int:
    """How many people are named around a paragraph."""
    first, last = paragraph - BEFORE, paragraph + BEHIND
    return sum(bisect_left(places, first) < bisect_right(places, last) for places in seen.named.values())
