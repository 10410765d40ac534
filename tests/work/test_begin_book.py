"""A book is called what the writer says, else what the manuscript says, else what its file is called."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import TypeVar

import pytest

from afterdraft.store.opening import begin_book as begin_file
from afterdraft.work.drafts.begin_book import begin_book
from afterdraft.work.ports import Book
from tests.store import sample

T = TypeVar("T")


class OneFile:
    """A shelf with room for one book."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def begin(self, *, title: str, first: Callable[[Book], T]) -> tuple[Book, T]:
        return begin_file(self.folder / "one.afterdraft", title=title, backups=self.folder / "backups", first=first)


@pytest.mark.parametrize(
    ("said", "draft_title", "file", "called"),
    [
        (" The\r\nFlood ", "The Sluice-Keeper", "sluice.docx", "The Flood"),
        ("", "The Sluice-Keeper", "sluice.docx", "The Sluice-Keeper"),
        ("", "", "sluice v2.final.docx", "sluice v2.final"),
        ("", " ", ".docx", ".docx"),
        ("", "", "", "Untitled"),
    ],
)
def test_the_title(tmp_path: Path, said: str, draft_title: str, file: str, called: str) -> None:
    given = sample.draft()
    draft = replace(given, title=draft_title, source=replace(given.source, name=file))
    book = begin_book(OneFile(tmp_path), draft, [sample.ORIGINAL], title=said)
    facts = book.facts()
    book.close()
    assert facts.title == called
    assert facts.draft and facts.draft.number == 1
