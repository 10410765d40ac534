"""On which side of the story's ground a place is told to lie: said, or by the sun that rises or sets over it."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Literal

Side = Literal["north", "south", "east", "west"]
OPPOSITE: Mapping[str, str] = {"north": "south", "south": "north", "east": "west", "west": "east"}
_OF = r"(?:the\s(?:lights?|roofs?|towers?|spires?|smoke|church|houses|chimneys)\sof\s)?"
_PLACE = (
    rf"{_OF}(?P<place>(?!(?:North|South|East|West)\b)[A-Z][\w’']+(?:\s[A-Z][\w’']+)?|the\s(?:mainland|sea|city|town"
    r"|village|river|lake|harbou?r|island|bay|mountains?|moor|valley|castle|forest|lighthouse|estuary|sound|marsh(?:es)?"
    r"|ridge|abbey|mill|docks?|port|airport|coast|ocean|desert|border|capital)\b)"
)
_SIDE = r"(?P<side>north|south|east|west)(?:wards?)?"
_SEES = r"(?:(?:she|he|they|we|I|one|you)\s(?:could\s)?(?:see|saw|made\sout)|lay|was|were|lies|stood|rose|shone)"
_SAID = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b(?:[Tt]o|[Ii]n|[Tt]owards?)\sthe\s(?:far\s)?{_SIDE}(?:,\s(?:and\s)?(?:{_SEES}\s)?|\s{_SEES}\s){_PLACE}",
        rf"\b{_PLACE}\s(?:lay|lies|was|stood|rose|stretched|shone|glittered)(?:\s\w+){{0,3}}\sto\sthe\s{_SIDE}\b(?!\sof\b)",
        rf"\b{_PLACE},\s(?:\w+\s){{0,3}}to\sthe\s{_SIDE}\b(?!\sof\b)",
        rf"\b[Ll]ook(?:ed|ing)\s(?:out\s)?{_SIDE}\s(?:across|over|to|towards?|at)\s[^.;!?“”\"]{{0,50}}?{_PLACE}",
    )
)
_ROSE = r"(?:rose|came\sup|was\s(?:rising|coming\sup)|had\s(?:risen|come\sup)|climbed|rising|coming\sup)"
_SET = (
    r"(?:set|sank|went\sdown|was\s(?:setting|sinking|going\sdown)|had\s(?:set|sunk|gone\sdown)|going\sdown|setting"
    r"|sinking|dropped|dropping)"
)
_SUN: tuple[tuple[Side, re.Pattern[str]], ...] = (
    ("east", re.compile(rf"\bsun\s(?:\w+\s)?{_ROSE}\s(?:\w+\s)?(?:over|behind|above|beyond|out\sof)\s{_PLACE}")),
    ("west", re.compile(rf"\bsun\s(?:\w+\s)?{_SET}\s(?:\w+\s)?(?:over|behind|beyond|into)\s{_PLACE}")),
)


@dataclass(frozen=True, slots=True)
class Bearing:
    place: str
    side: str  # north, south, east, west
    sun: bool  # told by the sun
    start: int
    end: int


def bearings(text: str) -> Iterator[Bearing]:
    """Of a paragraph.

    >>> [(one.place, one.side) for one in bearings("Down to the west, the lights of Kell went on.")]
    [('Kell', 'west')]
    >>> [(one.place, one.side) for one in bearings("The sun came up over Kell.")]
    [('Kell', 'east')]
    """
    for pattern in _SAID:
        for match in pattern.finditer(text):
            yield Bearing(match["place"], match["side"], False, *match.span())
    for side, pattern in _SUN:
        for match in pattern.finditer(text):
            yield Bearing(match["place"], side, True, *match.span())
