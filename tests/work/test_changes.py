"""Planned changes: made straight and from notes, with places, in an order, each act one edit that can be taken back."""

from collections.abc import Callable

import pytest

from afterdraft.errors import EditRefused, Missing, NotPossible
from afterdraft.store.book import BookFile
from afterdraft.work.cards.add_card import add_card
from afterdraft.work.cards.arranging import Spot, seen
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.plan.change_places import add_places, add_words, remove_place, tick_place
from afterdraft.work.plan.order_changes import move_change, remove_change, set_when, step_change
from afterdraft.work.plan.plan_change import plan_change, plan_from_note
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.retitle import retitle_scene
from afterdraft.work.write_field import write_once
from tests.store.sample import desk_dump, redo, undo


def codes(book: BookFile, draft: str) -> list[str]:
    return [scene.code for scene in book.division(draft).scenes]


def ids(book: BookFile, draft: str) -> list[str]:
    return [scene.id for scene in book.division(draft).scenes]


def test_a_change_is_planned_straight(book: BookFile) -> None:
    made = plan_change(book, " Ottla knows too soon.\r\n", decide="She learns it at the lock.", when="if time")
    (change,) = book.changes()
    assert (change.id, change.wrong, change.decide, change.when, change.work, change.places) == (
        made,
        "Ottla knows too soon.",
        "She learns it at the lock.",
        "if time",
        "",
        (),
    )
    assert not change.done
    assert undo(book) == "Plan “Ottla knows too soon.”"
    assert book.changes() == ()


def test_without_words_there_is_no_change(book: BookFile) -> None:
    with pytest.raises(NotPossible, match="some words"):
        plan_change(book, " \n")
    assert book.changes() == ()


def test_a_note_becomes_a_change_once(book: BookFile, draft: str) -> None:
    scene = ids(book, draft)[1]
    note = write_note(book, "Why does nobody mind the rain?", scene=scene)
    made = plan_from_note(book, note.id)
    change = book.change(made)
    assert (change.wrong, change.note) == ("Why does nobody mind the rain?", note.id)
    assert [place.scene for place in change.places] == [scene]
    assert plan_from_note(book, note.id) == made
    assert len(book.changes()) == 1
    loose = write_note(book, "More weather.")
    assert book.change(plan_from_note(book, loose.id)).places == ()


def test_places_by_code_by_title_by_first_words_several_at_once(book: BookFile, draft: str) -> None:
    _, two, three = codes(book, draft)
    retitle_scene(book, ids(book, draft)[0], "Early, and late")
    made = plan_change(book, "The rain.")
    add_places(book, made, f"early, and late; {two.lower()}\n third ST")
    assert [place.scene for place in book.change(made).places] == ids(book, draft)
    assert undo(book) == "3 places for “The rain.”"
    add_places(book, made, f"{three}, {three}, it rained on the well")
    assert [place.scene for place in book.change(made).places] == [ids(book, draft)[2], ids(book, draft)[1]]
    before = book.edits()
    add_places(book, made, three)  # it is there already
    assert book.edits() == before
    assert [change.id for change in book.changes(scene=ids(book, draft)[1])] == [made]
    assert book.changes(scene=ids(book, draft)[0]) == ()


@pytest.mark.parametrize("typed", ["Z11", "the ferry man", "", " ; ,"])
def test_a_place_that_is_not_found_adds_nothing(book: BookFile, draft: str, typed: str) -> None:
    made = plan_change(book, "The rain.")
    with pytest.raises(NotPossible):
        add_places(book, made, f"{codes(book, draft)[0]}, {typed}" if "Z" in typed else typed)
    assert book.change(made).places == ()


def test_a_planned_card_without_a_scene_and_mere_words_are_places(book: BookFile, draft: str) -> None:
    row = seen(book, "").rows[0].id
    add_card(book, "", Spot(row), title="The lock at night")
    new = next(card for card in seen(book, "").cards() if not card.scenes)
    made = plan_change(book, "Nobody sleeps.")
    add_places(book, made, new.code)
    add_words(book, made, " every  letter ")
    assert [(place.scene, place.laid, place.words) for place in book.change(made).places] == [
        (None, new.id, ""),
        (None, None, "every letter"),
    ]


def test_places_are_ticked_off_and_the_change_is_done_when_all_are(book: BookFile, draft: str) -> None:
    made = plan_change(book, "The rain.", scene=ids(book, draft)[0])
    add_places(book, made, codes(book, draft)[1])
    first, second = book.change(made).places
    assert not tick_place(book, made, first.id, done=True).done
    assert tick_place(book, made, second.id, done=True).done
    assert undo(book).startswith("Tick off “It rained")
    assert not book.change(made).done
    redo(book)
    assert not tick_place(book, made, first.id, done=False).done
    remove_place(book, made, first.id)
    assert book.change(made).done


def test_the_order_within_a_group_and_from_group_to_group(book: BookFile) -> None:
    one, two, three = (plan_change(book, name) for name in ("One", "Two", "Three"))

    def order() -> list[tuple[str, str]]:
        return [(change.wrong, change.when) for change in book.changes()]

    step_change(book, three, by=-1)
    assert order() == [("One", "must"), ("Three", "must"), ("Two", "must")]
    before = book.edits()
    step_change(book, one, by=-1)
    set_when(book, two, "must")
    move_change(book, three, when="must", before=two)
    assert book.edits() == before  # they stand so already
    set_when(book, one, "later")
    move_change(book, two, when="later", before=one)
    assert [name for name, when in order() if when == "later"] == ["Two", "One"]
    with pytest.raises(Missing):
        move_change(book, two, when="must", before=one)


def test_a_change_is_removed_with_its_places_and_comes_back_whole(book: BookFile, draft: str) -> None:
    made = plan_change(book, "The rain.", scene=ids(book, draft)[0])
    write_once(book, "change", made, "work", "a morning")
    write_once(book, "change place", book.change(made).places[0].id, "words", "dry")
    whole = desk_dump(book)
    remove_change(book, made)
    assert book.changes() == ()
    assert undo(book) == "Remove “The rain.” from the plan"
    assert desk_dump(book) == whole
    assert (book.change(made).work, book.change(made).places[0].words) == ("a morning", "dry")


def test_places_follow_a_scene_that_is_joined(book: BookFile, draft: str) -> None:
    first, second, _ = ids(book, draft)
    made = plan_change(book, "The rain.", scene=second)
    join_scenes(book, second)
    assert [place.scene for place in book.change(made).places] == [first]


@pytest.mark.parametrize(
    "act",
    [
        lambda book: add_places(book, "cggone", "x"),
        lambda book: add_words(book, "cggone", "x"),
        lambda book: tick_place(book, "cggone", "cpgone", done=True),
        lambda book: remove_place(book, plan_change(book, "One"), "cpgone"),
        lambda book: set_when(book, "cggone", "later"),
        lambda book: step_change(book, "cggone", by=1),
        lambda book: remove_change(book, "cggone"),
        lambda book: plan_from_note(book, "ntgone"),
        lambda book: plan_change(book, "One", scene="scgone"),
    ],
)
def test_what_is_gone_is_told(book: BookFile, act: Callable[[BookFile], object]) -> None:
    with pytest.raises(EditRefused):
        act(book)
