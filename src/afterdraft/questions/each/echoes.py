"""A turn of phrase that comes again, word for word, far from where it stood first."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.repeats import LEAST
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.speech import speech
from afterdraft.reading.lexicon import words_of

RUN, GESTURE = 6, 4  # words that are the same at least, and in a gesture
APART = 400  # words between, a page and more: nearer it is said again on purpose
NEAR = (
    5_000  # words between up to which readers still have the first in mind; by questions judged, not on the report half
)
NEAR_WORDS = 2  # of the book's rarer words that have to be among them, likewise
GESTURE_WORDS = 3  # of them in a gesture, likewise: with fewer it is one that people make
FAR, FAR_WORDS = 8, 3  # words that are the same, and rarer ones among them, that stay in mind for longer, likewise
SCARCE = 8_000  # words of the book to one use of a word that is scarce in it, likewise
ALWAYS = 6  # times that a word may stand in any book and be scarce
PHRASE = 9  # words of what may be a name, or a picture in which nothing happens, likewise
LONG = 4  # letters of such a word
BESIDE = 6  # words on either side that may point back to the first
SHORTER = 2  # other places with a shorter form of it from which it is a catchphrase; chosen on the tuning half
MOST = 3  # of them asked about in a book, the rarest
_WORD = re.compile(r"[^\W_]+(?:[’'][^\W_]+)*")
_STOPS = re.compile(r"[.;:!?…]")
_JOINING = words_of("and but or to of in on at with by for as that the a an")
_SMALL = _JOINING | words_of("i he she it we they his her its my our their him them was were had is be from into up")
_BODY = words_of(
    """
    head hair brow brows forehead temples eye eyes eyebrow eyebrows eyelids cheek cheeks nose mouth lip lips tooth teeth
    chin jaw beard moustache face ear ears throat neck shoulder shoulders arm arms elbow elbows hand hands palm palms
    fist fists finger fingers thumb thumbs knee knees lap thigh thighs leg legs foot feet heel heels toes breath
    sighed shrugged nodded frowned grinned winced blushed shuddered shivered sniffed yawned scowled
    """
)
_WHOSE = words_of("his her my their its our your the")
_DEFINITE = words_of("the that this those these")
_OPENING = _JOINING | _DEFINITE | words_of("then now so there")
_POINTS_BACK = re.compile(
    r"\b(?:again|once\smore|before|as\susual|another|the\ssame|such|remember\w*|recall\w*|connected|moreover|still"
    r"|thought\sof|like)\b",
    re.IGNORECASE,
)


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
    rare: frozenset[str]  # words of it that are scarce in the book
    between: int  # words

    @property
    def scarce(self) -> int:
        return len(self.rare)


def find(seen: Seen) -> Iterator[Finding]:
    words = list(_words(seen))
    found = [*_echoes(words, RUN), *(one for one in _echoes(words, GESTURE) if _is_gesture(one.first))]
    phrases = _phrases(words)
    asked: dict[tuple[int, ...], _Echo] = {}
    for one in sorted(found, key=lambda one: (-one.scarce, one.between, -len(one.first))):
        meant = _is_stock(one.first) or _is_catchphrase(one, phrases) or _takes_up(seen, one)
        quoted = any(_is_in_italics(seen, run) for run in (one.first, one.again))
        if _stays_in_mind(one) and not (meant or quoted or _points_back(seen, one.again)):
            first, again = one.first[0], one.again[0]
            asked.setdefault((first.scene, first.paragraph, again.scene, again.paragraph), one)
    for one in list(asked.values())[:MOST]:
        yield _finding(seen, one)


def _is_in_italics(seen: Seen, run: Sequence[_Word]) -> bool:
    """Whether it is a title, or quoted."""
    return seen.is_in_italics(run[0].scene, run[0].paragraph, run[0].start, run[-1].end)


def _points_back(seen: Seen, run: Sequence[_Word]) -> bool:
    """Whether the words beside it, in its sentence, say that it comes again."""
    text = seen.texts[run[0].scene][run[0].paragraph]
    begins, ends = sentence(text, run[0].start, run[-1].end)
    before, behind = text[begins : run[0].start].split(), text[run[-1].end : ends].split()
    return bool(_POINTS_BACK.search(" ".join(before[-BESIDE:])) or _POINTS_BACK.search(" ".join(behind[:BESIDE])))


def _stays_in_mind(one: _Echo) -> bool:
    """Whether a reader has the first still in mind: it is near, or rare and long, or both open scenes."""
    opens = all(run[0].paragraph == 0 for run in (one.first, one.again)) and len(one.first) >= RUN
    if _is_gesture(one.first) and one.scarce < GESTURE_WORDS:
        return False
    return one.between <= NEAR or opens or (len(one.first) >= FAR and one.scarce >= FAR_WORDS)


def _is_stock(run: Sequence[_Word]) -> bool:
    """Whether it is a gesture that everybody makes, with no word of its own: 'he cleared his throat'."""
    bare = [one.small for one in run if one.small.islower() and one.small not in _SMALL - _WHOSE]
    return len(bare) <= len(("cleared", "his", "throat")) and bool(_WHOSE & set(bare)) and bare[-1] in _BODY


def _phrases(words: Sequence[_Word]) -> Counter[tuple[str, ...]]:
    """How often two words of some meaning stand together, by themselves or round a small one."""
    small = [one.small for one in words]
    threes = zip(small, small[1:], small[2:], strict=False)
    both = (*pairwise(small), *(three for three in threes if three[1] in _SMALL))
    return Counter(one for one in both if not _SMALL & {one[0], one[-1]})


def _is_catchphrase(one: _Echo, phrases: Counter[tuple[str, ...]]) -> bool:
    """Whether a shorter form of it with a rarer word stands elsewhere too: then it is somebody's phrase; a gesture is
    nobody's."""
    if _is_gesture(one.first):
        return False
    small = [word.small for word in one.first]
    parts = [small[at : at + long] for long in (2, 3) for at in range(len(small) - long + 1)]
    return any(phrases[tuple(part)] >= 2 + SHORTER and {part[0], part[-1]} & one.rare for part in parts)


def _takes_up(seen: Seen, one: _Echo) -> bool:
    """Whether the second means the very thing that the first told of in this scene: 'she pointed to the rollers'."""
    begins = one.again[0]
    if one.first[0].scene != begins.scene:
        return False
    text = seen.texts[begins.scene][begins.paragraph]
    before = text[sentence(text, begins.start, begins.end)[0] : begins.start].split()
    definite = begins.small in _DEFINITE or (before and before[-1].lower() in _DEFINITE)
    return bool(definite and {word.lower() for word in before} - _OPENING)


def _is_gesture(run: Sequence[_Word]) -> bool:
    return any(one.small in _BODY for one in run)


def _words(seen: Seen) -> Iterator[_Word]:
    for number, scene in enumerate(seen.texts):
        spoken = speech(scene)
        events = {(one.paragraph, one.start) for one in seen.facts[number].events} if seen.is_read else set()
        for place, text in enumerate(scene):
            for match in _WORD.finditer(text):
                start, end = match.span()
                told = "\n" not in text and not spoken(place, start)
                small = match.group().replace("'", "’")
                small = small if small[0].isupper() and _is_inside(text, start) else small.lower()
                stops = bool(_STOPS.match(text, end))
                yield _Word(number, place, start, end, small, told, (place, start) in events, stops)


def _is_inside(text: str, start: int) -> bool:
    """Whether a word stands within its sentence, so that its capital makes it a name."""
    return text[:start].rstrip()[-1:].isalpha()


def _echoes(words: list[_Word], least: int) -> Iterator[_Echo]:
    small = [one.small for one in words]
    counted = Counter(small)
    often = max(ALWAYS, len(words) // SCARCE)
    done = 0
    for at, other in sorted(_twice(small, least).items()):
        if at < done or other - at < APART:
            continue
        long = _same(words, at, other)
        done = at + long
        while long and words[at + long - 1].small in _JOINING:
            long -= 1
        first, again = words[at : at + long], words[other : other + long]
        rare = frozenset(one.small for one in first if len(one.small) >= LONG and _is_scarce(one.small, counted, often))
        if least <= long < LEAST and len(rare) >= NEAR_WORDS and _tells(first, again):
            yield _Echo(first, again, rare, other - at)


def _twice(small: Sequence[str], least: int) -> dict[int, int]:
    """Where runs begin that stand exactly twice: first place, second. By their hashes, which take less memory than they
    do; whoever uses it compares the words."""
    first: dict[int, int] = {}
    again: dict[int, int | None] = {}
    for at in range(len(small) - least + 1):
        run = hash(tuple(small[at : at + least]))
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
    unless it is a long one. Without a small word it is no sentence of this language's."""
    both = (*first, *again)
    told = all(one.told for one in both) and sum(one.small in _SMALL for one in first) >= len(first) // 4
    return told and (len(first) >= PHRASE or any(one.event for one in both))


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
    looks_at=f"{RUN} to {LEAST - 1} words of the narration in which something happens, or {GESTURE} of a gesture, word "
    "for word in two places more than a page apart and so near that a reader has the first in mind. "
    f"The {MOST} rarest are asked about.",
    method=f"Every run of {RUN} words, or of {GESTURE} where one names a part of the body, is looked up in the whole "
    f"book and followed for as long as the words are the same. {NEAR_WORDS} have to be rare, {GESTURE_WORDS} in a "
    f"gesture: standing six times at most, or once in 8,000 words. Up to {NEAR:,} words lie between, or both open a "
    f"scene, or {FAR} words are the same, "
    f"{FAR_WORDS} of them rare. What stands three times is taken for a refrain, or in a "
    f"shorter form {SHORTER} times elsewhere, and a second sentence that points back (‘again’, ‘the same’) or takes up "
    "a thing of its scene for one that means it; a gesture with no word of its own (‘he cleared his throat’) for "
    "nobody's. Common practice of copy editors; the measures are our own.",
    blind="An echo that is meant is asked about too, if nothing says so. The same picture in other words is not seen.",
    reads=("words", "facts"),
    find=find,
    recipe=4,
)
