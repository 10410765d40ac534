"""What became of a scene, as she says: links made and denied, with what went over; cards carried by one key."""

import pytest

from afterdraft.errors import NotPossible
from afterdraft.store.book import BookFile
from afterdraft.work.cards.carry_card import carry_card, carry_cards
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.set_scene_time import set_scene_time
from afterdraft.work.drafts.compared import Compared, compared
from afterdraft.work.drafts.say_fate import confirm_fates, say_apart, say_gone, say_lives_on
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.notes.find_passage import find_passage
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.write_field import write_once
from tests.store.sample import desk_dump, undo
from tests.work.test_next_draft import FERRY, HOUSE, LOCK, NEW, PIER, book, bring, scenes

__all__ = ["book"]


def now(book: BookFile) -> Compared:
    first, second = book.drafts()
    return compared(book, first.id, second.id, part_way=second.part_way)


def became(book: BookFile, scene: str) -> str:
    return now(book).fates[scene].became


def test_what_is_confirmed_stays_as_it_was_found(book: BookFile) -> None:
    bring(book, [FERRY], [LOCK, HOUSE])
    first, second = (draft.id for draft in book.drafts())
    pier = scenes(book, 0)[1]
    confirm_fates(book, [pier])
    assert book.said_of(first, second).became == {pier: ""}
    assert became(book, pier) == "cut"
    with pytest.raises(NotPossible):
        confirm_fates(book, [])


def test_a_scene_told_anew_takes_over_what_was_on_the_old_one(book: BookFile) -> None:
    add_known(book, "person", "Ottla")
    pier = scenes(book)[1]
    mark_presence(book, [pier], "Ottla", "viewpoint")
    mark_point(book, "thread", "Lamps", "opens", scenes=[pier])
    set_scene_time(book, pier, "Noon")
    note = write_note(book, "Too quick.", scene=pier)
    bring(book, [FERRY], [LOCK, HOUSE, NEW])
    second = book.drafts()[1].id
    new = scenes(book)[3]
    assert became(book, pier) == "cut"
    before = desk_dump(book)
    say_lives_on(book, pier, new)
    assert (now(book).pieces[pier], became(book, new)) == ((new,), "rewritten")
    assert book.note(note.id).scene == new
    assert [one.scene for one in book.present(second)] == [new]
    assert [point.scene for point in book.lines(second)[0].points] == [new]
    assert book.scene_times(second) == {new: "Noon"}
    say_apart(book, pier, new)
    assert (became(book, pier), became(book, new)) == ("cut", "new")
    assert book.note(note.id).scene == pier
    assert book.present(second) == ()
    assert book.lines(second)[0].points == ()
    assert book.scene_times(second) == {}
    undo(book)
    undo(book)
    assert desk_dump(book) == before
    assert book.check() == ()


def test_a_scene_that_was_found_and_is_said_to_be_cut_gives_back_its_notes(book: BookFile) -> None:
    ferry = scenes(book)[0]
    first = book.drafts()[0].id
    note = write_note(book, "Too quick.", scene=ferry)
    mark_point(book, "thread", "Lamps", "opens", scenes=[ferry], passages=find_passage(book, ferry, "the lamps"))
    bring(book, [FERRY, PIER], [LOCK, NEW])
    second = book.drafts()[1].id
    say_gone(book, ferry, "cut", new=second)
    assert (became(book, ferry), became(book, scenes(book)[0])) == ("cut", "new")
    assert book.note(note.id).scene == ferry
    assert [len(book.lines(draft)[0].points) for draft in (first, second)] == [1, 0]
    say_gone(book, ferry, "not reached", new=second)
    assert became(book, ferry) == "not reached"


def test_scenes_of_one_draft_cannot_be_linked(book: BookFile) -> None:
    bring(book, [FERRY, PIER], [LOCK, NEW])
    with pytest.raises(NotPossible, match="one draft"):
        say_lives_on(book, *scenes(book)[:2])


def test_a_card_is_carried_word_for_word_and_beside_what_is_written(book: BookFile) -> None:
    first = book.drafts()[0].id
    ferry, pier, *_ = scenes(book)
    for scene, text in ((ferry, "She counts the lamps."), (pier, "She buys a lantern.")):
        write_once(book, "card", book.cards(first)[scene].id, "summary", text)
    write_once(book, "card", book.cards(first)[ferry].id, "leaves", "A number.")
    bring(book, [[*FERRY, *PIER]], [LOCK, HOUSE])
    second = book.drafts()[1].id
    joined, lock, _ = scenes(book)
    sources = now(book).sources[joined]
    assert set(sources) == {ferry, pier}
    card = book.cards(second)[joined]
    write_once(book, "card", card.id, "leaves", "Cold.")
    carry_card(book, joined, [ferry, pier])
    assert (book.card(card.id).summary, book.card(card.id).leaves) == (
        "She counts the lamps.\nShe buys a lantern.",
        "Cold.",
    )
    assert book.kept_cards() == {card.id: (ferry, pier)}
    assert undo(book).startswith("Carry the card of")
    assert book.kept_cards() == {}
    with pytest.raises(NotPossible, match="no words"):
        carry_card(book, lock, now(book).sources[lock])


def test_many_cards_are_carried_at_once_but_none_that_is_written(book: BookFile) -> None:
    first = book.drafts()[0].id
    ids = scenes(book)
    for scene in ids:
        write_once(book, "card", book.cards(first)[scene].id, "summary", f"Of {ids.index(scene)}.")
    bring(book, [FERRY, PIER], [LOCK, NEW])
    second = book.drafts()[1].id
    write_once(book, "card", book.cards(second)[scenes(book)[0]].id, "summary", "Anew.")
    assert carry_cards(book, {scene: now(book).sources[scene] for scene in scenes(book)[:3]}) == 2
    assert [book.cards(second)[scene].summary for scene in scenes(book)] == ["Anew.", "Of 1.", "Of 2.", ""]
