"""Sentences that say of somebody at what hour of which day they were where."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.questions.whose import Whose
from afterdraft.reading.lexicon import words_of
from afterdraft.reading.time import Time

SURE = 0.75  # of who it is
HALF = 720  # minutes of half a day
_WHERE = re.compile(
    r"\b(?:in|at|on|by|near|inside|outside|aboard|behind)\s(?:the\s|a\s|an\s|his\s|her\s|my\s)?((?:[\w’-]+)(?:\s[A-Z][\w’-]+)*)"
)
_NOWHERE = words_of(
    """
    first last once all least that this it which him her them me time same moment night noon midnight evening morning
    afternoon day stroke bed way point end order fact front search front sight foot his my their
    """
)  # behind 'in' or 'at', and no place


@dataclass(frozen=True, slots=True)
class Known:
    """Somebody at a time in a place."""

    person: str
    day: str  # as `Time` has it
    minute: int
    where: frozenset[str]  # words for the place, in small letters
    span: Span


def known(seen: Seen) -> Iterator[Known]:
    """In telling order, outside speech."""
    whose = Whose(seen)
    for number, scene in enumerate(seen.facts):
        dated = {one.paragraph for one in scene.times if _is_day(one)} & {
            one.paragraph for one in scene.times if one.kind == "clock"
        }
        for paragraph in sorted(dated):
            times = [one for one in scene.times if one.paragraph == paragraph and not one.spoken]
            for start, end in sentences(seen.texts[number][paragraph]):
                within = [one for one in times if start <= one.start and one.end <= end]
                day = next((one.value for one in within if _is_day(one)), None)
                minute = _minute(within)
                owner = whose.subject(number, paragraph, start, end) or whose.last(number, paragraph, start, end)
                span = seen.span(number, paragraph, start, end)
                if day and minute is not None and owner and owner[1] >= SURE and (where := _where(span, within)):
                    yield Known(owner[0], day, minute, where, span)


def same_day(one: str, other: str) -> bool:
    """A year that is not said may be any.

    >>> same_day("XXXX-05-03", "1921-05-03"), same_day("1920-05-03", "1921-05-03")
    (True, False)
    """
    years = {one[:4], other[:4]} - {"XXXX"}
    return one[4:] == other[4:] and len(years) < len((one, other))


def _is_day(one: Time) -> bool:
    return one.kind == "date" and len(one.value) == len("XXXX-05-03") and one.value[5:].replace("-", "").isdecimal()


def _minute(within: list[Time]) -> int | None:
    """Of the day; where the half of the day is not said with the hour, a part of day beside it tells."""
    clocks = [one for one in within if one.kind == "clock"]
    clock = next((one for one in clocks if not one.twelve), clocks[0] if clocks else None)
    if clock is None:
        return None
    minute = int(clock.value[1:3]) * 60 + int(clock.value[4:6])
    if not clock.twelve:
        return minute
    part = next((one.value for one in within if one.kind == "part of day"), None)
    if part is None:
        return None
    late = int(part[1:3]) >= HALF // 60
    return minute + HALF if late and minute < HALF else minute


def _where(span: Span, within: list[Time]) -> frozenset[str]:
    """Words behind 'in', 'at', 'on' that are no time."""
    times = [(one.start - span.start, one.end - span.start) for one in within]
    return frozenset(
        match[1].lower()
        for match in _WHERE.finditer(span.quote)
        if match[1].lower() not in _NOWHERE
        and not any(match.start(1) < end and start < match.end() for start, end in times)
    )
