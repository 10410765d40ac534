"""Manuscripts are read in a process of their own: nothing a file does there harms the program."""

import io
import os
import pickle
import subprocess
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from afterdraft import apart, errors
from afterdraft.desk.table import Sheet
from afterdraft.formats import table
from afterdraft.manuscript.unmarked import suggested
from afterdraft.questions.catalogue import BY_ID, CHECKS
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from tests.manuscript.unmarked.test_unmarked import BOOK
from tests.support import need

TEXT = b"Chapter One\n\nThe ferry was late.\n\nChapter Two\n\nIt came.\n"


def test_what_is_read_apart_is_what_is_read_here() -> None:
    assert apart.read([("draft.txt", TEXT), ("more.md", TEXT)]) == (
        table.read(TEXT, "draft.txt"),
        table.read(TEXT, "more.md"),
    )


@pytest.mark.parametrize(
    ("name", "content", "kind"),
    [
        ("draft.pdf", b"%PDF-1.7\n", errors.UnknownFormat),
        ("draft.docx", b"PK\x03\x04 and no more", errors.DamagedFile),
        ("draft.txt", b"  \n", errors.EmptyManuscript),
    ],
)
def test_a_refusal_comes_back_as_it_was_written(
    name: str, content: bytes, kind: type[errors.UnreadableManuscript]
) -> None:
    with pytest.raises(errors.UnreadableManuscript) as here:
        table.read(content, name)
    with pytest.raises(kind) as told:
        apart.read([(name, content)])
    assert type(told.value) is type(here.value)
    assert str(told.value) == str(here.value)


def test_tables_are_read_apart_too(monkeypatch: pytest.MonkeyPatch) -> None:
    assert apart.read_tables(("list.csv", b"Code,Summary\nK42,Rain.\n")) == (
        Sheet("list", (("Code", "Summary"), ("K42", "Rain."))),
    )
    with pytest.raises(errors.UnreadableTable, match=r"“list.xlsx” cannot be read as a table: it is cut short"):
        apart.read_tables(("list.xlsx", b"PK\x03\x04 and no more"))
    monkeypatch.setattr(apart, "SECONDS", 0.01)
    with pytest.raises(errors.UnreadableTable, match="more time or memory"):
        apart.read_tables(("list.csv", b"Code,Summary\nK42,Rain.\n"))


def test_unmarked_breaks_are_looked_for_apart_too(monkeypatch: pytest.MonkeyPatch) -> None:
    found = apart.suggested(BOOK)
    assert found == suggested(BOOK) != []
    monkeypatch.setattr(apart, "SECONDS", 0.01)
    with pytest.raises(errors.TooLarge):
        apart.suggested(BOOK)


def test_a_reader_that_takes_too_long_is_ended(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(apart, "SECONDS", 0.01)
    with pytest.raises(errors.TooLarge, match="took too long"):
        apart.read([("draft.txt", TEXT)])


def test_memory_is_limited_in_the_child(monkeypatch: pytest.MonkeyPatch) -> None:
    need(hasattr(os, "fork"), "a system that limits memory")
    script = "from afterdraft import apart, platform; apart.MEGABYTES = 100; apart._child()"
    real = subprocess.run

    def smaller(command: list[str], **given: Any) -> subprocess.CompletedProcess[bytes]:
        return real([*command[:2], "-c", script], **given)

    monkeypatch.setattr(subprocess, "run", smaller)
    assert apart.read([("draft.txt", TEXT)])[0].blocks
    with pytest.raises(errors.TooLarge, match="more memory"):
        apart.read([("draft.txt", b"Late again. " * 2_500_000)])


def test_nothing_but_blocks_is_built_of_an_answer() -> None:
    with pytest.raises(pickle.UnpicklingError):
        apart._Answer(io.BytesIO(pickle.dumps(subprocess.run))).load()


def test_a_fault_of_the_reader_is_told_as_one(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    (tmp_path / "lxml.py").write_text("raise ValueError('The ferry was late.')", encoding="utf-8")
    for name in ("HOME", "XDG_STATE_HOME"):  # where it writes down the fault
        monkeypatch.setenv(name, str(tmp_path))
    monkeypatch.setenv("PYTHONPATH", str(tmp_path))
    with pytest.raises(apart.ReadingFault):
        apart.read([("draft.html", b"<html><p>The ferry was late.</p></html>")])


def test_checks_look_apart_too_and_find_what_they_find_here() -> None:
    told = (("On Tuesday 14th February 1965 TK came down to the lock.",), ("Nobody came.",))
    seen = Seen(texts=told, titles=("The lock", ""), keys=("a", "b"))
    words = [check for check in CHECKS if set(check.reads) == {"words"}]
    found = apart.findings([check.id for check in words], seen, [])
    assert found == {check.id: tuple(check.find(seen)) for check in words}
    assert found["weekday"]
    assert found["placeholder"]


def test_a_fault_in_one_check_hides_no_other(monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(_: Seen) -> list[Finding]:
        raise KeyError("a fault of ours")

    monkeypatch.setitem(BY_ID, "weekday", replace(BY_ID["weekday"], find=broken))
    found = apart._findings((("weekday", "placeholder"), Seen(texts=(("TK came.",),)), ()), "The draft")
    assert found.keys() == {"placeholder"}
    assert found["placeholder"]
