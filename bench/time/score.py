"""What is right: a marked date against what was read there, an entry against the dateline that heads it."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from itertools import combinations
from typing import Any

from afterdraft.reading.time import Time
from afterdraft.whole.calendar import day_of, span
from bench.time.books import DRACULA, Book, book, marked

HEADING = 4  # paragraphs before an entry's opening words in which its dateline may stand: telegrams and cuttings
OPENS = 40  # letters of the opening words


@dataclass(frozen=True, slots=True)
class Answer:
    """Of one marked date or time."""

    text: str
    wanted: str
    said: str  # "" where nothing was read there
    right: bool  # all that was printed, in its normal form
    whole: bool  # the year too, where only the rest of the book prints it


@dataclass(frozen=True, slots=True)
class Entry:
    header: str
    wanted: date  # of a year of no meaning
    said: date | None


def answers(slug: str) -> list[Answer]:
    """Durations are marked nowhere in these books; all of them are dates and clock times."""
    return [_answer(book(slug), one) for one in marked("mentions")[slug]]


def entries() -> list[Entry]:
    of = book(DRACULA)
    return [
        Entry(one["header"], date(2000, one["month"], one["day"]), _dated(of, one)) for one in marked("dracula")["list"]
    ]


def in_order(some: list[Entry]) -> float:
    """Share of the pairs of entries of different days whose days as read stand in their true order."""
    pairs = [(one, other) for one, other in combinations(some, 2) if one.wanted != other.wanted]
    right = sum(
        one.said is not None
        and other.said is not None
        and one.said != other.said
        and (one.said < other.said) == (one.wanted < other.wanted)
        for one, other in pairs
    )
    return right / max(1, len(pairs))


def _answer(of: Book, mark: Any) -> Answer:
    scene = of.places[mark["chapter"], mark["scene"]]
    here = [
        one
        for one in of.scenes[scene].times
        if one.paragraph == mark["paragraph"] and one.start < mark["end"] and one.end > mark["start"]
    ]
    wanted = mark["datetime"].replace(" ", "T")
    kind = "clock" if "T" in wanted else "date"
    said = next((one for one in here if one.kind == kind), None)
    if said is None:
        return Answer(mark["text"], wanted, "", False, False)
    right = _matches(said, wanted)
    return Answer(mark["text"], wanted, said.value, right, right and _whole(of, scene, said, wanted))


def _matches(said: Time, wanted: str) -> bool:
    if said.kind == "clock":
        hour, minutes = wanted.split("T")[1].split(":")
        same = int(said.value[1:3]) == int(hour) or (said.twelve and int(said.value[1:3]) % 12 == int(hour) % 12)
        return same and said.value[4:6] == minutes
    return len(said.value) == len(wanted) and all(a in ("X", b) for a, b in zip(said.value, wanted, strict=True))


def _whole(of: Book, scene: int, said: Time, wanted: str) -> bool:
    if said.kind == "clock" or "X" not in said.value:
        return True
    bound = of.story.scenes[scene].earliest or of.story.scenes[scene].latest
    near = date.fromisoformat(bound[:10]) if bound[:4].isdecimal() else None
    within = span(said, near)
    return within is not None and day_of(within[0]).isoformat().startswith(wanted)


def _dated(of: Book, entry: Any) -> date | None:
    """The day of the dateline in the paragraphs of the entry's opening words, else of the last one right before."""
    opens = _letters(entry["opens"])[:OPENS]
    for scene in (number for (chapter, _), number in of.places.items() if chapter == entry["chapter_index"]):
        for place in _found(of.texts[scene], opens):
            heads = {one.said.paragraph: one for one in of.story.dated if one.said.scene == scene}
            near = [
                *range(place, place + _held(of.texts[scene][place:], entry["opens"])),
                *range(place - 1, place - 1 - HEADING, -1),
            ]
            ours = next((heads[at] for at in near if at in heads), None)
            return date.fromisoformat(ours.first[:10].replace("XXXX", "2000")) if ours else None
    return None


def _found(texts: tuple[str, ...], opens: str) -> Iterator[int]:
    for place in range(len(texts)):
        if _letters(" ".join(texts[place : place + 3])).startswith(opens):
            yield place


def _held(texts: tuple[str, ...], opens: str) -> int:
    """Over how many paragraphs the opening words run."""
    return next(many for many in range(1, 5) if len(_letters(" ".join(texts[:many]))) >= len(_letters(opens)))


def _letters(text: str) -> str:
    return "".join(filter(str.isalnum, text))
