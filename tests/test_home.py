"""Recent books, the books folder, names of files."""

import json
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from afterdraft.errors import CannotWrite
from afterdraft.home import REMEMBERED, BooksFolder, Recent, Recents, free_name, safe_name
from afterdraft.platform import folders


def recent(number: int) -> Recent:
    return Recent(f"bk{number}", f"/books/{number}.afterdraft", f"Book {number}", "2026-11-25T09:00:00+00:00")


def test_the_folder_is_the_environments_then_hers_then_the_usual(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = BooksFolder(folders())
    assert (folder.path(), folder.fixed) == (home / "Books", True)
    monkeypatch.delenv("AFTERDRAFT_HOME")
    assert (folder.path(), folder.fixed) == (folders().documents / "Afterdraft", False)
    folder.choose(home / "mine" / "novels")
    assert BooksFolder(folders()).path() == home / "mine" / "novels"


def test_a_folder_that_cannot_be_written_is_not_chosen(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("AFTERDRAFT_HOME")
    (home / "file").write_text("", encoding="utf-8")
    folder = BooksFolder(folders())
    before = folder.path()
    with pytest.raises(CannotWrite):
        folder.choose(home / "file" / "novels")
    assert folder.path() == before


@pytest.mark.parametrize(
    "content", ["", "{", "[]", '{"books": 1}', '{"books": [1, {}, {"id": 1}]}', '{"books": [{"id": "a"}]}']
)
def test_a_damaged_list_of_recent_books_is_an_empty_one(content: str) -> None:
    file = folders().config / "recents.json"
    file.parent.mkdir(parents=True)
    file.write_text(content, encoding="utf-8")
    recents = Recents(folders())
    assert recents.all() == ()
    recents.put(recent(1))
    assert recents.all() == (recent(1),)


def test_what_a_newer_program_wrote_beside_is_no_trouble() -> None:
    recents = Recents(folders())
    recents.put(recent(1))
    file = folders().config / "recents.json"
    stored = json.loads(file.read_text("utf-8"))
    stored["books"][0]["colour"] = "red"
    file.write_text(json.dumps(stored), encoding="utf-8")
    assert recents.all() == (recent(1),)


def test_the_list_is_not_endless() -> None:
    recents = Recents(folders())
    for number in range(REMEMBERED + 5):
        recents.put(recent(number))
    assert len(recents.all()) == REMEMBERED
    assert recents.all()[0].id == f"bk{REMEMBERED + 4}"


# Windows refuses these characters and device names, and drops dots and spaces at the end: its own file-naming rules.
@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("The Ferry", "The Ferry"),
        ("  What now?  ", "What now"),
        ("One: Two/Three\\Four", "One Two Three Four"),
        ("A\nB\tC", "A B C"),
        ("...", "Untitled"),
        ("", "Untitled"),
        ("NUL", "NUL book"),
        ("com1.draft", "com1.draft book"),
        ("Ærø — 海", "Ærø — 海"),
        ("x" * 300, "x" * 80),
    ],
)
def test_a_title_as_a_file_name(title: str, name: str) -> None:
    assert safe_name(title) == name


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.text(max_size=120))
def test_any_title_is_a_file_name(tmp_path: Path, title: str) -> None:
    path = free_name(tmp_path, title)
    path.write_bytes(b"")
    try:
        assert path.parent == tmp_path
        assert free_name(tmp_path, title) != path
    finally:
        path.unlink()
