"""Where somebody comes from, told in two ways."""

import re
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.homelands import HOMES, PEOPLES, Home, apart, called, home
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.whose import Whose

SURE = 0.5  # of whose home it is; chosen on the tuning half
_NAME = r"[A-Z][\w’']+(?:[ -][A-Z][\w’']+){0,2}"
_PLACE = rf"(?P<place>{_NAME})(?:,? in (?P<within>{_NAME})|, (?P<beside>{_NAME}))?"
_PEOPLE = "|".join(sorted(map(str.capitalize, PEOPLES), key=len, reverse=True))
_HOME = "|".join(sorted(map(str.capitalize, HOMES), key=len, reverse=True))
_PATTERNS = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b(?:was|were|am|is|been|being|,) (?P<born>born)(?: and (?:bred|raised|reared|brought up))? (?:in|at) "
        rf"{_PLACE}",
        rf"\bin {_PLACE}, where (?P<own>he|she|I) (?:was|had been) (?P<born>born)\b",
        rf"\b(?:hail|hails|hailed|(?:comes?|came) originally) from {_PLACE}",
        rf"\b(?:an?|the) (?P<born>native) of {_PLACE}",
        rf"\b(?P<own>[Hh]is|[Hh]er|[Mm]y) (?P<born>native) {_PLACE}",
        rf"(?:\b(?:was|is|am|being)|,) (?:only |really |still |after all )?an? (?:\w+ "
        rf")?(?P<place>{_PEOPLE})\b"
        r"(?=[.,;!?”]| by birth| and | but | from )",
        rf"(?:^|[.!?…] |[“—])(?P<alone>(?:[Pp]oor|[Pp]lucky|[Bb]rave|[Ll]ittle|[Oo]ld) (?:\w+ )?(?P<place>{_HOME}) "
        rf"(?:boy|girl|lad|lass|man|woman)[!.])",
    )
)
_APPOSED = re.compile(r",(?: who)?(?: \w?)?$")  # ‘Ilse, a native of’, ‘Ilse, who was born in’
_NOT = re.compile(
    r"\b(?:not|never|n[’']t|if|whether|like|as if|as though|might|would|perhaps|probably|or|who|than)\b[^.;!?]{0,30}$"
)


@dataclass(frozen=True, slots=True)
class _Told:
    span: Span
    home: Home
    born: bool
    sure: float


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[str, list[_Told]] = defaultdict(list)
    for person, told in _told(seen):
        if told.sure >= SURE:
            by[person].append(told)
    for person, some in by.items():
        pair = next((pair for pair in combinations(some, 2) if apart(pair[0].home, pair[1].home)), None)
        if pair:
            name = seen.name(person)
            yield Finding(
                evidence=tuple(one.span for one in pair),
                strength=0.8 if all(one.born for one in pair) else 0.7,
                subject=f"origin of {name.lower()}",
                words={"name": name, "first": called(pair[0].home), "other": called(pair[1].home)},
                people=(person,),
            )


def _told(seen: Seen) -> Iterator[tuple[str, _Told]]:
    whose = Whose(seen)
    for number, scene in enumerate(seen.texts):
        for paragraph, text in enumerate(scene):
            for pattern in _PATTERNS:
                for match in pattern.finditer(text):
                    if (where := _home(match)) and (owner := _owner(whose, number, paragraph, match)):
                        start, end = sentence(text, *match.span("place"))
                        span = seen.span(number, paragraph, start, end)
                        born = match.groupdict().get("born") is not None
                        yield owner[0], _Told(span, where, born, owner[1])


def _home(match: re.Match[str]) -> Home:
    """Of the widest name that is known: 'Tolland County, in Connecticut'."""
    groups = match.groupdict()
    names = [groups[name] for name in ("place", "within", "beside") if groups.get(name)]
    words = [word for name in names for word in re.split(r"[ -]", name)]
    return max((home(word) for word in words), key=len, default=())


def _owner(whose: Whose, number: int, paragraph: int, match: re.Match[str]) -> tuple[str, float] | None:
    groups = match.groupdict()
    begins, _ = sentence(match.string, *match.span("place"))
    if groups.get("own"):
        return whose.last(number, paragraph, *match.span("own"))
    if groups.get("alone"):
        return whose.last(number, paragraph, 0, match.start("alone"))
    if apposed := _APPOSED.search(match.string[: match.start() + 1]):
        return whose.ending(number, paragraph, apposed.start())
    if _NOT.search(match.string, begins, match.start()):
        return None
    return whose.subject(number, paragraph, begins, match.start() + 1)


CHECK = Check(
    id="origin",
    name="Two places of origin",
    family="continuity",
    looks_at="Somebody who is said to come from two countries, or from two parts of one.",
    method="‘Born in’, ‘a native of’, ‘hails from’, ‘an Irishman’ and the like, of whoever is named or most likely "
    "meant, "
    "where that is as likely as not. Only countries, American states, English counties and large cities that "
    "the program knows are held against each other. The rule is our own.",
    blind="Places of your own invention, and small ones. Who was born in one country and counts as of another is asked "
    "about.",
    reads=("words", "cast"),
    find=find,
    recipe=2,
)
