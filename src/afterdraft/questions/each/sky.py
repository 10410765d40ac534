"""Sun and moon that do not go with the day, where the real place and year are given."""

import re
from collections.abc import Iterator
from datetime import date
from itertools import islice

from afterdraft.desk.ground import Ground
from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.sky import MONTH, moon, sun
from afterdraft.questions.story_days import Told, day_at
from afterdraft.reading.time_words import number

OFF = 100  # minutes by which a clock and the sun may differ: zones, summer time and twilight; chosen by hand
DAYS = 4  # by which whoever calls a moon full or new may be out, likewise
HALF_DAY = 12 * 60
_CLOCK = re.compile(
    r"\b(?:[Aa]t|[Bb]y|past|till|until) (?:(?P<half>half[- ]past) |(?:a )?(?P<quarter>quarter) past )?(?P<hour>\d{1,2}"
    r"|one|two|three"
    r"|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: o[’']clock)?\b(?! (?:miles|yards|years|days|people|of))"
)
_LIGHT_LATE = re.compile(
    r"\b(?:still (?:light|daylight|broad day)|sun (?:was )?(?:set|setting|going down|went down|still (?:up|high)))\b"
)
_DARK_EARLY = re.compile(
    r"\b(?:already (?:quite )?dark|dark already|dark by|night had fallen|darkness had (?:come|fallen))\b"
)
_RISES = re.compile(
    r"\b(?:sun (?:rose|came up|was rising)|day was breaking|day broke|dawn (?:came|broke)|it grew light)\b"
)
_MOONS = (
    (MONTH / 2, re.compile(r"\b(?:full moon|moon (?:was|stood|rose|hung) (?:\w+ )?(?:at (?:the|its) )?full)\b")),
    (0.0, re.compile(r"\b(?:new moon|(?:thin|slender|young|crescent|sickle) moon|crescent of (?:the|a) moon)\b")),
)
_SKY = re.compile("|".join(one.pattern for one in (_LIGHT_LATE, _DARK_EARLY, _RISES, *(moon for _, moon in _MOONS))))
_ELSEWHEN = re.compile(
    r"\b(?:had (?!fallen|come)|would|when|until|till|before|after|next|last|every|each|like|as if|as though|if"
    r"|were|shall|will"
    r"|once|always|never|not|no)\b|[’']d\b"
)


def find(seen: Seen) -> Iterator[Finding]:
    ground = seen.marks.ground
    if ground is not None:
        for number_ in seen.scenes:
            yield from islice(_in_scene(seen, number_, ground), 1)


def _in_scene(seen: Seen, number_: int, ground: Ground) -> Iterator[Finding]:
    for place, text in enumerate(seen.texts[number_]):
        if not _SKY.search(text):
            continue
        told = day_at(seen, number_, place)
        on = _with_year(told, ground) if told else None
        if told is None or on is None:
            continue
        for match, said in _signs(text, sun(ground, on), on):
            span = seen.span(number_, place, *sentence(text, *match.span()))
            spoken = any(
                one.paragraph == place and one.start <= match.start() < one.end for one in seen.facts[number_].quotes
            )
            if not spoken and not _ELSEWHEN.search(span.quote):
                yield _finding(seen, number_, ground, on, (span, told.span), said)


def _with_year(told: Told, ground: Ground) -> date | None:
    """The year that is told, or else the one she gives."""
    if told.year_said:
        return told.day
    try:
        return told.day.replace(year=ground.year) if ground.year else None
    except ValueError:  # the 29th of February of a common year
        return None


def _signs(text: str, hours: tuple[int, int] | None, on: date) -> Iterator[tuple[re.Match[str], str]]:
    """Words of a paragraph that the sky of that day gainsays, and what the sky says."""
    for age, pattern in _MOONS:
        for match in pattern.finditer(text):
            off = (moon(on) - age) % MONTH
            if min(off, MONTH - off) > DAYS:
                yield match, "the moon is " + _called(moon(on))
    for pattern in (_LIGHT_LATE, _DARK_EARLY, _RISES) if hours else ():
        for match in pattern.finditer(text):
            clock = _clock(text[slice(*sentence(text, *match.span()))])
            if clock is not None and hours and (said := _gainsaid(pattern, clock, hours)):
                yield match, said


def _gainsaid(pattern: re.Pattern[str], clock: int, hours: tuple[int, int]) -> str:
    rise, down = hours
    evening = clock % HALF_DAY + HALF_DAY
    if pattern is _RISES:
        return f"the sun rises at about {_told(rise)}" if abs(clock % HALF_DAY - rise) > OFF else ""
    off = evening - down if pattern is _LIGHT_LATE else down - evening
    return f"the sun sets at about {_told(down)}" if off > OFF else ""


def _clock(words: str) -> int | None:
    """Minutes of the first clock time of a sentence, on either half of the day."""
    match = _CLOCK.search(words)
    hour = number(match["hour"]) if match else None
    if match is None or not hour or hour > 12:
        return None
    return hour % 12 * 60 + (30 if match["half"] else 15 if match["quarter"] else 0)


def _told(minute: int) -> str:
    return f"{minute // 60}:{minute % 60:02}"


def _called(age: float) -> str:
    names = ("new", "a crescent", "half", "nearly full", "full", "past the full", "half", "a crescent")
    return names[round(age / MONTH * len(names)) % len(names)]


def _finding(seen: Seen, number_: int, ground: Ground, on: date, spans: tuple[Span, Span | None], said: str) -> Finding:
    here, told = spans
    rests = [one for one in seen.story.scenes[number_].rests_on if one.paragraph >= 0 and one.end > one.start]
    dates = (
        [told] if told else [seen.sentence(seen.span(one.scene, one.paragraph, one.start, one.end)) for one in rests]
    )
    return Finding(
        evidence=tuple(dict.fromkeys([here, *dates[:1]])),
        strength=0.7,
        subject="sky",
        words={"day": f"{on.day} {on:%B} {on.year}", "place": ground.place, "sky": said},
    )


CHECK = Check(
    id="sky",
    name="Sun and moon",
    family="continuity",
    looks_at="Light and dark at an hour, sunrise, a full or new moon, on a day of a real year over a real place. "
    "It asks only where you say which (About this book).",
    method="Sunrise, sunset and the phase of the moon by an astronomy library (astral; within a minute, and within "
    "a day), by the sun's own clock of the place; an hour and forty minutes and four days are given.",
    blind="Skies whose day nothing tells, and books that move to other places. Years of another calendar.",
    reads=("words", "facts", "time", "marks"),
    find=find,
    recipe=2,
)
