"""A turn of phrase that comes again, word for word, far from where it stood first."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.repeats import LEAST
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.quotations import quotations

RUN = 6  # words that are the same at least
APART = 400  # words between, a page and more: nearer it is said again on purpose
NEAR = 0.25  # share of the book's words up to which two of its rarer words are enough; chosen on the tuning half
FAR_WORDS, NEAR_WORDS = 3, 2  # of the book's rarer words that have to be among them, likewise
SCARCE = 8_000  # words of the book to one use of a word that is scarce in it, likewise
ALWAYS = 6  # times that a word may stand in any book and be scarce
PHRASE = 9  # words of what may be a name, or a picture in which nothing happens, likewise
LONG = 4  # letters of such a word
MOST = 3  # of them asked about in a book, the rarest
_WORD = re.compile(r"[^\W_]+(?:[’'][^\W_]+)*")
_STOPS = re.compile(r"[.;:!?…]")
_JOINING = words_of("and but or to of in on at with by for as that the a an")


@dataclass(frozen=True, slots=True)
class _Word:
    scene: int
    paragraph: int
    start: int
    end: int
    small: str
    told: bool  # outside speech and verse
    event: bool
    stops: bool  # behind it a sentence or the half of one ends


@dataclass(frozen=True, slots=True)
class _Echo:
    first: Sequence[_Word]
    again: Sequence[_Word]
    scarce: int  # words of it that are scarce in the book
    between: float  # share of the book


def find(seen: Seen) -> Iterator[Finding]:
    found = sorted(_echoes(list(_words(seen))), key=lambda one: (-one.scarce, one.between))
    for one in found[:MOST]:
        yield _finding(seen, one)


def _words(seen: Seen) -> Iterator[_Word]:
    for number, scene in enumerate(seen.texts):
        speech: defaultdict[int, list[tuple[int, int]]] = defaultdict(list)
        for quote in quotations(scene):
            speech[quote.paragraph].append((quote.start, quote.end))
        events = {(one.paragraph, one.start) for one in seen.facts[number].events} if seen.is_read else set()
        for place, text in enumerate(scene):
            for match in _WORD.finditer(text):
                start, end = match.span()
                told = "\n" not in text and not any(begins <= start < ends for begins, ends in speech[place])
                small = match.group().replace("'", "’")
                small = small if small[0].isupper() and _is_inside(text, start) else small.lower()
                stops = bool(_STOPS.match(text, end))
                yield _Word(number, place, start, end, small, told, (place, start) in events, stops)


def _is_inside(text: str, start: int) -> bool:
    """Whether a word stands within its sentence, so that its capital makes it a name."""
    return text[:start].rstrip()[-1:].isalpha()


def _echoes(words: list[_Word]) -> Iterator[_Echo]:
    small = [one.small for one in words]
    counted = Counter(small)
    often = max(ALWAYS, len(words) // SCARCE)
    done = 0
    for at, other in sorted(_twice(small).items()):
        if at < done or other - at < APART:
            continue
        long = _same(words, at, other)
        done = at + long
        while long and words[at + long - 1].small in _JOINING:
            long -= 1
        first, again = words[at : at + long], words[other : other + long]
        scarce = len({one.small for one in first if len(one.small) >= LONG and _is_scarce(one.small, counted, often)})
        between = (other - at) / len(words)
        if RUN <= long < LEAST and scarce >= (NEAR_WORDS if between <= NEAR else FAR_WORDS) and _tells(first, again):
            yield _Echo(first, again, scarce, between)


def _twice(small: Sequence[str]) -> dict[int, int]:
    """Where runs begin that stand exactly twice: first place, second. By their hashes, which take less memory than they
    do; whoever uses it compares the words."""
    first: dict[int, int] = {}
    again: dict[int, int | None] = {}
    for at in range(len(small) - RUN + 1):
        run = hash(tuple(small[at : at + RUN]))
        if run in first:
            again[run] = None if run in again else at
        else:
            first[run] = at
    return {first[run]: at for run, at in again.items() if at is not None}


def _is_scarce(word: str, counted: Counter[str], often: int) -> bool:
    return word.islower() and counted[word] <= often


def _same(words: list[_Word], at: int, other: int) -> int:
    """How many words are the same from there on, in one sentence each."""
    long = 0
    while other + long < len(words):
        one, again = words[at + long], words[other + long]
        if one.small != again.small or not (_goes_on(words[at], one) and _goes_on(words[other], again)):
            break
        long += 1
        if one.stops or again.stops:
            break
    return long


def _goes_on(first: _Word, one: _Word) -> bool:
    return (first.scene, first.paragraph) == (one.scene, one.paragraph)


def _tells(first: Sequence[_Word], again: Sequence[_Word]) -> bool:
    """Whether the narration tells it, and something happens there: a thing that is only named again has the same name,
    unless it is a long one."""
    both = (*first, *again)
    return all(one.told for one in both) and (len(first) >= PHRASE or any(one.event for one in both))


def _finding(seen: Seen, one: _Echo) -> Finding:
    begins, ends = next(word for word in one.first if word.small not in ("and", "but", "or", "that")), one.first[-1]
    return Finding(
        evidence=(_sentence(seen, one.first), _sentence(seen, one.again)),
        strength=min(0.7, 0.45 + 0.05 * one.scarce),
        subject="echo",
        words={"words": seen.texts[begins.scene][begins.paragraph][begins.start : ends.end]},
        numbers={"words": len(one.first)},
    )


def _sentence(seen: Seen, run: Sequence[_Word]) -> Span:
    scene, paragraph = run[0].scene, run[0].paragraph
    return seen.span(scene, paragraph, *sentence(seen.texts[scene][paragraph], run[0].start, run[-1].end))


CHECK = Check(
    id="echo",
    name="A turn of phrase that comes again",
    family="accidents",
    looks_at=f"{RUN} to {LEAST - 1} words of the narration in which something happens, word for word in two places "
    "more than a page apart, with two or three words among them that are rare in this book. "
    f"The {MOST} rarest are asked about.",
    method=f"Every run of {RUN} words is looked up in the whole book and followed for as long as the words are the "
    "same. A word is rare that stands six times at most, or once in 8,000 words. What stands three times is taken "
    "for a refrain. Common practice of copy editors; the measure of rareness is our own.",
    blind="An echo that is meant is asked about too. The same picture in other words is not seen.",
    reads=("words", "facts"),
    find=find,
)
