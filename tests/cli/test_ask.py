"""`afterdraft ask FILE-or-BOOK`, with the real model."""

import json
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from afterdraft import wiring
from afterdraft.cli.main import run
from afterdraft.questions.asking import ask
from afterdraft.work.questions.let_stand import let_stand
from afterdraft.work.questions.turn_check import turn_check
from tests.facts import Read
from tests.questions.people import ILSE, MARTA

STORY = """Chapter One

Ada Lamb came in on Tuesday 14th February 1965. Mr. Pike rose from his chair by the stove.

“Sit down,” said Ada. “Mr. TK is coming.”

Chapter Two

Ada waited. She saw the boat, and she thought of the letter, and knew what it said.
"""


def no_program(*_: object, **__: object) -> int:
    raise AssertionError("asking opens nothing")


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "story.txt"
    path.write_text(STORY, encoding="utf-8")
    return path


def _form(capsys: pytest.CaptureFixture[str], *arguments: str) -> dict[str, Any]:
    assert run(["ask", *arguments, "--json"], serve=no_program) == 0
    form: dict[str, Any] = json.loads(capsys.readouterr().out)
    return form


@pytest.mark.slow
def test_the_published_form_with_offsets_into_the_story_text(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    form = _form(capsys, str(file))
    assert form["form"] == "ask/1"
    assert [one["check"] for one in form["questions"]] == ["weekday", "placeholder"]
    assert run(["read", str(file), "--json", "--text"], serve=no_program) == 0
    read = json.loads(capsys.readouterr().out)
    story = "\n\n".join(paragraph for scene in read["scenes"] for paragraph in scene["paragraphs"])
    for one in form["questions"]:
        assert one.keys() == {
            "id", "check", "asks", "scenes", "people", "strength", "numbers", "evidence", "answer"
        }  # fmt: skip
        assert one["answer"] is None
        assert one["scenes"] == [0]
        assert 0 < one["strength"] <= 1
        for span in one["evidence"]:
            assert story[span["start"] : span["end"]] == span["quote"]


@pytest.mark.slow
def test_ids_are_the_same_after_an_edit_elsewhere(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = {one["id"] for one in _form(capsys, str(file))["questions"]}
    file.write_text(STORY.replace("Chapter One", "Chapter One\n\nIt rained.\n\n* * *"), encoding="utf-8")
    assert {one["id"] for one in _form(capsys, str(file))["questions"]} == before


@pytest.mark.slow
def test_one_check_and_a_form_to_be_read(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["ask", str(file), "--check", "weekday", "--strict"], serve=no_program) == 1
    out = capsys.readouterr().out
    assert out.startswith("1. “Tuesday 14th February 1965”")
    assert "TK" not in out


@pytest.mark.slow
def test_what_was_answered_in_a_book_is_not_asked_again(
    file: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "story.afterdraft"
    assert run(["begin", str(file), "-o", str(path)], serve=no_program) == 0
    seen = wiring.seen_by_checks(str(path))
    with closing(wiring.open_book(path)) as book:
        let_stand(book, ask(seen)[0])
        turn_check(book, "placeholder", "off")
    capsys.readouterr()
    assert [one["answer"] for one in _form(capsys, str(path))["questions"]] == ["stands", None]
    assert run(["ask", str(path), "--strict"], serve=no_program) == 0
    assert "Nothing to ask" in capsys.readouterr().out
    assert run(["ask", str(path), "--strict", "--check", "placeholder"], serve=no_program) == 1


@pytest.mark.slow
def test_less_sure_checks_are_asked_on_wish(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "steps.txt"
    told = "She came to the steps. He takes the rope, and he ties it. Nobody spoke."
    file.write_text("\n\n".join([*ILSE, *MARTA, told]), encoding="utf-8")
    for options, asked in (((), False), (("--less-sure",), True), (("--check", "tense"), True)):
        assert run(["ask", str(file), "--strict", *options], serve=no_program) == asked
        assert ("stands in the present" in capsys.readouterr().out) == asked


def test_a_check_that_is_not_there_is_refused(file: Path, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as refused:
        run(["ask", str(file), "--check", "grammar"], serve=no_program)
    assert refused.value.code == 2
    assert "placeholder" in capsys.readouterr().err


@pytest.mark.slow
def test_a_book_is_asked_about_with_what_is_marked_in_it(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, read_scenes: Read
) -> None:
    monkeypatch.setattr("afterdraft.engine.reader.read_scenes", read_scenes)
    book = tmp_path / "tare.afterdraft"
    assert run(["demo", "--make-only", "--book", str(book)], serve=no_program) == 0
    capsys.readouterr()
    form = _form(capsys, str(book), "--check", "thread silent", "--check", "twice")
    assert {one["check"] for one in form["questions"]} == {"thread silent", "twice"}
