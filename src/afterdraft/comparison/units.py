"""What is matched: paragraphs, and the sentences of a paragraph that is far too long to be matched whole."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.comparison.lexicon import Lexicon, common

LONG = 1_500  # words: no paragraph of the corpus's novels comes near, and matching slows by the square
PIECE = 400  # words of a piece where a long paragraph has no sentences either
SENTENCE = re.compile(r"(?<=[.!?…][”’\"')\]])\s+|(?<=[.!?…])\s+")


@dataclass(frozen=True, slots=True)
class Units:
    """One draft's units in order, each a string of word characters, never empty."""

    words: tuple[str, ...]
    keys: tuple[str, ...]  # what likeness is measured on: the words that are not common, or all if these are too few
    counts: tuple[int, ...]  # words of each; 0 for a paragraph without any ("* * *" kept as text, "—")
    paragraphs: tuple[int, ...]  # which each lies in

    def __len__(self) -> int:
        return len(self.words)


def units(old: Sequence[str], new: Sequence[str]) -> tuple[Units, Units]:
    """Both drafts' paragraphs as units over one lexicon."""
    lexicon = Lexicon()
    sides = [list(_pieces(side, lexicon)) for side in (old, new)]
    dropped = dict.fromkeys(map(ord, common([[words for words, _, _ in side] for side in sides])))
    first, second = (_units(side, dropped) for side in sides)
    return first, second


FEW = 2  # words that are not common: fewer say nothing


def _units(pieces: Sequence[tuple[str, int, int]], dropped: dict[int, None]) -> Units:
    words = tuple(words for words, _, _ in pieces)
    contents = [one.translate(dropped) for one in words]
    keys = tuple(content if len(content) >= FEW else full for content, full in zip(contents, words, strict=True))
    return Units(words, keys, tuple(count for _, count, _ in pieces), tuple(place for _, _, place in pieces))


def _pieces(paragraphs: Sequence[str], lexicon: Lexicon) -> Iterator[tuple[str, int, int]]:
    """Words, how many, and the paragraph."""
    for place, text in enumerate(paragraphs):
        words = lexicon.words(text)
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
