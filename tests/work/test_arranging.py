"""Arrangements in an open book: made by the first act, changed by every act as one edit, taken back whole."""

from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

import pytest

from afterdraft.desk.arrangement import Arrangement
from afterdraft.errors import Missing, NotPossible
from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.work.cards.add_card import add_card
from afterdraft.work.cards.arranging import DRAFT, Spot, seen
from afterdraft.work.cards.change_rows import add_row, move_row, remove_row, retitle_row
from afterdraft.work.cards.join_cards import join_cards, take_apart
from afterdraft.work.cards.lay_by_codes import lay_by_codes
from afterdraft.work.cards.move_cards import move_cards
from afterdraft.work.cards.set_aside import bring_back, set_aside
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cards.split_card import split_card
from afterdraft.work.cards.try_arrangement import give_up, rename_arrangement, take_up, try_arrangement
from afterdraft.work.cards.write_next import write_next
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.write_field import write_field, write_once
from tests.store.sample import desk_dump, redo, undo


@pytest.fixture
def codes(book: BookFile, draft: str) -> list[str]:
    """Of the three scenes: two in the first chapter, one in the second."""
    return [scene.code for scene in book.division(draft).scenes]


@pytest.fixture
def rows(book: BookFile, draft: str) -> list[str]:
    """Ids of the draft's chapters."""
    return [chapter.id for chapter in book.division(draft).chapters]


def lying(arrangement: Arrangement) -> list[list[str]]:
    """Codes by row, those set aside last."""
    lines = [row.cards for row in arrangement.rows] + [arrangement.aside]
    return [[card.code for card in line] for line in lines]


def name(book: BookFile) -> str:
    top = book.edits().undo
    return top.name if top else ""


def test_the_first_act_makes_the_arrangement_in_the_same_edit(
    book: BookFile, codes: list[str], rows: list[str]
) -> None:
    one, two, three = codes
    before = desk_dump(book)
    assert (seen(book, "").id, lying(seen(book, ""))) == ("", [[one, two], [three], []])
    moved = move_cards(book, "", [one], Spot(rows[1], before=three))
    assert lying(moved) == [[two], [one, three], []]
    assert (seen(book, ""), moved.name, name(book)) == (
        book.arrangements(moved.draft)[0],
        "Next draft",
        "Move “The ferry wasn’t late; Ottla Brenn was early…” to Chapter 2",
    )
    assert lying(seen(book, DRAFT)) == [[one, two], [three], []]
    undo(book)
    assert (desk_dump(book), book.edits().undo) == (before, None)
    redo(book)
    assert lying(seen(book, "")) == [[two], [one, three], []]


def test_an_act_that_changes_nothing_makes_no_arrangement(book: BookFile, codes: list[str], rows: list[str]) -> None:
    before = desk_dump(book)
    move_cards(book, "", [codes[1]], Spot(rows[0], after=codes[0]))
    set_intent(book, "", codes, None)
    lay_by_codes(book, "", f"{codes[0]} {codes[1]}\n{codes[2]}", stay=False)
    assert (desk_dump(book), book.edits().undo) == (before, None)


def test_several_cards_move_at_once_in_their_order(book: BookFile, codes: list[str], rows: list[str]) -> None:
    one, two, three = codes
    assert lying(move_cards(book, "", [two, one], Spot(rows[1], after=three))) == [[], [three, one, two], []]
    assert name(book) == "Move 2 cards to Chapter 2"


def test_cards_are_set_aside_and_come_back_to_their_places(book: BookFile, codes: list[str]) -> None:
    one, two, three = codes
    assert lying(set_aside(book, "", [one, three])) == [[two], [], [one, three]]
    assert name(book) == "Set 2 cards aside"
    stands = desk_dump(book)
    set_aside(book, "", [one])  # there already
    assert desk_dump(book) == stands
    assert lying(bring_back(book, "", [one])) == [[one, two], [], [three]]
    assert lying(bring_back(book, "", [three])) == [[one, two], [three], []]
    assert name(book) == "Bring “Third step” back"


def test_a_new_card_has_a_code_of_its_own(book: BookFile, codes: list[str], rows: list[str]) -> None:
    made = add_card(book, "", Spot(rows[0], after=codes[0]), title=" The\r\nweir ", what="She falls in.\r\n")
    assert (made.title, made.next.what, made.intent, made.scenes) == ("The weir", "She falls in.\n", "new", ())
    assert lying(seen(book, ""))[0] == [codes[0], made.code, codes[1]]
    assert name(book) == "New card “The weir” in Chapter 1: The ferry"
    set_aside(book, "", [made.code])
    assert lying(bring_back(book, "", [made.code]))[1] == [codes[2], made.code]


def test_joined_cards_keep_what_is_fastened_to_them(book: BookFile, codes: list[str], rows: list[str]) -> None:
    made = add_card(book, "", Spot(rows[0]), title="The weir")
    with book._reading() as db:
        assert db.execute("SELECT count(*) FROM desk_laid").fetchone() == (4,)
    write_note(book, "Cold?")
    book.edit("Fasten", lambda desk: desk._db.execute("UPDATE desk_note SET laid = ?", (made.id,)))  # type: ignore[attr-defined]
    joined = join_cards(book, "", [made.code, codes[0], codes[1]])
    assert lying(joined) == [[codes[0]], [codes[2]], []]
    whole = joined.rows[0].cards[0]
    assert (whole.title, len(whole.scenes), whole.intent) == ("The weir", 2, "new")
    with book._reading() as db:
        assert db.execute("SELECT laid FROM desk_note").fetchall() == [(whole.id,)]
    assert name(book) == "Join 3 cards"
    assert lying(take_apart(book, "", codes[0])) == [[codes[0], codes[1]], [codes[2]], []]
    assert book.check() == ()


def test_the_pieces_of_a_split_card_have_codes_of_their_own(book: BookFile, codes: list[str]) -> None:
    first, piece = split_card(book, "", codes[2]).rows[1].cards
    assert (first.code, first.scenes, {first.intent, piece.intent}) == (codes[2], piece.scenes, {"split"})
    assert piece.code not in codes
    assert name(book) == "Split “Third step” in two"
    whole = join_cards(book, "", [first.code, piece.code]).rows[1].cards
    assert [card.code for card in whole] == [codes[2]]


def test_the_scenes_own_code_survives_whichever_piece_lies_first(
    book: BookFile, codes: list[str], rows: list[str]
) -> None:
    _, piece = split_card(book, "", codes[2]).rows[1].cards
    move_cards(book, "", [piece.code], Spot(rows[0], before=codes[0]))
    whole = join_cards(book, "", [codes[2], piece.code])
    assert lying(whole) == [[codes[2], codes[0], codes[1]], [], []]


def test_intents(book: BookFile, codes: list[str]) -> None:
    set_intent(book, "", codes[:2], "cut")
    assert [card.intent for card in seen(book, "").cards()] == ["cut", "cut", None]
    assert name(book) == "Intent for 2 cards: cut"
    set_intent(book, "", [codes[0]], None)
    assert [card.intent for card in seen(book, "").cards()] == [None, "cut", None]


def test_chapters_of_the_arrangement(book: BookFile, codes: list[str], rows: list[str]) -> None:
    made = add_row(book, "", title=" Frost ", before=rows[1]).rows[1]
    assert (made.title, name(book)) == ("Frost", "New chapter “Frost”")
    assert [row.title for row in move_row(book, "", made.id).rows] == ["", "", "Frost"]
    assert retitle_row(book, "", rows[0], "Ice").rows[0].title == "Ice"
    assert name(book) == "Call “Chapter 1: The ferry” “Ice”"
    with pytest.raises(NotPossible, match="There are cards in this chapter"):
        remove_row(book, "", rows[0])
    assert len(remove_row(book, "", made.id).rows) == 2
    assert name(book) == "Take “Frost” out"


def test_cards_are_laid_as_their_codes_are_typed(book: BookFile, codes: list[str]) -> None:
    one, two, three = codes
    assert lying(lay_by_codes(book, "", f"{three} | {one.lower()}", stay=False)) == [[three], [one], [two]]
    assert name(book) == "Lay the cards by their codes"
    before = desk_dump(book)
    with pytest.raises(NotPossible) as told:
        lay_by_codes(book, "", f"{one} X99 {one}\nX88", stay=True)
    assert str(told.value) == (
        f"No card has the codes X99, X88. There more than once: the code {one}. Nothing was changed."
    )
    assert desk_dump(book) == before


def test_arrangements_are_tried_named_given_up_and_taken_up(book: BookFile, draft: str, codes: list[str]) -> None:
    first = set_intent(book, "", [codes[0]], "cut")
    write_field(book, "next", first.cards()[1].id, "what", "It snows.", revision=1, client="w", sequence=1, done=True)
    assert name(book) == "“What shall happen” of “It rained on the well-known pier at…”"
    other = try_arrangement(book, first.id, "Frost first")
    assert (other.cards()[0].intent, other.cards()[1].next.what, other.cards()[1].code) == (
        "cut",
        "It snows.",
        codes[1],
    )
    assert seen(book, "").id == other.id
    assert try_arrangement(book, "").name == "Next draft 2"
    assert try_arrangement(book, DRAFT).cards()[0].intent is None
    rename_arrangement(book, other.id, " Ice\nfirst ")
    give_up(book, other.id, "Too cold.")
    given = next(one for one in book.arrangements(draft) if one.id == other.id)
    assert (given.name, given.given_up, given.why) == ("Ice first", True, "Too cold.")
    with pytest.raises(NotPossible, match="was given up"):
        set_aside(book, other.id, [codes[0]])
    take_up(book, other.id)
    assert lying(set_aside(book, other.id, [codes[0]]))[-1] == [codes[0]]
    with pytest.raises(NotPossible, match="An arrangement needs a name"):
        rename_arrangement(book, other.id, " ")


def test_words_on_the_next_side_make_the_arrangement(book: BookFile, codes: list[str]) -> None:
    before = desk_dump(book)

    def write(text: str, revision: int, sequence: int, *, done: bool) -> int:
        return write_next(
            book, codes[0], "what", text, revision=revision, client="w", sequence=sequence, done=done
        ).revision

    assert write("", 0, 1, done=True) == 0
    assert desk_dump(book) == before
    revision = write("It sn", 0, 2, done=False)
    assert write("It snows.", revision, 3, done=True) > revision
    card = seen(book, "").cards()[0]
    assert (card.code, card.next.what) == (codes[0], "It snows.")
    assert name(book) == "“What shall happen” of “The ferry wasn’t late; Ottla Brenn was early…”"
    undo(book)
    assert desk_dump(book) == before


def test_twenty_mixed_edits_are_taken_back_one_by_one_after_reopening(
    book: BookFile, codes: list[str], rows: list[str], tmp_path: Path
) -> None:
    one, two, three = codes
    acts: list[Callable[[], object]] = [
        lambda: set_intent(book, "", [one], "cut"),
        lambda: move_cards(book, "", [one], Spot(rows[1], before=three)),
        lambda: add_card(book, "", Spot(rows[0]), title="The weir"),
        lambda: split_card(book, "", two),
        lambda: set_aside(book, "", [three, one]),
        lambda: add_row(book, "", title="Frost"),
        lambda: bring_back(book, "", [one]),
        lambda: join_cards(book, "", [one, two]),
        lambda: write_note(book, "Why is she early?"),
        lambda: try_arrangement(book, seen(book, "").id, "Frost first"),
        lambda: lay_by_codes(book, "", f"{three}\n{one}", stay=False),
        lambda: take_apart(book, "", one),
        lambda: write_once(book, "next", seen(book, "").cards()[0].id, "what", "It snows."),
        lambda: write_once(book, "next", seen(book, "").cards()[0].id, "people", "Ottla"),
        lambda: move_row(book, "", rows[0]),
        lambda: retitle_row(book, "", rows[0], "Ice"),
        lambda: give_up(book, seen(book, "").id, "Too cold."),
        lambda: set_intent(book, "", [one], "rewrite"),
        lambda: join_scenes(book, book.division(seen(book, "").draft).scenes[1].id),
        lambda: split_scene(book, seen(book, "").draft, 4),
    ]
    states = [desk_dump(book)]
    for act in acts:
        act()
        states.append(desk_dump(book))
    assert all(before != after for before, after in pairwise(states))
    book.close()
    again = open_book(Path(book.path), backups=tmp_path / "backups")
    with again:
        for state in reversed(states[:-1]):
            undo(again)
            assert desk_dump(again) == state
        assert again.edits().undo is None
        for state in states[1:]:
            redo(again)
            assert desk_dump(again) == state
        assert again.check() == ()


def test_what_is_gone_is_told(book: BookFile, codes: list[str], rows: list[str]) -> None:
    before = desk_dump(book)
    acts: tuple[Callable[[], object], ...] = (
        lambda: move_cards(book, "", ["Z11"], Spot(rows[0])),
        lambda: move_cards(book, "", [codes[0]], Spot("ch0000000000")),
        lambda: move_cards(book, "", [codes[0]], Spot(rows[1], after=codes[1])),
        lambda: set_aside(book, "ar0000000000", [codes[0]]),
        lambda: try_arrangement(book, "ar0000000000"),
        lambda: seen(book, "ar0000000000"),
    )
    for act in acts:
        with pytest.raises(Missing):
            act()
    with pytest.raises(NotPossible, match="No card was chosen"):
        set_aside(book, "", [])
    assert desk_dump(book) == before
