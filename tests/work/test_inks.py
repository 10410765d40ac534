"""Inks, notes on anything, guarded passages, margin comments taken as notes; all of it taken back."""

from pathlib import Path

import pytest

from afterdraft.desk.anchor import Passage
from afterdraft.desk.ink import COLOURS
from afterdraft.desk.note import About
from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.blocks import Aside
from afterdraft.store.book import BookFile
from afterdraft.work.notes.change_note import fasten_note, place_note, set_note_ink
from afterdraft.work.notes.guard_passage import guard_passage, let_go
from afterdraft.work.notes.mix_ink import letter_ink, mix_ink, move_ink, recolour_ink, remove_ink, starting_inks
from afterdraft.work.notes.take_comments import leave_comments, take_comments
from afterdraft.work.notes.write_note import write_note, write_note_on_passage
from afterdraft.work.split.split_scene import split_scene
from tests.store import sample
from tests.store.sample import desk_dump, redo, undo


def test_inks_have_letters_and_colours_of_their_own(book: BookFile) -> None:
    for name in ("Motive", "Mood", "Money"):
        mix_ink(book, name)
    inks = book.inks()
    assert [ink.letter for ink in inks] == ["M", "O", "N"]
    assert len({ink.colour for ink in inks}) == 3
    assert all(ink.colour in COLOURS for ink in inks)


def test_four_inks_to_begin_with_are_one_edit(book: BookFile) -> None:
    mix_ink(book, "voice")
    before = desk_dump(book)
    starting_inks(book)
    assert [ink.name for ink in book.inks()] == ["voice", "Motive", "Timeline", "Pace"]
    undo(book)
    assert desk_dump(book) == before


def test_an_ink_is_changed_moved_and_done_without(book: BookFile) -> None:
    first, second = mix_ink(book, "Motive"), mix_ink(book, "Pace")
    recolour_ink(book, first, "yellow")
    letter_ink(book, first, "x")
    move_ink(book, second, by=-1)
    assert [(ink.name, ink.colour == "yellow", ink.letter) for ink in book.inks()] == [
        ("Pace", False, "P"),
        ("Motive", True, "X"),
    ]
    note = write_note(book, "Why does she stay?", ink=first)
    before = desk_dump(book)
    remove_ink(book, first)
    assert book.note(note.id).ink is None
    undo(book)
    assert desk_dump(book) == before


@pytest.mark.parametrize("letter", ["", "7", "ABC", "É"])
def test_a_letter_is_one_or_two_capitals(book: BookFile, letter: str) -> None:
    ink = mix_ink(book, "Motive")
    with pytest.raises(NotPossible, match="one or two"):
        letter_ink(book, ink, letter)


def test_no_two_inks_are_called_or_lettered_alike(book: BookFile) -> None:
    mix_ink(book, "Motive")
    other = mix_ink(book, "Pace")
    with pytest.raises(NotPossible, match="already"):
        mix_ink(book, " motive ")
    with pytest.raises(NotPossible, match="“Motive”"):
        letter_ink(book, other, "M")
    with pytest.raises(NotPossible, match="needs a name"):
        mix_ink(book, "  ")


def test_a_note_can_be_on_anything(book: BookFile, draft: str) -> None:
    scene, chapter = book.division(draft).scenes[0].id, book.division(draft).chapters[0].id
    on = [About(scene), About(chapter=chapter), About(book=True), About()]
    notes = [write_note(book, "Why?", about=about) for about in on]
    assert [(note.scene, note.chapter, note.about_book, note.loose) for note in notes] == [
        (scene, None, False, False),
        (None, chapter, False, False),
        (None, None, True, False),
        (None, None, False, True),
    ]
    assert [note.id for note in book.notes(loose=True)] == [notes[3].id]
    with pytest.raises(Missing):
        write_note(book, "Why?", about=About(chapter="ch-none"))
    with pytest.raises(Missing):
        write_note(book, "Why?", ink="ik-none")


def test_a_note_over_two_paragraphs_is_fastened_to_both(book: BookFile, draft: str) -> None:
    note = write_note_on_passage(book, "One breath?", draft=draft, passages=[Passage(4, 1, 5), Passage(6, 0, 3)])
    assert [(anchor.paragraph, anchor.start, anchor.end) for anchor in note.anchors] == [(4, 1, 5), (6, 0, 3)]
    assert note.anchor == note.anchors[0]
    split_scene(book, draft, 4)
    assert book.note(note.id).scene == next(s.id for s in book.division(draft).scenes if s.at == 4)


def test_a_note_is_inked_loosened_and_fastened_again(book: BookFile, draft: str) -> None:
    scene = book.division(draft).scenes[0].id
    note = write_note(book, "Which door?", scene=scene)
    ink = mix_ink(book, "Motive")
    start = desk_dump(book)
    assert set_note_ink(book, note.id, ink).ink == ink
    assert place_note(book, note.id, About()).loose
    assert fasten_note(book, note.id, draft=draft, passages=[Passage(4, 1, 5)]).anchor
    end = desk_dump(book)
    for _ in range(3):
        undo(book)
    assert desk_dump(book) == start
    for _ in range(3):
        redo(book)
    assert desk_dump(book) == end


def test_a_guarded_passage_is_guarded_once_and_let_go(book: BookFile, draft: str) -> None:
    before = desk_dump(book)
    guarded = guard_passage(book, draft, [Passage(4, 1, 5)], why="It rings.")
    assert guard_passage(book, draft, [Passage(4, 1, 5)]) == guarded
    (found,) = book.guarded(draft)
    assert (found.quote, found.why) == (found.anchors[0].quote, "It rings.")
    let_go(book, draft, guarded)
    assert book.guarded(draft) == ()
    undo(book)
    undo(book)
    assert desk_dump(book) == before


@pytest.mark.parametrize("passage", [(4, 3, 3), (4, 0, 10_000), (99_999, 0, 1)])
def test_only_words_that_are_there_are_guarded(book: BookFile, draft: str, passage: tuple[int, int, int]) -> None:
    with pytest.raises(NotPossible):
        guard_passage(book, draft, [Passage(*passage)])
    with pytest.raises(NotPossible):
        guard_passage(book, draft, [])


COMMENTS = (
    Aside("comment", 4, 1, 5, "Which door?", author="Ottla Brandt"),
    Aside("comment", 4, 1, 5, "The blue one.", author="R. V.", reply=True),
    Aside("footnote", 6, 0, 0, "Not a comment."),
    Aside("comment", 6, 2, 2, "Settled?", done=True),
)


@pytest.fixture
def commented(tmp_path: Path) -> tuple[BookFile, str]:
    return sample.begun(tmp_path, asides=COMMENTS)


def test_comments_become_notes_on_their_words_once(commented: tuple[BookFile, str]) -> None:
    book, draft = commented
    with book:
        first, second = book.offers(draft, 0, 100)
        assert first.text == "Which door?\nR. V.: The blue one."
        before = desk_dump(book)
        take_comments(book, draft, [first.aside, second.aside])
        one, other = book.notes()
        assert (one.text, one.state, len(one.anchors)) == (first.text, "open", 1)
        assert (other.text, other.state, len(other.anchors)) == ("Settled?", "done", 0)
        assert book.offers(draft, 0, 100) == ()
        with pytest.raises(Missing):
            take_comments(book, draft, [first.aside])
        undo(book)
        assert desk_dump(book) == before
        leave_comments(book, draft, [second.aside])
        assert [offer.aside for offer in book.offers(draft, 0, 100)] == [first.aside]
        assert book.notes() == ()
