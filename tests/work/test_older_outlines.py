"""Outlines of older drafts can be read and no longer written on: a window left open there is told so."""

import pytest

from afterdraft.errors import NotPossible
from afterdraft.store.book import BookFile
from afterdraft.work.cards.arranging import seen
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cards.write_unit import write_unit
from afterdraft.work.write_field import write_once
from tests.store.sample import undo
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER, book, bring, codes, scenes

__all__ = ["book"]


def test_a_card_of_an_older_draft_is_not_written_on(book: BookFile) -> None:
    first = book.drafts()[0].id
    card = book.cards(first)[scenes(book)[0]]
    write_once(book, "card", card.id, "summary", "She counts the lamps.")
    bring(book, [FERRY, PIER], [LOCK, NEW])
    with pytest.raises(NotPossible, match=r"draft 1.*Nothing is lost"):
        write_once(book, "card", card.id, "summary", "She counts the boats.")
    assert book.card(card.id).summary == "She counts the lamps."
    undo(book)
    write_once(book, "card", card.id, "summary", "She counts the boats.")
    assert book.card(card.id).summary == "She counts the boats."


def test_nor_is_the_card_of_its_book_or_of_a_chapter(book: BookFile) -> None:
    write_unit(book, "book", None, "summary", "A crossing.", revision=0, client="", sequence=1, done=True)
    (card,) = book.unit_cards(book.drafts()[0].id)
    bring(book, [FERRY, PIER], [LOCK, HOUSE])
    with pytest.raises(NotPossible, match="draft 1"):
        write_once(book, "unit", card.id, "summary", "Two crossings.")


def test_nor_is_a_next_side_of_its_arrangement(book: BookFile) -> None:
    set_intent(book, "", [codes(book)[0]], "rewrite")
    laid = seen(book, "").cards()[0]
    write_once(book, "next", laid.id, "what", "By day.")
    bring(book, [FERRY, PIER], [LOCK, HOUSE])
    with pytest.raises(NotPossible, match="draft 1"):
        write_once(book, "next", laid.id, "what", "By night.")


def test_the_same_draft_brought_in_again_is_written_on(book: BookFile) -> None:
    card = book.cards(book.drafts()[0].id)[scenes(book)[0]]
    bring(book, [FERRY, PIER], [LOCK, (*HOUSE, "She woke.")], how="again")
    write_once(book, "card", card.id, "summary", "She counts the lamps.")
    assert book.cards(book.drafts()[0].id)[scenes(book)[0]].summary == "She counts the lamps."
