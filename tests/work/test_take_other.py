"""A doubt answered with the other reading: one edit, the doubt is gone, and undo brings both back."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

import pytest

from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import Division, Doubt, Reading
from afterdraft.store.book import BookFile
from afterdraft.store.opening import begin_book
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.split.take_other import take_other
from tests.store import sample


@contextmanager
def doubting(folder: Path, paragraph: int, chosen: Reading, other: Reading) -> Iterator[tuple[BookFile, str]]:
    draft = replace(sample.draft(), doubts=(Doubt("It may be otherwise.", paragraph, chosen, other),))
    book, brought = begin_book(
        folder / "Sluice.afterdraft",
        title="Sluice",
        backups=folder / "backups",
        first=lambda book: bring_draft(book, draft, [sample.ORIGINAL]),
    )
    with book:
        yield book, brought


def told(division: Division) -> dict[str, list[int]]:
    return {
        "chapters": [chapter.at for chapter in division.chapters],
        "scenes": [scene.at for scene in division.scenes],
        "matter": [matter.at for matter in division.matter],
    }


@pytest.mark.parametrize(
    ("paragraph", "chosen", "other", "expected"),
    [
        (8, "chapter", "text", {"chapters": [2], "scenes": [2, 5], "matter": [0, 11]}),
        (8, "chapter", "scene", {"chapters": [2], "scenes": [2, 5, 8], "matter": [0, 11]}),
        (5, "mark", "text", {"chapters": [2, 8], "scenes": [2, 8], "matter": [0, 11]}),
        (4, "text", "scene", {"chapters": [2, 8], "scenes": [2, 4, 5, 8], "matter": [0, 11]}),
        (4, "text", "mark", {"chapters": [2, 8], "scenes": [2, 5, 8], "matter": [0, 11]}),
        (7, "text", "chapter", {"chapters": [2, 7, 8], "scenes": [2, 5, 7, 8], "matter": [0, 11]}),
        (8, "chapter", "back matter", {"chapters": [2], "scenes": [2, 5], "matter": [0, 8, 11]}),
        (11, "back matter", "text", {"chapters": [2, 8, 11], "scenes": [2, 5, 8, 11], "matter": [0]}),
    ],
)
def test_the_line_becomes_the_other_and_undo_brings_it_back(
    tmp_path: Path, paragraph: int, chosen: Reading, other: Reading, expected: dict[str, list[int]]
) -> None:
    with doubting(tmp_path, paragraph, chosen, other) as (book, draft):
        before = told(book.division(draft))
        take_other(book, draft, paragraph)
        assert told(book.division(draft)) == expected
        assert book.doubts(draft) == ()
        top = book.edits().undo
        assert top
        book.undo(top.number)
        assert told(book.division(draft)) == before
        assert len(book.doubts(draft)) == 1
        assert book.edits().undo is None


def test_a_doubt_that_is_not_there_or_says_what_is_so_already(tmp_path: Path) -> None:
    with doubting(tmp_path, 4, "scene", "text") as (book, draft):
        with pytest.raises(Missing, match="This doubt"):
            take_other(book, draft, 3)
        with pytest.raises(NotPossible, match="text already"):
            take_other(book, draft, 4)
