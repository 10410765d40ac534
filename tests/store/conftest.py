"""An open book for each test."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from afterdraft.store.book import BookFile
from tests.store.sample import begun


@pytest.fixture
def book(tmp_path: Path) -> Iterator[BookFile]:
    book, _ = begun(tmp_path)
    yield book
    book.close()


@pytest.fixture
def draft(book: BookFile) -> str:
    """Id of the draft in `book`."""
    return book.drafts()[0].id
