"""Figures that a book tells of one thing: how many steps a stair has, and what something cost."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.sentences import sentence

EXACT = 13  # from which a figure that does not end in nought or five is a count, and not a handful
_ONES = (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen "
    "eighteen nineteen"
)
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety"
_VALUES = {word: value for value, word in enumerate(_ONES.split(), 1)}
_VALUES |= {word: 10 * value for value, word in enumerate(_TENS.split(), 2)}
_ONE = "|".join(sorted(_VALUES, key=len, reverse=True))
_SMALL = rf"(?:{_ONE})(?:[- ](?:{_ONE}))?"
_NUMBER = (
    r"(?P<figure>\d[\d,]*(?!\w|[.]\d)"
    rf"|(?:(?:{_SMALL}|an?) (?:thousand|hundred),? ?)+(?:(?:and )?{_SMALL}\b)?|{_SMALL}\b)"
)
_STAIRS = "steps|stairs|rungs|treads"
_PARTS = (
    f"{_STAIRS}|rooms|windows|arches|bells|columns|pillars|pews|seats|panes|locks|bridges|islands|cottages|bedrooms"
)
_COUNTED = re.compile(
    rf"\b{_NUMBER} (?:(?:stone|wooden|iron|steep|worn|narrow|winding|spiral|broad|shallow|little|small|great|old|cut) "
    r")*"
    rf"(?P<noun>{_PARTS})\b",
    re.IGNORECASE,
)
_UNIT = r"(?P<unit>dollars|pounds|guineas|francs|crowns|florins|euros|marks|shillings)"
_SUM = rf"(?:(?P<sign>[$£€]) ?)?{_NUMBER}(?: {_UNIT}\b)?"
_THING = r"(?:the|that|this|his|her|my|our|their) (?:(?:old|new|whole|little|poor|damned|blessed) )*(?P<noun>[a-z]{3,})"
_PRICED = tuple(
    re.compile(pattern, re.IGNORECASE)
    for pattern in (
        rf"\b(?:paid|gave|given|pay|spent) (?:(?:him|her|me|them|us|[A-Z]\w+) )?{_SUM} (?:for|on) {_THING}\b",
        rf"\b{_THING}(?: had| has)? costs?(?: (?:him|her|me|them|us|[A-Z]\w+))? {_SUM}",
        rf"\bbought {_THING} (?:\w+ ){{0,5}}?for {_SUM}",
        rf"\bthe price of {_THING} (?:was|is|had been) {_SUM}",
    )
)
_NOT_EXACT = re.compile(
    r"\b(?:about|some|nearly|almost|over|under|more|less|than|at least|roughly|perhaps|maybe|say|around|or so|or more"
    r"|if|would|might|could|offer\w*|another|other|further|next|last|first|left|to go|of them|only|each|apiece"
    r"|every|or|not|never|thought|guess\w*|suppos\w+|worth|a (?:year|month|week|day)|remaining|joke\w*|lied)\b"
    r"|n[’']t\b|\?|!",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Figure:
    """Code points `start` to `end` of the paragraph are its sentence."""

    noun: str
    value: int
    words: str
    priced: bool
    start: int
    end: int


def figures(text: str) -> Iterator[Figure]:
    """Of one paragraph, what is counted out or paid, without doubt or rounding.

    >>> [(one.noun, one.value) for one in figures("The tower had two hundred and eleven stone steps.")]
    [('steps', 211)]
    """
    for pattern in (_COUNTED, *_PRICED):
        for match in pattern.finditer(text):
            start, end = sentence(text, *match.span())
            groups, value = match.groupdict(), number(match["figure"])
            priced = pattern is not _COUNTED
            exact = value >= EXACT and value % 5 != 0
            told = (groups.get("unit") or groups.get("sign") or value >= 100) if priced else exact
            if told and value and not _NOT_EXACT.search(text[start:end]):
                yield Figure(match["noun"].lower(), value, match.group(), priced, start, end)


def number(words: str) -> int:
    """What a figure in words or digits comes to.

    >>> number("a hundred and ninety-nine"), number("thirty-two hundred"), number("1,200")
    (199, 3200, 1200)
    """
    if words[0].isdigit():
        return int(words.replace(",", ""))
    whole = part = 0
    for word in re.findall(r"[a-z]+", words.lower()):
        if word in ("hundred", "thousand"):
            part = max(part, 1) * (100 if word == "hundred" else 1000)
            whole, part = (whole + part, 0) if word == "thousand" else (whole, part)
        else:
            part += _VALUES.get(word, 0)
    return whole + part
