"""What is matched: paragraphs, and the sentences of a paragraph that is far too long to be matched whole."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from afterdraft.comparison.lexicon import Lexicon, common

LONG = 1_500  # words: no paragraph of the corpus's novels comes near, and matching slows by the square
PIECE = 400  # words of a piece where a long paragraph has no sentences either
FEW = 2  # words that are not common: fewer say nothing
SENTENCE = re.compile(r"(?<=[.!?…][”’\"')\]])\s+|(?<=[.!?…])\s+")


@dataclass(frozen=True, slots=True)
class Units:
    """One draft's units in order, each a string of word characters, never empty."""

    words: tuple[str, ...]
    counts: tuple[int, ...]  # words of each; 0 for a paragraph without any ("* * *" kept as text, "—")
    paragraphs: tuple[int, ...]  # which each lies in
    common: dict[int, None] = field(repr=False)  # the characters of the commonest words, as `translate` drops them
    _keys: dict[int, str] = field(default_factory=dict, repr=False, compare=False)

    def __len__(self) -> int:
        return len(self.words)

    def key(self, unit: int) -> str:
        """What likeness is measured on: its words that are not common, or all if these are too few.

        Most units are known again as they are and never asked for it.
        """
        known = self._keys.get(unit)
        if known is None:
            content = self.words[unit].translate(self.common)
            self._keys[unit] = known = content if len(content) >= FEW else self.words[unit]
        return known


def units(old: Sequence[str], new: Sequence[str]) -> tuple[Units, Units]:
    """Both drafts' paragraphs as units over one lexicon."""
    lexicon = Lexicon()
    known: dict[str, str] = {}  # most paragraphs stand in both drafts: their words are taken once
    sides = [list(_pieces(side, lexicon, known)) for side in (old, new)]
    dropped = dict.fromkeys(map(ord, common([[words for words, _, _ in side] for side in sides])))
    first, second = (
        Units(
            tuple(words for words, _, _ in side),
            tuple(count for _, count, _ in side),
            tuple(place for _, _, place in side),
            dropped,
        )
        for side in sides
    )
    return first, second


def _pieces(paragraphs: Sequence[str], lexicon: Lexicon, known: dict[str, str]) -> Iterator[tuple[str, int, int]]:
    """Words, how many, and the paragraph."""
    for place, text in enumerate(paragraphs):
        words = known.get(text)
        if words is None:
            known[text] = words = lexicon.words(text)
        if not words:
            yield lexicon.character(f"\0{text.strip()}"), 0, place
        elif len(words) <= LONG:
            yield words, len(words), place
        else:
            yield from ((piece, len(piece), place) for piece in _cut(text, lexicon))


def _cut(text: str, lexicon: Lexicon) -> Iterator[str]:
    """Sentences; where one is too long as well, pieces that end at words of their own, so that an edit moves few."""
    for sentence in SENTENCE.split(text):
        words = lexicon.words(sentence)
        start = 0
        if len(words) > LONG:
            for at, word in enumerate(words):
                if at - start >= PIECE or (at - start >= PIECE // 8 and ord(word) % (PIECE // 8) == 0):
                    yield words[start:at]
                    start = at
        if words[start:]:
            yield words[start:]
