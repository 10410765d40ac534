"""Where a passage of the old draft is in the new one: what notes, marks and corrections follow."""

import re
from bisect import bisect_right
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from afterdraft.comparison.changes import Change, changes
from afterdraft.comparison.comparison import Comparison, Pair
from afterdraft.manuscript.words import count

State = Literal["there", "changed", "gone"]
TELLING = 5  # words of a passage that is known again anywhere, where it stands once in each draft
HALF = 0.5  # share of a passage's letters that must have been kept for it to be changed, and not gone
REMEMBERED = 512  # pairs of paragraphs whose changes are kept at hand: a scene's marks are carried together
NEAR = 40  # characters in which the next word is looked for
WORD = re.compile(r"\w+")
JOIN = "\n"


@dataclass(frozen=True, slots=True)
class Carried:
    """What became of a passage: `there` word for word, `changed`, or `gone`; then `paragraph` is None."""

    state: State
    paragraph: int | None = None  # story paragraph of the new draft
    start: int = 0  # half-open, characters
    end: int = 0


class Carrier:
    """Carries passages over one comparison."""

    def __init__(self, comparison: Comparison) -> None:
        self._old, self._new = comparison.old.paragraphs, comparison.new.paragraphs
        self._pairs: defaultdict[int, list[Pair]] = defaultdict(list)
        for pair in comparison.pairs:
            self._pairs[pair.old].append(pair)
        self._texts = _Text(self._old), _Text(self._new)
        self._changes = lru_cache(REMEMBERED)(lambda old, new: changes(self._old[old], self._new[new]))

    def carried(self, paragraph: int, start: int, end: int) -> Carried:
        """Where `start…end` of the old draft's story paragraph is now.

        First in the paragraphs that it became; then, if it is long enough to be known, wherever else it stands once;
        then what is left of it.
        """
        quote = self._old[paragraph][start:end]
        partners = sorted(self._pairs[paragraph], key=lambda pair: -pair.kept)
        return (
            next(self._unchanged(partners, quote, start), None)
            or self._elsewhere(quote)
            or next(self._changed(partners, start, end), None)
            or Carried("gone")
        )

    def _unchanged(self, partners: list[Pair], quote: str, start: int) -> Iterator[Carried]:
        """The same words in a partner, at the place that the words around them lead to, or nearest to it.

        Few words that stand elsewhere are others, unless they stand once in both and between the same words.
        """
        for pair in partners:
            old, new = self._old[pair.old], self._new[pair.new]
            places = list(_occurrences(new, quote)) if quote else []
            if not places:
                continue
            wanted = start if old == new else _mapped(self._changes(pair.old, pair.new), start)
            place = min(places, key=lambda place: abs(place - wanted))
            end, until = start + len(quote), place + len(quote)
            if (
                abs(place - wanted) < len(quote)
                or count(quote) >= TELLING
                or (len(places) == old.count(quote) == 1 and _around(old, start, end) == _around(new, place, until))
            ):
                yield Carried("there", pair.new, place, until)

    def _elsewhere(self, quote: str) -> Carried | None:
        if count(quote) < TELLING:
            return None
        old, new = self._texts
        place = new.only(quote)
        return Carried("there", *place) if place is not None and old.only(quote) is not None else None

    def _changed(self, partners: list[Pair], start: int, end: int) -> Iterator[Carried]:
        for pair in partners:
            touched = [
                change for change in self._changes(pair.old, pair.new) if change.old[0] < end and change.old[1] > start
            ]
            kept = [change for change in touched if change.kind == "kept"]
            letters = sum(min(end, one.old[1]) - max(start, one.old[0]) for one in kept)
            if kept and letters >= HALF * (end - start):
                first = _mapped(touched, max(start, kept[0].old[0]))
                last = _mapped(touched, min(end, kept[-1].old[1]))
                yield Carried("changed", pair.new, *_trimmed(self._new[pair.new], first, last))


class _Text:
    """All paragraphs of a draft as one text, to look passages up in."""

    def __init__(self, paragraphs: tuple[str, ...]) -> None:
        self._whole = JOIN.join(paragraphs)
        self._starts: list[int] = []
        at = 0
        for text in paragraphs:
            self._starts.append(at)
            at += len(text) + len(JOIN)

    def only(self, quote: str) -> tuple[int, int, int] | None:
        """Paragraph, start and end of what stands there just once."""
        at = self._whole.find(quote)
        if at < 0 or self._whole.find(quote, at + 1) >= 0:
            return None
        paragraph = bisect_right(self._starts, at) - 1
        start = at - self._starts[paragraph]
        return paragraph, start, start + len(quote)


def _occurrences(text: str, quote: str) -> Iterator[int]:
    at = text.find(quote)
    while at >= 0:
        yield at
        at = text.find(quote, at + 1)


def _around(text: str, start: int, end: int) -> tuple[list[str], list[str]]:
    """The word before and the word after; none at an end of the text."""
    before, after = text[max(0, start - NEAR) : start], text[end : end + NEAR]
    return WORD.findall(before.casefold())[-1:], WORD.findall(after.casefold())[:1]


def _mapped(told: tuple[Change, ...] | list[Change], at: int) -> int:
    """The place in the new text of a place in the old one; inside what changed, its beginning."""
    for change in told:
        if change.old[0] <= at <= change.old[1] and change.kind == "kept":
            return min(change.new[0] + at - change.old[0], change.new[1])
    return next((change.new[0] for change in told if change.old[0] <= at <= change.old[1]), 0)


def _trimmed(text: str, start: int, end: int) -> tuple[int, int]:
    """Without white space at either end."""
    piece = text[start:end]
    start += len(piece) - len(piece.lstrip())
    return start, max(start, end - (len(piece) - len(piece.rstrip())))
