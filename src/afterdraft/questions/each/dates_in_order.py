"""A date that runs back, between two that do not."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date

from afterdraft.questions.check import Check
from afterdraft.questions.days_told import happens, has_month
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.time import Time
from afterdraft.whole.calendar import day_of, span

NEAR = 45  # days between the dates on either side up to which the telling is taken to go on; chosen on the tuning half
OFF = 60  # days by which a date may lie outside and still be of the same telling, likewise
MANY = 2  # entries out of order from which documents of several hands are taken to be put together, likewise
FAR = 20  # days by which one still stands out then, likewise
SCENES = 2  # scenes apart, likewise
_GOES_ON = re.compile(r",\s(?:the|a|an|I|we|he|she|it|they|my|our|his|her|their|there|this)\s[a-z]")
_WHOLE = len("XXXX-05-03")
_SET_OFF = ("> ", ">", "*", "_", "|", "- ", "• ")  # as text files set off what somebody wrote, and lists
_REPORTS = re.compile(
    r"\b(?:reports?|reported|statements?|minutes of|memo\w*|records?|recorded|opinion|according to|evidence|file|log"
    r"|(?:I|we) (?:find|found|note|wish|refer|beg|conclude)|took place|hours on|aforesaid|undersigned|deceased"
    r"|schedules?|fixtures?|calendar|list|card|timetable|entry|entries|headed|marked|stamped|postmarked)\b"
)  # what a document or its reader looks back on


@dataclass(frozen=True, slots=True)
class _Named:
    scene: int
    time: Time
    day: date


def find(seen: Seen) -> Iterator[Finding]:
    for dateline in (True, False):
        named = list(_named(seen, dateline=dateline))
        found: list[tuple[int, Finding]] = []
        for at in range(1, len(named) - 1):
            before, one, after = named[at - 1 : at + 2]
            if (not found or found[-1][0] < at - 1) and _stands_out(before, one, after, same=dateline):
                found.append((at, _finding(seen, before, one, after)))
        interleaved = dateline and len(found) > MANY
        yield from (one for _, one in found if not interleaved or one.numbers["days"] > FAR)


def _named(seen: Seen, *, dateline: bool) -> Iterator[_Named]:
    """Days told, outside speech, of what happens then; a year that is not said is the one that lies nearest to the day
    before."""
    near: date | None = None
    for number, scene in enumerate(seen.facts):
        for one in scene.times:
            text = seen.texts[number][one.paragraph]
            if one.kind != "date" or len(one.value) != _WHOLE or one.dateline != dateline or not has_month(text, one):
                continue
            apart = one.spoken or (number, one.paragraph) in seen.set_in
            if _GOES_ON.match(text, one.end) if dateline else apart or not _is_now(text, one, scene.times):
                continue
            if one.value[5:7].isdecimal() and one.value[8:].isdecimal() and (within := span(one, near)):
                near = day_of(within[0])
                yield _Named(number, one, near)


def _is_now(text: str, one: Time, times: Sequence[Time]) -> bool:
    """Whether the day is told of what happens then, and no document's: neither set off, nor one of several of a
    sentence."""
    begins, ends = sentence(text, one.start, one.end)
    beside = (it for it in times if it.paragraph == one.paragraph and it != one and it.kind == "date")
    several = any(begins <= it.start < ends and len(it.value) == _WHOLE and has_month(text, it) for it in beside)
    set_off = text.lstrip().startswith(_SET_OFF)
    return not (several or set_off or _REPORTS.search(text, begins, one.start)) and happens(text, one)


def _stands_out(before: _Named, one: _Named, after: _Named, *, same: bool) -> bool:
    most = 0 if same else SCENES
    if after.scene - before.scene > most or not 0 <= (after.day - before.day).days <= NEAR:
        return False
    outside = max((before.day - one.day).days, (one.day - after.day).days)
    return 0 < outside <= OFF


def _finding(seen: Seen, before: _Named, one: _Named, after: _Named) -> Finding:
    return Finding(
        evidence=tuple(_span(seen, each) for each in (before, one, after)),
        strength=0.8 if one.time.dateline else 0.7,
        subject="order of dates",
        words={name: _said(seen, each) for name, each in (("before", before), ("one", one), ("after", after))},
        numbers={"days": max((before.day - one.day).days, (one.day - after.day).days)},
    )


def _span(seen: Seen, one: _Named) -> Span:
    text = seen.texts[one.scene][one.time.paragraph]
    start, end = sentence(text, one.time.start, one.time.end)
    return seen.span(one.scene, one.time.paragraph, start, end)


def _said(seen: Seen, one: _Named) -> str:
    return " ".join(seen.texts[one.scene][one.time.paragraph][one.time.start : one.time.end].split())


CHECK = Check(
    id="order of dates",
    name="A date that runs back",
    family="continuity",
    looks_at="A date that lies before the date told before it, or beyond the one told after it, where those two go on.",
    method="Days with their month that are told outside speech as what happens then, and entries under a date within "
    "one scene: three in a row, of which the middle one does not fit between the others. Several days of one sentence, "
    "and those of a report, a list or what is set off as a document, are let be. The rule is our own.",
    blind="Feasts. Dates told in looking back without a sign of it. Documents of several hands that are put together.",
    reads=("words", "facts"),
    find=find,
    recipe=5,
)
