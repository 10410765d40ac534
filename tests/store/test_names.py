"""Codes are easy to write by hand, and never given twice."""

import re
import sqlite3

from afterdraft.store.book import BookFile
from afterdraft.store.names import DIGITS, LETTERS, new_code, new_id
from afterdraft.work.split.split_scene import split_scene
from tests.store.sample import undo


def _table() -> sqlite3.Connection:
    db = sqlite3.connect(":memory:")
    db.execute("CREATE TABLE code_used (code TEXT PRIMARY KEY NOT NULL) STRICT, WITHOUT ROWID")
    return db


def test_codes_grow_by_a_figure_when_over_half_are_used() -> None:
    db = _table()
    half = len(LETTERS) * len(DIGITS) ** 2 // 2
    codes = [new_code(db) for _ in range(half + 51)]
    db.close()
    assert len(set(codes)) == len(codes)
    assert all(re.fullmatch(r"[A-HJKMNP-Z][2-9]{2}", code) for code in codes[: half + 1])
    assert all(re.fullmatch(r"[A-HJKMNP-Z][2-9]{3}", code) for code in codes[half + 1 :])


def test_a_code_is_not_given_again_after_undo(book: BookFile, draft: str) -> None:
    before = {scene.code for scene in book.division(draft).scenes}
    for _ in range(3):
        split_scene(book, draft, 4)
        before |= {scene.code for scene in book.division(draft).scenes}
        undo(book)
    with book._reading() as db:
        assert {code for (code,) in db.execute("SELECT code FROM code_used")} == before
    assert len(before) == 6


def test_ids_say_what_they_are_of() -> None:
    assert re.fullmatch(r"sc[a-z2-7]{10}", new_id("scene"))
    assert len({new_id("card") for _ in range(1000)}) == 1000
