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
from afterdraft.work.split.settle_doubt import settle_doubt
from afterdraft.work.split.take_other import take_other
from tests.store import sample


@contextmanager
def doubting(folder: Path, paragraph: int, chosen: Reading, other: Reading) -> Iterator[tuple[BookFile, str]]:
    with asking(folder, Doubt("It may be otherwise.", paragraph, chosen, other)) as opened:
        yield opened


@contextmanager
def asking(folder: Path, *doubts: Doubt) -> Iterator[tuple[BookFile, str]]:
    draft = replace(sample.draft(), doubts=doubts)
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
        (1, "part", "chapter", {"chapters": [1], "scenes": [1, 5, 8], "matter": [0, 11]}),
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


SPACE = tuple(Doubt("There is extra space above.", at, "text", "scene") for at in (4, 10))


def test_all_lines_of_a_question_become_the_other_in_one_edit(tmp_path: Path) -> None:
    with asking(tmp_path, *SPACE) as (book, draft):
        before = told(book.division(draft))
        take_other(book, draft, 4, 10)
        assert told(book.division(draft))["scenes"] == [2, 4, 5, 8, 10]
        assert book.doubts(draft) == ()
        top = book.edits().undo
        assert top
        assert top.name == "Make 2 lines new scenes"
        book.undo(top.number)
        assert told(book.division(draft)) == before
        assert len(book.doubts(draft)) == 2
        assert book.edits().undo is None


def test_lines_that_cannot_become_the_other_keep_their_doubt(tmp_path: Path) -> None:
    impossible = Doubt("There is extra space above.", 3, "text", "scene")
    with asking(tmp_path, impossible, *SPACE) as (book, draft):
        take_other(book, draft, 3, 4, 10)
        assert told(book.division(draft))["scenes"] == [2, 4, 5, 8, 10]
        assert book.doubts(draft) == (impossible,)
        with pytest.raises(NotPossible, match="no text above"):
            take_other(book, draft, 3)


def test_where_none_of_several_can_become_the_other_nothing_is_done(tmp_path: Path) -> None:
    impossible = [Doubt("A scene?", at, "text", "scene") for at in (3, 9)]
    with asking(tmp_path, *impossible) as (book, draft):
        with pytest.raises(NotPossible):
            take_other(book, draft, 3, 9)
        assert len(book.doubts(draft)) == 2
        assert book.edits().undo is None


def test_all_lines_of_a_question_are_left_as_they_are_in_one_edit(tmp_path: Path) -> None:
    with asking(tmp_path, *SPACE) as (book, draft):
        settle_doubt(book, draft, 4, 10)
        assert book.doubts(draft) == ()
        top = book.edits().undo
        assert top
        assert top.name == "Leave 2 lines as they are"
        book.undo(top.number)
        assert len(book.doubts(draft)) == 2


def test_what_was_answered_for_all_is_done_again_in_the_next_draft(tmp_path: Path) -> None:
    parts = (Doubt("A part?", 1, "part", "chapter"), Doubt("A part?", 10, "text", "chapter"))
    with asking(tmp_path, *parts) as (book, draft):
        take_other(book, draft, 1, 10)
        made = told(book.division(draft))
        assert made["chapters"] == [1, 10]
        again = bring_draft(book, sample.draft(), [sample.ORIGINAL])
        assert told(book.division(again)) == made
