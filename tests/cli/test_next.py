"""`afterdraft next` as a person or a script types it."""

import json
from pathlib import Path

import pytest

from afterdraft.wiring import look_at
from tests.cli.manuscripts import HARBOUR, harbour
from tests.cli.test_commands import begun, everything
from tests.server import afterdraft


def second(home: Path, text: str = HARBOUR.replace("whole town", "whole street")) -> Path:
    path = home / "second.txt"
    path.write_text(text, "utf-8")
    return path


def drafts(book: Path) -> list[tuple[int, bool]]:
    opened = look_at(book)
    try:
        return [(draft.number, draft.part_way) for draft in opened.drafts()]
    finally:
        opened.close()


def test_the_next_draft_is_told_beside_the_one_before(home: Path) -> None:
    book = begun(home)
    done = afterdraft("next", book, second(home), home=home)
    assert (done.returncode, done.stderr) == (0, "")
    first, *lines = done.stdout.splitlines()
    assert first == "It is draft 2 of the book now. Draft 1 beside draft 2:"
    assert [line.split()[0] for line in lines[1:]] == ["same", "revised", "same"]
    assert drafts(book) == [(1, False), (2, False)]


def test_as_json_and_nothing_else_on_standard_output(home: Path) -> None:
    book = begun(home)
    form = json.loads(afterdraft("next", book, second(home), "--json", home=home).stdout)
    assert form["form"] == "compare/1"
    assert form == json.loads(afterdraft("compare", f"{book}#1", f"{book}#2", "--json", home=home).stdout)


def test_part_way_and_then_the_whole(home: Path) -> None:
    book = begun(home)
    part = second(home, HARBOUR[: HARBOUR.index("* * *")])
    told = afterdraft("next", book, part, "--part-way", home=home).stdout
    assert told.splitlines()[1].endswith("0 cut, 28 not reached, 8 added")
    assert "cut" not in "".join(told.splitlines()[2:])
    assert drafts(book) == [(1, False), (2, True)]
    assert afterdraft("next", book, second(home), home=home).returncode == 0
    assert drafts(book) == [(1, False), (2, False)]


@pytest.mark.parametrize(("how", "number"), [("--again", 1), ("--older", 2)])
def test_the_same_again_and_an_older_one(home: Path, how: str, number: int) -> None:
    book = begun(home)
    done = afterdraft("next", book, second(home), how, home=home)
    assert (done.returncode, done.stderr) == (0, "")
    assert drafts(book) == [(n, False) for n in range(1, number + 1)]
    assert afterdraft("book", "check", book, home=home).returncode == 0


@pytest.mark.parametrize(
    ("file", "code", "says"),
    [
        ("The Low Harbour.txt", 2, "word for word"),
        ("none.docx", 3, "none.docx"),
        ("notes.pdf", 3, "not a kind of file"),
    ],
)
def test_what_does_not_come_in_changes_nothing(home: Path, file: str, code: int, says: str) -> None:
    book = begun(home)
    (home / "notes.pdf").write_bytes(b"%PDF-1.7")
    harbour(home)
    before = everything(home)
    done = afterdraft("next", book, home / file, home=home)
    assert (done.returncode, done.stdout) == (code, "")
    assert says in done.stderr
    assert len(done.stderr.splitlines()) == 1
    assert {name: digest for name, digest in everything(home).items() if name.endswith((".txt", ".pdf"))} == {
        name: digest for name, digest in before.items() if name.endswith((".txt", ".pdf"))
    }
    assert drafts(book) == [(1, False)]


def test_a_file_that_is_no_book_is_4(home: Path) -> None:
    manuscript = harbour(home)
    done = afterdraft("next", manuscript, manuscript, home=home)
    assert (done.returncode, done.stdout) == (4, "")
