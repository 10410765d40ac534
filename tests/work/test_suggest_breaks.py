"""Places where a scene may begin unmarked: suggested, taken, declined for good, and all of it taken back."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from afterdraft.errors import Missing
from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.draft import Draft
from afterdraft.store.book import BookFile
from afterdraft.store.opening import begin_book, open_book
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.split.suggest_breaks import decline_break, suggest_breaks, unanswered
from tests.manuscript.build import draft, heading
from tests.manuscript.unmarked.test_unmarked import BOOK, CHANGE
from tests.store import sample

PLACE = CHANGE + 1  # the heading stands before
QUAY = draft(heading("Chapter One"), [Block(text) for text in BOOK[0]])


@pytest.fixture
def quay(tmp_path: Path) -> Iterator[BookFile]:
    book, _ = begin_book(
        tmp_path / "Quay.afterdraft",
        title="Quay",
        backups=tmp_path / "backups",
        first=lambda book: bring_draft(book, QUAY, [sample.ORIGINAL]),
    )
    with book:
        yield book


def asked(book: BookFile) -> list[int]:
    """Paragraphs of the newest draft that are suggested and not answered."""
    newest = book.drafts()[-1].id
    return [one.paragraph for one in unanswered(book, newest, book.division(newest), suggest_breaks(book, newest))]


def undo(book: BookFile) -> str:
    edit = book.edits().undo
    assert edit
    return book.undo(edit.number).name


def test_a_suggestion_cuts_nothing_until_it_is_taken_and_undo_brings_it_back(quay: BookFile) -> None:
    only = quay.drafts()[0].id
    assert asked(quay) == [PLACE]
    assert len(quay.division(only).scenes) == 1
    found = suggest_breaks(quay, only)
    split_scene(quay, only, PLACE)
    assert unanswered(quay, only, quay.division(only), found) == ()
    undo(quay)
    assert asked(quay) == [PLACE]


def test_not_a_break_is_remembered_after_a_start_and_in_the_next_draft_until_it_is_taken_back(
    quay: BookFile, tmp_path: Path
) -> None:
    decline_break(quay, quay.drafts()[0].id, PLACE)
    assert asked(quay) == []
    quay.close()
    with open_book(tmp_path / "Quay.afterdraft", backups=tmp_path / "backups") as again:
        assert asked(again) == []
        bring_draft(again, _longer(QUAY), [sample.ORIGINAL])
        assert asked(again) == []
        undo(again)
        assert undo(again).startswith("No scene begins at “Three weeks later")
        assert asked(again) == [PLACE]


def test_a_place_whose_words_changed_is_asked_anew(quay: BookFile) -> None:
    decline_break(quay, quay.drafts()[0].id, PLACE)
    texts = [*BOOK[0][: CHANGE - 1], "Nobody spoke of it again.", *BOOK[0][CHANGE:]]
    bring_draft(quay, draft(heading("Chapter One"), [Block(text) for text in texts]), [sample.ORIGINAL])
    assert asked(quay) == [PLACE]


def test_a_line_that_is_not_there_cannot_be_declined(quay: BookFile) -> None:
    with pytest.raises(Missing):
        decline_break(quay, quay.drafts()[0].id, 10_000)


def _longer(first: Draft) -> Draft:
    """The next draft: a title more, so that every paragraph has another number."""
    return draft(Block("Quay"), *first.source.blocks)
