"""Headings taken apart into kind, number and title."""

import pytest

from afterdraft.manuscript.structure.wording import name


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("CHAPTER THE FIRST. In which we set out", ("chapter", 1, "In which we set out")),
        ("Chapter Twenty-One", ("chapter", 21, "")),
        ("Chapter 3: The Ferry", ("chapter", 3, "The Ferry")),
        ("Chapter 3 The Ferry", ("chapter", 3, "The Ferry")),
        ("Chapter 3 - The Ferry", ("chapter", 3, "The Ferry")),
        ("CHAPTER IV.—The Ferry", ("chapter", 4, "The Ferry")),
        ("Chapter IV\nThe Ferry", ("chapter", 4, "The Ferry")),
        ("Chapter No. 4", ("chapter", 4, "")),
        ("Chapter12", ("chapter", 12, "")),
        ("Ch. 5", ("chapter", 5, "")),
        ("Kapitel 7", ("chapter", 7, "")),
        ("PART TWO: The Crossing", ("part", 2, "The Crossing")),
        ("Book the Second", ("part", 2, "")),
        ("Second Book", ("part", 2, "")),
        ("First Period: The Ferry (1848)", ("part", 1, "The Ferry (1848)")),
        ("Vol. II", ("part", 2, "")),
        ("Letter 1", ("letter", 1, "")),
        ("Prologue", ("prologue", None, "")),
        ("Epilogue: After", ("epilogue", None, "After")),
        ("*Interlude*", ("interlude", None, "")),
        ("12", ("none", 12, "")),
        ("- 12 -", ("none", 12, "")),
        ("XII.", ("none", 12, "")),
        ("3. The Ferry", ("none", 3, "The Ferry")),
        ("Twelve", ("none", 12, "")),
    ],
)
def test_headings(text: str, found: tuple[str, int | None, str]) -> None:
    read = name(text)
    assert (read.kind, read.number, read.title) == found


@pytest.mark.parametrize(
    "text",
    [
        "Part of it was lost",
        "Chapter and verse",
        "One day she left.",
        "Prologues are for cowards",
        "Letter from my aunt",
        "C. S. Tovik",
        "3. May",
        "Second thoughts",
        "The Ferry",
    ],
)
def test_what_is_all_title(text: str) -> None:
    read = name(text)
    assert (read.kind, read.number, read.title) == ("none", None, text)
