"""What somebody wears, which is of another colour in the same scene."""

import re
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.whose import Whose
from afterdraft.whole.pronoun_cautions import Owner

SURE = 0.5  # of whose it is
_COLOURS = {
    "white": "white cream ivory", "black": "black", "grey": "grey gray", "red": "red scarlet crimson maroon burgundy",
    "blue": "blue navy", "green": "green", "yellow": "yellow", "brown": "brown", "pink": "pink",
    "purple": "purple violet lilac mauve", "orange": "orange",
}  # fmt: skip
SHADES = {shade: colour for colour, shades in _COLOURS.items() for shade in shades.split()}
_NEAR = (
    {"red", "pink"},
    {"purple", "blue"},
    {"purple", "pink"},
    {"yellow", "orange"},
    {"grey", "blue"},
    {"black", "blue"},
    {"brown", "orange"},
    {"white", "grey"},
    {"red", "orange"},
    {"red", "purple"},
    {"brown", "red"},
    {"blue", "green"},
)
_THINGS = (
    "dress|gown|frock|coat|overcoat|jacket|skirt|blouse|cloak|hat|cap|bonnet|suit|tie|scarf|shawl|waistcoat|shirt"
    "|uniform|cardigan|jumper|sweater|sweatshirt|pullover|jersey|parka|anorak|hoodie|raincoat|mackintosh|fleece|blazer"
    "|vest|apron|robe|dressing-gown|nightdress|tunic|beret|headscarf|T-shirt|tracksuit|windbreaker"
)
_WORN = re.compile(
    rf"\b(?P<how>(?:in|wearing|wore|had on) (?:a|an)|[Hh]is|[Hh]er|[A-Z]\w+[’']s) (?:\w+,? "
    rf"){{0,2}}?(?P<colour>{'|'.join(SHADES)})"
    rf"(?: \w+)? (?P<thing>{_THINGS})\b(?! and (?:white|black|red|blue|green|yellow|brown|pink))"
)
_CHANGES = re.compile(
    r"\b(?:chang\w+|dressed|undress\w*|put(?:s|ting)? on|took off|takes off|slipped (?:on|off|into|out)|threw on"
    r"|another (?:\w+ )?(?:dress|gown|coat|hat|suit)|used to|had worn|would wear|years?|weeks?|later|ago"
    r"|(?:once|always) (?:wore|worn)"
    r"|(?:next|following|same|every|each|other|one) (?:day|night|morning|evening)"
    r"|that (?:night|evening)|days (?:after|passed|before)|to-?morrow|yesterday)\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class _Worn:
    colour: str
    said: str
    span: Span


def find(seen: Seen) -> Iterator[Finding]:
    whose = Whose(seen)
    for number in seen.scenes:
        by: defaultdict[tuple[str, str], list[_Worn]] = defaultdict(list)
        for person, thing, worn in _worn(seen, whose, number):
            by[person, thing].append(worn)
        for (person, thing), some in by.items():
            for one, other in combinations(some, 2):
                if _differ(one.colour, other.colour) and not _is_changed(seen, number, one.span, other.span):
                    yield _finding(seen, person, thing, one, other)
                    break


def _worn(seen: Seen, whose: Whose, number: int) -> Iterator[tuple[str, str, _Worn]]:
    for place, text in enumerate(seen.texts[number]):
        for match in _WORN.finditer(text):
            start, end = sentence(text, *match.span())
            owner = _owner(whose, number, place, match, start)
            if owner and owner[1] >= SURE:
                said = match["colour"]
                yield owner[0], match["thing"], _Worn(SHADES[said], said, seen.span(number, place, start, end))


def _owner(whose: Whose, number: int, place: int, match: re.Match[str], start: int) -> Owner | None:
    """Whose it is by 'his' or a name, else who wears it."""
    if match["how"].endswith(("’s", "'s")):
        return whose.ending(number, place, match.end("how") - len("’s"))
    if match["how"].lower() in ("his", "her"):
        return whose.last(number, place, *match.span("how"))
    return whose.subject(number, place, start, match.start() + 1)


def _differ(one: str, other: str) -> bool:
    return one != other and {one, other} not in _NEAR


def _is_changed(seen: Seen, number: int, one: Span, other: Span) -> bool:
    """Whether words between, outside speech, tell of time or of a change."""
    return any(
        not _is_spoken(seen, number, place, match.start())
        for place in range(one.paragraph, other.paragraph + 1)
        for match in _CHANGES.finditer(seen.texts[number][place])
        if (one.paragraph, one.start) <= (place, match.start()) < (other.paragraph, other.end)
    )


def _is_spoken(seen: Seen, number: int, paragraph: int, at: int) -> bool:
    return any(one.paragraph == paragraph and one.start <= at < one.end for one in seen.facts[number].quotes)


def _finding(seen: Seen, person: str, thing: str, one: _Worn, other: _Worn) -> Finding:
    name = seen.name(person)
    return Finding(
        evidence=(one.span, other.span),
        strength=0.7,
        subject=f"{thing} of {name.lower()}",
        words={"name": name, "thing": thing, "first": one.said, "other": other.said},
        people=(person,),
    )


CHECK = Check(
    id="dress",
    name="Dress that changes within a scene",
    family="continuity",
    looks_at="A coat, a dress, a hat and the like of one person that is of two colours in one scene, where nothing "
    "tells "
    "of time or of a change between.",
    method="‘In a grey coat’, ‘her blue dress’, of whoever is named or most likely meant; colours that shade into one "
    "another are let be. The rule is our own.",
    blind="Patterns, linings, two coats of one person. What is worn in two scenes of one day.",
    reads=("words", "cast"),
    find=find,
    recipe=3,
)
