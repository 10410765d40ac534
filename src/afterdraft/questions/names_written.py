"""Names as a book writes them: behind which title, given name or part, and where."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.reading import lexicon
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.time_words import DAYS, MONTHS
from afterdraft.reading.trait_words import TRADES
from afterdraft.whole.given_names import FEMALE, MALE

LONG = 3  # letters of a name at least
APART = 3  # paragraphs from one to the other at least, likewise
THING = 7  # letters of a word that may end as things do: 'Trinity' and 'Florence' are names
RARE, MORE = 6, 8_000  # a word is rare that stands so often at most, or once in so many words
FEW = 4  # times that the other name stands at most, in one scene or two; chosen on the tuning half
TITLES = (
    lexicon.TITLES | words_of("deputy ranger coach agent pastor bosun ensign warden sheriff marshal brigadier massa")
) - words_of("king queen emperor empress saint st")
_NO_NAMES = lexicon.TITLES | lexicon.ROLES | lexicon.NO_NAMES | TITLES | frozenset((*DAYS, *MONTHS))
_PARTS = (
    lexicon.ROLES
    | TRADES
    | words_of("mate bosun skipper purser steward sexton verger postmistress stationmaster barmaid vet undertaker")
) - (lexicon.KIN | words_of("man woman boy girl lady gentleman fellow other others one"))
WORD = re.compile(r"[^\W\d_]+(?:[’'](?!s\b)[^\W\d_]+)*")
_CAPITAL = re.compile(rf"(?<!\w)(?<!\w[’'])(?=[A-ZÀ-Þ]){WORD.pattern}")
_NO_TITLE = r"(?!(?:Mr|Mrs|Ms|Dr|Prof|Capt|Sgt|Rev)\b)"  # ‘young Dr. Amory’: it is not Dr. that young is of
_NAMED = rf"(?P<name>{_NO_TITLE}(?:[A-Z][’']|Mc|Mac|Fitz)?[A-Z][a-zé]*[a-zé])(?![\w-]| [A-Z][a-z])"
TWO = re.compile(rf"(?<![\w’'-])(?P<frame>[A-Z][a-zé]*[a-zé])\.? {_NAMED}")
_DOES = "|".join(sorted(lexicon.SPEECH)) + (
    "|[a-z]+ed|was|had|came|went|took|sat|stood|gave|got|saw|rose|drew|ran|left|held|shook|threw|led|kept|did|made|let"
)
_THING = re.compile(
    r"(?:[tsx]ion|ment|ness|[iae]ty|ship|hood|ism|ance|ence|ingly)s?$"
)  # 'Completion was on the Friday'
_HIS_PLACE = re.compile(r"[’']s [A-Z]")
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

ByName = Mapping[str, Sequence[Span]]


@dataclass(frozen=True)
class Names:
    """What stands in the book, and behind or beside what; `parts` and `framed` by that and by name."""

    seen: Seen

    @cached_property
    def counted(self) -> Counter[str]:
        return Counter(word for scene in self.seen.texts for text in scene for word in WORD.findall(text))

    @cached_property
    def stands(self) -> ByName:
        """Words with a capital."""
        found: defaultdict[str, list[Span]] = defaultdict(list)
        for one in self._matches(_CAPITAL, 0):
            found[one.quote].append(one)
        return found

    @cached_property
    def small(self) -> frozenset[str]:
        return frozenset(word for word in self.counted if word.islower())

    @cached_property
    def framed(self) -> Mapping[str, ByName]:
        """Behind a title or given name; behind nothing ("") where somebody does something."""
        found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
        for number, place, match in self.found(TWO):
            frame = match["frame"].lower()
            if self.is_name(match["name"]) and (frame in TITLES or frame in FEMALE | MALE):
                found[frame][match["name"]].append(self.seen.span(number, place, *match.span()))
        for one in (one for pattern in _ACTS for one in self._matches(pattern, "name")):
            if self.is_name(one.quote):
                found[""][one.quote].append(one)
        return found

    @cached_property
    def parts(self) -> Mapping[str, ByName]:
        """Beside 'the mate'."""
        found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
        for number, place, match in (one for pattern in _APPOSED for one in self.found(pattern)):
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
        return frozenset(f"{match['frame']} {match['name']}" for _, _, match in self.found(TWO))

    @cached_property
    def rare(self) -> frozenset[str]:
        often = max(RARE, self.counted.total() // MORE)
        words = self.small - lexicon.SPEECH
        return frozenset(word for word in words if len(word) > LONG and self.counted[word] <= often)

    def found(self, pattern: re.Pattern[str]) -> Iterator[tuple[int, int, re.Match[str]]]:
        for number, scene in enumerate(self.seen.texts):
            for place, text in enumerate(scene):
                for match in pattern.finditer(text):
                    yield number, place, match

    def _matches(self, pattern: re.Pattern[str], group: int | str) -> Iterator[Span]:
        return (self.seen.span(number, place, *match.span(group)) for number, place, match in self.found(pattern))

    def is_name(self, word: str) -> bool:
        small = word.lower()
        named = len(word) >= LONG and word in self.stands and small not in self.small and small not in _NO_NAMES
        return named and word not in self.places and not (len(small) > THING and _THING.search(small))

    @cached_property
    def places(self) -> frozenset[str]:
        """Names that stand in another's only: 'Cobb' where the book has 'Cobb's Hole' and nothing else of him."""
        texts = self.seen.texts
        return frozenset(
            name
            for name, spans in self.stands.items()
            if all(_HIS_PLACE.match(texts[one.scene][one.paragraph], one.end) for one in spans)
        )

    def frames(self, name: str) -> Sequence[str]:
        return [frame for frame, names in self.framed.items() if frame and name in names] or [""]

    def scenes(self, name: str) -> Sequence[int]:
        """In which it stands, in order."""
        return [one.scene for one in self.stands[name]]

    def without(self, frame: str, other: str) -> ByName:
        """Who else may be meant by a name behind a title: a surname that speaks by itself; and by one that speaks by
        itself: a name with a title."""
        if frame in TITLES:
            alone = (name for name in self.speaking if self.frames(name) == [""] and name.lower() not in FEMALE | MALE)
            return {name: self.framed[""][name] for name in alone if name in self.framed[""]}
        if frame or other not in self.speaking:
            return {}
        titled = [names for title, names in self.framed.items() if title in TITLES]
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
