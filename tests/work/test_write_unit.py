"""Cards of chapters, parts and the book: made by the first words, as one edit; they follow when the split is mended."""

import pytest

from afterdraft.desk.unit_card import UnitCardKind
from afterdraft.errors import Missing, Stale
from afterdraft.store.book import BookFile
from afterdraft.work.cards.write_unit import card_of, write_unit
from afterdraft.work.ports import Saved
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.make_chapter import unmake_chapter
from tests.store.sample import desk_dump, redo, undo


def write(
    book: BookFile,
    kind: UnitCardKind,
    unit: str | None,
    text: str,
    field: str = "summary",
    *,
    revision: int = 0,
    client: str = "",
    sequence: int = 1,
    done: bool = True,
) -> Saved:
    return write_unit(book, kind, unit, field, text, revision=revision, client=client, sequence=sequence, done=done)


def chapters(book: BookFile, draft: str) -> list[str]:
    return [chapter.id for chapter in book.division(draft).chapters]


@pytest.mark.parametrize(
    ("kind", "at", "called"),
    [("chapter", 0, "“Chapter 1: The ferry”"), ("part", 0, "“PART ONE”"), ("book", None, "the book")],
)
def test_the_first_words_make_the_card_and_are_one_edit(
    book: BookFile, draft: str, kind: UnitCardKind, at: int | None, called: str
) -> None:
    units = {"chapter": chapters(book, draft), "part": [part.id for part in book.division(draft).parts]}
    unit = None if at is None else units[kind][at]
    before = desk_dump(book)
    write(book, kind, unit, "She gets the door open.\r\nJust.")
    card = card_of(book.unit_cards(draft), kind, unit)
    assert card is not None
    assert card.summary == "She gets the door open.\nJust."
    assert undo(book) == f"Summary of {called}"
    assert book.unit_cards(draft) == ()
    assert desk_dump(book)["desk_unit_card"] == before["desk_unit_card"]
    redo(book)
    again = card_of(book.unit_cards(draft), kind, unit)
    assert again is not None
    assert (again.id, again.summary) == (card.id, card.summary)


def test_further_words_go_to_the_same_card_and_are_named_after_the_unit(book: BookFile, draft: str) -> None:
    write(book, "book", None, "A lock and its keeper.")
    revision = book.unit_cards(draft)[0].revision
    write(book, "book", None, "Ottla’s", "whose", revision=revision)
    (card,) = book.unit_cards(draft)
    assert (card.summary, card.whose) == ("A lock and its keeper.", "Ottla’s")
    assert undo(book) == "“Whose story” of the book"


def test_what_is_typed_on_at_once_is_one_edit(book: BookFile, draft: str) -> None:
    chapter = chapters(book, draft)[1]
    saved = write(book, "chapter", chapter, "The wa", client="w", done=False)
    write(book, "chapter", chapter, "The water", client="w", sequence=2, revision=saved.revision)
    assert undo(book) == "Summary of “Chapter 2”"
    assert book.unit_cards(draft) == ()


def test_nothing_typed_makes_no_card_and_no_edit(book: BookFile, draft: str) -> None:
    top = book.edits().undo
    assert write(book, "book", None, "") == Saved(0)
    assert (book.unit_cards(draft), book.edits().undo) == ((), top)


def test_a_second_window_that_saw_no_card_overwrites_nothing(book: BookFile, draft: str) -> None:
    write(book, "book", None, "One window.", client="one")
    with pytest.raises(Stale):
        write(book, "book", None, "The other.", client="two")
    assert [card.summary for card in book.unit_cards(draft)] == ["One window."]


def test_a_chapter_that_is_not_there_is_told(book: BookFile) -> None:
    with pytest.raises(Missing, match="chapter"):
        write(book, "chapter", "ch000", "Lost?")


def test_a_field_that_is_not_there_is_told_and_leaves_no_card(book: BookFile, draft: str) -> None:
    with pytest.raises(Missing):
        write(book, "book", None, "Lost?", "colour")
    assert book.unit_cards(draft) == ()


def test_a_chapter_joined_to_the_one_before_leaves_its_words_on_that_card(book: BookFile, draft: str) -> None:
    first, second = chapters(book, draft)
    write(book, "chapter", first, "Early.")
    write(book, "chapter", second, "Late.")
    unmake_chapter(book, draft, second)
    (card,) = book.unit_cards(draft)
    assert (card.unit, card.summary) == (first, "Early.\nLate.")
    undo(book)
    assert [card.summary for card in book.unit_cards(draft)] == ["Early.", "Late."]


def test_joining_scenes_leaves_the_cards_of_chapters_alone(book: BookFile, draft: str) -> None:
    first, _ = chapters(book, draft)
    write(book, "chapter", first, "Early.")
    join_scenes(book, book.division(draft).scenes[1].id)
    assert [card.summary for card in book.unit_cards(draft)] == ["Early."]


def test_chosen_paragraphs_are_read_and_no_others(book: BookFile, draft: str) -> None:
    found = book.blocks_at(draft, [3, 9, 99])
    assert {n: block.text[:9] for n, block in found.items()} == {3: "The ferry", 9: "By noon t"}
    assert found[3].runs == book.blocks(draft, 3, 4)[0].runs


def test_words_on_these_cards_are_found(book: BookFile, draft: str) -> None:
    chapter = chapters(book, draft)[1]
    write(book, "chapter", chapter, "The Marquess drowns.", "answers")
    write(book, "book", None, "Whoever marries the Marquess.", "whose")
    hits = book.search("marquess")
    assert [(hit.kind, hit.id, hit.match) for hit in hits] == [
        ("unit_card", chapter, "Marquess"),
        ("unit_card", "-", "Marquess"),
    ]
    undo(book)
    assert len(book.search("marquess")) == 1
