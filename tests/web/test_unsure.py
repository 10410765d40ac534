"""Questions about lines alike on the split: answered for all of them in one act, or line by line."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from lxml import html
from starlette.testclient import TestClient

from afterdraft.manuscript.division import Doubt
from afterdraft.store.opening import begin_book
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.ports import Book
from tests.store import sample
from tests.web.opened import opened

SPACE = "There is extra space above; no scene was begun there."
DOUBTS = (*(Doubt(SPACE, at, "text", "scene") for at in (4, 10)), Doubt("A chapter?", 8, "chapter", "scene"))


@pytest.fixture
def split(tmp_path: Path) -> Iterator[tuple[TestClient, Book]]:
    made = replace(sample.draft(), doubts=DOUBTS)
    file, _ = begin_book(
        tmp_path / "Sluice.afterdraft",
        title="The Sluice-Keeper",
        backups=tmp_path / "backups",
        first=lambda book: bring_draft(book, made, [sample.ORIGINAL]),
    )
    file.close()
    with opened(tmp_path / "Sluice.afterdraft") as found:
        yield found


def asked(client: TestClient, book: Book) -> list[html.HtmlElement]:
    """The questions of the page, in order."""
    page = html.fromstring(client.get(f"/books/{book.id}/split").text)
    return list(page.iterfind(".//section[@class='doubts']/ul/li"))


def buttons(question: html.HtmlElement) -> list[str]:
    return [button.text_content() for button in question.iterfind(".//button")]


def settle(client: TestClient, book: Book, take: str, *paragraphs: int) -> int:
    data = {"take": take, "paragraph": [str(one) for one in paragraphs]}
    return client.post(f"/books/{book.id}/split/settle", data=data, follow_redirects=False).status_code


def scenes(book: Book) -> list[int]:
    draft = book.facts().draft
    assert draft
    return [scene.at for scene in book.division(draft.id).scenes]


def test_lines_alike_are_one_question_with_an_answer_for_all(split: tuple[TestClient, Book]) -> None:
    client, book = split
    alike, single = asked(client, book)
    assert buttons(alike)[:2] == ["Leave all 2 as they are", "Make all 2: new scenes"]
    assert buttons(alike)[2:] == ["Leave it: text", "Make it: a new scene"] * 2
    assert [one.get("value") for one in alike.find("form").iterfind("input")] == ["4", "10"]
    assert buttons(single) == ["Leave it: a chapter heading", "Make it: a new scene"]


def test_one_answer_settles_all_of_them(split: tuple[TestClient, Book]) -> None:
    client, book = split
    assert settle(client, book, "other", 4, 10) == 303
    assert scenes(book) == [2, 4, 5, 8, 10]
    assert len(asked(client, book)) == 1


def test_all_are_left_as_they_are(split: tuple[TestClient, Book]) -> None:
    client, book = split
    assert settle(client, book, "chosen", 4, 10) == 303
    assert scenes(book) == [2, 5, 8]
    assert len(asked(client, book)) == 1


def test_one_line_of_them_may_be_answered_alone(split: tuple[TestClient, Book]) -> None:
    client, book = split
    assert settle(client, book, "other", 10) == 303
    assert scenes(book) == [2, 5, 8, 10]
    assert [buttons(one)[0] for one in asked(client, book)] == ["Leave it: text", "Leave it: a chapter heading"]


def test_an_answer_to_no_line_changes_nothing(split: tuple[TestClient, Book]) -> None:
    client, book = split
    assert settle(client, book, "other") == 404
    assert settle(client, book, "chosen") == 404
    assert len(asked(client, book)) == 2
