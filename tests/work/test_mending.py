"""Corrections of the split: ids, codes, cards, notes, doubts, and what is kept for the next draft."""

import hashlib
import json

import pytest

from afterdraft.errors import Missing, NotPossible
from afterdraft.store.book import BookFile
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.make_chapter import make_chapter, unmake_chapter, unmake_part
from afterdraft.work.split.mark_break import mark_break, unmark_break
from afterdraft.work.split.mark_matter import mark_matter, unmark_matter
from afterdraft.work.split.retitle import retitle_book, retitle_chapter, retitle_part, retitle_scene
from afterdraft.work.split.settle_doubt import settle_doubt
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.write_field import write_field
from tests.store import sample
from tests.store.sample import desk_dump


def _write(book: BookFile, card: str, field: str, text: str) -> None:
    revision = book.card(card).revision
    write_field(book, "card", card, field, text, revision=revision, client="w", sequence=revision, done=True)


def _undo_name(book: BookFile) -> str:
    top = book.edits().undo
    return top.name if top else ""


def test_a_split_leaves_the_first_half_as_it_was(book: BookFile, draft: str) -> None:
    first = book.division(draft).scenes[0]
    card = book.cards(draft)[first.id]
    _write(book, card.id, "summary", "She is early.")
    new = split_scene(book, draft, 4)
    scenes = book.division(draft).scenes
    assert (scenes[0], scenes[1].id, scenes[1].at) == (first, new, 4)
    assert scenes[1].code not in {"", *(scene.code for scene in scenes if scene.id != new)}
    cards = book.cards(draft)
    assert (cards[first.id].id, cards[first.id].summary) == (card.id, "She is early.")
    assert (cards[new].summary, cards[new].id == card.id) == ("", False)
    assert _undo_name(book) == "Split a scene at “‘Door,’ said the keeper, and the door stayed as…”"


def test_a_join_keeps_the_first_scene_both_texts_and_the_notes(book: BookFile, draft: str) -> None:
    first, second, _ = book.division(draft).scenes
    cards = book.cards(draft)
    _write(book, cards[first.id].id, "summary", "She is early.")
    _write(book, cards[second.id].id, "summary", "It rains.")
    _write(book, cards[second.id].id, "leaves", "wet feet")
    write_note(book, "Why minded?", scene=second.id)
    assert join_scenes(book, second.id) == first.id
    joined = book.cards(draft)[first.id]
    assert (joined.id, joined.summary, joined.leaves) == (cards[first.id].id, "She is early.\nIt rains.", "wet feet")
    assert [note.text for note in book.notes(scene=first.id)] == ["Why minded?"]
    assert [scene.id for scene in book.division(draft).scenes][:1] == [first.id]
    assert len(book.cards(draft)) == 2
    assert _undo_name(book) == "Join “It rained on the well-known pier at…” to the scene before"


def test_the_first_scene_cannot_be_joined(book: BookFile, draft: str) -> None:
    before = desk_dump(book), book.edits()
    with pytest.raises(NotPossible):
        join_scenes(book, book.division(draft).scenes[0].id)
    with pytest.raises(Missing):
        join_scenes(book, "sc0000000000")
    assert (desk_dump(book), book.edits()) == before


def test_what_is_written_on_a_scene_set_apart_becomes_loose_notes(book: BookFile, draft: str) -> None:
    second = book.division(draft).scenes[1]
    card = book.cards(draft)[second.id]
    _write(book, card.id, "summary", "It rains.")
    _write(book, card.id, "needed_for", "the flood")
    write_note(book, "Why minded?", scene=second.id)
    mark_matter(book, draft, 5, 8, where="back", kind="other")
    assert second.id not in {scene.id for scene in book.division(draft).scenes}
    assert [(note.text, note.scene) for note in book.notes()] == [("Why minded?", None), ("It rains.\nthe flood", None)]
    assert _undo_name(book) == "Set “* * *” apart as back matter"
    assert book.drafts()[0].words == 14 + 11 + 9 + 9


def test_matter_counts_as_story_again(book: BookFile, draft: str) -> None:
    unmark_matter(book, draft, book.division(draft).matter[1].id)
    assert book.division(draft).roles[11] == "story"
    assert len(book.cards(draft)) == 4
    assert _undo_name(book) == "Count “With thanks to all at the lock.” as story"
    with pytest.raises(Missing):
        unmark_matter(book, draft, "fm0000000000")


def test_chapters_and_parts_come_and_go(book: BookFile, draft: str) -> None:
    make_chapter(book, draft, 10)
    assert len(book.division(draft).chapters) == 3
    assert _undo_name(book) == "Begin a chapter at “She counted them twice AND once more, for luck.”"
    made = book.division(draft).chapters[2]
    unmake_chapter(book, draft, made.id)
    assert len(book.division(draft).chapters) == 2
    assert _undo_name(book).endswith("to the chapter before")
    unmake_part(book, draft, book.division(draft).parts[0].id)
    assert book.division(draft).parts == ()
    assert _undo_name(book) == "Join “PART ONE” to the part before"
    for act in (unmake_chapter, unmake_part):
        with pytest.raises(Missing):
            act(book, draft, "xx0000000000")
    assert book.check() == ()


def test_a_line_is_made_a_break_mark_and_text_again(book: BookFile, draft: str) -> None:
    unmark_break(book, draft, 5)
    assert (len(book.division(draft).scenes), book.division(draft).roles[5]) == (2, "story")
    assert _undo_name(book) == "Read “* * *” as text"
    mark_break(book, draft, 5)
    assert (len(book.division(draft).scenes), book.division(draft).roles[5]) == (3, "mark")
    assert _undo_name(book) == "Read “* * *” as a scene break"


def test_titles(book: BookFile, draft: str) -> None:
    scene, chapter = book.division(draft).scenes[0], book.division(draft).chapters[0]
    retitle_scene(book, scene.id, "  Early,\r\n and  late ")
    assert book.division(draft).scenes[0].title == "Early, and late"
    assert _undo_name(book) == "Call “The ferry wasn’t late; Ottla Brenn was early…” “Early, and late”"
    retitle_scene(book, scene.id, "")
    assert book.division(draft).scenes[0].title == ""
    assert _undo_name(book) == "Take the title off “Early, and late”"
    retitle_chapter(book, draft, chapter.id, "The late ferry")
    assert book.division(draft).chapters[0].title == "The late ferry"
    assert _undo_name(book) == "Call “Chapter 1: The ferry” “The late ferry”"
    retitle_part(book, draft, book.division(draft).parts[0].id, "Part the first")
    assert book.division(draft).parts[0].title == "Part the first"
    retitle_book(book, "The Third Step")
    assert book.facts().title == "The Third Step"
    assert _undo_name(book) == "Call the book “The Third Step”"
    with pytest.raises(NotPossible, match="needs a title"):
        retitle_book(book, " \n ")
    for act in (retitle_chapter, retitle_part):
        with pytest.raises(Missing):
            act(book, draft, "xx0000000000", "None")


def test_a_doubt_is_settled_by_leaving_it_or_by_correcting_it(book: BookFile, draft: str) -> None:
    settle_doubt(book, draft, 8)
    assert book.doubts(draft) == ()
    assert _undo_name(book) == "Leave “2” as it is"
    edits = book.edits()
    settle_doubt(book, draft, 8)  # once more, in another window
    settle_doubt(book, draft, 3)  # there is none
    assert book.edits() == edits
    with pytest.raises(Missing):
        settle_doubt(book, draft, 99)
    assert edits.undo
    book.undo(edits.undo.number)
    assert len(book.doubts(draft)) == 1
    unmake_chapter(book, draft, book.division(draft).chapters[1].id)
    assert book.doubts(draft) == ()


def test_corrections_are_kept_for_the_next_draft_by_text_and_neighbours(book: BookFile, draft: str) -> None:
    def digest(paragraph: int) -> str:
        return hashlib.sha256(" ".join(sample.TEXTS[paragraph].split()).encode()).hexdigest()

    split_scene(book, draft, 4)
    retitle_scene(book, book.division(draft).scenes[0].id, "The ferry")
    kept = desk_dump(book)["desk_split"]
    assert [(row[1], row[2], row[3], row[4], row[5], json.loads(str(row[6]))) for row in kept] == [
        (draft, "split", digest(4), digest(3), digest(5), {}),
        (draft, "title scene", digest(2), digest(1), digest(3), {"title": "The ferry"}),
    ]


def test_a_correction_that_changes_nothing_is_none(book: BookFile, draft: str) -> None:
    before = desk_dump(book), book.edits()
    retitle_scene(book, book.division(draft).scenes[2].id, "Third step")
    assert (desk_dump(book), book.edits()) == before
