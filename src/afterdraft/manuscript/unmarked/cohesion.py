"""How much the words before a gap are the words after it.

Block comparison as in TextTiling (Hearst 1997): the cosine of word counts in a window on either side, stop words left
out. The windows slide, so that the work is linear in the text.
"""

from collections.abc import Iterator, Sequence
from math import sqrt


def cohesion(bags: Sequence[Sequence[str]], window: int) -> list[float]:
    """For each gap before paragraph 1, 2, … of `bags`: 0…1; `window` is in words, whole paragraphs are taken."""
    pair = _Pair()
    ends = list(_ends(bags, window))
    starts = list(_starts(bags, window))
    found: list[float] = []
    left, right = 0, 0
    for gap in range(1, len(bags)):
        while right < ends[gap]:
            pair.add(bags[right], 1)
            right += 1
        pair.move(bags[gap - 1])
        while left < starts[gap]:
            pair.drop(bags[left])
            left += 1
        found.append(pair.cosine())
    return found


class _Pair:
    """Two bags of words, with the product of their counts and the squares of each kept up to date."""

    def __init__(self) -> None:
        self._counts: tuple[dict[str, int], dict[str, int]] = ({}, {})
        self._squares = [0, 0]
        self._product = 0

    def add(self, words: Sequence[str], side: int) -> None:
        mine, other = self._counts[side], self._counts[1 - side]
        for word in words:
            had = mine.get(word, 0)
            self._squares[side] += 2 * had + 1
            self._product += other.get(word, 0)
            mine[word] = had + 1

    def take(self, words: Sequence[str], side: int) -> None:
        mine, other = self._counts[side], self._counts[1 - side]
        for word in words:
            had = mine[word]
            self._squares[side] -= 2 * had - 1
            self._product -= other.get(word, 0)
            mine[word] = had - 1

    def move(self, words: Sequence[str]) -> None:
        """From after the gap to before it."""
        self.take(words, 1)
        self.add(words, 0)

    def drop(self, words: Sequence[str]) -> None:
        self.take(words, 0)

    def cosine(self) -> float:
        size = self._squares[0] * self._squares[1]
        return self._product / sqrt(size) if size else 0.0


def _ends(bags: Sequence[Sequence[str]], window: int) -> Iterator[int]:
    """For each paragraph, where the window that begins with it ends."""
    end, held = 0, 0
    for start, bag in enumerate(bags):
        while end < len(bags) and held < window:
            held += len(bags[end])
            end += 1
        yield max(end, start + 1)
        held -= len(bag)


def _starts(bags: Sequence[Sequence[str]], window: int) -> Iterator[int]:
    """For each gap, where the window that ends at it begins."""
    start, held = 0, 0
    for bag in bags:
        while held - (len(bags[start]) if start < len(bags) else 0) >= window:
            held -= len(bags[start])
            start += 1
        yield start
        held += len(bag)
