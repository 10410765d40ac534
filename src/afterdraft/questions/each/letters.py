"""A letter dated after the day on which it is read."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.time import Time
from afterdraft.whole.calendar import day_of, span

NEAR = 60  # days after, up to which the two are taken to be of one time; chosen by hand
FEW = 2  # entries under a date up to which they are letters that are set in, likewise
ABOVE = 15  # paragraphs above the letter in which the day is told, likewise
_LETTER = re.compile(r"\b(?:letter|note|telegram|wire|envelope|postcard|cable|wrote|dated|read|reads|ran)\b")
_ELSEWHEN = re.compile(r"\b(?:had|would|since|until|till|before|by|last|next|ago|born|died|due|shall|will|may|might)\b")
_WHOLE = len("XXXX-05-03")


def find(seen: Seen) -> Iterator[Finding]:
    for number, scene in enumerate(seen.facts):
        told: Time | None = None
        if sum(one.dateline for one in scene.times) > FEW:
            continue  # a log, a diary
        for one in scene.times:
            if one.kind != "date" or len(one.value) != _WHOLE or not one.value[5:].replace("-", "").isdecimal():
                continue
            if not one.dateline:
                told = one if not one.spoken and _is_now(seen.texts[number][one.paragraph], one) else told
            elif told and one.paragraph - told.paragraph <= ABOVE and _is_read(seen, number, told, one):
                if days := _later(told, one):
                    yield _finding(seen, number, told, one, days)
                told = None


def _is_now(text: str, one: Time) -> bool:
    start, end = sentence(text, one.start, one.end)
    return not _ELSEWHEN.search(text[start:end])


def _is_read(seen: Seen, number: int, told: Time, one: Time) -> bool:
    """Whether a letter is spoken of between the day and the date that heads it."""
    return any(_LETTER.search(text) for text in seen.texts[number][told.paragraph : one.paragraph])


def _later(told: Time, one: Time) -> int:
    """Days by which the letter is dated later; 0 where it is not, or where they are of other times."""
    first = span(told, None)
    second = span(one, day_of(first[0])) if first else None
    days = (day_of(second[0]) - day_of(first[0])).days if first and second else 0
    return days if 0 < days <= NEAR else 0


def _finding(seen: Seen, number: int, told: Time, one: Time, days: int) -> Finding:
    return Finding(
        evidence=(_span(seen, number, told), _span(seen, number, one)),
        strength=0.75,
        subject="date of a letter",
        words={"told": _said(seen, number, told), "dated": _said(seen, number, one)},
        numbers={"days": days},
    )


def _span(seen: Seen, number: int, one: Time) -> Span:
    return seen.span(number, one.paragraph, *sentence(seen.texts[number][one.paragraph], one.start, one.end))


def _said(seen: Seen, number: int, one: Time) -> str:
    return " ".join(seen.texts[number][one.paragraph][one.start : one.end].split())


CHECK = Check(
    id="letter",
    name="A letter dated after it is read",
    family="continuity",
    looks_at="A letter set into a scene, with a date of its own that is later than the day on which it comes.",
    method="A day with its month that is told outside speech as now, and within a page below it a date that heads a "
    "letter. The rule is our own.",
    blind="Days told without their month. A letter that is set in where the telling has gone on meanwhile.",
    reads=("words", "facts"),
    find=find,
)
