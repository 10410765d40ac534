"""Words for how the moon stands, and the days since new moon at which it may be called so."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.sentences import sentence
from afterdraft.reading.trait_words import number

MONTH = 29.53  # days from one new moon to the next, on the mean (Meeus, Astronomical Algorithms, chapter 49)
FULL = MONTH / 2
ROUND = 2.0  # days by which whoever calls a moon full may be out; chosen by hand
COUNTED = 1.0  # likewise where the days are counted

Days = tuple[float, float]  # from, to: days since new moon

_DAYS = r"(?P<days>an?|one|two|three|four|five|six|seven|\d)(?:\s(?:or\s\w+\s)?|-)(?:days?|nights?)"
_THE = r"(?:(?:the|its|her|being)\s)?"
_NEARLY = (
    r"(?:nearly|almost|not\squite|all\sbut|close\son|just\sshort\sof|(?:a\slittle|a\sbit)\s(?:short\sof|less\sthan))"
)
_SLIP = r"(?:crescent|sickle|paring|sliver|slip|rind|shaving|splinter|clipping|scrap|slice|hook|thread|fingernail|nail)"
_THIN = (
    r"(?:(?:thin|slender|crescent|sickle|horned|narrow)\s(?:\w+\s)?moon"
    rf"|{_SLIP}\sof\s(?:a\s|the\s)?(?:\w+\s)?moon|moon\s(?:was|is|hung|stood|lay)\s(?:\w+\s){{0,3}}a\s(?:\w+\s)?{_SLIP})"
)
_BE = r"(?:was|is|were|stood|rose|hung|had\srisen|came\sup)"
_NOT_A_RULE = r"(?!\s(?:on|every|each|of)\b)"
_PHASES: tuple[tuple[re.Pattern[str], tuple[Days, ...]], ...] = tuple(
    (re.compile(pattern), days)
    for pattern, days in (
        (rf"\bpast\s{_THE}full\b", ((FULL, FULL + 7),)),
        (rf"\b{_NEARLY}[\s-]{_THE}full\b", ((FULL - 5, FULL),)),
        (
            rf"\bfull\smoon\b|\bmoon\s{_BE}\s(?:\w+\s)?(?:at\s(?:the|its)\s)?full\b{_NOT_A_RULE}"
            rf"|\bmoon\sat\s(?:the|its)\sfull\b|\bmoon\b[^.;!?]{{0,40}},\s(?:\w+\sand\s)?full(?=[,.;]|\sand\b)",
            ((FULL - ROUND, FULL + ROUND),),
        ),
        (
            rf"\b(?:round|harvest|hunter[’']s)\smoon\b|\bmoon\s{_BE},?\s(?:(?!half\b)\w+\s)?(?:and\s)?round(?=[,.;]|\sand\b)",
            ((FULL - ROUND - 1, FULL + ROUND + 1),),
        ),
        (r"\b(?:new|young)\smoon\b|\bmoon\s(?:was|is)\snew\b", ((-ROUND, 5.0),)),
        (rf"\b{_THIN}\b", ((0.0, 6.0), (MONTH - 6, MONTH))),
        (
            r"\bhalf[\s-]moon(?=,|[.;]|\s(?:was|hung|stood|rose|had|came|shone|lay|over|above|in|on)\b)|\bhalf\s(?:a|the)\smoon\b"
            r"|\bmoon\s(?:was|is)\s(?:at\s(?:the\s)?)?half\b(?!\s\w)",
            ((5.0, 10.0), (19.5, 24.5)),
        ),
        (r"\bfirst\squarter\b(?!\sof)", ((5.0, 10.0),)),
        (r"\blast\squarter\b(?!\sof)", ((19.5, 24.5),)),
        (r"\bgibbous\b", ((8.0, 22.0),)),
        (r"\b(?:waning|decrescent)\smoon\b|\bmoon\s(?:was|is)\s(?:on\sthe\swane|waning)\b", ((FULL, MONTH),)),
        (r"\bwaxing\smoon\b|\bmoon\s(?:was|is)\swaxing\b", ((0.0, FULL),)),
        (r"\bdark\sof\sthe\smoon\b|\bdark\smoon\b|\bmoon\s(?:was|is)\sdark\b", ((-ROUND, ROUND),)),
    )
)
_COUNTED = (
    (re.compile(rf"\b{_DAYS}\s(?:past|after|beyond|off|on\sfrom)\s{_THE}full\b"), (1,)),
    (re.compile(rf"\b{_DAYS}\s(?:before|short\sof)\s{_THE}full\b"), (-1,)),
    (re.compile(rf"\b{_DAYS}\s(?:from|off)\s{_THE}full\b"), (-1, 1)),
)
_NEW_COUNTED = re.compile(
    rf"\bmoon\b[^.;!?]*\b{_DAYS}[\s-]old\b|\b{_DAYS.replace('days>', 'old>')}[\s-]old\s(?:\w+\s)?moon\b"
)


@dataclass(frozen=True, slots=True)
class Phase:
    start: int
    end: int
    days: tuple[Days, ...]  # any of these


def phases(text: str) -> Iterator[Phase]:
    """Of a paragraph, in no order; each word is of one phase at most.

    >>> [text[one.start : one.end] for text in ["A thin moon hung there."] for one in phases(text)]
    ['thin moon']
    """
    if "moon" not in text:
        return
    taken: list[Phase] = []
    for one in (*_counted(text), *_named(text)):
        here = text[slice(*sentence(text, one.start, one.end))]
        if "moon" in here and not any(one.start < it.end and it.start < one.end for it in taken):
            taken.append(one)
            yield one


def _counted(text: str) -> Iterator[Phase]:
    for pattern, ways in _COUNTED:
        for match in pattern.finditer(text):
            away = _count(match["days"])
            yield Phase(*match.span(), tuple(_round(FULL + way * away) for way in ways))
    for match in _NEW_COUNTED.finditer(text):
        yield Phase(*match.span(), (_round(_count(match["days"] or match["old"])),))


def _round(day: float) -> Days:
    return day - COUNTED, day + COUNTED


def _count(word: str) -> int:
    return 1 if word in ("a", "an") else number(word) or 1


def _named(text: str) -> Iterator[Phase]:
    for pattern, days in _PHASES:
        for match in pattern.finditer(text):
            yield Phase(*match.span(), days)


def apart(one: Phase, other: Phase, least: int, most: int) -> float:
    """By how many days the second comes too early or too late, where it is seen so many days after the first."""
    return min(_gap((low + least, high + most), it) for low, high in one.days for it in other.days)


def _gap(one: Days, other: Days) -> float:
    """Days between two stretches of the moon's month, 0 where they meet."""
    if one[1] - one[0] + other[1] - other[0] >= MONTH:
        return 0.0
    ahead, behind = (other[0] - one[1]) % MONTH, (one[0] - other[1]) % MONTH
    return 0.0 if ahead + behind > MONTH else min(ahead, behind)
