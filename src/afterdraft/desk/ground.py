"""The real place and year that a book is set in, where it has them."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Ground:
    place: str  # what it is called
    north: float  # degrees of latitude; below 0 in the south
    east: float  # degrees of longitude; below 0 in the west
    year: int | None = None  # of what is told without a year; None where the book says its years, or has none
