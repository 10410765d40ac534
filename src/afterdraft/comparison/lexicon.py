"""Words as single characters, so that a paragraph is a short string and fast string methods count in words."""

import re
from collections import Counter
from collections.abc import Iterable, Sequence

COMMONEST = 120  # words left out where likeness is measured: unrelated paragraphs then share next to nothing
COMMON_SHARE = 0.001  # of all words: what is rarer is not common, however short the draft
COMMON_COUNT = 20  # nor what stands there fewer times
SURROGATES = 0xD800, 0xE000  # code points that no text may hold
SIGNS = re.compile(r"[\W_]+")  # what is no letter and no digit
LAST = 0x110000 - (SURROGATES[1] - SURROGATES[0]) - 1  # ids beyond it are given a second time


class Lexicon(dict[str, str]):
    """The character of each token: one a word, whatever its capitals and punctuation; "" for what is no word."""

    def __init__(self) -> None:
        super().__init__()
        self._words: dict[str, str] = {}

    def __missing__(self, token: str) -> str:
        word = token.casefold()
        if not word.isalnum():
            word = SIGNS.sub("", word)
        self[token] = character = self.character(word) if word else ""
        return character

    def character(self, word: str) -> str:
        """The character of a word, or of anything else that shall be told apart by one."""
        known = self._words.get(word)
        if known is None:
            number = len(self._words) % LAST + 1
            known = chr(number if number < SURROGATES[0] else number + SURROGATES[1] - SURROGATES[0])
            self._words[word] = known
        return known

    def words(self, text: str) -> str:
        """The words of a text, as the program counts them everywhere: one character each."""
        return "".join(map(self.__getitem__, text.split()))


def common(sides: Iterable[Sequence[str]]) -> frozenset[str]:
    """The commonest words of all paragraphs, given as strings of word characters."""
    counts: Counter[str] = Counter()
    for side in sides:
        counts.update("".join(side))
    least = max(COMMON_COUNT, COMMON_SHARE * counts.total())
    return frozenset(word for word, count in counts.most_common(COMMONEST) if count >= least)
