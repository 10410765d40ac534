"""Any run of edits keeps a division sound, and each act does what its name says."""

from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.errors import EditRefused, NotPossible
from afterdraft.manuscript import editing
from afterdraft.manuscript.division import Chapter, Division, Matter, Part, Role, Scene

#  0 title page · 1 part · 2 heading 3 story 4 story · 5 mark 6 story · 7 heading 8 head 9 story 10 story · 11 notes
ROLES: tuple[Role, ...] = (
    "matter", "heading",
    "heading", "story", "story",
    "mark", "story",
    "heading", "head", "story", "story",
    "matter",
)  # fmt: skip
BOOK = Division(
    parts=(Part("p1", 1, "PART ONE"),),
    chapters=(Chapter("c1", 2, "p1", "chapter", 1, "The Ferry"), Chapter("c2", 7, "p1", "chapter", 2, "The Weir")),
    scenes=(Scene("s1", 2, began="heading"), Scene("s2", 5, began="mark"), Scene("s3", 7, began="heading")),
    matter=(Matter("m1", 0, "front", "title page"), Matter("m2", 11, "back", "other")),
    roles=ROLES,
)


def test_the_book_of_these_tests_is_sound() -> None:
    assert editing.problems(BOOK, 12) == ()


def test_join_takes_the_scene_away_and_keeps_the_mark() -> None:
    joined = editing.join_scene(BOOK, "s2")
    assert [scene.id for scene in joined.scenes] == ["s1", "s3"]
    assert joined.roles == ROLES


def test_joining_the_first_scene_of_a_chapter_makes_its_heading_text() -> None:
    joined = editing.join_scene(BOOK, "s3")
    assert [chapter.id for chapter in joined.chapters] == ["c1"]
    assert joined.roles[7:11] == ("story",) * 4


def test_the_first_scene_cannot_be_joined() -> None:
    with pytest.raises(NotPossible, match="no scene directly before"):
        editing.join_scene(BOOK, "s1")


def test_a_split_takes_the_marks_above_with_it() -> None:
    joined = editing.join_scene(BOOK, "s2")
    again = editing.split_scene(joined, 6, "new")
    assert again.scenes[1] == Scene("new", 5, began="mark")


@pytest.mark.parametrize(("paragraph", "why"), [(3, "no text above"), (0, "not in a scene"), (8, "no text above")])
def test_a_split_where_nothing_can_be_split(paragraph: int, why: str) -> None:
    with pytest.raises(NotPossible, match=why):
        editing.split_scene(BOOK, paragraph, "new")


def test_a_chapter_made_in_mid_scene() -> None:
    made = editing.make_chapter(BOOK, 4, "Chapter Three: The Bell", "c9", "s9")
    assert made.chapters[1] == Chapter("c9", 4, "p1", "chapter", 3, "The Bell")
    assert made.scenes[1] == Scene("s9", 4, began="heading")
    assert made.roles[4] == "heading"


def test_a_chapter_made_where_a_scene_begins_keeps_the_scene() -> None:
    made = editing.make_chapter(BOOK, 6, "Prologue", "c9", "s9")
    assert (made.chapters[1].at, made.chapters[1].kind) == (5, "prologue")
    assert [scene.id for scene in made.scenes] == ["s1", "s2", "s3"]


def test_a_chapter_made_out_of_front_matter() -> None:
    made = editing.make_chapter(BOOK, 11, "Epilogue", "c9", "s9")
    assert made.chapters[-1] == Chapter("c9", 11, "p1", "epilogue", None, "")
    assert [matter.id for matter in made.matter] == ["m1"]


def test_unmaking_a_chapter_leaves_its_heading_on_the_scene() -> None:
    unmade = editing.unmake_chapter(BOOK, "c2")
    assert [chapter.id for chapter in unmade.chapters] == ["c1"]
    assert unmade.scenes[2] == Scene("s3", 7, began="heading", title="The Weir")
    assert editing.make_chapter(unmade, 7, "2. The Weir", "c2", "-").chapters == BOOK.chapters


def test_a_scene_marked_as_back_matter_and_back_again() -> None:
    marked = editing.mark_matter(BOOK, 7, 11, where="back", kind="other", new_id="m9")
    assert [chapter.id for chapter in marked.chapters] == ["c1"]
    assert [matter.id for matter in marked.matter] == ["m1", "m9", "m2"]
    again = editing.unmark_matter(marked, "m9", chapter_id="c9", scene_id="s9")
    assert again.chapters[-1] == Chapter("c9", 7, "p1", "other", None, "")
    assert editing.make_chapter(again, 7, "2: The Weir", "-", "-").chapters[-1].title == "The Weir"


def test_a_part_that_was_none() -> None:
    unmade = editing.unmake_part(BOOK, "p1")
    assert unmade.roles[1] == "matter"
    assert {chapter.part for chapter in unmade.chapters} == {None}


def test_a_mark_made_and_unmade() -> None:
    split = editing.split_scene(BOOK, 10, "s9")
    marked = editing.mark_mark(editing.join_scene(split, "s9"), 10, "s9")
    assert marked.roles[10] == "mark"
    assert len(marked.scenes) == 3  # nothing below it, so no empty scene
    unmarked = editing.unmark_mark(BOOK, 5)
    assert [scene.id for scene in unmarked.scenes] == ["s1", "s3"]
    assert editing.mark_mark(unmarked, 5, "s2") == BOOK


def test_titles() -> None:
    book = editing.retitle_part(
        editing.retitle_chapter(editing.retitle_scene(BOOK, "s2", "Low water"), "c1", ""), "p1", "I"
    )
    assert (book.scenes[1].title, book.chapters[0].title, book.parts[0].title) == ("Low water", "", "I")


Edit = Callable[[Division, int, int, str], Division]


def _scene(division: Division, number: int) -> str:
    return division.scenes[number % len(division.scenes)].id


EDITS: dict[str, Edit] = {
    "join": lambda d, a, b, new: editing.join_scene(d, _scene(d, a)),
    "split": lambda d, a, b, new: editing.split_scene(d, a, new),
    "make": lambda d, a, b, new: editing.make_chapter(d, a, "Chapter 7", f"c{new}", new),
    "unmake": lambda d, a, b, new: editing.unmake_chapter(d, d.chapters[a % len(d.chapters)].id),
    "unpart": lambda d, a, b, new: editing.unmake_part(d, "p1"),
    "matter": lambda d, a, b, new: editing.mark_matter(d, a, b, where="front", kind="other", new_id=new),
    "unmatter": lambda d, a, b, new: editing.unmark_matter(
        d,
        [*d.matter, Matter("none", 0, "front", "other")][a % (len(d.matter) + 1)].id,
        chapter_id=f"c{new}",
        scene_id=new,
    ),
    "mark": lambda d, a, b, new: editing.mark_mark(d, a, new),
    "unmark": lambda d, a, b, new: editing.unmark_mark(d, a),
}
ACTS = st.lists(st.tuples(st.sampled_from(sorted(EDITS)), st.integers(-1, 12), st.integers(-1, 13)), max_size=12)


@given(ACTS)
def test_any_run_of_edits_keeps_a_division_sound(acts: list[tuple[str, int, int]]) -> None:
    division = BOOK
    for step, (act, first, second) in enumerate(acts):
        try:
            division = EDITS[act](division, first, second, f"n{step}")
        except EditRefused:
            continue
        assert editing.problems(division, 12) == ()


@given(ACTS, st.integers(0, 11))
def test_a_join_undoes_a_split(acts: list[tuple[str, int, int]], paragraph: int) -> None:
    division = BOOK
    for step, (act, first, second) in enumerate(acts):
        try:
            division = EDITS[act](division, first, second, f"n{step}")
        except EditRefused:
            continue
    try:
        split = editing.split_scene(division, paragraph, "new")
    except EditRefused:
        return
    assert editing.join_scene(split, "new") == division


def test_a_part_that_is_a_chapter_takes_its_chapters_for_scenes() -> None:
    made = editing.part_to_chapter(BOOK, "p1", "new")
    assert editing.problems(made, 12) == ()
    assert made.parts == ()
    assert made.chapters == (Chapter("new", 1, None, "chapter", None, "PART ONE"),)
    assert [(scene.id, scene.at, scene.title) for scene in made.scenes] == [
        ("s1", 1, "The Ferry"),
        ("s2", 5, ""),
        ("s3", 7, "The Weir"),
    ]
    assert made.roles == ROLES


def test_a_part_without_a_chapter_right_under_it_is_no_chapter() -> None:
    bare = editing.part_to_chapter(BOOK, "p1", "new")
    with pytest.raises(EditRefused):
        editing.part_to_chapter(bare, "p1", "other")
