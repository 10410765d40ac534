"""How near found breaks are to the true ones: F1 at one paragraph's tolerance, and the measures of segmentation that
the library segeval has (Fournier 2013)."""

import warnings
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import fmean
from typing import Any

from bench.structure.score import Count

with warnings.catch_warnings():
    warnings.simplefilter("ignore", SyntaxWarning)  # its docstrings have escapes that Python warns of when it compiles
    warnings.simplefilter("ignore", DeprecationWarning)  # … as which Python 3.11 reports them
    import segeval  # type: ignore[import-untyped]  # it carries no types

    # it imports its own parts when they are first asked for: here, while their warnings are held back
    for name in ("pk", "window_diff", "boundary_similarity", "Dataset"):
        getattr(segeval, name)

TOLERANCE = 1  # paragraphs
Found = Sequence[int]


@dataclass(frozen=True, slots=True)
class Case:
    """A stretch of paragraphs, where its scenes began, and where they were thought to begin."""

    paragraphs: int
    true: Found
    found: Found


@dataclass(frozen=True, slots=True)
class Measured:
    count: Count
    pk: float  # share of windows misjudged: lower is better (Beeferman, Berger & Lafferty 1999)
    window_diff: float  # likewise (Pevzner & Hearst 2002)
    similarity: float  # boundary similarity, higher is better (Fournier 2013)


def count(case: Case) -> Count:
    """Each true break answers to one found break at most, the nearest free one."""
    free = set(case.true)
    for at in case.found:
        near = [place for place in free if abs(place - at) <= TOLERANCE]
        free -= {min(near, key=lambda place: (abs(place - at), place))} if near else set()
    return Count(len(case.true) - len(free), len(case.found), len(case.true))


def measured(cases: Iterable[Case]) -> Measured:
    """F1 over all; the others as means over the stretches that have a break: without one they are not defined, or say
    only that nothing was there."""
    cases = list(cases)
    marked = [case for case in cases if case.true]
    return Measured(
        sum(map(count, cases), Count()),
        _mean(segeval.pk, marked),
        _mean(segeval.window_diff, marked),
        _mean(segeval.boundary_similarity, marked),
    )


def masses(paragraphs: int, breaks: Found) -> tuple[int, ...]:
    """Lengths of the segments, as segeval wants them."""
    places = [0, *sorted(breaks), paragraphs]
    return tuple(end - start for start, end in pairwise(places))


def _mean(measure: Callable[..., Any], cases: Sequence[Case]) -> float:
    values = [measure(masses(c.paragraphs, c.found), masses(c.paragraphs, c.true)) for c in cases]
    return fmean(map(float, values)) if values else 0.0
