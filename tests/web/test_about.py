"""About this book: its real place and year."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from starlette.testclient import TestClient

from afterdraft.work.ports import Book
from tests.store import sample
from tests.web.opened import opened


@pytest.fixture
def about(tmp_path: Path) -> Iterator[tuple[TestClient, Book]]:
    made, _ = sample.begun(tmp_path)
    made.close()
    with opened(Path(made.path)) as found:
        yield found


def test_a_place_and_a_year_are_kept_shown_and_taken_back(about: tuple[TestClient, Book]) -> None:
    client, book = about
    client.post(f"/books/{book.id}/ground", data={"place": "oslo", "year": "1912"}, follow_redirects=False)
    page = client.get(f"/books/{book.id}/about")
    assert 'value="Oslo, Norway"' in page.text
    assert 'value="1912"' in page.text
    kept = book.ground()
    assert kept is not None
    assert (kept.place, kept.year) == ("Oslo, Norway", 1912)
    assert (kept.north, kept.east) == pytest.approx((59.95, 10.7), abs=0.1)
    top = book.edits().undo
    assert top is not None
    client.post(f"/books/{book.id}/undo", data={"number": str(top.number)}, follow_redirects=False)
    assert book.ground() is None


def test_a_place_that_is_not_known_is_refused_with_what_to_do(about: tuple[TestClient, Book]) -> None:
    client, book = about
    page = client.post(f"/books/{book.id}/ground", data={"place": "Ashwater", "year": ""})
    assert page.is_client_error
    assert "No place is known as “Ashwater”" in page.text
    assert book.ground() is None


def test_towns_are_offered(about: tuple[TestClient, Book]) -> None:
    client, book = about
    assert '<option value="Edinburgh, Scotland">' in client.get(f"/books/{book.id}/about").text
