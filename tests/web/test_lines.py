"""What runs through the book as screens show it: marks by scene, the lists, the pages' contexts."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from afterdraft.desk.anchor import Passage
from afterdraft.store.book import BookFile
from afterdraft.web.foreedge import fore_edge
from afterdraft.web.lines import PATTERNS, lists, marks
from afterdraft.web.pages.people import people_page
from afterdraft.web.pages.threads import threads_page
from afterdraft.web.prose import Stretch
from afterdraft.web.scene_lines import carries, scene_lines, with_lines
from afterdraft.web.view import BookView, view
from afterdraft.work.cards.add_card import add_card
from afterdraft.work.cards.arranging import DRAFT, Spot
from afterdraft.work.cards.try_arrangement import try_arrangement
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.carry import carry
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.mark_setting import mark_setting
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.lines.add_line import add_line
from afterdraft.work.lines.link_scenes import link_scenes
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.lines.put_in_strand import put_in_strand
from afterdraft.work.split.mark_matter import mark_matter
from tests.store import sample
from tests.store.sample import begun


@pytest.fixture
def book(tmp_path: Path) -> Iterator[BookFile]:
    book, _ = begun(tmp_path)
    yield book
    book.close()


@pytest.fixture
def seen(book: BookFile) -> BookView:
    return view(book)


def ids(seen: BookView) -> list[str]:
    return [scene.scene.id for scene in seen.outline.scenes]


def test_marks_of_a_scene_are_threads_then_setups_then_reveals(book: BookFile, seen: BookView) -> None:
    one, two, _ = ids(seen)
    mark_point(book, "reveal", "The lock is empty", "learns", scenes=[one], who="Ottla")
    mark_point(book, "reveal", "The lock is empty", "learns", scenes=[one])
    mark_point(book, "setup", "The third step", "setup", scenes=[one])
    mark_point(book, "thread", "The flood", "opens", scenes=[one, two])
    mark_point(book, "thread", "The flood", "opens", scenes=[one], passages=[Passage(3, 0, 3)])
    found = marks(book, seen.draft.id)
    assert [(mark.shape, mark.letter, mark.words) for mark in found[one]] == [
        ("opens", "T", "The flood: opens"),  # once, though it is marked on the scene and on words of it
        ("setup", "T", "The third step: setup"),
        ("learns", "T", "The lock is empty: The reader learns it"),
        ("learns-person", "T", "The lock is empty: Ottla learns it"),
    ]
    assert len(found[two]) == 1
    assert set(found) == {one, two}


def test_threads_have_patterns_of_their_own_until_these_begin_again(book: BookFile, seen: BookView) -> None:
    for n in range(PATTERNS + 1):
        mark_point(book, "thread", f"Thread {n}", "opens", scenes=ids(seen)[:1])
    patterns = [mark.pattern for mark in marks(book, seen.draft.id)[ids(seen)[0]]]
    assert patterns == [*range(PATTERNS), 0]
    assert len({line.letter for line in lists(book, seen.draft.id).threads}) == PATTERNS + 1


def test_what_stands_beside_a_scenes_card(book: BookFile, seen: BookView) -> None:
    one, two, three = ids(seen)
    mark_point(book, "setup", "Late", "setup", scenes=[one], passages=[Passage(3, 4, 9), Passage(4, 0, 7)])
    put_in_strand(book, [one], "Then")
    link_scenes(book, one, source=three, why="The step.")
    link_scenes(book, two, source=one)
    mark_presence(book, [one], "Ottla", "viewpoint")
    mark_setting(book, [one], "The lock")
    carry(book, one, "Ottla", comes_in="a cold", leaves="")
    beside = scene_lines(seen, seen.outline.scenes[0])
    (here,) = beside.marks
    assert (here.quote, here.at) == ("ferry … “Door,”", 3)
    marked = with_lines({4: (Stretch(0, 2, "noted"),)}, beside.marks, seen.draft.id)
    assert [(one.start, one.end, one.letter, one.ticked) for one in marked[3]] == [(4, 9, "L", False)]
    assert [(one.kind, one.ticked) for one in marked[4]] == [("noted", True), ("lined", True)]
    assert beside.strand and beside.strand.name == "Then"
    assert [(link.name, link.why, link.told) for link in beside.sources] == [("Third step", "The step.", "told later")]
    assert [(link.code, link.told) for link in beside.results] == [(seen.outline.scenes[1].scene.code, "")]
    assert [(one.person.name, one.how) for one in beside.people] == [("Ottla", "viewpoint")]
    assert [place.name for place in beside.places] == ["The lock"]
    assert [held.carried.comes_in for held in beside.carries] == ["a cold"]
    assert beside.viewpoints == 1
    assert len(beside.scenes) == 2
    empty = scene_lines(seen, seen.outline.scenes[2])
    assert not (empty.marks or empty.strand or empty.people or empty.places or empty.carries)


def test_the_page_of_threads_says_where_lines_run_and_how_they_stand(book: BookFile, seen: BookView) -> None:
    one, _, three = ids(seen)
    mark_point(book, "setup", "The third step", "setup", scenes=[one])
    mark_point(book, "setup", "The third step", "return", scenes=[three])
    add_line(book, "reveal", "The lock is empty")
    link_scenes(book, one, source=three)
    page = threads_page(seen, fore_edge(seen))
    rows = {kind: group for kind, _, _, group in page.groups}
    (row,) = rows["setup"]
    assert (row.scenes, row.standing) == (2, "set up, no payoff marked yet")
    assert row.reach and 0 < row.reach[0] < row.reach[1] < 100
    assert [point.path for point in row.points] == [f"scenes/{seen.outline.scenes[n].scene.code}" for n in (0, 2)]
    assert [row.standing for row in rows["reveal"]] == ["nobody learns it yet"]
    assert [row.later for row in page.links] == [True]
    assert not page.empty


def test_a_mark_whose_scene_became_front_matter_is_still_listed(book: BookFile, seen: BookView) -> None:
    mark_point(book, "thread", "The flood", "opens", scenes=ids(seen)[:1])
    mark_matter(book, seen.draft.id, 2, 5, where="front")
    page = threads_page(view(book), None)
    (row,) = page.groups[0][3]
    assert [(point.name, point.x) for point in row.points] == [("in no scene any more", None)]
    assert row.reach is None


def test_a_planned_card_without_a_scene_is_marked_too(book: BookFile, seen: BookView) -> None:
    arrangement = try_arrangement(book, DRAFT)
    laid = add_card(book, arrangement.id, Spot(arrangement.rows[0].id), title="The night before")
    mark_point(book, "setup", "The third step", "setup", laid=[laid.id])
    assert [mark.words for mark in marks(book, seen.draft.id)[laid.id]] == ["The third step: setup"]
    (row_of_setup,) = threads_page(seen, fore_edge(seen)).groups[1][3]
    (point,) = row_of_setup.points
    assert (point.name, point.code, point.path) == (
        "The night before",
        laid.code,
        f"cards/{laid.code}?a={arrangement.id}",
    )
    assert point.x is None


def test_people_with_their_scenes_and_what_goes_with_them(book: BookFile, seen: BookView) -> None:
    one, two, _ = ids(seen)
    mark_presence(book, [one], "Ottla", "viewpoint")
    mark_presence(book, [two], "Ottla", "mentioned")
    carry(book, one, "Ottla", comes_in="a cold", leaves="")
    mark_point(book, "reveal", "The lock is empty", "learns", scenes=[two], who="Ottla")
    add_known(book, "person", "OTTLA", all_the_same=True)
    page = people_page(seen)
    (_, _, _, cast), (_, _, _, places) = page.groups
    ottla, other = cast
    assert [(how, len(scenes)) for how, scenes in ottla.scenes] == [("Viewpoint", 1), ("Mentioned", 1)]
    assert (ottla.count, len(ottla.carried), len(ottla.learns), ottla.namesakes) == (2, 1, 1, 1)
    assert ottla.goes_with == "2 marks in scenes, 1 mark of what they learn, 1 card where they carry something"
    assert (other.count, other.goes_with) == (0, "")
    assert places == ()


def test_what_goes_with_a_person_or_a_line_is_counted_in_all_drafts(book: BookFile, seen: BookView) -> None:
    one = ids(seen)[0]
    mark_presence(book, [one], "Ottla", "viewpoint")
    mark_setting(book, [one], "The lock")
    mark_point(book, "reveal", "The lock is empty", "learns", scenes=[one], who="Ottla")
    bring_draft(book, sample.draft(tuple(f"{text} Again." for text in sample.TEXTS)), [sample.ORIGINAL])
    now = view(book)
    (_, _, _, (ottla,)), (_, _, _, (lock,)) = people_page(now).groups
    assert (ottla.count, ottla.goes_with) == (1, "2 marks in scenes, 2 marks of what they learn")
    assert (lock.count, lock.goes_with) == (1, "2 marks in scenes")
    (row,) = threads_page(now, fore_edge(now)).groups[2][3]
    assert (len(row.points), row.marks, row.standing) == (1, 2, "not marked yet where the reader learns it")


def test_what_people_carry_by_scene(book: BookFile, seen: BookView) -> None:
    one, two, _ = ids(seen)
    carry(book, one, "Ottla", comes_in="a cold", leaves="")
    carry(book, one, "The keeper", comes_in="", leaves="the door")
    assert [held.person.name for held in carries(seen)[one]] == ["Ottla", "The keeper"]
    assert two not in carries(seen)
