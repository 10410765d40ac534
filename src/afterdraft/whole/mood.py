"""The mood of a book as a line: the valence of its passages, smoothed. A tendency, never a verdict."""

from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import sqrt

from afterdraft.reading.facts import SceneFacts

WINDOW = 10_000  # words (Reagan et al. 2016)
OF_BOOK = 0.2  # of the words of a short book: a window must leave something to be told apart
POINTS = 100


@dataclass(frozen=True, slots=True)
class Point:
    word: int  # place in the book, in words
    valence: float  # -1 to 1
    error: float  # standard error: how far chance alone may lead


@dataclass(frozen=True, slots=True)
class Mood:
    """`window` is in words, to be stated beside the line; `usual` is the book's own mean."""

    window: int
    usual: float
    points: tuple[Point, ...]


@dataclass(frozen=True, slots=True)
class _Passage:
    middle: float
    words: int
    valence: float


def mood(scenes: Sequence[SceneFacts], *, points: int = POINTS) -> Mood:
    """The line at `points` even places from the first word to the last; no points where there are no words.

    Each point is a straight line fitted to the passages of a window of words round it, weighed by their words and by
    the tricube of their distance (local regression, Cleveland 1979). At the ends the window lies to one side: nothing
    ties the end to the beginning, as smoothing by waves does.
    """
    passages = list(_passages(scenes))
    total = sum(one.words for one in passages)
    window = min(WINDOW, round(total * OF_BOOK))
    if not window:
        return Mood(window, 0.0, ())
    middles = [one.middle for one in passages]
    usual = sum(one.words * one.valence for one in passages) / total
    places = [total * number / max(1, points - 1) for number in range(points)]
    return Mood(
        window,
        usual,
        tuple(_point(place, passages, middles, _reach(place, total, window), usual) for place in places),
    )


def _passages(scenes: Sequence[SceneFacts]) -> Iterator[_Passage]:
    start = 0
    for scene in scenes:
        for one in scene.counted:
            if one.words:
                yield _Passage(start + one.words / 2, one.words, one.valence)
                start += one.words


def _reach(place: float, total: int, window: int) -> float:
    """How far a window of so many words goes on its longer side."""
    return max(window / 2, window - min(place, total - place))


def _point(place: float, passages: Sequence[_Passage], middles: Sequence[float], reach: float, usual: float) -> Point:
    near = passages[bisect_left(middles, place - reach) : bisect_right(middles, place + reach)]
    weights = [one.words * (1 - (abs(one.middle - place) / reach) ** 3) ** 3 for one in near]
    if not any(weights):  # one paragraph longer than the window
        return Point(round(place), usual, 0.0)
    pulls = list(_pulls(weights, [one.middle - place for one in near]))
    value = sum(pull * one.valence for pull, one in zip(pulls, near, strict=True))
    spread = sum(w * (one.valence - value) ** 2 for w, one in zip(weights, near, strict=True)) / sum(weights)
    return Point(round(place), max(-1.0, min(1.0, value)), sqrt(spread * sum(pull * pull for pull in pulls)))


def _pulls(weights: Sequence[float], distances: Sequence[float]) -> Iterator[float]:
    """How much each passage counts in the straight line's value at distance 0; they sum to one."""
    total = sum(weights)
    lean = sum(w * d for w, d in zip(weights, distances, strict=True))
    bend = sum(w * d * d for w, d in zip(weights, distances, strict=True))
    whole = total * bend - lean * lean
    for weight, distance in zip(weights, distances, strict=True):
        yield weight * (bend - lean * distance) / whole if whole > 1e-9 * total * bend else weight / total
