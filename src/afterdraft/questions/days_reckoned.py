"""How many days a sentence says that one day lies behind the day told before it: 'Two days later, on the Friday'.

What belongs to another day in its own words says nothing of this one: 'on the Sunday of the week after, and on the
Monday'.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass

from afterdraft.questions.sentences import sentence
from afterdraft.reading.time import Time

ABOUT = 3  # days by which what is counted in weeks may be off; chosen by hand
_LENGTH = re.compile(r"P(\d+)([DW])")
_SAME = re.compile(
    r"(?:(?:that|this)\s(?:very\s|same\s)*|the\s(?:very\s)?same\s(?:very\s)?)(?:evening|night|afternoon|day)\b",
    re.IGNORECASE,
)
_THAT_WEEK = re.compile(
    r"\b(?:next|following|last|previous)\b.*\bweek|\bthe\sweek\s(?:after|following)\b", re.IGNORECASE
)
_ROUGHLY = re.compile(
    r"\b(?:not|than|about|some|nearly|almost|barely|hardly|scarcely|within|over|under|around|near|every|each|least|most"
    r"|good|full|or)\s(?:the\s|an?\s)?$",
    re.IGNORECASE,
)
_OWNED = re.compile(r"\b(?:of|in|during|for|from|between|since|until|till|by|to|before|and)\s$", re.IGNORECASE)
_FROM = re.compile(r"\s(?!that\b)\w")  # behind 'the day after': from what it is reckoned
_NOT_ALONE = re.compile(r"\s(?:of|but)\b")
_DAY_AND = r"(?:\w+day,?\s(?:the\s)?)?"  # 'Saturday the' before 'ninth of May'
_BESIDE = re.compile(
    rf",?\s(?:(?:was|it\swas|being|which\swas)\s)?(?:on\s)?(?:the\s|an?\s)?(?:(?:morning|evening|night)\sof\s(?:the\s)?)?{_DAY_AND}"
)
_DOES = re.compile(rf"(?:\s[\w’'-]+){{1,6}},?\son\s(?:the\s|an?\s)?{_DAY_AND}")  # 'they set out, on the'
_PARTS = re.compile(
    r"\b(?:and|but|or|nor|so|then|when|while|till|until|before|after|if|that|who|which|as|because|of|about|for|from)\b"
)
_APPOSED = re.compile(r",\s(?:on\s)?(?:the\s|a\s)?")
_CLOSES = re.compile(r"\s*(?:[,.;:!?—–)]|$)")
PAIR = 8  # characters between a weekday and its date


@dataclass(frozen=True, slots=True)
class Reckoned:
    days: int
    rough: int  # days by which it may be off
    said: Time


def length(text: str, one: Time) -> Reckoned | None:
    """'Three days later'; not 'the week after', any day of which may be meant, or 'the day after Easter', which is
    reckoned from another day, or 'the Sunday of the week after'."""
    match = _LENGTH.fullmatch(one.value) if one.kind == "interval" and not one.lasting else None
    if not match or not int(match[1]) or _THAT_WEEK.search(text, one.start, one.end):
        return None
    before, said = text[: one.start], text[one.start : one.end].lower()
    of_another = said.endswith(("after", "before", "since", "following")) and _FROM.match(text, one.end)
    if of_another or _NOT_ALONE.match(text, one.end) or _ROUGHLY.search(before) or _OWNED.search(before):
        return None
    weeks = match[2] == "W"
    return Reckoned(int(match[1]) * (7 if weeks else 1), ABOUT if weeks else 0, one)


def reckoned(text: str, times: Sequence[Time], day: Time) -> Reckoned | None:
    """What the sentence of a day says of it, right before it or behind, and of no other day that it names."""
    start, end = sentence(text, day.start, day.end)
    here = [one for one in times if one.paragraph == day.paragraph and start <= one.start < end]
    if any(_is_another_day(one, day) for one in here):
        return None
    for one in here:
        if one.spoken:
            continue
        if (found := length(text, one)) and _goes_with(text, one, day):
            return found
        if _SAME.match(text, one.start) and one.end <= day.start and _APPOSED.fullmatch(text[one.end : day.start]):
            return Reckoned(0, 0, one)
    return None


def _is_another_day(one: Time, day: Time) -> bool:
    """Whether it is told before it, and is not the weekday of the date."""
    return one.kind in ("weekday", "date") and one.end <= day.start and day.start - one.end > PAIR


def _goes_with(text: str, one: Time, day: Time) -> bool:
    if day.end <= one.start:
        return bool(_APPOSED.fullmatch(text[day.end : one.start]) and _CLOSES.match(text, one.end))
    between = text[one.end : day.start]
    return bool(_BESIDE.fullmatch(between) or (_DOES.fullmatch(between) and not _PARTS.search(between)))
