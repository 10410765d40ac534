"""A word that the book spells in two ways."""

import re
from collections import defaultdict
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.speech import speech
from afterdraft.questions.spellings import ENDS, FORMS, Form
from afterdraft.reading.lexicon import words_of

TIMES = 6  # that both stand together at least; chosen on the tuning half
AS_OFTEN = 5  # times the one as the other, from which the other has strayed in, likewise
TURNS = 3  # times that each stands at least where the book turns from one to the other; chosen by hand
TURNED, STRAY, EITHER = 0.7, 0.6, 0.5  # strength
SHOWN = 3  # sentences with the rarer one that are shown
MOST = 3  # words asked about in a book
_WORD = re.compile(r"(?<![\w’'-])[A-Z]?[a-z]+(?:-[a-z]+)?(?![\w’'-]| mortis)")
_HYPHENED = re.compile(r"(?!re-|co-)[a-z]{2,}-[a-z]{2,}")  # who re-covers does not recover
_SYLLABLES = words_of("ing ings ed er ers ly en est es ness ment tion less ful able al ous ish")
_PARTICLES = words_of("up down in on off out over by to")
_MARKS, _STOPS = " \t\n“‘”’\"'*_(—–-", frozenset(".!?…:")  # before the first word of a sentence
_SPOKEN = re.compile(r"[“‘\"'(*_]$")
_DASHED_OFF = re.compile(r"\b(?:Im|Ive|dont|doesnt|didnt|cant|wont|isnt|wasnt|couldnt|youre|theyre|thats|whats)\b")
_SET_IN = re.compile(r"\s*(?:>|([*_])(?!\1)[^*_]+\1\W*$)")  # a document or letter, as plain text shows it
_ANY = r"\b(?:[Tt]he|[Aa]n?|[Tt]his|[Tt]hat|[Tt]hese|[Tt]hose|[Hh]is|[Hh]er|[Mm]y|[Oo]ur|[Tt]heir|[Nn]o|[Ss]ome)"


@dataclass(frozen=True, slots=True, order=True)
class _Stands:
    scene: int
    paragraph: int
    start: int
    end: int
    told: bool  # outside speech, verse, and what is set in


_Where = Mapping[str, Sequence[_Stands]]
_Word = tuple[_Stands, str]  # where it stands, and how it is spelled there


def find(seen: Seen) -> Iterator[Finding]:
    stands = _stands(seen)
    ways: defaultdict[str, tuple[list[str], list[str]]] = defaultdict(lambda: ([], []))
    for word in stands:
        form = _form(word)
        ways[form.of][form.side].append(word)
    found = [one for of, sides in ways.items() for one in _asked(seen, of, sides, stands)]
    yield from sorted(found, key=lambda one: (-one.strength, -one.numbers["often"], one.subject))[:MOST]


def _form(word: str) -> Form:
    plain = word.replace("-", "")
    return FORMS.get(word) or Form(plain, int(word == plain), plain)


def _stands(seen: Seen) -> _Where:
    """Where each word stands that has two spellings, or has or may have a hyphen, in order."""
    found = _found(seen)
    drawn = {
        (one.scene, one.paragraph)
        for word, where in found.items()
        if "-" in word and word.replace("-", "") in found and not _is_compound(word, found)
        for one in where
    }
    sung = {word for word in found if "-" in word and all((one.scene, one.paragraph) in drawn for one in found[word])}
    hyphened = {word.replace("-", "") for word in found.keys() - sung if _is_compound(word, found)}
    return {
        word: where
        for word, where in found.items()
        if word not in sung and (word in FORMS or word.replace("-", "") in hyphened)
    }


def _found(seen: Seen) -> _Where:
    """Words written small, or at the beginning of a sentence, unless elsewhere too they have a capital: a name's."""
    small: defaultdict[str, list[_Stands]] = defaultdict(list)
    opening: defaultdict[str, list[_Stands]] = defaultdict(list)
    names: set[str] = set()
    for number, scene in enumerate(seen.texts):
        spoken = speech(scene)
        for place, text in enumerate(scene):
            set_in = (number, place) in seen.set_in or "\n" in text or _SET_IN.match(text) or _DASHED_OFF.search(text)
            for match in _WORD.finditer(text):
                (start, end), word = match.span(), match.group().lower()
                told = not set_in and not spoken(place, start)
                if match.group() == word:
                    small[word].append(_Stands(number, place, start, end, told))
                elif _opens(text, start):
                    opening[word].append(_Stands(number, place, start, end, told))
                elif not _SPOKEN.search(text[max(0, start - 1) : start]):
                    names.add(word)
    return small | {word: sorted((*small[word], *where)) for word, where in opening.items() if word not in names}


def _opens(text: str, start: int) -> bool:
    """Whether a sentence begins there."""
    before = text[max(0, start - len(".”* —“‘")) : start].rstrip(_MARKS)
    return before[-1:] in _STOPS if before else True


def _is_compound(word: str, found: Collection[str]) -> bool:
    """Whether it is made of words, and not drawn out into syllables: 'wait-ing'."""
    parts = word.split("-")
    return bool(_HYPHENED.fullmatch(word)) and all(part in found for part in parts) and parts[1] not in _SYLLABLES


def _asked(seen: Seen, of: str, sides: Sequence[Sequence[str]], stands: _Where) -> Iterator[Finding]:
    """Where both spellings stand, and the rarer one in the telling: speech has its own ways."""
    often, seldom = sorted(sides, key=lambda words: -sum(len(stands[word]) for word in words))
    counts = [sum(len(stands[word]) for word in words) for words in (often, seldom)]
    usually, told = (
        sorted((one, word) for word in words for one in stands[word] if one.told) for words in (often, seldom)
    )
    if not told or sum(counts) < TIMES:
        return
    numbers: dict[str, float] = {"seldom": counts[1], "often": counts[0], "told": len(told)}
    if turned := _turn(usually, told):
        words = {"until": turned[0][1], "from": turned[1][1], **_as(of, _form(turned[0][1]).side)}
        shown = [one for one, _ in turned]
    else:
        strays = sorted(sorted(told, key=lambda one: _from_pair(one, stands))[:SHOWN])
        first = min(strays, key=lambda one: _from_pair(one, stands))
        usual = _like(first[1], often, stands)
        words = {"seldom": ", ".join(dict.fromkeys(word for _, word in strays)), "often": usual}
        words |= _as(of, _form(usual).side)
        shown = [*(one for one, _ in strays), _near(first[0], usual, stands)]
        if apart := _two_words(seen, seldom, often):
            words["apart"], numbers["apart"] = apart
    if of not in ENDS and max(map(len, sides)) > 1:
        words["forms"] = "and other forms of it"
    yield Finding(
        evidence=tuple(dict.fromkeys(_sentence(seen, one) for one in shown)),
        strength=TURNED if turned else STRAY if counts[0] >= AS_OFTEN * counts[1] else EITHER,
        subject=f"two spellings: {of}",
        words=words,
        numbers=numbers,
    )


def _turn(one: Sequence[_Word], other: Sequence[_Word]) -> tuple[_Word, _Word] | None:
    """The last of the one and the first of the other spelling, where all of the one are told before the other."""
    if min(len(one), len(other)) < TURNS:
        return None
    before, behind = (one, other) if one[0] < other[0] else (other, one)
    return (before[-1], behind[0]) if before[-1] < behind[0] else None


def _as(of: str, side: int) -> dict[str, str]:
    """How words of one ending are spelled, by names for the two ways: that of `side`, and the other."""
    ways = ENDS.get(of)
    return {"one way": ways[side], "other way": ways[1 - side]} if ways else {}


def _from_pair(one: _Word, stands: _Where) -> tuple[int, int]:
    """How far a stray is from the same word in its other spelling where that is told too: scenes and paragraphs."""
    same = [it for it in stands.get(_form(one[1]).other, ()) if it.told]
    return min((_far(one[0], it) for it in same), default=(len(stands) + one[0].scene, 0))


def _like(stray: str, often: Sequence[str], stands: _Where) -> str:
    """The same word as a stray, spelled as the others are; where that does not stand in the book, the commonest."""
    same = _form(stray).other
    return same if same in often else max(often, key=lambda word: (len(stands[word]), word))


def _near(one: _Stands, word: str, stands: _Where) -> _Stands:
    usual = [it for it in stands[word] if it.told] or stands[word]
    return min(usual, key=lambda it: _far(one, it))


def _far(one: _Stands, other: _Stands) -> tuple[int, int]:
    return abs(one.scene - other.scene), abs(one.paragraph - other.paragraph)


def _two_words(seen: Seen, *sides: Sequence[str]) -> tuple[str, int] | None:
    """A word with a hyphen that stands as two besides, and how often: 'the sand hills'."""
    for one, other in (word.split("-") for words in sides for word in words if "-" in word):
        pattern = re.compile(rf"{_ANY} (?:[a-z]+ )?{one} {other}\b(?!-)")
        times = sum(len(pattern.findall(text)) for scene in seen.texts for text in scene)
        if times and other not in _PARTICLES:
            return f"{one} {other}", times
    return None


def _sentence(seen: Seen, one: _Stands) -> Span:
    return seen.span(one.scene, one.paragraph, *sentence(seen.texts[one.scene][one.paragraph], one.start, one.end))


CHECK = Check(
    id="two spellings",
    name="A word spelled in two ways",
    family="accidents",
    looks_at="A word that the book spells in one way (‘recognise’, ‘armchair’) and, outside speech, in the other as "
    "well (‘recognize’, ‘arm-chair’).",
    method="Counts words of which dictionaries of British and American English list two spellings, those in -our, -ise "
    "and a doubled l each together, and words that stand with a hyphen and as one. Both stand "
    f"{TIMES} times together. The sharpest where the book turns from one to the other, each standing {TURNS} times; "
    f"then where one has strayed in: the other stands {AS_OFTEN} times as often. At most {MOST} in a book. What is "
    "dashed off without apostrophes, set in as a document, or drawn out into syllables is let be. Which is right is "
    "not said. Common practice of copy editors; the list is our own, from memory.",
    blind="A letter or a document within the story that is meant to spell otherwise, and that nothing sets off, is "
    "asked about. Words that are also names. Two words against one (‘for ever’), unless a hyphen stands too.",
    reads=("words",),
    find=find,
    recipe=3,
)
