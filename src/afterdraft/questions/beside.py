"""What two passages share that few others have: a sign that both tell of one thing."""

import re
from collections import Counter
from functools import cached_property

from afterdraft.questions.numbers_written import NUMBER_WORDS
from afterdraft.questions.plurals import singular
from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.time_words import DAYS, MONTHS

RARE = 6  # times a word stands in the book up to which it tells passages from others; chosen by hand
OWNER = 20  # the same, of a name or of 'the' thing in the sentence itself
_LONG = 4  # letters from which a word says what is told of
_WORD = re.compile(r"[A-Za-z]+")
_SAYS = r"\s(?:said|says|asked|told|replied|answered|cried)\b"
_OWNER = re.compile(
    rf"\b[Tt]he\s([a-z]+)|(?<=[a-z,;]\s)(?<!said\s)(?<!asked\s)(?<!cried\s)([A-Z][a-z]+)\b(?!{_SAYS})"
)  # but who says it
_NUMBER = re.compile(NUMBER_WORDS)
_WHEN = {
    *words_of("morning afternoon evening night day week month year spring summer autumn winter time hour moment whole"),
    *(*DAYS, *MONTHS),
}


class Beside:
    """Of one book."""

    def __init__(self, seen: Seen) -> None:
        self._seen = seen
        self._told: dict[Span, tuple[frozenset[str], frozenset[str]]] = {}

    def share(self, one: Span, other: Span, noun: str) -> bool:
        """Whether rare words stand beside both, other than the noun."""
        return bool(self._shared(one, other, noun, 0))

    def share_owner(self, one: Span, other: Span, noun: str) -> bool:
        """Whether both sentences name the same, or tell of the same thing by 'the', other than the noun."""
        return bool(self._shared(one, other, noun, 1))

    def times(self, noun: str) -> int:
        """How often a noun stands in the book, as one or as several."""
        return sum(self._words[word] for word in self.forms(noun))

    def forms(self, noun: str) -> list[str]:
        """As the book writes it: 'ox', 'oxen'."""
        return [word for word in self._words if noun in (word, singular(word))]

    @cached_property
    def _words(self) -> Counter[str]:
        texts = (text for scene in self._seen.texts for text in scene)
        return Counter(word.lower() for text in texts for word in _WORD.findall(text))

    def _shared(self, one: Span, other: Span, noun: str, which: int) -> list[str]:
        both = self._around(one)[which] & self._around(other)[which]
        return [word for word in both if noun not in (word, singular(word)) and not _NUMBER.fullmatch(word)]

    def _around(self, span: Span) -> tuple[frozenset[str], frozenset[str]]:
        """Rare words of its sentence and those on either side of it; who or what is named in its own."""
        if span not in self._told:
            text = self._seen.texts[span.scene][span.paragraph]
            found = sentences(text)
            at = next(place for place, (_, ends) in enumerate(found) if span.start < ends)
            near = text[found[max(0, at - 1)][0] : found[min(len(found) - 1, at + 1)][1]]
            rare = {word.lower() for word in _WORD.findall(near) if len(word) >= _LONG}
            named = {(thing or name).lower() for thing, name in _OWNER.findall(text[slice(*found[at])])}
            self._told[span] = (
                frozenset(word for word in rare if self._words[word] <= RARE),
                frozenset(word for word in named if self._words[word] <= OWNER and word not in _WHEN),
            )
        return self._told[span]
