"""Notes: written, rewritten, done, dropped; and drafts brought in; and edits stepped through."""

import pytest

from afterdraft.desk.note import NoteState
from afterdraft.errors import Missing, NothingToUndo, NotPossible, Stale
from afterdraft.store.book import BookFile
from afterdraft.work.notes.change_note import rewrite_note, set_note_state
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.step_back import step_back, step_forward


def _undo_name(book: BookFile) -> str:
    top = book.edits().undo
    return top.name if top else ""


def test_a_loose_note_and_one_on_a_scene(book: BookFile, draft: str) -> None:
    loose = write_note(book, "  Which step?\r\nThird. ")
    assert (loose.text, loose.scene, loose.state, _undo_name(book)) == (
        "Which step?\nThird.",
        None,
        "open",
        "Loose note",
    )
    assert loose.made.endswith("+00:00")
    scene = book.division(draft).scenes[2]
    on_scene = write_note(book, "Luck?", scene=scene.id)
    assert (on_scene.scene, _undo_name(book)) == (scene.id, "Note on “Third step”")
    assert book.notes() == (loose, on_scene)


@pytest.mark.parametrize("text", ["", "  \n ", "\0"])
def test_a_note_without_words_is_refused(book: BookFile, text: str) -> None:
    with pytest.raises(NotPossible, match="needs some words"):
        write_note(book, text)
    assert book.notes() == ()


def test_a_note_on_a_scene_that_is_not_there_is_refused(book: BookFile) -> None:
    with pytest.raises(Missing):
        write_note(book, "Lost.", scene="sc0000000000")


def test_rewriting_needs_the_revision_that_was_read(book: BookFile) -> None:
    note = write_note(book, "Third.")
    changed = rewrite_note(book, note.id, "Fourth.", revision=note.revision)
    assert (changed.text, _undo_name(book)) == ("Fourth.", "Words of the note “Third.”")
    with pytest.raises(Stale) as told:
        rewrite_note(book, note.id, "Fifth.", revision=note.revision)
    assert (told.value.stands, told.value.revision) == ("Fourth.", changed.revision)
    assert rewrite_note(book, note.id, "Fourth.", revision=note.revision) == changed
    with pytest.raises(NotPossible):
        rewrite_note(book, note.id, " ", revision=changed.revision)
    with pytest.raises(Missing):
        rewrite_note(book, "nt0000000000", "x", revision=1)


@pytest.mark.parametrize(
    ("state", "name"),
    [
        ("done", "Mark the note “Third.” as done"),
        ("dropped", "Drop the note “Third.”"),
    ],
)
def test_states(book: BookFile, state: NoteState, name: str) -> None:
    note = write_note(book, "Third.")
    assert set_note_state(book, note.id, state).state == state
    assert _undo_name(book) == name
    assert set_note_state(book, note.id, "open").state == "open"
    assert _undo_name(book) == "Open the note “Third.” again"


def test_stepping_back_and_forward(book: BookFile) -> None:
    note = write_note(book, "Third.")
    top = book.edits().undo
    assert top
    assert step_back(book, top.number) == top
    assert book.notes() == ()
    with pytest.raises(NothingToUndo, match="There is nothing there any more"):
        step_back(book, top.number)
    assert step_forward(book, top.number) == top
    assert [one.id for one in book.notes()] == [note.id]
