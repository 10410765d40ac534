"""Unmarked breaks are looked for once for each draft, apart from the program; where that fails, none are suggested."""

from collections.abc import Iterator
from pathlib import Path
from time import monotonic, sleep

import pytest

from afterdraft import apart, errors
from afterdraft.manuscript.blocks import Block
from afterdraft.manuscript.draft import Suggestion
from afterdraft.store.book import BookFile
from afterdraft.store.opening import begin_book
from afterdraft.web.suggesting import Suggesting
from afterdraft.work.drafts.bring_draft import bring_draft
from tests.manuscript.build import draft, heading
from tests.manuscript.unmarked.test_unmarked import BOOK
from tests.store import sample

WAIT = 20.0  # seconds until a child has surely answered


@pytest.fixture
def quay(tmp_path: Path) -> Iterator[BookFile]:
    made = draft(heading("Chapter One"), [Block(text) for text in BOOK[0]])
    book, _ = begin_book(
        tmp_path / "Quay.afterdraft",
        title="Quay",
        backups=tmp_path / "backups",
        first=lambda book: bring_draft(book, made, [sample.ORIGINAL]),
    )
    with book:
        yield book


def waited(suggesting: Suggesting, book: BookFile) -> tuple[Suggestion, ...] | None:
    end = monotonic() + WAIT
    while (found := suggesting.found(book, book.drafts()[0].id)) is None and monotonic() < end:
        sleep(0.01)
    return found


def test_places_come_from_a_child_which_is_asked_once(quay: BookFile, monkeypatch: pytest.MonkeyPatch) -> None:
    asked = []
    real = apart.suggested

    def counted(scenes: apart.Scenes) -> list[tuple[int, Suggestion]]:
        asked.append(len(scenes))
        return real(scenes)

    monkeypatch.setattr(apart, "suggested", counted)
    suggesting = Suggesting()
    assert suggesting.found(quay, quay.drafts()[0].id) is None
    found = waited(suggesting, quay)
    assert found
    assert waited(suggesting, quay) is found
    assert asked == [1]


@pytest.mark.parametrize("trouble", [errors.TooLarge("The draft", "it took too long"), apart.ReadingFault()])
def test_where_the_child_fails_nothing_is_suggested(
    quay: BookFile, monkeypatch: pytest.MonkeyPatch, trouble: Exception
) -> None:
    def failing(_: apart.Scenes) -> list[tuple[int, Suggestion]]:
        raise trouble

    monkeypatch.setattr(apart, "suggested", failing)
    assert waited(Suggesting(), quay) == ()
