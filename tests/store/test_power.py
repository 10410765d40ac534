"""An edit that was said to be saved survives the power being cut right then; and this test would notice if not."""

import random
import sqlite3
import time
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.write_field import write_field
from tests.store import sample
from tests.store.power import Record, recorded
from tests.store.sample import redo, undo

EDITS = 24


def _stream(path: Path, tmp_path: Path, record: Record, prepare: Callable[[BookFile], object]) -> None:
    """Edits one after the other; note `n` among them says that all before were made. Rests once, so that the log is
    folded in while the record runs."""
    with open_book(path, backups=tmp_path / "backups") as book:
        prepare(book)
        draft = book.drafts()[0].id
        card = next(iter(book.cards(draft).values())).id
        for n in range(EDITS):
            write_field(
                book, "card", card, "summary", f"Line {n}. " * 20, revision=10**6, client="a", sequence=n, done=True
            )
            if n % 6 == 1:
                split_scene(book, draft, 4)
                undo(book)
                redo(book)
                undo(book)
            write_note(book, str(n))
            record.say(n)
            if n == EDITS // 2:
                time.sleep(0.3)


def _found(files: dict[str, bytes], path: Path, folder: Path) -> tuple[int, str]:
    """Open what the power cut left: how many notes are there without a gap, and what the engine says of the file."""
    folder.mkdir()
    for name, content in files.items():
        (folder / Path(name).name).write_bytes(content)
    with closing(sqlite3.connect(folder / path.name)) as db:
        said = db.execute("PRAGMA integrity_check").fetchone()[0]
        notes = [int(text) for (text,) in db.execute("SELECT text FROM desk_note ORDER BY key")]
    assert notes == list(range(len(notes)))
    return len(notes), said


def _lost(tmp_path: Path, record: Record, path: Path, *, survives: random.Random | None) -> list[int]:
    """Edits that had been said to be saved and are not there, or whose file is damaged, at each moment of saying."""
    moments = [(n, event.said) for n, event in enumerate(record.events) if event.kind == "said"]
    lost = []
    for moment, number in moments:
        found, said = _found(record.after_power_cut(moment, survives=survives), path, tmp_path / f"cut-{moment}")
        if found < number + 1 or said != "ok":
            lost.append(number)
    assert len(moments) == EDITS
    return lost


@pytest.fixture
def path(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setattr("afterdraft.store.writer.REST_SECONDS", 0.05)
    book, _ = sample.begun(tmp_path)
    book.close()
    return Path(book.path)


@pytest.mark.parametrize("seed", [None, 1, 2, 3])
def test_what_was_said_to_be_saved_survives_a_power_cut(tmp_path: Path, path: Path, seed: int | None) -> None:
    with recorded(path) as record:
        _stream(path, tmp_path, record, lambda _: None)
    survives = None if seed is None else random.Random(seed)  # noqa: S311 — which unsynced writes survive
    assert _lost(tmp_path, record, path, survives=survives) == []
    assert any(event.kind == "write" and event.file == str(path) for event in record.events), "the log was never folded"


def test_between_a_write_to_the_log_and_the_reply_there_is_always_a_sync(tmp_path: Path, path: Path) -> None:
    with recorded(path) as record:
        _stream(path, tmp_path, record, lambda _: None)
    log = f"{path}-wal"
    unsynced, replies = 0, 0
    for event in record.events:
        if event.kind == "write" and event.file == log:
            unsynced += 1
        elif event.kind == "sync" and event.file == log:
            unsynced = 0
        elif event.kind == "said":
            assert unsynced == 0
            replies += 1
    assert replies == EDITS


@pytest.mark.parametrize("level", ["OFF", "NORMAL"])
def test_less_than_full_would_be_noticed(tmp_path: Path, path: Path, level: str) -> None:
    """The test of the test: with less care than the program takes, edits are lost here."""

    def careless(book: BookFile) -> None:
        book._write(lambda db, _: db.execute(f"PRAGMA synchronous = {level}"), transaction=False)

    with recorded(path) as record:
        _stream(path, tmp_path, record, careless)
    assert _lost(tmp_path, record, path, survives=None)
