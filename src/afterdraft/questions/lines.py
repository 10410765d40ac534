"""What checks of threads, setups and reveals share."""

from collections.abc import Iterator, Sequence
from itertools import pairwise

from afterdraft.desk.lines import LineKind
from afterdraft.questions.marks import Line, Point
from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen


def lines(seen: Seen, kind: LineKind) -> Iterator[Line]:
    """Those of a kind that are marked anywhere in the draft."""
    return (one for one in seen.marks.lines if one.kind == kind and one.points)


def passages(points: Sequence[Point]) -> tuple[Span, ...]:
    """The passages that she fastened them to, as far as there are any."""
    return tuple(one.passage for one in points if one.passage)


def scenes(points: Sequence[Point]) -> tuple[int, ...]:
    return tuple(one.scene for one in points)


def longest_silence(points: Sequence[Point]) -> tuple[Point, Point] | None:
    """The two points, one right after the other, that are the most scenes apart; None for fewer than two."""
    return max(pairwise(points), key=lambda pair: pair[1].scene - pair[0].scene, default=None)
