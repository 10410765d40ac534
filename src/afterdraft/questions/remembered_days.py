"""'That Thursday in October', where no day of that October was told to be a Thursday."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.questions.question import Span
from afterdraft.questions.running_days import Placed
from afterdraft.questions.seen import Seen
from afterdraft.reading.time_words import DAYS, MONTHS

_WEEKDAYS = "|".join(day.capitalize() for day in DAYS)
_MONTHS = "|".join(month.capitalize() for month in MONTHS)
_THAT = re.compile(
    rf"\b[Tt]hat\s(?P<weekday>{_WEEKDAYS})(?:\s(?:morning|afternoon|evening|night))?\s(?:in|of)\s(?P<month>{_MONTHS})\b"
    r"(?!,?\s\d)"
)
_WORD = re.compile(r"[a-z]{4,}")


def remembered(seen: Seen, found: Sequence[Placed]) -> Iterator[tuple[Span, Placed]]:
    """Where it stands, and the day of that month that was told before and is likeliest meant."""
    for scene, paragraphs in enumerate(seen.texts):
        for paragraph, text in enumerate(paragraphs):
            for match in _THAT.finditer(text):
                month, weekday = MONTHS[match["month"].lower()], match["weekday"]
                told = [one for one in found if one.scene < scene and one.day.month == month]
                if told and not _is_named(seen, weekday, _stretch(told, found, scene)):
                    meant = max(told, key=lambda one: (_alike(one.words(seen), text), one.scene))
                    yield seen.span(scene, paragraph, *match.span()), meant


def _stretch(told: Sequence[Placed], found: Sequence[Placed], scene: int) -> range:
    """Scenes from the first of those days up to the day that is told next after the last, or to where it stands."""
    after = [one.scene for one in found if told[-1].scene < one.scene < scene]
    return range(told[0].scene, after[0] + 1 if after else scene)


def _is_named(seen: Seen, weekday: str, scenes: range) -> bool:
    """Whether one of that name is told there, with a date or without."""
    named = re.compile(rf"\b{weekday}", re.IGNORECASE)
    return any(named.search(text) for number in scenes for text in (*seen.texts[number], *_heads(seen, number)))


def _heads(seen: Seen, number: int) -> tuple[str, ...]:
    return seen.heads[number] if seen.heads else ()


def _alike(one: str, other: str) -> int:
    """How many longer words two paragraphs have in common."""
    return len({*_WORD.findall(one.lower())} & {*_WORD.findall(other.lower())})
