"""The best run of numbered headings over a whole file, by dynamic programming.

A line that reads `7` is a chapter heading because a 6 stands some thousand words before it and an 8
some thousand words after, in one look: never by itself. Each candidate has a value of its own
(`worth`: wording and look) and each pair of neighbours one (`step`: do the numbers run on, is the look
the same, is the spacing that of chapters). The run with the highest sum wins; everything else of that
family is text. One pass, a handful of possible predecessors each: linear in the candidates.

All weights are chosen by hand, and checked on the novels of the corpus folder.
"""

from collections import defaultdict, deque
from collections.abc import Sequence
from dataclasses import dataclass

from afterdraft.manuscript.structure.lines import Line

RECENT = 3  # predecessors of one number that are tried
CROWDED = 60  # words: two headings closer than this stand in a list, not in a book
CLOSE = 300  # words: closer than most chapters; a typed page number recurs at about this distance
SKIPPED = 4  # numbers that a writer may have skipped


@dataclass(frozen=True, slots=True)
class Candidate:
    line: Line
    number: int
    worth: float
    told: int  # words of the file before it
    inside: int  # how many headings of a higher rank stand before it


@dataclass(frozen=True, slots=True)
class Chain:
    """Candidates in order, and how good a run they make."""

    found: tuple[Candidate, ...] = ()
    score: float = 0.0

    @property
    def places(self) -> tuple[int, ...]:
        return tuple(one.line.index for one in self.found)


def best_chain(candidates: Sequence[Candidate]) -> Chain:
    """The run with the highest sum of worths and steps; empty where nothing is worth anything."""
    scores: list[float] = []
    came: list[int | None] = []
    recent: defaultdict[int, deque[int]] = defaultdict(lambda: deque(maxlen=RECENT))
    top: int | None = None
    for place, candidate in enumerate(candidates):
        before = [known for gap in range(SKIPPED + 1) for known in recent.get(candidate.number - gap, ())]
        if top is not None and candidate.number <= 1:
            before += [top, place - 1]
        score, origin = max(
            ((scores[other] + step(candidates[other], candidate), other) for other in before),
            default=(0.0, None),
        )
        scores.append(candidate.worth + max(0.0, score))
        came.append(origin if score > 0 else None)
        recent[candidate.number].append(place)
        if top is None or scores[place] > scores[top]:
            top = place
    return _traced(candidates, scores, came, top)


def step(before: Candidate, after: Candidate) -> float:
    """How well `after` follows `before` as the next heading of one run."""
    return _count(before, after) + _spacing(after.told - before.told) + _likeness(before.line, after.line)


def _count(before: Candidate, after: Candidate) -> float:
    gap = after.number - before.number
    if after.number == 1 and gap <= 0:
        return 0.5 if after.inside > before.inside else -1.5
    if gap == 1:
        return 1.0
    return -1.0 if gap == 0 else -0.5 * (gap - 1)


def _spacing(words: int) -> float:
    if words < CROWDED:
        return -3.0
    return -0.5 if words < CLOSE else 0.0


def _likeness(before: Line, after: Line) -> float:
    alike = before.shape._replace(caps=False) == after.shape._replace(caps=False)
    return 0.5 if alike else -0.5


def _traced(
    candidates: Sequence[Candidate], scores: Sequence[float], came: Sequence[int | None], top: int | None
) -> Chain:
    if top is None or scores[top] <= 0:
        return Chain()
    found: list[Candidate] = []
    place: int | None = top
    while place is not None:
        found.append(candidates[place])
        place = came[place]
    return Chain(tuple(reversed(found)), scores[top])
