"""Whether words stand somewhere word for word, looked up by the rarest of them."""

from collections import defaultdict
from collections.abc import Iterable

from afterdraft.comparison.lexicon import Lexicon


class Standing:
    """Texts in which passages are looked up. Capitals and punctuation do not count; a passage lies in one text."""

    def __init__(self, texts: Iterable[str] = ()) -> None:
        self._lexicon = Lexicon()
        self._by_word: defaultdict[str, list[str]] = defaultdict(list)
        for text in texts:
            self.add(text)

    def add(self, text: str) -> None:
        words = self._lexicon.words(text)
        for word in set(words):
            self._by_word[word].append(words)

    def has(self, passage: str) -> bool:
        """Whether one of the texts has it; what has no word at all stands everywhere."""
        words = self._lexicon.words(passage)
        fewest = min((self._by_word.get(word, ()) for word in set(words)), key=len, default=())
        return not words or any(words in text for text in fewest)
