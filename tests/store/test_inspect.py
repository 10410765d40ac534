"""The check of a book finds what is wrong, and says which of it."""

import sqlite3

import pytest

from afterdraft.store.book import BookFile

UNLOCK = "DROP TRIGGER text_paragraph_no_update; DROP TRIGGER text_file_no_update; PRAGMA foreign_keys = OFF;"


def _meddle(book: BookFile, script: str) -> None:
    book._write(lambda db, _: db.executescript(f"{UNLOCK} {script}").close(), transaction=False)


@pytest.mark.parametrize(
    ("meddling", "said"),
    [
        ("UPDATE text_paragraph SET text = 'other' WHERE n = 3", "Draft 1 is not as it was brought in."),
        (
            "UPDATE text_file SET bytes = x'00', packed = 0",
            "The original file “sluice.txt” of draft 1 is not as it was",
        ),
        ("DELETE FROM desk_card WHERE key = 1", "has no card."),
        ("DELETE FROM desk_role WHERE paragraph = 11", "Draft 1: Roles do not fit"),
        ("UPDATE desk_scene SET at = 99 WHERE at = 8", "Draft 1: A unit begins outside the text."),
        ("DELETE FROM desk_part", "Something in desk_chapter refers to something in desk_part that is not there."),
        ("INSERT INTO search_card (search_card) VALUES ('delete-all')", "The search index of card does not fit"),
        ("INSERT INTO search_text (search_text) VALUES ('delete-all')", "The search index of text does not fit"),
    ],
)
def test_what_is_wrong_is_said(book: BookFile, meddling: str, said: str) -> None:
    first = next(iter(book.cards(book.drafts()[0].id).values()))
    book.edit("Summary", lambda desk: desk.set_field("card", first.id, "summary", "Early.", client="a", sequence=1))
    assert book.check() == ()
    _meddle(book, f"{meddling};")
    found = book.check()
    assert any(said in problem for problem in found), found


def test_a_scene_never_goes_without_its_card(book: BookFile, draft: str) -> None:
    before = book.division(draft)
    with pytest.raises(sqlite3.IntegrityError):
        book._write(lambda db, _: db.execute("DELETE FROM desk_scene WHERE at = 5"))
    assert book.division(draft) == before
    assert book.check() == ()
