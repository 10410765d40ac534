"""Places far apart that say nearly the same: found by the rarer words they share, and laid beside each other.

As in the search for text that was used again, and in the comparison of sequences: candidates from an index of rare
words, then the longest common subsequence, of which the part counts in which what is shared outweighs what stands
between. The measures are our own, chosen on the tuning half. Work and memory grow with the number of words.
"""

import re
from collections import Counter, defaultdict, deque
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from itertools import chain, islice
from math import log

from rapidfuzz.distance import LCSseq

from afterdraft.manuscript.unmarked.vocabulary import STOP
from afterdraft.reading.tense_forms import stem

RARE = 30  # times that a word may stand in a book and lead from one place to another
KEYS = 3  # such words, no names, that two sentences in a row share with two others
APART = 1_500  # words between, some five pages: nearer a thing is taken up again
ROUND = 1  # sentences looked at on either side of these
BETWEEN = 1.5  # what a word that only one of the two places has takes off
MOVED = 0.5  # of the weight of a word that both have, in another order
LETTERS = 3  # of a word that counts
BOOK = 9_000  # words of some weight in a book, some 20,000 in all, by which weights are told
_WORD = re.compile(r"[^\W_]+(?:[’'][^\W_]+)*")
_ENDS = re.compile(r"(?<=[^\WA-Z]{3}[.!?…])[”’\"')\]*_]*\s+")  # 'Mr.' ends nothing
_WITHIN = re.compile(r"(?<=[a-z,;]\s)[A-Z][^\W_]+(?:[’'][^\W_]+)*")


@dataclass(frozen=True, slots=True)
class Place:
    """Code points of a scene: from a paragraph and where in it, to another. `sentences` are whole, one span each."""

    scene: int
    begins: tuple[int, int]
    ends: tuple[int, int]
    sentences: tuple[tuple[int, int, int], ...]  # paragraph, start, end
    at: int  # words of the book before it

    def meets(self, other: "Place") -> bool:
        return self.scene == other.scene and self.begins <= other.ends and other.begins <= self.ends


@dataclass(frozen=True, slots=True)
class Alike:
    first: Place
    again: Place
    weight: float  # of the words they share, less what stands between; as if every book were of one length
    same: int  # words they share, the small ones too: between those in one order and all
    shorter: int  # words of the shorter one, from the first to the last that they share
    longer: int
    run: int  # words without a change, the most


@dataclass(frozen=True, slots=True)
class _Sentence:
    scene: int
    paragraph: int
    start: int
    end: int
    at: int
    words: tuple[str, ...]  # stems


@dataclass(frozen=True, slots=True)
class _Word:
    stem: str
    sentence: int
    place: int


@dataclass(frozen=True, slots=True)
class _Book:
    texts: Sequence[Sequence[str]]
    sentences: Sequence[_Sentence]
    counted: Mapping[str, int]
    names: frozenset[str]
    weights: Mapping[str, float]  # of words that say something: the rarer the more

    @property
    def off(self) -> float:
        """What comes off each weight in a longer book, where more is alike by chance; a shorter one adds it."""
        return 2 * log(max(1, sum(self.counted[word] for word in self.weights)) / BOOK)


def alike(texts: Sequence[Sequence[str]], least: float) -> list[Alike]:
    """All of this weight or more, in a book's scenes of paragraphs; the weightiest first, and of what overlaps in both
    places that alone."""
    book = _book(texts)
    off = book.off
    every = (_aligned(book, first, again, off) for first, again in _candidates(book))
    found: defaultdict[tuple[int, int], list[Alike]] = defaultdict(list)  # by scenes
    heavy = (one for one in every if one and one.weight >= least)
    for one in sorted(heavy, key=lambda one: (-one.weight, one.first.at, one.again.at)):
        others = found[one.first.scene, one.again.scene]
        if not any(one.first.meets(other.first) and one.again.meets(other.again) for other in others):
            others.append(one)
    return sorted((one for some in found.values() for one in some), key=lambda one: -one.weight)


def _book(texts: Sequence[Sequence[str]]) -> _Book:
    stems = _Stems()
    sentences = list(_sentences(texts, stems))
    counted = Counter(chain.from_iterable(one.words for one in sentences))
    capital = Counter(stems[word] for scene in texts for text in scene for word in _WITHIN.findall(text))
    names = frozenset(word for word, times in capital.items() if times * 2 >= counted[word])
    said = [word for word in counted if len(word) >= LETTERS and word not in _stop()]
    every = sum(counted[word] for word in said)
    return _Book(texts, sentences, counted, names, {word: log(every / counted[word]) for word in said})


def _sentences(texts: Sequence[Sequence[str]], stems: Mapping[str, str]) -> Iterator[_Sentence]:
    at = 0
    for number, scene in enumerate(texts):
        for place, text in enumerate(scene):
            begins = 0
            for ends in (*(match.end() for match in _ENDS.finditer(text)), len(text)):
                if words := tuple(stems[word] for word in _WORD.findall(text, begins, ends)):
                    yield _Sentence(number, place, begins, ends, at, words)
                at, begins = at + len(words), ends


class _Stems(dict[str, str]):
    """By the word as it stands; each is one string, however often."""

    def __missing__(self, word: str) -> str:
        return self.setdefault(word, stem(word.lower().replace("'", "’").removesuffix("’s")))


@cache
def _stop() -> frozenset[str]:
    return STOP | {stem(word) for word in STOP}


def _candidates(book: _Book) -> Iterator[tuple[int, int]]:
    """Where two sentences in a row begin that share rare words with two before them."""
    rare = {word for word in book.weights if 1 < book.counted[word] <= RARE} - book.names
    lead: defaultdict[str, list[int]] = defaultdict(list)
    waiting: deque[tuple[int, set[str]]] = deque()  # what is still too near
    for at, one in enumerate(book.sentences):
        pair = (each for each in book.sentences[at : at + 2] if each.scene == one.scene)
        keys = rare.intersection(chain.from_iterable(each.words for each in pair))
        while waiting and book.sentences[waiting[0][0]].at + APART < one.at:
            place, words = waiting.popleft()
            for word in words:
                lead[word].append(place)
        shared = Counter(chain.from_iterable(lead[word] for word in keys))
        yield from ((before, at) for before, times in shared.items() if times >= KEYS)
        waiting.append((at, keys))


def _aligned(book: _Book, first: int, again: int, off: float) -> Alike | None:
    """The heaviest part of what the two places and their neighbours share, in its order."""
    one, other = (_words(book, at) for at in (first, again))
    pairs = _shared([word.stem for word in one], [word.stem for word in other])
    best, weight = _heaviest(pairs, [book.weights[one[here].stem] for here, _ in pairs])
    if not best:
        return None
    (begins, last), (begins_again, last_again) = (
        (some[best[0][side]], some[best[-1][side]]) for side, some in ((0, one), (1, other))
    )
    here, there = _between(book, begins, last), _between(book, begins_again, last_again)
    runs = [op.src_end - op.src_start for op in LCSseq.opcodes(here, there) if op.tag == "equal"]
    both = Counter(here) & Counter(there)
    moved = both - Counter(one[at].stem for at, _ in best)
    weight += MOVED * sum(book.weights.get(word, 0.0) * times for word, times in moved.items())
    return Alike(
        _place(book, begins, last),
        _place(book, begins_again, last_again),
        weight=weight - off,
        same=(sum(runs) + both.total()) // 2,
        shorter=min(len(here), len(there)),
        longer=max(len(here), len(there)),
        run=max(runs),
    )


def _words(book: _Book, at: int) -> list[_Word]:
    """Of some weight, of two sentences and those round them."""
    around = range(max(0, at - ROUND), min(len(book.sentences), at + 2 + ROUND))
    return [
        _Word(word, number, place)
        for number in around
        if book.sentences[number].scene == book.sentences[at].scene
        for place, word in enumerate(book.sentences[number].words)
        if word in book.weights
    ]


def _shared(one: Sequence[str], other: Sequence[str]) -> list[tuple[int, int]]:
    return [
        (op.src_start + step, op.dest_start + step)
        for op in LCSseq.opcodes(one, other)
        if op.tag == "equal"
        for step in range(op.src_end - op.src_start)
    ]


def _heaviest(pairs: Sequence[tuple[int, int]], weights: Sequence[float]) -> tuple[Sequence[tuple[int, int]], float]:
    """Of places that are shared, those in a row that weigh most when what stands between is taken off."""
    best, heaviest, begins, weight = (0, 0), 0.0, 0, 0.0
    for at, (here, there) in enumerate(pairs):
        if at:
            weight -= BETWEEN * (here - pairs[at - 1][0] + there - pairs[at - 1][1] - 2)
        if weight <= 0:
            begins, weight = at, 0.0
        weight += weights[at]
        if weight > heaviest:
            best, heaviest = (begins, at + 1), weight
    return pairs[slice(*best)], heaviest


def _between(book: _Book, begins: _Word, last: _Word) -> list[str]:
    """All words from the one to the other, the small ones too."""
    return [
        word
        for number in range(begins.sentence, last.sentence + 1)
        for place, word in enumerate(book.sentences[number].words)
        if (begins.sentence, begins.place) <= (number, place) <= (last.sentence, last.place)
    ]


def _place(book: _Book, begins: _Word, last: _Word) -> Place:
    some = book.sentences[begins.sentence : last.sentence + 1]
    starts, ends = ((one.paragraph, _spelled(book, one, word)) for one, word in ((some[0], begins), (some[-1], last)))
    return Place(
        some[0].scene,
        (starts[0], starts[1].start()),
        (ends[0], ends[1].end()),
        tuple((one.paragraph, one.start, one.end) for one in some),
        some[0].at,
    )


def _spelled(book: _Book, one: _Sentence, word: _Word) -> re.Match[str]:
    """The word where it stands in its paragraph."""
    return next(islice(_WORD.finditer(book.texts[one.scene][one.paragraph], one.start, one.end), word.place, None))
