"""Which words of passages that stand side by side tell them apart."""

import re
from collections.abc import Sequence, Set
from difflib import SequenceMatcher

from afterdraft.questions.named_days import SHORT_DAY
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.time_words import DAYS
from afterdraft.reading.trait_words import number

ALIKE = 0.5  # share of words that two passages have in common, from which all that differs is marked
Place = tuple[int, int]  # half-open, code points of a passage
Told = tuple[str, Place]  # a word as compared, and where it stands
_COMMON = words_of(
    """
    a an and are as at be both by does he her him his in is it not of on one ones or she so that the their they this to
    was which with
    """
)  # of a question's words, which point at nothing
_QUOTED = re.compile(r"“([^”]+)”")
_DAY = "|".join(day.capitalize() for day in DAYS)
_SIDED = r"\bon the (?:left|right)\b"
_ABOUT = tuple(
    (re.compile(asks), re.compile(words))
    for asks, words in (
        (rf"\ba (?:{_DAY})\b", rf"\b(?P<it>{_DAY}|{SHORT_DAY})\b"),  # 'that day was a Friday'
        (
            _SIDED,  # but not 'quite all right', nor 'he left'
            r"\b(?:(?i:the|his|her|my|its|to)\s|(?=\w+[ -]hand))(?P<it>left|right)\b(?! (?:thing|time|to)\b)",
        ),
        (_SIDED, r"\b(?P<it>left|right)\b"),
    )
)  # what a question says in words of its own → what it is about; what stands later only where the former finds nothing
_AGES = re.compile(r" is (\d+) in \D.* and (\d+) in ")
_WORD = re.compile(r"[^\W_]+(?:[’'-][^\W_]+)*")


def differing(passages: Sequence[str], asks: str) -> tuple[tuple[Place, ...], ...]:
    """For each passage the words to be marked.

    Weekdays, sides or ages, where it asks about those. Of one alone, what the question quotes of it; of several, if
    each has something that it quotes. Of two that are alike, all words that the other has not. Else what it quotes of
    one, and the words that it names and not every passage has: 'dark' and 'blue' where it asks about dark eyes and blue
    ones; names only where nothing else tells them apart.

    >>> differing(["She had grey eyes.", "Her eyes, brown as ale."], "Grey eyes and brown ones: are both meant?")
    (((8, 12),), ((10, 15),))
    """
    if any(about := [_about(text, asks) for text in passages]):
        return tuple(about)
    if len(passages) < 2:
        return tuple(_quoted(text, asks)[:1] for text in passages)
    if all(quoted := [_quoted(text, asks) for text in passages]):
        return tuple(quoted)
    words = [[(_plain(match[0]), match.span()) for match in _WORD.finditer(text)] for text in passages]
    told = [[word for word, _ in one] for one in words]
    if len(told) == 2 and SequenceMatcher(None, told[0], told[1], autojunk=False).ratio() >= ALIKE:
        return _apart(told[0], words[0], told[1]), _apart(told[1], words[1], told[0])
    return _named(passages, words, asks)


def _named(passages: Sequence[str], words: Sequence[Sequence[Told]], asks: str) -> tuple[tuple[Place, ...], ...]:
    """What the question quotes of a passage, if it has no word that all have; else the words that it names besides."""
    shared = set.intersection(*({word for word, _ in one} for one in words))
    telling = [one[0] for one in _QUOTED.finditer(asks) if not shared & _words(one[0])]
    quotes = [one for one in telling if any(_quoted(text, one) for text in passages)]
    quoted = [_quoted(text, "".join(quotes)) for text in passages]
    besides = _words(_QUOTED.sub(lambda one: " " if one[0] in quotes else one[0], asks)) - _COMMON - shared
    named = [tuple(place for word, place in one if word in besides) for one in words]
    small = [
        tuple(place for place in some if not text[place[0]].isupper())
        for text, some in zip(passages, named, strict=True)
    ]
    marked, plainly = ([one or other for one, other in zip(quoted, some, strict=True)] for some in (named, small))
    return tuple(plainly if all(plainly) else marked)


def _words(text: str) -> set[str]:
    return {_plain(match[0]) for match in _WORD.finditer(text)}


def _plain(word: str) -> str:
    """As compared: small letters, and a number's words as its figures."""
    return str(number(word.casefold()) or word.casefold())


def _about(passage: str, asks: str) -> tuple[Place, ...]:
    said = _QUOTED.sub("", asks)
    if ages := _AGES.search(said):
        return _ages(passage, {int(ages[1]), int(ages[2])})
    found = (tuple(one.span("it") for one in words.finditer(passage)) for asked, words in _ABOUT if asked.search(said))
    return next(filter(None, found), ())


def _ages(passage: str, asked: Set[int]) -> tuple[Place, ...]:
    """Numbers that are one of those asked about, or else next to one: who is 79 'would be eighty in June'."""
    told = {one.span(): number(one[0].casefold()) for one in _WORD.finditer(passage)}
    for beside in (asked, {age + step for age in asked for step in (-1, 1)}):
        if found := tuple(place for place, age in told.items() if age in beside):
            return found
    return ()


def _quoted(passage: str, asks: str) -> tuple[Place, ...]:
    """Where the passage first has what the question quotes, in whole words; nothing where that is all of it."""
    folded = passage.casefold()
    quoted = [match[1] for match in _QUOTED.finditer(asks) if match[1] != passage.strip()]
    found = [re.search(rf"(?<!\w){re.escape(one.casefold())}(?!\w)", folded) for one in quoted]
    return tuple(sorted({one.span() for one in found if one})) if len(folded) == len(passage) else ()


def _apart(told: Sequence[str], words: Sequence[Told], other: Sequence[str]) -> tuple[Place, ...]:
    steps = SequenceMatcher(None, told, other, autojunk=False).get_opcodes()
    return tuple(words[n][1] for kind, start, end, _, _ in steps if kind != "equal" for n in range(start, end))
