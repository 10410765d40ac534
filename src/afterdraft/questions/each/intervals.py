"""'Three days later' between two days that lie otherwise."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.days_told import happens, has_month
from afterdraft.questions.passing import passes_time
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.time import Time
from afterdraft.whole.calendar import day_of, span
from afterdraft.whole.story_points import Said

FAR = 60  # days between two dates up to which they are of one telling; chosen by hand
SCENES = 2  # scenes apart, likewise
DAYS = {"D": 1, "W": 7}
_LENGTH = re.compile(r"P(\d+)([DW])")
FIRST = 8  # characters of a sentence in which an interval moves the telling on, likewise
BACK = 10  # days by which the second may lie before the first, and both still be of one telling, likewise
_SAME = re.compile(
    r"(?:that|the|this)\s(?:very\s)?(?:same\s)?(?:very\s)?(?:evening|night|afternoon|day)\b", re.IGNORECASE
)
_APPOSED = re.compile(r",\s(?:on\s)?(?:the\s|a\s)?")
_LASTS = re.compile(r"\sof\b")
_RECKONED = re.compile(r"(?<=\bafter)\s(?:\w+ing|the|a|an|his|her|their|its|my|our)\b")  # from what happened then
_WHOLE = len("XXXX-05-03")


@dataclass(frozen=True, slots=True)
class _Day:
    scene: int
    time: Time


def find(seen: Seen) -> Iterator[Finding]:
    last: dict[str, _Day] = {}
    passed: list[_Day] = []  # 'Three days later', with no day beside them, since the last day told
    for number, scene in enumerate(seen.facts):
        for place, one in enumerate(scene.times):
            text = seen.texts[number][one.paragraph]
            kind = _kind(text, one)
            if one.spoken or not (kind or _length(one)) or not happens(text, one):
                continue
            here = _Day(number, one)
            if not kind:
                passed += [here] if _begins(text, one) and not _beside(seen, here, scene.times) else []
                continue
            before, last[kind] = last.get(kind), here
            if before and number - before.scene <= SCENES:
                yield from _held_against(seen, before, here, _between(seen, number, scene.times, place), passed)
            passed = []


def _held_against(
    seen: Seen, before: _Day, after: _Day, length: tuple[int, Time] | None, passed: Sequence[_Day]
) -> Iterator[Finding]:
    if length:
        days, said = length
        apart = _apart(before.time, after.time, days)
        if apart is not None and apart != days and _is_next_told(seen, before, after):
            yield _finding(seen, before, _Day(after.scene, said), after, days, apart)
    elif passed and after.time.kind == "date":
        days = sum(_length(one.time) for one in passed)
        apart = _apart(before.time, after.time, days)
        if apart is not None and 0 <= apart < days:
            yield _finding(seen, before, passed[0], after, days, apart)


def _kind(text: str, one: Time) -> str:
    """Of a day: "date" with its month, "weekday"; "" for what is none."""
    whole = one.kind == "date" and len(one.value) == _WHOLE and one.value[5:].replace("-", "").isdecimal()
    if whole and has_month(text, one):
        return "date"
    return "weekday" if one.kind == "weekday" and text[one.end - 1] != "s" else ""


def _length(one: Time) -> int:
    """'Three days later', in days; 0 for what is none."""
    match = _LENGTH.fullmatch(one.value) if one.kind == "interval" and not one.lasting else None
    return int(match.group(1)) * DAYS[match.group(2)] if match else 0


def _begins(text: str, one: Time) -> bool:
    """Whether the telling goes on by it."""
    if _LASTS.match(text, one.end) or text[: one.end].endswith("since"):
        return False
    return one.start - sentence(text, one.start, one.end)[0] <= FIRST


def _beside(seen: Seen, one: _Day, times: tuple[Time, ...]) -> bool:
    """Whether a day stands in its sentence."""
    text = seen.texts[one.scene][one.time.paragraph]
    start, end = sentence(text, one.time.start, one.time.end)
    return any(it.paragraph == one.time.paragraph and start <= it.start < end and _kind(text, it) for it in times)


def _between(seen: Seen, number: int, times: tuple[Time, ...], place: int) -> tuple[int, Time] | None:
    """'Three days later' in the sentence of the day, or 'that same evening' right before it, in days, and where that
    stands."""
    one = times[place]
    text = seen.texts[number][one.paragraph]
    start, end = sentence(text, one.start, one.end)
    for other in times:
        if other.paragraph == one.paragraph and start <= other.start < end:
            behind = one.end <= other.start and not _APPOSED.fullmatch(text[one.end : other.start])
            from_it = not any(pattern.match(text, other.end) for pattern in (_LASTS, _RECKONED))
            if (days := _length(other)) and not behind and from_it:
                return days, other
            if _SAME.match(text, other.start) and _APPOSED.fullmatch(text[other.end : one.start]):
                return 0, other
    return None


def _is_next_told(seen: Seen, before: _Day, after: _Day) -> bool:
    """Whether no words between them pass time, so that the one is reckoned from the other."""
    one, other = (Said(it.scene, it.time.paragraph, it.time.start, it.time.end) for it in (before, after))
    return not passes_time(seen, one, other)


def _apart(first: Time, second: Time, days: int) -> int | None:
    """Days from one to the other, with their months not further back than `BACK`; of weekdays as many as come nearest
    to `days`. None where they are far apart."""
    if first.kind == "weekday":
        least = (int(second.value[-1]) - int(first.value[-1])) % 7
        return min((least + 7 * weeks for weeks in range(-1, days // 7 + 2)), key=lambda count: abs(count - days))
    begins = span(first, None)
    ends = span(second, day_of(begins[0])) if begins else None
    apart = (day_of(ends[0]) - day_of(begins[0])).days if begins and ends else None
    return apart if apart is not None and -BACK <= apart <= FAR else None


def _finding(seen: Seen, before: _Day, said: _Day, after: _Day, days: int, apart: int) -> Finding:
    spans = [_span(seen, one.scene, one.time) for one in (before, said, after)]
    return Finding(
        evidence=tuple(dict.fromkeys(spans)),
        strength=0.75,
        subject="interval",
        words={
            "before": _said(seen, before.scene, before.time),
            "after": _said(seen, after.scene, after.time),
            "said": _said(seen, said.scene, said.time),
        },
        numbers={"days": days, "apart": apart},
    )


def _span(seen: Seen, number: int, one: Time) -> Span:
    return _sentence(seen, number, one.paragraph, one.start, one.end)


def _sentence(seen: Seen, number: int, paragraph: int, start: int, end: int) -> Span:
    return seen.span(number, paragraph, *sentence(seen.texts[number][paragraph], start, end))


def _said(seen: Seen, number: int, one: Time) -> str:
    return " ".join(seen.texts[number][one.paragraph][one.start : one.end].split())


CHECK = Check(
    id="interval",
    name="How long between two days",
    family="continuity",
    looks_at="‘Three days later’ or ‘that same evening’ beside a day that lies otherwise from the day told before it, "
    "or before a day that comes too soon.",
    method="Two days told outside speech, dates with their month or weekdays, and an interval in the sentence of the "
    "second, or at the head of a sentence between two dates. Each has to be reckoned from the one before. The rule is "
    "our own.",
    blind="Intervals reckoned from an event whose day is not told beside it, and days between which a "
    "morning, a night’s sleep or some days pass. ‘A week’ and ‘a month’ that are meant roughly.",
    reads=("words", "facts"),
    find=find,
    recipe=4,
)
