"""The demonstration book's second draft is one act away, once."""

from pathlib import Path

import pytest

from afterdraft import wiring
from afterdraft.home import BooksFolder
from afterdraft.platform import folders
from tests.server import home_variables
from tests.web.opened import opened


def test_its_second_draft_comes_in_and_is_not_offered_again(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for name, value in home_variables(tmp_path).items():
        monkeypatch.setenv(name, value)
    path = wiring.demonstration(BooksFolder(folders()), path=tmp_path / "demo.afterdraft")
    with opened(path) as (client, book):
        base = f"/books/{book.id}/drafts"
        assert f'action="{base}/demonstration"' in client.get(base).text
        assert client.post(f"{base}/demonstration", follow_redirects=False).status_code == 303
        assert [draft.files for draft in book.drafts()] == [("manuscript.docx",), ("second.docx",)]
        assert f'action="{base}/demonstration"' not in client.get(base).text
        refused = client.post(f"{base}/demonstration")
        assert refused.status_code == 422
        assert len(book.drafts()) == 2
