"""How far apart the text says that two places are, and which way one lies from the other."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from afterdraft.reading.time_words import number

_PLACE = r"(?!(?:It|This|That|There|Here|He|She|They|The|What|Which|Who|And|But)\b)[A-Z][\w’-]+(?: [A-Z][\w’-]+){0,2}"
_ONE, _OTHER = rf"(?P<one>{_PLACE})", rf"(?P<other>{_PLACE})"
_NUMBER = (
    r"(?P<count>\d+|an?|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:-\w+)?|two|three|four|five|six"
    r"|seven"
    r"|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)"
)
_HOW = r"(?P<how>journey|ride|drive|walk|march|sail|voyage)"
_LONG = rf"{_NUMBER} (?:good |long |short |full )?(?P<unit>miles?|leagues?|hours?|days?)"
_SIDE = r"(?:due )?(?P<side>north|south|east|west)"
_IS = r",? (?:which )?(?:is|was|were|lies|lay|stands|stood)(?: it)?(?: about| some| only| just| but)?"
_PATTERNS = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b{_LONG}(?:[’']s? {_HOW})?(?: by \w+)?,? from {_ONE} to {_OTHER}",
        rf"\b{_LONG} between {_ONE} and {_OTHER}",
        rf"\b[Ff]rom {_ONE} to {_OTHER}(?:{_IS}|,? it (?:is|was)) (?:a {_HOW} of )?{_LONG}",
        rf"\b{_HOW} of {_LONG} from {_ONE} to {_OTHER}",
        rf"\b{_ONE}{_IS} {_LONG}(?: off| away| distant)?(?:[’']s? {_HOW.replace('how', 'way')})?(?: to the)?(?: "
        rf"{_SIDE})? "
        rf"(?:from|of) {_OTHER}",
        rf"\b{_ONE}{_IS} (?:to the )?{_SIDE} of {_OTHER}",
    )
)
UNITS: Mapping[str, tuple[str, float]] = {
    "mile": ("miles", 1),
    "league": ("miles", 3),
    "hour": ("hours", 1),
    "day": ("hours", 24),
}
_ROUGH = re.compile(r"\b(?:or|if|not|nearly|like|perhaps|would|hundred|thousand)\b")


@dataclass(frozen=True, slots=True)
class Way:
    """What a passage says of the way from one place to another, of which it may say only the side."""

    one: str
    other: str
    length: float  # 0 where it is not told
    kind: str  # miles or hours; and how one goes, where hours are told: "hours ride"
    side: str  # where `one` lies from `other`: north; "" where it is not told
    start: int
    end: int


def ways(text: str) -> Iterator[Way]:
    """Of a paragraph.

    >>> [(one.one, one.other, one.length, one.kind) for one in ways("It is two leagues from Ash to Kell.")]
    [('Ash', 'Kell', 6, 'miles')]
    >>> [(one.one, one.side, one.other) for one in ways("Ash lies to the north of Kell.")]
    [('Ash', 'north', 'Kell')]
    """
    for pattern in _PATTERNS:
        for match in pattern.finditer(text):
            if not _ROUGH.search(match.group()):
                yield _way(match)


def _way(match: re.Match[str]) -> Way:
    groups = match.groupdict()
    unit, size = UNITS[groups["unit"].rstrip("s")] if groups.get("unit") else ("", 0)
    count = number(groups["count"]) if groups.get("count") else 0
    how = groups.get("how") or groups.get("way") or ""
    kind = f"{unit} {how}".strip() if unit == "hours" else unit
    return Way(match["one"], match["other"], (count or 0) * size, kind, groups.get("side") or "", *match.span())
