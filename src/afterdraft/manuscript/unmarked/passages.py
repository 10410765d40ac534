"""What each paragraph of a book shows: its words, its names, its speech."""

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from afterdraft.manuscript.unmarked.vocabulary import NO_NAMES, STOP

_WORD = re.compile(r"[^\W\d_]+(?:['’-][^\W\d_]+)*")
_NAME = re.compile(r"(?<=[\w,;’'”)] )[A-ZÀ-ÖØ-Þ][^\W\d_]+(?=\b)")  # a capital that begins no sentence
_LOCATED = re.compile(r"\b(?:in|at|near|into|from|through|across|reached|towards|to) ([A-ZÀ-ÖØ-Þ][^\W\d_]+)")
_SPEECH = {
    "“": re.compile(r"“[^”]*”?"),
    '"': re.compile(r'"[^"]*"?'),
    "‘": re.compile(r"(?<!\w)‘.*?(?:’(?!\w)|$)", re.DOTALL),
    "«": re.compile(r"«[^»]*»?"),
}
_DASH = re.compile(r"^[—–-] ?.*", re.DOTALL)  # an opening dash: the paragraph is speech
_MARKS = frozenset('“"‘«—–-')  # what speech begins with
_OPENING = 160  # characters of a paragraph that count as its opening: about two lines in print

NAMED = 2  # times a word must stand with a capital inside sentences to be a name; once may be a title or a slip
CAPITAL = 0.9  # share of a name's uses that have the capital; below, it is a word that also begins titles
CONTENT = 0.5  # share of words that are not the commonest of English; the tune half's novels have 0.31 to 0.40
LOCATED = 0.5  # share of a name's uses after a preposition of place from which it names a place


@dataclass(frozen=True, slots=True)
class Passage:
    """One paragraph."""

    text: str
    words: int
    content: tuple[str, ...]  # words that say what it is about, small letters, plural s cut
    people: frozenset[str]
    places: frozenset[str]
    speech: float  # share of its characters that are speech, 0…1
    first: str  # its first word as it stands; "" where it has none

    @property
    def opening(self) -> str:
        """Its first some 160 characters."""
        return self.text[:_OPENING]

    @property
    def begins_spoken(self) -> bool:
        return self.text[:1] in _MARKS


@dataclass(frozen=True, slots=True)
class Names:
    people: frozenset[str]
    places: frozenset[str]


def passages(texts: Sequence[str]) -> list[Passage]:
    """Every paragraph of a book; names are told from the book as a whole."""
    tokens = [_WORD.findall(text) for text in texts]
    names = told_names(texts, tokens)
    speech = _SPEECH.get(_mark(texts), _DASH)
    return [_passage(text, words, names, speech) for text, words in zip(texts, tokens, strict=True)]


def looks_english(told: Iterable[Passage]) -> bool:
    """Whether enough of the words are the commonest of English. An empty book does."""
    words, content = 0, 0
    for passage in told:
        words += passage.words
        content += len(passage.content)
    return content <= CONTENT * words


def content_words(text: str) -> Iterator[tuple[str, str]]:
    """The words that say what `text` is about, each as it is compared and as it stands."""
    return _content(_WORD.findall(text))


def told_names(texts: Iterable[str], tokens: Iterable[Sequence[str]]) -> Names:
    """Names of a book: words that have their capital inside sentences too; places by what stands before them."""
    inside = Counter(name for text in texts for name in _NAME.findall(text))
    small = Counter(word for words in tokens for word in words if word.islower())
    located = Counter(name for text in texts for name in _LOCATED.findall(text))
    names = {
        name
        for name, times in inside.items()
        if times >= NAMED and name.lower() not in NO_NAMES and times >= CAPITAL * (times + small[name.lower()])
    }
    places = {name for name in names if located[name] >= LOCATED * inside[name]}
    return Names(frozenset(names - places), frozenset(places))


def _passage(text: str, words: Sequence[str], names: Names, speech: re.Pattern[str]) -> Passage:
    spoken = sum(match.end() - match.start() for match in speech.finditer(text))
    capital = {_bare(word) for word in words if word[0].isupper()}
    return Passage(
        text=text,
        words=len(words),
        content=tuple(stem for stem, _ in _content(words)),
        people=names.people & capital,
        places=names.places & capital,
        speech=spoken / len(text) if text else 0.0,
        first=words[0] if words else "",
    )


def _content(words: Iterable[str]) -> Iterator[tuple[str, str]]:
    for word in words:
        small = word.lower().replace("'", "’")
        if len(small) > 2 and small not in STOP:
            yield _stem(small), word


def _mark(texts: Iterable[str]) -> str:
    """The mark that most paragraphs begin their speech with."""
    found = Counter(text[0] for text in texts if text and text[0] in _MARKS)
    return found.most_common(1)[0][0] if found else "“"


def _bare(word: str) -> str:
    return word.removesuffix("’s").removesuffix("'s")


def _stem(word: str) -> str:
    word = _bare(word)
    return word[:-1] if len(word) > 3 and word.endswith("s") and not word.endswith("ss") else word
