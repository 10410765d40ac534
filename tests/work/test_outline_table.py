"""The reverse outline as a table."""

from afterdraft.desk.arrangement import Arrangement
from afterdraft.store.book import BookFile
from afterdraft.work.cards.arranging import seen
from afterdraft.work.cards.outline_table import outline_table
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.mark_setting import mark_setting
from afterdraft.work.split.retitle import retitle_scene
from afterdraft.work.write_field import write_once


def test_a_row_a_scene_with_what_every_book_has(book: BookFile, draft: str) -> None:
    one, two, three = book.division(draft).scenes
    write_once(book, "card", book.cards(draft)[two.id].id, "summary", "It rains.\nNobody minds.")
    write_once(book, "card", book.cards(draft)[two.id].id, "leaves", "wet")
    head, *rows = outline_table(book)
    assert head == (
        *("Code", "Part", "Chapter", "Number", "Title", "First words", "Summary"),
        *("Comes in with", "Leaves with", "Needed for", "Words"),
    )
    rain = "It rained on the well-known pier at Côte-Vieille and nobody minded."
    assert rows[1] == (
        *(two.code, "PART ONE", "Chapter 1: The ferry", 2, "", rain),
        *("It rains.\nNobody minds.", "", "wet", "", 14),
    )
    assert [(row[0], row[3], row[4], row[10]) for row in rows] == [
        (one.code, 1, "", 25),
        (two.code, 2, "", 14),
        (three.code, 3, "Third step", 18),
    ]


def test_what_only_some_books_have_stands_in_columns_of_its_own(book: BookFile, draft: str) -> None:
    one, two, _ = book.division(draft).scenes
    mark_presence(book, [one.id], "Ottla Brenn", "viewpoint")
    mark_presence(book, [one.id], "The keeper", "on page")
    mark_presence(book, [one.id], "Brenn the elder", "mentioned")
    mark_setting(book, [two.id], "The pier")
    head, *rows = outline_table(book)
    assert head[11:] == ("Viewpoint", "People", "Place")
    assert rows[0][11:] == ("Ottla Brenn", "The keeper; Brenn the elder", "")
    assert rows[1][11:] == ("", "", "The pier")
    made: Arrangement = set_intent(book, "", [two.code], "rewrite")
    card = next(card for card in seen(book, made.id).cards() if card.code == two.code)
    write_once(book, "next", card.id, "what", "It snows.")
    head, *rows = outline_table(book)
    assert head[14:] == ("Intent", "Next: what shall happen")
    assert [row[14:] for row in rows] == [("", ""), ("rewrite", "It snows."), ("", "")]
    retitle_scene(book, two.id, "Snow")
    assert outline_table(book)[2][4] == "Snow"
