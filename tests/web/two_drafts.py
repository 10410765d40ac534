"""A book of short invented scenes in the browser, and the next drafts of it brought in by the form."""

import re
from collections.abc import Iterator
from html import unescape
from pathlib import Path
from typing import Any

import pytest
from httpx2 import Response
from starlette.testclient import TestClient

from afterdraft.work.ports import Book
from tests.web.opened import opened
from tests.work.test_next_draft import FERRY, LOCK, NEW, PIER, Scenes, ferry

REWORDED = (PIER[0].replace("the fair", "the regatta"), PIER[1].replace("over a stove", "beside a stove"))
RETOLD = ("Stalls blew over along the pier, with the fair not three days old. She bought a lantern of scorched paper.",)
PUNT = ("A punt lay across the slip with its pole still in it, and no one would say whose it was.",)


def typed(*chapters: Scenes) -> bytes:
    """A plain-text manuscript: chapters of scenes of paragraphs."""
    return "\n\n".join(
        f"Chapter {n}\n\n" + "\n\n* * *\n\n".join("\n\n".join(scene) for scene in scenes)
        for n, scenes in enumerate(chapters, start=1)
    ).encode()


SECOND = typed([LOCK, FERRY], [NEW, REWORDED])  # of FERRY, PIER | LOCK, HOUSE


class Web:
    def __init__(self, client: TestClient, book: Book) -> None:
        self.client, self.book = client, book
        self.base = f"/books/{book.id}"

    def get(self, path: str, status: int = 200) -> str:
        """The page; where it leads on to, for a redirect."""
        answer = self.client.get(f"{self.base}/{path}", follow_redirects=False)
        assert answer.status_code == status, answer.text
        return answer.headers.get("location", "").removeprefix(self.base) if status == 303 else answer.text

    def bring(self, manuscript: bytes, how: str = "next", *, name: str = "draft.txt", status: int = 303) -> Response:
        answer: Response = self.client.post(
            f"{self.base}/drafts/bring",
            data={"how": how},
            files=[("files", (name, manuscript))],
            follow_redirects=False,
        )
        assert answer.status_code == status, answer.text
        return answer

    def say(self, act: str, status: int = 303, *, query: str = "", **fields: Any) -> str:
        answer = self.client.post(f"{self.base}/drafts/fates/{act}{query}", data=fields, follow_redirects=False)
        assert answer.status_code == status, answer.text
        return answer.headers.get("location", "").removeprefix(self.base) if status == 303 else answer.text

    def codes(self, draft: int = -1) -> list[str]:
        return [scene.code for scene in self.book.division(self.book.drafts()[draft].id).scenes]

    def ids(self, draft: int = -1) -> list[str]:
        return [scene.id for scene in self.book.division(self.book.drafts()[draft].id).scenes]

    def fates(self, path: str = "drafts") -> dict[str, str]:
        """What became of each scene as the list says it, by the key of its line."""
        found = re.findall(r'<tr id="f-([^"]+)"[^>]* aria-label="([^"]*)"', self.get(path))
        return {key: unescape(label).rpartition(": ")[2] for key, label in found}


@pytest.fixture
def web(tmp_path: Path) -> Iterator[Web]:
    made = ferry(tmp_path)
    made.close()
    with opened(Path(made.path)) as (client, book):
        yield Web(client, book)
