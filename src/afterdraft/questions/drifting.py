"""Names that are others for a while: two names of one title, given name or part, of which one person is meant."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from rapidfuzz.distance import OSA, Jaro

from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.reading import lexicon
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.time_words import DAYS, MONTHS
from afterdraft.reading.trait_words import TRADES
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import same_given

FEW = 4  # times that the other name stands at most, in one scene or two; chosen on the tuning half
LONG = 3  # letters of a name at least
NEAR, NEXT = (
    999,
    2,
)  # scenes before in which the usual one stands, behind a title or given name, and by itself; likewise
APART = 3  # paragraphs from one to the other at least, likewise
SHAPE = 0.75  # how alike two names are at least that do not begin with two letters alike, by Jaro (1989): 0 to 1
FAMILIAR, MINOR = 150, 40  # times up to which a name may drift to one that looks alike, and to one that begins alike
SELDOM = 12  # times up to which the usual name stands where a rare word beside both ties them together; likewise
RARE, MORE = 6, 8_000  # a word is rare that stands so often at most, or once in so many words
ASKED = 7  # times of the usual name from which one letter's difference is asked about as a spelling
ROUND = 40  # characters on either side in which kinship explains another of the name; chosen by hand
_TITLES = (
    lexicon.TITLES | words_of("deputy ranger coach agent pastor bosun ensign warden sheriff marshal brigadier")
) - words_of("king queen emperor empress saint st")
_NO_NAMES = lexicon.TITLES | lexicon.ROLES | lexicon.NO_NAMES | _TITLES | frozenset((*DAYS, *MONTHS))
_PARTS = (
    lexicon.ROLES
    | TRADES
    | words_of("mate bosun skipper purser steward sexton verger postmistress stationmaster barmaid vet undertaker")
) - (lexicon.KIN | words_of("man woman boy girl lady gentleman fellow other others one"))
_WORD = re.compile(r"[^\W\d_]+(?:[’'](?!s\b)[^\W\d_]+)*")
_CAPITAL = re.compile(rf"(?<!\w)(?<!\w[’'])(?=[A-ZÀ-Þ]){_WORD.pattern}")
_NAMED = r"(?P<name>(?:[A-Z][’']|Mc|Mac|Fitz)?[A-Z][a-zé]*[a-zé])(?![\w-]| [A-Z][a-z])"
_TWO = re.compile(rf"(?<![\w’'-])(?P<frame>[A-Z][a-zé]*[a-zé])\.? {_NAMED}")
_DOES = "|".join(sorted(lexicon.SPEECH)) + (
    "|[a-z]+ed|was|had|came|went|took|sat|stood|gave|got|saw|rose|drew|ran|left|held|shook|threw|led|kept|did|made|let"
)
_SAID = "said|asked|replied|cried|answered|whispered|added|called"
_ACTS = (
    re.compile(rf"(?<![\w.-] )(?<![\w’'-])(?P<name>[A-Z][a-zé]+) (?:{_DOES})\b"),
    re.compile(rf"[”’\"',] (?:{_SAID}) (?P<name>[A-Z][a-zé]+)\b(?! [A-Z])"),
)
_SPEAKS = (re.compile(rf"(?<=[”’\"'] )(?P<name>[A-Z][a-zé]+) (?:{_SAID})\b"), _ACTS[1])
_WHOSE = r"\b(?:[Tt]he|[Hh]is|[Hh]er|[Mm]y|[Oo]ur|[Tt]heir) (?:old |young |little |head )?"
_BOTH = r"(?:[A-Z][a-zé]*[a-z]\.? )?"  # a title or a given name
_APPOSED = (
    re.compile(rf"{_WHOSE}(?P<part>[a-z]+),? {_BOTH}{_NAMED}(?![’']s)"),
    re.compile(rf"(?<![\w’'.] ){_BOTH}{_NAMED},? {_WHOSE}(?P<part>[a-z]+)(?=[,.;:!?)—]| (?:{_DOES})\b)"),
)
_BEFORE = re.compile(
    r"(?:\b(?:late|an?|another|named|called|certain|some|and|or|nor|like|than|name\sof|both|old|poor|king|saint|st\.?)\s"
    r"|[—–(]\s?|[”’\"]\s)$",
    re.IGNORECASE,
)
_BEHIND = re.compile(
    r",?\s(?:of|who|whom|whose|himself|herself)\b|,?\s(?:and|or)\s[A-Z]|,\s(?:the|an?|my|our|his|her|junior|senior|Esq)\b"
    r"|\s[A-Z][a-z]|,\s[A-Z]|[’']s\s[A-Z]"
)
_KIN = re.compile(
    r"\b(?:sons?|daughters?|brothers?|sisters?|father|mother|uncle|aunt|cousins?|nephew|niece|wife|husband|widow"
    r"|married|family|born|christened)\b",
    re.IGNORECASE,
)

_ByName = Mapping[str, Sequence[Span]]


@dataclass(frozen=True)
class _Names:
    """What stands in the book, and behind or beside what; `parts` and `framed` by that and by name."""

    seen: Seen

    @cached_property
    def counted(self) -> Counter[str]:
        return Counter(word for scene in self.seen.texts for text in scene for word in _WORD.findall(text))

    @cached_property
    def stands(self) -> _ByName:
        """Words with a capital."""
        found: defaultdict[str, list[Span]] = defaultdict(list)
        for one in self._matches(_CAPITAL, 0):
            found[one.quote].append(one)
        return found

    @cached_property
    def small(self) -> frozenset[str]:
        return frozenset(word for word in self.counted if word.islower())

    @cached_property
    def framed(self) -> Mapping[str, _ByName]:
        """Behind a title or given name; behind nothing ("") where somebody does something."""
        found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
        for number, place, match in self._found(_TWO):
            frame = match["frame"].lower()
            if self.is_name(match["name"]) and (frame in _TITLES or frame in FEMALE | MALE):
                found[frame][match["name"]].append(self.seen.span(number, place, *match.span()))
        for one in (one for pattern in _ACTS for one in self._matches(pattern, "name")):
            if self.is_name(one.quote):
                found[""][one.quote].append(one)
        return found

    @cached_property
    def parts(self) -> Mapping[str, _ByName]:
        """Beside 'the mate'."""
        found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
        for number, place, match in (one for pattern in _APPOSED for one in self._found(pattern)):
            if match["part"] in _PARTS and self.is_name(match["name"]):
                found[match["part"]][match["name"]].append(self.seen.span(number, place, *match.span("name")))
        return found

    @cached_property
    def speaking(self) -> frozenset[str]:
        """Who speaks under a name by itself."""
        said = (one.quote for pattern in _SPEAKS for one in self._matches(pattern, "name"))
        return frozenset(name for name in said if self.is_name(name))

    @cached_property
    def pairs(self) -> frozenset[str]:
        """Two words with a capital that stand together."""
        return frozenset(f"{match['frame']} {match['name']}" for _, _, match in self._found(_TWO))

    @cached_property
    def rare(self) -> frozenset[str]:
        often = max(RARE, self.counted.total() // MORE)
        words = self.small - lexicon.SPEECH
        return frozenset(word for word in words if len(word) > LONG and self.counted[word] <= often)

    def _found(self, pattern: re.Pattern[str]) -> Iterator[tuple[int, int, re.Match[str]]]:
        for number, scene in enumerate(self.seen.texts):
            for place, text in enumerate(scene):
                for match in pattern.finditer(text):
                    yield number, place, match

    def _matches(self, pattern: re.Pattern[str], group: int | str) -> Iterator[Span]:
        return (self.seen.span(number, place, *match.span(group)) for number, place, match in self._found(pattern))

    def is_name(self, word: str) -> bool:
        return len(word) >= LONG and word in self.stands and word.lower() not in self.small | _NO_NAMES

    def frames(self, name: str) -> Sequence[str]:
        return [frame for frame, names in self.framed.items() if frame and name in names] or [""]

    def scenes(self, name: str) -> Sequence[int]:
        """In which it stands, in order."""
        return [one.scene for one in self.stands[name]]

    def without(self, frame: str, other: str) -> _ByName:
        """Who else may be meant by a name behind a title: a surname that speaks by itself; and by one that speaks by
        itself: a name with a title."""
        if frame in _TITLES:
            alone = (name for name in self.speaking if self.frames(name) == [""] and name.lower() not in FEMALE | MALE)
            return {name: self.framed[""][name] for name in alone if name in self.framed[""]}
        if frame or other not in self.speaking:
            return {}
        titled = [names for title, names in self.framed.items() if title in _TITLES]
        return {name: spans for names in titled for name, spans in names.items()}

    def is_for_a_while(self, name: str) -> bool:
        scenes = self.scenes(name)
        return len(scenes) <= FEW and scenes[-1] - scenes[0] <= 1

    def are_beside(self, name: str, other: str) -> bool:
        """Whether the two ever stand near each other."""
        return any(
            one.scene == two.scene and abs(one.paragraph - two.paragraph) < APART
            for one in self.stands[other]
            for two in self.stands[name]
        )


@dataclass(frozen=True, slots=True)
class Drift:
    """The usual name and the other, each where it stands first of all behind or beside what they share."""

    usual: Span  # the last before the other
    other: tuple[Span, ...]
    times: tuple[int, int]  # that the usual one and the other stand in the book
    tied: bool  # by one part, or by a rare word in one sentence with both


def drifts(seen: Seen) -> Iterator[Drift]:
    """Every name of a book that may be meant for another one; each once."""
    names = _Names(seen)
    asked: set[str] = set()
    for kind in (names.parts, names.framed):
        for frame, others in kind.items():
            for other in others:
                if other in asked or not names.is_for_a_while(other):
                    continue
                of_part = kind is names.parts
                by_name = others if of_part else {**names.without(frame, other), **others}
                usual = _usual(names, frame, by_name, other, tied=of_part)
                if not usual or _is_let_be(names, frame, usual, by_name[other][0], tied=of_part):
                    continue
                tied = of_part or _share_a_word(names, usual, other)
                if tied or _are_near(names, frame, usual, other):
                    asked.add(other)
                    yield _drift(names, by_name[usual], by_name[other], (usual, other), tied=tied)


def _drift(names: _Names, usual: Sequence[Span], places: Sequence[Span], both: tuple[str, str], *, tied: bool) -> Drift:
    near = max((one for one in usual if one < places[0]), default=usual[0])
    return Drift(near, tuple(places), (len(names.stands[both[0]]), len(names.stands[both[1]])), tied)


def _usual(names: _Names, frame: str, by_name: _ByName, other: str, *, tied: bool) -> str:
    """The one name of that title, given name or part that may be the same person's, stands more often and earlier, and
    never beside it; "" where there are two, or none."""
    if not tied and names.frames(other) != [frame]:
        return ""
    like = [name for name in by_name if name != other and (tied or _is_like(frame, name, other))]
    if len(like) > 1 and not tied:
        like = [name for name in like if _looks_alike(name, other)]
    if len(like) != 1 or len(names.stands[like[0]]) <= len(names.stands[other]):
        return ""
    known, here = names.scenes(like[0]), names.scenes(other)[0]
    apart = not names.are_beside(like[0], other) if frame else here not in known
    return like[0] if known[0] < here and apart else ""


def _is_like(frame: str, name: str, other: str) -> bool:
    """Whether one may be written for the other: they begin alike, and are not of two genders or forms of one name."""
    if name[:1] != other[:1] and not _looks_alike(name, other):
        return False
    both = [(small in FEMALE, small in MALE) for small in (name.lower(), other.lower())]
    if not frame and all(map(any, both)) and both[0] != both[1]:
        return False
    return not same_given(name.lower(), [other.lower()])


def _looks_alike(name: str, other: str) -> bool:
    return name[:2] == other[:2] or Jaro.similarity(name, other) >= SHAPE


def _are_near(names: _Names, frame: str, usual: str, other: str) -> bool:
    """Whether they look alike behind a title or given name; else the usual one has to stand shortly before."""
    alike, times = _looks_alike(usual, other), len(names.stands[usual])
    if times > (FAMILIAR if alike else MINOR) or not (alike or frame in _TITLES):
        return False
    here = names.scenes(other)[0]
    return bool(frame and alike) or any(here - NEXT <= scene <= here for scene in names.scenes(usual))


def _share_a_word(names: _Names, usual: str, other: str) -> bool:
    """Whether a rare word stands in one sentence with somebody who hardly stands, and with the other too."""
    if len(names.stands[usual]) > SELDOM:
        return False
    beside = [
        {word for one in names.stands[name] for word in _WORD.findall(names.seen.sentence(one).quote)}
        for name in (usual, other)
    ]
    return bool(beside[0] & beside[1] & names.rare)


def _is_let_be(names: _Names, frame: str, usual: str, first: Span, *, tied: bool) -> bool:
    """Whether the other is brought in, or is said to be somebody else, or one of the writer's own people, or may be
    one's married name; or it is asked about as a spelling."""
    text, other = names.seen.texts[first.scene][first.paragraph], first.quote.split()[-1]
    before, behind = text[: first.start], text[first.end :]
    hers = {word.lower() for one in names.seen.given.people for form in one.forms for word in form.split()}
    marries = frame not in ("", *_TITLES) and any(usual in names.framed.get(one, ()) for one in ("mrs", "miss"))
    spelled = OSA.distance(usual, other) <= 1 and len(names.stands[usual]) > ASKED
    if other.lower() in hers or _KIN.search(f"{before[-ROUND:]} {behind[:ROUND]}"):
        return True
    if tied:
        return any(f"{one} {two}" in names.pairs for one, two in ((usual, other), (other, usual)))
    return marries or spelled or bool(_BEFORE.search(before) or _BEHIND.match(behind))
