"""TextTiling, the floor to stand on: written from the published description, nothing tuned.

Hearst, Marti A. 1997. TextTiling: Segmenting Text into Multi-paragraph Subtopic Passages. Computational Linguistics
23 (1), 33–64. Her settings: token sequences of 20 words, blocks of 10 sequences, smoothing over 2 (width 3), boundaries
where the depth is over the mean less half a standard deviation (her conservative cut; the liberal one is a whole
deviation less); the gap goes to the nearest end of a paragraph.
"""

import re
from bisect import bisect_left
from collections import Counter
from collections.abc import Sequence
from itertools import accumulate
from math import sqrt
from statistics import fmean, pstdev

SEQUENCE = 20  # words, w in the paper
BLOCK = 10  # sequences, k in the paper
APART = 4  # sequences: two boundaries are no nearer (three intervening, as in the paper)
_COMMON = """
a about all an and any are as at be been but by could did do for from had has have he her him his i if in into is it its
me my no not of on one or our out said she so some than that the their them then there they this to up upon us was we
were what when which who will with would you your
"""
_STOP = frozenset(_COMMON.split())


def boundaries(texts: Sequence[str]) -> list[int]:
    """Paragraphs of `texts` at which a new tile begins, by her cut."""
    found = ranked(texts)
    if not found:
        return []
    depths = _depths_of(_words(texts))
    cut = fmean(depths) - pstdev(depths) / 2
    return sorted({paragraph for paragraph, depth in found if depth > cut})


def ranked(texts: Sequence[str]) -> list[tuple[int, float]]:
    """Paragraphs with the depth of the valley before them, the deepest first, without a cut."""
    words = _words(texts)
    ends = list(accumulate(map(len, words)))
    depths = _depths_of(words)
    found: dict[int, float] = {}
    for gap in _peaks(depths):
        found.setdefault(_paragraph(ends, (gap + 1) * SEQUENCE), depths[gap])
    return [(paragraph, depth) for paragraph, depth in found.items() if paragraph > 0]


def _words(texts: Sequence[str]) -> list[list[str]]:
    return [re.findall(r"\w+", text.lower()) for text in texts]


def _depths_of(words: Sequence[Sequence[str]]) -> list[float]:
    """Of the gap after each sequence of words but the last."""
    stream = [word for paragraph in words for word in paragraph]
    bags = [
        Counter(word for word in stream[at : at + SEQUENCE] if word not in _STOP)
        for at in range(0, len(stream), SEQUENCE)
    ]
    return _depths(_smooth([_likeness(bags, gap) for gap in range(1, len(bags))]))


def _likeness(bags: Sequence[Counter[str]], gap: int) -> float:
    left = sum(bags[max(0, gap - BLOCK) : gap], Counter[str]())
    right = sum(bags[gap : gap + BLOCK], Counter[str]())
    size = sqrt(sum(n * n for n in left.values()) * sum(n * n for n in right.values()))
    return sum(n * right[word] for word, n in left.items()) / size if size else 0.0


def _smooth(values: Sequence[float]) -> list[float]:
    return [fmean(values[max(0, at - 1) : at + 2]) for at in range(len(values))]


def _depths(values: Sequence[float]) -> list[float]:
    return [_climb(values, at, -1) + _climb(values, at, 1) for at in range(len(values))]


def _climb(values: Sequence[float], at: int, step: int) -> float:
    """How far the values rise from `at` to the next peak on one side."""
    top = at
    while 0 <= top + step < len(values) and values[top + step] >= values[top]:
        top += step
    return values[top] - values[at]


def _peaks(depths: Sequence[float]) -> list[int]:
    """Gaps, the deepest first, none near one that is deeper."""
    found: list[int] = []
    taken: set[int] = set()
    for gap in sorted(range(len(depths)), key=lambda gap: -depths[gap]):
        if gap not in taken:
            found.append(gap)
            taken.update(range(gap - APART + 1, gap + APART))
    return found


def _paragraph(ends: Sequence[int], place: int) -> int:
    """The paragraph that begins nearest to `place`, in words; 0 for none inside."""
    starts = [0, *ends[:-1]]
    after = min(bisect_left(starts, place), len(starts) - 1)
    return min((after - 1, after), key=lambda one: abs(starts[one] - place) if one >= 0 else place + 1)
