"""Filters of the Cards screen: which cards match, alone and together; only what tells cards apart is offered."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from afterdraft.desk.anchor import Passage
from afterdraft.store.book import BookFile
from afterdraft.web.filters import Filters, filters
from afterdraft.web.laid import table
from afterdraft.web.view import view
from afterdraft.work.cards.add_card import add_card
from afterdraft.work.cards.arranging import Spot
from afterdraft.work.cards.join_cards import join_cards
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.lines.add_line import add_line
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.notes.change_note import set_note_state
from afterdraft.work.notes.guard_passage import guard_passage
from afterdraft.work.notes.mix_ink import mix_ink
from afterdraft.work.notes.write_note import write_note
from tests.store.sample import begun


@pytest.fixture
def book(tmp_path: Path) -> Iterator[BookFile]:
    book, _ = begun(tmp_path)
    yield book
    book.close()


def asked(book: BookFile, **wanted: str) -> Filters:
    seen = view(book)
    return filters(seen, table(seen, ""), wanted)


def scenes(book: BookFile) -> tuple[list[str], list[str]]:
    """Ids and codes."""
    found = [scene.scene for scene in view(book).outline.scenes]
    return [one.id for one in found], [one.code for one in found]


def choices(found: Filters) -> dict[str, list[str]]:
    return {one.kind: [f"{choice.label} {choice.count}" for choice in one.choices] for one in found.filters}


def test_with_nothing_to_tell_cards_apart_nothing_is_offered(book: BookFile) -> None:
    found = asked(book, intent="keep", person="pe123")
    assert (found.filters, found.on, found.query) == ((), False, "")
    assert found.matching == frozenset(scenes(book)[1])


def test_one_filter_and_several_together(book: BookFile) -> None:
    ids, codes = scenes(book)
    ottla = add_known(book, "person", "Ottla")
    keeper = add_known(book, "person", "The keeper")
    add_known(book, "person", "Nobody")
    mark_presence(book, ids[:2], "Ottla", "viewpoint")
    mark_presence(book, ids[:1], "The keeper", "on page")
    mark_presence(book, ids[2:], "The keeper", "mentioned")
    water = add_line(book, "thread", "The water")
    mark_point(book, "thread", "The water", "opens", scenes=ids[1:])
    set_intent(book, "", [codes[0]], "rewrite")
    found = asked(book)
    assert choices(found) == {
        "intent": ["Rewrite 1", "No intent 2"],
        "viewpoint": ["Ottla 2"],
        "person": ["Ottla 2", "The keeper 1"],
        "thread": ["T: The water 2"],
    }
    assert not found.on
    assert asked(book, viewpoint=ottla).matching == {codes[0], codes[1]}
    assert asked(book, person=keeper).matching == {codes[0]}
    assert asked(book, thread=water).matching == {codes[1], codes[2]}
    assert asked(book, intent="none").matching == {codes[1], codes[2]}
    both = asked(book, person=ottla, thread=water)
    assert both.matching == {codes[1]}
    assert both.query == f"&person={ottla}&thread={water}"
    assert asked(book, person=keeper, thread=water).matching == frozenset()


def test_inks_of_notes_and_guarded_passages(book: BookFile) -> None:
    ids, codes = scenes(book)
    motive = mix_ink(book, "Motive")
    write_note(book, "Why now?", scene=ids[1], ink=motive)
    dropped = write_note(book, "Never mind.", scene=ids[2], ink=motive)
    write_note(book, "In pencil.", scene=ids[0])
    set_note_state(book, dropped.id, "dropped")
    guard_passage(book, view(book).draft.id, [Passage(9, 0, 12)])
    assert asked(book, ink=motive).matching == {codes[1]}
    assert asked(book, guarded="yes").matching == {codes[2]}
    assert choices(asked(book)) == {"ink": ["M: Motive 1"], "guarded": ["A passage is guarded 1"]}


def test_a_value_that_is_not_known_dims_nothing(book: BookFile) -> None:
    _, codes = scenes(book)
    set_intent(book, "", [codes[0]], "cut")
    found = asked(book, intent="<b>", thread="ln999")
    assert (found.on, found.matching) == (False, frozenset(codes))


def test_joined_cards_have_what_each_scene_has_and_new_ones_their_own(book: BookFile) -> None:
    ids, codes = scenes(book)
    ottla = add_known(book, "person", "Ottla")
    mark_presence(book, ids[1:2], "Ottla", "on page")
    join_cards(book, "", codes[:2])
    made = add_card(book, "", Spot(table(view(book), "").rows[0].row.id), title="The weir")
    assert asked(book, person=ottla).matching == {codes[0]}
    assert asked(book, intent="new").matching == {made.code}
