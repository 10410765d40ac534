"""A time that the text names, as a flat value."""

from dataclasses import dataclass
from typing import Literal

TimeKind = Literal["date", "weekday", "clock", "part of day", "season", "interval", "age"]


@dataclass(frozen=True, slots=True)
class Time:
    """`value` is ISO 8601 or EDTF, with X where the page says nothing: `XXXX-05-03`, `XXXX-XX-13`, `1893-05`,
    `XXXX-12-24` (a feast), `XXXX-WXX-3` (a Wednesday), `T18:30`, `T06:00/T12:00` (a morning), `XXXX-22` (summer),
    `P3D` (three days later, or for three days), `-P3D` (before), `P3D~` (about that), `P17Y` (an age)."""

    paragraph: int
    start: int
    end: int
    kind: TimeKind
    value: str
    spoken: bool = False
    dateline: bool = False  # it heads its paragraph, as entries and letters are dated
    lasting: bool = False  # an interval that says how long, and not how much later or before
    twelve: bool = False  # a clock time without its half of the day
    movable: str = ""  # a feast that needs the year: days from Easter Sunday, as "+49"
    aside: bool = False  # a date that is looked to from another time: 'until the 15th', 'her Christmas presents'
