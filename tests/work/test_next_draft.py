"""The next draft: what is on the scenes goes on in those they became; the old outline stays as it was."""

from collections.abc import Sequence
from functools import cache
from pathlib import Path

import pytest

from afterdraft.errors import NotPossible
from afterdraft.formats.table import read
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.structure import structure
from afterdraft.store.book import BookFile
from afterdraft.store.opening import begin_book, open_book
from afterdraft.work.cards.set_intent import set_intent
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.carry import carry
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.mark_setting import mark_setting
from afterdraft.work.cast.set_scene_time import set_scene_time
from afterdraft.work.drafts.bring_draft import How, bring_draft
from afterdraft.work.drafts.compared import compared
from afterdraft.work.lines.link_scenes import link_scenes
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.lines.put_in_strand import put_in_strand
from afterdraft.work.notes.change_note import set_note_state
from afterdraft.work.notes.find_passage import find_passage
from afterdraft.work.notes.guard_passage import guard_passage
from afterdraft.work.notes.write_note import write_note, write_note_on_passage
from afterdraft.work.plan.change_places import add_places, tick_place
from afterdraft.work.plan.plan_change import plan_change
from afterdraft.work.split.join_scenes import join_scenes
from afterdraft.work.split.split_scene import split_scene
from afterdraft.work.write_field import write_once
from tests.kept import content, copy
from tests.store.sample import desk_dump, undo

FERRY = (
    "Ottla came down to the ferry before it was light and found the keeper asleep on a coil of rope.",
    "She counted the lamps along the far bank and wrote the number on the inside of her wrist.",
    "The keeper woke, and asked her what the number was for, and she told him it was for luck.",
)
PIER = (
    "It rained on the pier all through the week of the fair and nobody minded but the men with stalls.",
    "A boy sold her a paper lantern that had already been wet once and dried over a stove.",
)
LOCK = (
    "By noon the water stood at the third step and the lock gates had begun to sing under it.",
    "Her brother said that gates could not sing, and put his ear to the timber, and said nothing more.",
)
HOUSE = (
    "The house in Larder Street had eleven rooms and a smell of vinegar in ten of them.",
    "She slept in the eleventh, with her boots on, and dreamed of nothing that she could tell.",
)
NEW = (
    "At the customs shed they opened her trunk and lifted out the scales one weight at a time.",
    "The officer set them in a row, smallest first, and asked which of them was missing and why.",
)
Scenes = Sequence[Sequence[str]]


def manuscript(*chapters: Scenes) -> Draft:
    """Chapters of scenes of paragraphs."""
    text = "\n\n".join(
        f"Chapter {n}\n\n" + "\n\n* * *\n\n".join("\n\n".join(scene) for scene in scenes)
        for n, scenes in enumerate(chapters, start=1)
    )
    return structure(read(text.encode(), "draft.txt"))


FIRST = manuscript([FERRY, PIER], [LOCK, HOUSE])


@cache
def _kept() -> bytes:
    return content(
        lambda folder: begin_book(
            folder / "Ferry.afterdraft",
            title="Ferry",
            backups=folder / "backups",
            first=lambda book: bring_draft(book, FIRST, [("draft.txt", b"1")]),
        )[0]
    )


def ferry(folder: Path) -> BookFile:
    """A book of that draft at `folder`/Ferry.afterdraft, open."""
    return copy(_kept(), folder / "Ferry.afterdraft", backups=folder / "backups")


@pytest.fixture
def book(tmp_path: Path) -> BookFile:
    return ferry(tmp_path)


def bring(book: BookFile, *chapters: Scenes, how: How = "next") -> str:
    return bring_draft(book, manuscript(*chapters), [("draft.txt", b"2")], how)


def scenes(book: BookFile, draft: int = -1) -> list[str]:
    return [scene.id for scene in book.division(book.drafts()[draft].id).scenes]


def codes(book: BookFile, draft: int = -1) -> list[str]:
    return [scene.code for scene in book.division(book.drafts()[draft].id).scenes]


def test_a_scene_that_lives_on_keeps_its_code_wherever_it_goes(book: BookFile) -> None:
    ferry, pier, lock, house = codes(book)
    bring(book, [LOCK, FERRY], [NEW, PIER])
    now = codes(book)
    assert (now[0], now[1], now[3]) == (lock, ferry, pier)
    assert now[2] not in (ferry, pier, lock, house)
    assert codes(book, 0) == [ferry, pier, lock, house]
    assert book.check() == ()


def test_of_a_scene_that_was_split_the_longer_half_keeps_the_code(book: BookFile) -> None:
    ferry, *_ = codes(book)
    bring(book, [FERRY[:1], FERRY[1:], PIER], [LOCK, HOUSE])
    assert codes(book)[1] == ferry
    assert codes(book)[0] not in codes(book, 0)


def test_cards_are_blank_and_the_old_ones_stay(book: BookFile) -> None:
    first = book.drafts()[0].id
    card = book.cards(first)[scenes(book, 0)[0]]
    write_once(book, "card", card.id, "summary", "She counts the lamps.")
    second = bring(book, [FERRY, PIER], [LOCK, NEW])
    assert book.card(card.id).summary == "She counts the lamps."
    assert {card.summary for card in book.cards(second).values()} == {""}


def test_open_notes_go_over_and_those_that_are_done_stay(book: BookFile) -> None:
    ferry, pier, _lock, house = scenes(book)
    first = book.drafts()[0].id
    on_scene = write_note(book, "Too quick.", scene=pier)
    on_passage = write_note_on_passage(book, "Which?", draft=first, passages=find_passage(book, ferry, "the far bank"))
    gone = write_note(book, "Cut the vinegar.", scene=house)
    done = write_note(book, "A lamp too many.", scene=ferry)
    set_note_state(book, done.id, "done")
    changed = (FERRY[0], FERRY[1].replace("the far bank", "the nearer bank"), FERRY[2])
    bring(book, [LOCK, PIER], [changed])
    _lock2, pier2, ferry2 = scenes(book)
    assert book.note(on_scene.id).scene == pier2
    assert book.note(on_passage.id).scene == ferry2
    assert book.note(on_passage.id).passage == "changed"
    assert book.note(on_passage.id).then[0].quote == "the far bank"
    assert book.note(done.id).scene == ferry
    assert book.note(gone.id).scene == house
    assert [(one.note, one.scene) for one in book.notes_then(first)] == [(on_scene.id, pier), (on_passage.id, ferry)]


def test_a_passage_that_moved_into_another_scene_takes_its_note_along(book: BookFile) -> None:
    ferry, *_ = scenes(book)
    note = write_note_on_passage(book, "Keep.", draft=book.drafts()[0].id, passages=find_passage(book, ferry, FERRY[1]))
    bring(book, [[FERRY[0], FERRY[2]], PIER], [[*LOCK, FERRY[1]], HOUSE])
    assert book.note(note.id).scene == scenes(book)[2]
    assert book.note(note.id).passage == "there"


def test_a_note_that_went_on_stays_there_when_the_split_of_the_old_draft_is_mended(book: BookFile) -> None:
    ferry, *_ = scenes(book)
    first = book.drafts()[0].id
    passages = find_passage(book, ferry, "what the number was for")
    note = write_note_on_passage(book, "Why luck?", draft=first, passages=passages)
    bring(book, [FERRY, PIER], [LOCK, [*HOUSE, "Then it was day."]])
    split_scene(book, first, passages[0].paragraph)
    assert book.note(note.id).scene == scenes(book)[0]
    assert book.check() == ()


def test_a_passage_that_is_gone_is_told_and_its_note_stays_on_the_scene(book: BookFile) -> None:
    ferry, *_ = scenes(book)
    note = write_note_on_passage(book, "Keep.", draft=book.drafts()[0].id, passages=find_passage(book, ferry, FERRY[1]))
    bring(book, [[FERRY[0], FERRY[2]], PIER], [LOCK, HOUSE])
    assert book.note(note.id).scene == scenes(book)[0]
    assert book.note(note.id).anchors == ()
    assert book.note(note.id).passage == "gone"


def test_marks_follow(book: BookFile) -> None:
    ferry, pier, lock, house = scenes(book)
    first = book.drafts()[0].id
    ottla, keeper = (add_known(book, "person", name) for name in ("Ottla", "Keeper"))
    place = add_known(book, "place", "The pier")
    mark_presence(book, [ferry], "Ottla", "viewpoint")
    mark_presence(book, [ferry], "Keeper", "on page")
    mark_setting(book, [pier], "The pier")
    mark_point(book, "thread", "Lamps", "opens", scenes=[ferry], passages=find_passage(book, ferry, "wrote the number"))
    mark_point(book, "thread", "Lamps", "closes", scenes=[house])
    put_in_strand(book, [pier], "Then")
    link_scenes(book, lock, source=pier, why="The rain.")
    carry(book, pier, "Ottla", comes_in="", leaves="a lantern")
    set_scene_time(book, lock, "Noon")
    guard_passage(book, first, find_passage(book, lock, "put his ear to the timber"))
    bring(book, [PIER], [LOCK, FERRY])
    second = book.drafts()[1].id
    pier2, lock2, ferry2 = scenes(book)
    assert [(one.scene, one.person, one.how) for one in book.present(second)] == [
        (ferry2, ottla, "viewpoint"),
        (ferry2, keeper, "on page"),
    ]
    assert [(one.scene, one.place) for one in book.settings(second)] == [(pier2, place)]
    (line,) = book.lines(second)
    assert [(point.does, point.scene, point.anchors[0].quote) for point in line.points] == [
        ("opens", ferry2, "wrote the number")
    ]
    assert [one.scenes for one in book.strands(second)] == [(pier2,)]
    assert [(one.scene, one.source, one.why) for one in book.follows(second)] == [(lock2, pier2, "The rain.")]
    assert [(one.scene, one.leaves) for one in book.carried(second)] == [(pier2, "a lantern")]
    assert book.scene_times(second) == {lock2: "Noon"}
    assert [one.anchors[0].quote for one in book.guarded(second)] == ["put his ear to the timber"]
    assert len(book.lines(first)[0].points) == 2
    assert book.check() == ()


def test_places_of_changes_go_over_and_a_tick_holds_for_both(book: BookFile) -> None:
    change = plan_change(book, "Slow.", decide="Cut the lamps.")
    add_places(book, change, ", ".join(codes(book)[:2]))
    bring(book, [FERRY], [LOCK, HOUSE])
    first, second = (draft.id for draft in book.drafts())
    (here,) = book.changes()
    assert [(place.scene, place.words) for place in here.places] == [(scenes(book)[0], ""), (None, codes(book, 0)[1])]
    (then,) = book.changes(draft=first)
    tick_place(book, change, then.places[0].id, done=True)
    assert [place.done for place in book.changes(draft=second)[0].places] == [True, False]


def test_bringing_a_draft_in_is_one_edit_that_can_be_taken_back(book: BookFile) -> None:
    write_note(book, "Too quick.", scene=scenes(book)[1])
    before = desk_dump(book)
    bring(book, [LOCK, FERRY], [NEW, PIER])
    assert undo(book) == "Bring in draft 2"
    after = desk_dump(book)
    assert len(book.drafts()) == 1
    hidden = {"desk_draft", "desk_scene", "desk_chapter", "desk_part", "desk_matter", "desk_role", "desk_card"}
    assert {name: rows for name, rows in after.items() if name not in hidden} == {
        name: rows for name, rows in before.items() if name not in hidden
    }


def test_in_a_part_way_draft_what_is_not_reached_is_not_cut(book: BookFile) -> None:
    bring(book, [FERRY], how="part-way")
    first, second = (draft.id for draft in book.drafts())
    assert book.drafts()[1].part_way
    found = compared(book, first, second, part_way=True)
    assert [fate.became for fate in found.found.scenes] == ["same", "not reached", "not reached", "not reached"]


def test_the_whole_draft_takes_the_place_of_a_part_of_it(book: BookFile) -> None:
    ferry, pier, lock, house = codes(book)
    note = write_note(book, "Too quick.", scene=scenes(book)[2])
    bring(book, [FERRY, PIER], how="part-way")
    part = book.drafts()[1].id
    card = book.cards(part)[scenes(book)[0]]
    write_once(book, "card", card.id, "summary", "Anew.")
    bring(book, [FERRY, NEW, PIER], [LOCK, HOUSE])
    assert [(draft.number, draft.part_way) for draft in book.drafts()] == [(1, False), (2, False)]
    now = codes(book)
    assert (now[0], now[2], now[3], now[4]) == (ferry, pier, lock, house)
    assert book.card(card.id).scene == scenes(book)[0]
    assert book.card(card.id).summary == "Anew."
    assert book.note(note.id).scene == scenes(book)[3]
    assert [one.number for one in book.all_drafts()] == [1, None, 2]
    assert book.check() == ()
    assert undo(book) == "Bring draft 2 in again"
    assert book.drafts()[1].id == part
    assert book.check() == ()


def test_the_same_draft_again_keeps_everything_where_it_is(book: BookFile) -> None:
    ids, known = scenes(book), codes(book)
    first = book.drafts()[0].id
    note = write_note_on_passage(
        book, "Which?", draft=first, passages=find_passage(book, ids[0], "wrote the number on the inside")
    )
    set_intent(book, "", [known[0]], "rewrite")
    mended = (FERRY[0], FERRY[1].replace("lamps", "lanterns"), FERRY[2])
    again = bring(book, [mended, PIER], [LOCK, HOUSE], how="again")
    assert [draft.number for draft in book.drafts()] == [1]
    assert scenes(book) == ids
    assert codes(book) == known
    (anchor,) = book.note(note.id).anchors
    assert (anchor.draft, anchor.quote) == (again, "wrote the number on the inside")
    assert book.note(note.id).then == ()
    (arrangement,) = book.arrangements(again)
    assert arrangement.rows[0].cards[0].intent == "rewrite"
    assert book.check() == ()
    assert undo(book) == "Bring draft 1 in again"
    assert scenes(book) == ids
    assert book.note(note.id).anchors[0].draft == first
    assert book.check() == ()


def test_the_same_words_again_are_refused(book: BookFile) -> None:
    with pytest.raises(NotPossible, match="word for word"):
        bring(book, [FERRY, PIER], [LOCK, HOUSE], how="again")


def test_an_older_draft_is_put_in_behind(book: BookFile) -> None:
    ferry, _pier, _lock, house = codes(book)
    older = bring(book, [FERRY, NEW], [HOUSE], how="older")
    assert [draft.id == older for draft in book.drafts()] == [True, False]
    assert book.facts().draft == book.drafts()[1]
    now = codes(book, 0)
    assert (now[0], now[2]) == (ferry, house)
    assert undo(book) == "Put an older draft in behind"
    assert len(book.drafts()) == 1


def test_ten_drafts_open_again_and_are_whole(book: BookFile, tmp_path: Path) -> None:
    orders: list[Scenes] = [(LOCK, FERRY, PIER), (FERRY, PIER, LOCK, HOUSE)]
    first = codes(book)
    for n in range(9):
        bring(book, orders[n % 2])
    assert codes(book)[:2] in ([first[0], first[1]], [first[2], first[0]])
    book.close()
    with open_book(tmp_path / "Ferry.afterdraft", backups=tmp_path / "backups") as again:
        assert len(again.drafts()) == 10
        assert again.check() == ()


def test_a_card_that_went_comes_back_even_where_a_draft_came_in_since(book: BookFile) -> None:
    write_once(book, "card", book.cards(book.drafts()[0].id)[scenes(book)[3]].id, "summary", "Vinegar.")
    join_scenes(book, scenes(book)[3])
    bring(book, [FERRY], [NEW])
    assert undo(book) == "Bring in draft 2"
    undo(book)
    assert book.cards(book.drafts()[0].id)[scenes(book)[3]].summary == "Vinegar."
    assert book.check() == ()
