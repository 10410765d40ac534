"""What was read beside what was written, so that a place in the one is found in the other.

Places are compared as the number of letters and digits before them in the whole file, so that marks and
white space, and how a reader cuts paragraphs, have no say.
"""

import re
from bisect import bisect_right
from collections.abc import Iterable, Sequence
from itertools import accumulate

from afterdraft.manuscript.draft import Draft
from bench.structure.writers.plan import Line, Plan, bare

HASHES = re.compile(r"^#+ ")
SHOWN = 6  # words of text in a fault at most


class Stream:
    """Paragraphs as one row of letters and digits, with the place where each paragraph begins."""

    def __init__(self, texts: Sequence[str]) -> None:
        rows = ["".join(filter(str.isalnum, text)) for text in texts]
        self.letters = "".join(rows)
        self.starts = list(accumulate(map(len, rows), initial=0))
        # Marks of emphasis stand for runs and may be gone; their runs are measured on their own.
        # A lone "# Title" in plain text keeps its sign, for it may be anything.
        plain = (HASHES.sub("", text) for text in texts)
        self.signs = "".join("".join(text.split()) for text in plain).replace("_", "").replace("*", "")
        self.texts = texts


class Match:
    """Turns a place in what was read into a place in what was written. Where a stretch of the text was lost, places
    before and after it still count."""

    def __init__(self, draft: Draft, plan: Plan) -> None:
        self.want = Stream([bare(line.text) if line.kind != "break" else line.text for line in plan.lines])
        self.got = Stream([block.text for block in draft.source.blocks])
        a, b = self.want.letters, self.got.letters
        shorter = min(len(a), len(b))
        self.same = shorter if a[:shorter] == b[:shorter] else _common(a, b)
        self.shift = len(a) - len(b)

    def place(self, paragraph: int) -> int:
        at = self.got.starts[paragraph]
        return at if at <= self.same else at + self.shift

    def where(self) -> str:
        line = bisect_right(self.want.starts, self.same) - 1
        return f"near “{short(self.want.texts[min(line, len(self.want.texts) - 1)])}”"


def neutral(lines: Sequence[Line], want: Stream) -> list[tuple[int, int]]:
    return [(want.starts[i], want.starts[i + 1]) for i, line in enumerate(lines) if line.neutral]


def within(place: int, ranges: Iterable[tuple[int, int]]) -> bool:
    return any(a <= place < b for a, b in ranges)


def short(text: str) -> str:
    words = text.split()
    return " ".join(words[:SHOWN]) + (" …" if len(words) > SHOWN else "")


def _common(a: str, b: str) -> int:
    low, high = 0, min(len(a), len(b))
    while low < high:
        middle = (low + high + 1) // 2
        low, high = (middle, high) if a[:middle] == b[:middle] else (low, middle - 1)
    return low
