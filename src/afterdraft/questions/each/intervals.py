"""'Three days later' between two days that lie otherwise."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.time import Time
from afterdraft.whole.calendar import day_of, span

FAR = 60  # days between two dates up to which they are of one telling; chosen by hand
SCENES = 2  # scenes apart, likewise
DAYS = {"D": 1, "W": 7}
_LENGTH = re.compile(r"P(\d+)([DW])")
_ELSEWHEN = re.compile(r"\b(?:had|would|until|till|next|ago|born|died|due|shall|will|may|might|every|each|if)\b")
_WHOLE = len("XXXX-05-03")


@dataclass(frozen=True, slots=True)
class _Day:
    scene: int
    time: Time


def find(seen: Seen) -> Iterator[Finding]:
    beside = list(_side_by_side(seen))
    yield from beside
    done = {span.scene for one in beside for span in one.evidence}
    for one in seen.story.contradictions:
        said = [each for each in one.said if each.paragraph >= 0 and each.end > each.start]
        if one.what == "time" and len(said) > 1 and not any(each.scene in done for each in said):
            yield Finding(
                evidence=tuple(_sentence(seen, each.scene, each.paragraph, each.start, each.end) for each in said),
                strength=0.7,
                subject="interval",
            )


def _side_by_side(seen: Seen) -> Iterator[Finding]:
    last: dict[str, _Day] = {}
    for number, scene in enumerate(seen.facts):
        for place, one in enumerate(scene.times):
            kind = _kind(one)
            if one.spoken or not kind or not _is_now(seen.texts[number][one.paragraph], one):
                continue
            before, last[kind] = last.get(kind), _Day(number, one)
            length = _between(seen, number, scene.times, place)
            if not before or not length or number - before.scene > SCENES:
                continue
            days, said = length
            apart = _apart(before.time, one, days)
            if apart is not None and apart != days:
                yield _finding(seen, before, said, _Day(number, one), days, apart)


def _kind(one: Time) -> str:
    """Of a day: "date" with its month, "weekday"; "" for what is none."""
    if one.kind == "date" and len(one.value) == _WHOLE and one.value[5:].replace("-", "").isdecimal():
        return "date"
    return "weekday" if one.kind == "weekday" else ""


def _is_now(text: str, one: Time) -> bool:
    start, end = sentence(text, one.start, one.end)
    return not _ELSEWHEN.search(text[start:end])


def _between(seen: Seen, number: int, times: tuple[Time, ...], place: int) -> tuple[int, Time] | None:
    """'Three days later' in the sentence of the day, in days, and where that stands."""
    one = times[place]
    start, end = sentence(seen.texts[number][one.paragraph], one.start, one.end)
    for other in times:
        inside = other.paragraph == one.paragraph and start <= other.start < end
        match = _LENGTH.fullmatch(other.value) if inside and other.kind == "interval" and not other.lasting else None
        if match and int(match.group(1)):
            return int(match.group(1)) * DAYS[match.group(2)], other
    return None


def _apart(first: Time, second: Time, days: int) -> int | None:
    """Days from one to the other; of weekdays as many as come nearest to `days`. None where they are far apart."""
    if first.kind == "weekday":
        least = (int(second.value[-1]) - int(first.value[-1])) % 7
        return min((least + 7 * weeks for weeks in range(-1, days // 7 + 2)), key=lambda count: abs(count - days))
    begins = span(first, None)
    ends = span(second, day_of(begins[0])) if begins else None
    apart = (day_of(ends[0]) - day_of(begins[0])).days if begins and ends else None
    return apart if apart is not None and 0 <= apart <= FAR else None


def _finding(seen: Seen, before: _Day, said: Time, after: _Day, days: int, apart: int) -> Finding:
    return Finding(
        evidence=(_span(seen, before.scene, before.time), _span(seen, after.scene, after.time)),
        strength=0.75,
        subject="interval",
        words={
            "before": _said(seen, before.scene, before.time),
            "after": _said(seen, after.scene, after.time),
            "said": _said(seen, after.scene, said),
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
    looks_at="‘Three days later’ beside a day that is not three days after the day told before it; what is said of "
    "story time that cannot all be true.",
    method="Two days told outside speech, dates with their month or weekdays, and an interval in the sentence of the "
    "second. Besides, the contradictions of a Simple Temporal Network of all scenes (Dechter, Meiri & Pearl "
    "1991).",
    blind="Intervals reckoned from an event whose day is not told beside it. ‘A week’ and ‘a month’ that are meant "
    "roughly.",
    reads=("words", "facts", "time"),
    find=find,
)
