"""Notes on passages: fastened to their words, following them through every change of the split."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.desk.anchor import CONTEXT, Passage, anchor
from afterdraft.errors import Missing, NotPossible
from afterdraft.store.book import BookFile
from afterdraft.work.notes.write_note import write_note_on_passage
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.mark_matter import mark_matter
from afterdraft.work.split.split_scene import split_scene
from tests.store import sample


def scene_at(book: BookFile, draft: str, at: int) -> str:
    return next(scene.id for scene in book.division(draft).scenes if scene.at == at)


def test_a_passage_is_kept_with_its_words_and_their_neighbours(book: BookFile, draft: str) -> None:
    note = write_note_on_passage(book, "Which pier?", draft=draft, passages=[Passage(6, 17, 32)])
    assert note.anchor
    assert note.anchor.quote == "well-known pier"
    assert note.anchor.before == "It rained on the "
    assert note.anchor.after == " at Côte-Vieille and nobody mind"
    assert note.scene == scene_at(book, draft, 5)
    assert book.note(note.id) == note
    assert book.notes(scene=note.scene) == (note,)
    top = book.edits().undo
    assert top and top.name.startswith("Note on a passage of")
    book.undo(top.number)
    assert book.notes() == ()
    book.redo(top.number)
    assert book.note(note.id).anchor == note.anchor


def test_a_note_follows_its_passage_when_the_scene_is_split_and_joined(book: BookFile, draft: str) -> None:
    note = write_note_on_passage(book, "Door?", draft=draft, passages=[Passage(4, 1, 5)])
    first = scene_at(book, draft, 2)
    assert note.scene == first
    second = split_scene(book, draft, 4)
    assert book.note(note.id).scene == second != first
    top = book.edits().undo
    assert top
    book.undo(top.number)
    assert book.note(note.id).scene == first
    book.redo(top.number)
    join_scenes(book, second)
    assert book.note(note.id).scene == first


def test_a_note_whose_passage_is_set_apart_is_not_lost(book: BookFile, draft: str) -> None:
    note = write_note_on_passage(book, "Third?", draft=draft, passages=[Passage(9, 0, 2)])
    mark_matter(book, draft, 8, 11, where="back")
    assert book.note(note.id).anchor == note.anchor
    assert note.id in {one.id for one in book.notes()}


@pytest.mark.parametrize(("paragraph", "start", "end"), [(4, 3, 3), (4, 5, 2), (4, -1, 2), (4, 0, 10_000)])
def test_a_passage_that_is_none_is_refused(book: BookFile, draft: str, paragraph: int, start: int, end: int) -> None:
    with pytest.raises(NotPossible, match="not in the text"):
        write_note_on_passage(book, "What?", draft=draft, passages=[Passage(paragraph, start, end)])


@pytest.mark.parametrize("paragraph", [0, 11, 400])
def test_front_matter_and_what_is_not_there_hold_no_passages(book: BookFile, draft: str, paragraph: int) -> None:
    with pytest.raises(Missing):
        write_note_on_passage(book, "What?", draft=draft, passages=[Passage(paragraph, 0, 1)])


@given(st.text(min_size=1), st.data())
def test_an_anchor_says_where_it_is_in_its_own_words(text: str, data: st.DataObject) -> None:
    start = data.draw(st.integers(0, len(text)))
    end = data.draw(st.integers(start, len(text)))
    made = anchor(draft="d", paragraph=0, text=text, start=start, end=end)
    assert made.quote == text[start:end]
    assert text[:start].endswith(made.before) and text[end:].startswith(made.after)
    assert len(made.before) == min(CONTEXT, start) and len(made.after) == min(CONTEXT, len(text) - end)


def test_the_sample_says_what_these_tests_believe() -> None:
    assert sample.TEXTS[6].startswith("It rained on the well-known pier")
