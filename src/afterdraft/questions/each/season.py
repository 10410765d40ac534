"""A month, and weather, fields or flowers that do not go with it."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seasons import ELSEWHERE, SIGNS
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence

NEAR = 15  # paragraphs between the month and the sign of a season, in one scene; chosen by hand
FEW = 2  # months that a scene names at most: more, and the telling goes through the year; likewise
_NAMES = "January|February|March|April|May|June|July|August|September|October|November|December"
_MONTH = re.compile(
    rf"\b(?:in|of|on|an?|the|that|this|early|late|mid|was|were|through)[ -](?P<behind>{_NAMES})\b(?! \w+[’']s)"
    rf"|\b(?P<before>{_NAMES})(?= (?:had come|had set in|came|was|morning|evening|night|day|afternoon|sun|rain|the|\d))"
)
NUMBERS = {month: number for number, month in enumerate(_NAMES.split("|"), 1)}
_SOUTH = re.compile(r"\b(?:southern hemisphere|antipodes)\b", re.IGNORECASE)
_DREAMED = re.compile(r"\bdream(?:ed|t)\s(?:that|of)\b|\bin\s(?:his|her|my|the)\sdream\b")
_ELSEWHEN = re.compile(
    r"\b(?:had (?!come|begun|set in|turned|fallen|whitened)|would|used to|since|until|till|before|last|next|ago"
    r"|every|each"
    r"|always|never|if|when|whenever|remember\w*|once|dream\w*|will|shall|may|might|usually|often|sometimes"
    r"|as though"
    r"|born|died|dated|due)\b|[’']d\b"
)


@dataclass(frozen=True, slots=True)
class _Place:
    paragraph: int
    start: int
    end: int
    months: frozenset[int]


def find(seen: Seen) -> Iterator[Finding]:
    if any(_SOUTH.search(text) for scene in seen.texts for text in scene):
        return  # where December is summer
    for number in seen.scenes:
        named = list(_named(seen, number))
        texts = seen.texts[number]
        if not named or len({one.months for one in named}) > FEW or any(map(ELSEWHERE.search, texts)):
            continue
        if any(map(_DREAMED.search, texts)):
            continue
        told = [one for one in named if _is_told(seen, number, one)]
        pairs = ((month, sign) for month in told for sign in _signs(seen, number) if _differ(month, sign))
        if pair := next(pairs, None):
            yield _finding(seen, number, *pair)


def _named(seen: Seen, number: int) -> Iterator[_Place]:
    """Months, with the words that show that they are no names."""
    for place, text in enumerate(seen.texts[number]):
        for match in _MONTH.finditer(text):
            name = "behind" if match["behind"] else "before"
            yield _Place(place, *match.span(name), frozenset({NUMBERS[match[name]]}))


def _signs(seen: Seen, number: int) -> Iterator[_Place]:
    """What the telling says of weather, fields and flowers as they are then."""
    for place, text in enumerate(seen.texts[number]):
        for pattern, months in SIGNS.items():
            for match in pattern.finditer(text):
                if _is_told(seen, number, sign := _Place(place, *match.span(), months)):
                    yield sign


def _is_told(seen: Seen, number: int, one: _Place) -> bool:
    """Whether it stands outside speech, and is told of what happens then."""
    for quote in seen.facts[number].quotes:
        if quote.paragraph == one.paragraph and quote.start <= one.start < quote.end:
            return False
    return not _ELSEWHEN.search(_sentence(seen, number, one).quote)


def _differ(month: _Place, sign: _Place) -> bool:
    return not month.months & sign.months and abs(month.paragraph - sign.paragraph) <= NEAR


def _finding(seen: Seen, number: int, month: _Place, sign: _Place) -> Finding:
    return Finding(
        evidence=(_sentence(seen, number, month), _sentence(seen, number, sign)),
        strength=0.7,
        subject="season",
        words={"month": _said(seen, number, month), "sign": _said(seen, number, sign)},
    )


def _sentence(seen: Seen, number: int, one: _Place) -> Span:
    return seen.span(number, one.paragraph, *sentence(seen.texts[number][one.paragraph], one.start, one.end))


def _said(seen: Seen, number: int, one: _Place) -> str:
    return " ".join(seen.texts[number][one.paragraph][one.start : one.end].split())


CHECK = Check(
    id="season",
    name="Month and season",
    family="continuity",
    looks_at="A month that is told, and near it in the same scene snow, hay, blossom, bare trees or a season that "
    "do not "
    "go with it.",
    method="Months in which such things may be seen, widely taken, for the north and a temperate climate (common "
    "practice); both told outside speech and of what happens then. "
    "Scenes that name more than two months, and dreams, are "
    "let be, and books that name the southern hemisphere.",
    blind="Snow in June does fall. The south of the earth, mountains and hot countries, where the scene does not name "
    "them. What is told far from the month.",
    reads=("words", "facts"),
    find=find,
    recipe=3,
)
