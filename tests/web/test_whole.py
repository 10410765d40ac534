"""The book by its cards as screens show it: units and what they are made of, first and last lines, arrangements beside
the draft's own order, codes typed in."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from afterdraft.store.book import BookFile
from afterdraft.web.laid import table
from afterdraft.web.pages.arrangements import ArrangementsPage, arrangements_page
from afterdraft.web.pages.codes import TOLD, CodesPage, as_they_lie, codes_page
from afterdraft.web.pages.edges import edges_of
from afterdraft.web.pages.whole import whole_page
from afterdraft.web.view import BookView, view
from afterdraft.work.cards.add_card import add_card
from afterdraft.work.cards.arranging import Spot
from afterdraft.work.cards.join_cards import join_cards
from afterdraft.work.cards.lay_by_codes import lay_by_codes, trouble
from afterdraft.work.cards.move_cards import move_cards
from afterdraft.work.cards.set_aside import set_aside
from afterdraft.work.cards.split_card import split_card
from afterdraft.work.cards.try_arrangement import give_up, try_arrangement
from afterdraft.work.cards.write_unit import write_unit
from afterdraft.work.split.make_chapter import unmake_part
from afterdraft.work.write_field import write_once
from tests.store.sample import TEXTS, begun


@pytest.fixture
def book(tmp_path: Path) -> Iterator[BookFile]:
    book, _ = begun(tmp_path)
    yield book
    book.close()


def codes(book: BookFile) -> list[str]:
    return [scene.scene.code for scene in view(book).outline.scenes]


def chapters(book: BookFile) -> list[str]:
    return [chapter.chapter.id for chapter in view(book).outline.chapters]


def test_each_unit_stands_beside_what_it_is_made_of(book: BookFile) -> None:
    seen = view(book)
    first = next(iter(seen.cards.values()))
    write_once(book, "card", first.id, "summary", "She is early.")
    write_unit(book, "chapter", chapters(book)[1], "wants", "To  count.", revision=0, client="", sequence=1, done=True)
    page = whole_page(view(book), frozenset())
    assert [(unit.kind, unit.name, unit.gist) for unit in page.units] == [
        ("part", "PART ONE", ""),
        ("chapter", "Chapter 1: The ferry", ""),
        ("chapter", "Chapter 2", "To count."),
    ]
    part, one, two = page.units
    assert [(piece.name, piece.part) for piece in page.whole.pieces] == [
        ("PART ONE", True),
        ("Chapter 1: The ferry", False),
        ("Chapter 2", False),
    ]
    assert [piece.path for piece in part.pieces] == [f"#u-{one.id}", f"#u-{two.id}"]
    assert [(piece.code, piece.summary) for piece in one.pieces] == [
        (codes(book)[0], "She is early."),
        (codes(book)[1], ""),
    ]
    assert page.whole.words == one.words + two.words


def test_without_parts_the_book_is_made_of_chapters(book: BookFile) -> None:
    seen = view(book)
    unmake_part(book, seen.draft.id, seen.outline.parts[0].part.id)
    page = whole_page(view(book), frozenset())
    assert [piece.name for piece in page.whole.pieces] == ["Chapter 1: The ferry", "Chapter 2"]


def edge_texts(seen: BookView, by: str, show: str) -> list[tuple[str | None, str | None]]:
    found = edges_of(seen, "scene" if by == "scene" else "chapter", "sentence" if show == "sentence" else "paragraph")
    return [
        (edge.first.block.text if edge.first else None, edge.last.block.text if edge.last else None) for edge in found
    ]


def test_first_and_last_lines_of_chapters_and_scenes(book: BookFile) -> None:
    seen = view(book)
    assert edge_texts(seen, "chapter", "paragraph") == [(TEXTS[3], TEXTS[7]), (TEXTS[9], TEXTS[10])]
    assert edge_texts(seen, "scene", "paragraph")[:2] == [(TEXTS[3], TEXTS[4]), (TEXTS[6], TEXTS[7])]
    found = edges_of(seen, "chapter", "sentence")
    assert next((edge.first.code, edge.last.code) for edge in found if edge.first and edge.last) == (
        codes(book)[0],
        codes(book)[1],
    )
    assert [edge.part for edge in found] == ["PART ONE", ""]
    assert found[0].first is not None
    assert found[0].first.block.runs == seen.book.blocks(seen.draft.id, 3, 4)[0].runs


def test_only_the_paragraphs_shown_are_read(book: BookFile, monkeypatch: pytest.MonkeyPatch) -> None:
    asked: list[int] = []
    whole = BookFile.blocks_at

    def counted(self: BookFile, draft: str, paragraphs: list[int]) -> object:
        asked.extend(paragraphs)
        return whole(self, draft, paragraphs)

    monkeypatch.setattr(BookFile, "blocks_at", counted)
    seen = view(book)
    monkeypatch.setattr(BookFile, "blocks", None)
    edges_of(seen, "chapter", "sentence")
    assert asked == [3, 7, 9, 10]


def side(page: ArrangementsPage, column: int) -> list[str]:
    """Chapters and cards of a column, with what is said of them."""
    lines = []
    for line in page.lines:
        for cell in line.cells[column]:
            lines.append(f"{cell.name}" + (f" ({cell.said.words})" if cell.said else ""))
            lines += [f"  {card.code}" + "".join(f" ({one.words})" for one in card.said) for card in cell.cards]
    return lines


def test_what_differs_is_said_in_words(book: BookFile) -> None:
    one, two, three = codes(book)
    first, second = chapters(book)
    move_cards(book, "", [one], Spot(second))
    made = add_card(book, "", Spot(first, first=True), title="The weir")
    (arrangement,) = book.arrangements(view(book).draft.id)
    page = arrangements_page(view(book), frozenset())
    assert [column.name for column in page.columns] == ["The draft’s own order", "Next draft"]
    assert page.columns[1].told == ("1 moved", "1 new")
    assert side(page, 0) == ["Chapter 1: The ferry", f"  {one}", f"  {two}", "Chapter 2", f"  {three}"]
    assert side(page, 1) == [
        "Chapter 1: The ferry",
        f"  {made.code} (new)",
        f"  {two}",
        "Chapter 2",
        f"  {three}",
        f"  {one} (moved from Chapter 1: The ferry)",
    ]
    set_aside(book, arrangement.id, [two])
    split_card(book, arrangement.id, three)
    page = arrangements_page(view(book), frozenset())
    assert [(card.code, [said.words for said in card.said]) for card in page.aside[1]] == [
        (two, ["from Chapter 1: The ferry"])
    ]
    assert page.columns[1].told == ("1 moved", "1 new", "2 split", "1 set aside")


def test_joined_cards_name_their_scenes(book: BookFile) -> None:
    one, two, _ = codes(book)
    join_cards(book, "", [one, two])
    page = arrangements_page(view(book), frozenset())
    assert side(page, 1)[1] == f"  {one} (joined of {one} and {two})"


def test_those_given_up_are_shown_when_asked_for(book: BookFile) -> None:
    kept, lost = try_arrangement(book, "draft", "Kept"), try_arrangement(book, "draft", "Lost")
    give_up(book, lost.id, "Too slow.")
    seen = view(book)
    assert [column.id for column in arrangements_page(seen, frozenset()).columns] == ["draft", kept.id]
    both = arrangements_page(seen, frozenset((kept.id, lost.id)))
    assert [(column.id, column.given_up) for column in both.columns[1:]] == [(kept.id, False), (lost.id, True)]


def test_without_arrangements_there_is_the_drafts_own_order(book: BookFile) -> None:
    page = arrangements_page(view(book), frozenset())
    assert (len(page.columns), page.known) == (1, ())


def typed(book: BookFile, words: str, *, stay: bool = False) -> CodesPage:
    seen = view(book)
    return codes_page(seen, table(seen, ""), words, stay=stay)


def test_codes_that_are_not_right_are_named_with_their_places(book: BookFile) -> None:
    one, two, three = codes(book)
    page = typed(book, f"{one.lower()}, {three[:-1]}\n{two} 00 {one}")
    assert [(found.code, found.places) for found in page.unknown] == [(three[:-1], ((1, 2),)), ("00", ((2, 2),))]
    assert three in page.unknown[0].meant
    assert page.unknown[1].meant == ()
    assert [(found.code, found.places) for found in page.twice] == [(one, ((1, 1), (2, 3)))]
    assert [sheet.code for sheet in page.missing] == [three]
    assert page.laid is None


def test_a_whole_manuscript_pasted_in_is_counted_not_listed(book: BookFile) -> None:
    words = " ".join(f"no{n}" for n in range(40_000))
    page = typed(book, f"{words}\n{words}")
    assert page.typed is not None
    assert len(page.typed.unknown) == 40_000
    assert len(page.unknown) == TOLD
    assert page.unknown[0].places == ((1, 1), (2, 1))
    assert trouble(page.typed).startswith("No card has the codes NO0, NO1, ")
    assert "NO11 and 39,988 more." in trouble(page.typed)


def test_how_the_cards_would_lie_is_shown_before(book: BookFile) -> None:
    one, two, three = codes(book)
    before = book.edits()
    page = typed(book, f"{two}\n{one}")
    assert page.laid is not None
    assert [[sheet.code for sheet in row.sheets] for row in page.laid.rows] == [[two], [one]]
    assert [sheet.code for sheet in page.laid.aside] == [three]
    staying = typed(book, f"{two}\n{one}", stay=True)
    assert staying.laid is not None
    assert sorted(sheet.code for row in staying.laid.rows for sheet in row.sheets) == sorted(codes(book))
    more = typed(book, f"{two}\n{one}\n{three}")
    assert more.laid is not None
    assert [row.name for row in more.laid.rows][2] == "New chapter"
    assert book.edits() == before


@pytest.mark.parametrize("empty", [False, True])
def test_the_codes_as_they_lie_change_nothing(book: BookFile, empty: bool) -> None:
    one, two, _ = codes(book)
    made = try_arrangement(book, "draft")
    if empty:
        move_cards(book, made.id, [one, two], Spot(chapters(book)[1]))
    shown = table(view(book), "").arrangement
    assert lay_by_codes(book, shown.id, as_they_lie(shown), stay=False) == shown
