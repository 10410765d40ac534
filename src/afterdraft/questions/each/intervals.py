"""'Three days later' between two days that lie otherwise."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.days_reckoned import ABOUT, Reckoned, length, reckoned
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
FIRST = 8  # characters of a sentence in which an interval moves the telling on, likewise
BACK = 10  # days by which the second may lie before the first, and both still be of one telling, likewise
_WHOLE = len("XXXX-05-03")


@dataclass(frozen=True, slots=True)
class _Day:
    scene: int
    time: Time


def find(seen: Seen) -> Iterator[Finding]:
    last: dict[str, _Day] = {}
    passed: list[tuple[int, Reckoned]] = []  # 'Three days later', with no day beside them, since the last day told
    for number, scene in enumerate(seen.facts):
        for one in scene.times:
            text = seen.texts[number][one.paragraph]
            kind, days = _kind(text, one), length(text, one)
            if one.spoken or not (kind or days) or not happens(text, one):
                continue
            here = _Day(number, one)
            if not kind:
                alone = days and _begins(text, one) and not _beside(seen, here, scene.times)
                passed += [(number, days)] if days and alone else []
                continue
            before, last[kind] = last.get(kind), here
            if before and number - before.scene <= SCENES:
                yield from _held_against(seen, before, here, reckoned(text, scene.times, one), passed)
            passed = []


def _held_against(
    seen: Seen, before: _Day, after: _Day, said: Reckoned | None, passed: Sequence[tuple[int, Reckoned]]
) -> Iterator[Finding]:
    if said:
        if said.rough and after.time.kind == "weekday":
            return  # 'a week later, on the Thursday'
        apart = _apart(before.time, after.time, said.days)
        if apart is not None and abs(apart - said.days) > said.rough and _is_next_told(seen, before, after):
            yield _finding(seen, before, _Day(after.scene, said.said), after, said.days, apart)
    elif passed and after.time.kind == "date":
        days = sum(one.days for _, one in passed)
        apart = _apart(before.time, after.time, days)
        if apart is not None and 0 <= apart < days - sum(one.rough for _, one in passed):
            number, first = passed[0]
            yield _finding(seen, before, _Day(number, first.said), after, days, apart)


def _kind(text: str, one: Time) -> str:
    """Of a day: "date" with its month, "weekday"; "" for what is none."""
    whole = one.kind == "date" and len(one.value) == _WHOLE and one.value[5:].replace("-", "").isdecimal()
    if whole and has_month(text, one):
        return "date"
    return "weekday" if one.kind == "weekday" and text[one.end - 1] != "s" else ""


def _begins(text: str, one: Time) -> bool:
    """Whether the telling goes on by it."""
    if text[: one.end].endswith("since"):
        return False
    return one.start - sentence(text, one.start, one.end)[0] <= FIRST


def _beside(seen: Seen, one: _Day, times: tuple[Time, ...]) -> bool:
    """Whether a day stands in its sentence."""
    text = seen.texts[one.scene][one.time.paragraph]
    start, end = sentence(text, one.time.start, one.time.end)
    return any(it.paragraph == one.time.paragraph and start <= it.start < end and _kind(text, it) for it in times)


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
    method="Two days told outside speech, dates with their month or weekdays, and an interval right beside the second, "
    "or at the head of a sentence between two dates. Each has to be reckoned from the one before. The rule is our own.",
    blind="Intervals reckoned from an event whose day is not told beside it, those that stand in the words for another "
    "day (‘the Sunday of the week after’), and days between which a morning, a night’s sleep or some days pass. ‘A "
    f"week later’ may be {ABOUT} days off, and says nothing of a weekday.",
    reads=("words", "facts"),
    find=find,
    recipe=5,
)
