"""Threads, setups, reveals, strands, what follows from what: marked, taken off; each act is one edit, undone whole."""

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from afterdraft.desk.anchor import Passage
from afterdraft.desk.lines import DOES, Line
from afterdraft.errors import Missing, NotPossible
from afterdraft.store.book import BookFile
from afterdraft.work.lines.add_line import add_line, add_strand
from afterdraft.work.lines.letter_line import letter_line
from afterdraft.work.lines.link_scenes import link_scenes, unlink_scenes
from afterdraft.work.lines.mark_point import mark_point, unmark_point
from afterdraft.work.lines.put_in_strand import put_in_strand
from afterdraft.work.lines.remove_line import remove_line, remove_strand
from afterdraft.work.reorder import reorder
from afterdraft.work.write_field import write_once
from tests.store.sample import desk_dump, redo, undo


@pytest.fixture
def scenes(book: BookFile, draft: str) -> list[str]:
    return [scene.id for scene in book.division(draft).scenes]


def only(book: BookFile, draft: str) -> Line:
    (line,) = book.lines(draft)
    return line


def test_a_thread_is_typed_in_place_then_found_by_its_name(book: BookFile, draft: str, scenes: list[str]) -> None:
    mark_point(book, "thread", "The flood", "opens", scenes=scenes[:1])
    mark_point(book, "thread", " the  FLOOD ", "carries", scenes=scenes[1:])
    line = only(book, draft)
    assert (line.kind, line.name, line.letter) == ("thread", "The flood", "T")
    assert [(point.does, point.scene) for point in line.points] == [
        ("opens", scenes[0]),
        ("carries", scenes[1]),
        ("carries", scenes[2]),
    ]
    assert undo(book) == "“the FLOOD” is carried in 2 scenes"
    assert len(only(book, draft).points) == 1
    undo(book)
    assert book.lines(draft) == ()
    redo(book)
    assert only(book, draft).points[0].does == "opens"


def test_the_same_mark_is_made_once(book: BookFile, draft: str, scenes: list[str]) -> None:
    first = mark_point(book, "setup", "Third step", "setup", scenes=scenes)
    top = book.edits().undo
    assert mark_point(book, "setup", "Third step", "setup", scenes=scenes) == first
    assert book.edits().undo == top


def test_points_stand_in_telling_order_whenever_they_were_marked(book: BookFile, draft: str, scenes: list[str]) -> None:
    for scene, does in ((scenes[2], "payoff"), (scenes[0], "return"), (scenes[0], "setup")):
        mark_point(book, "setup", "The door", does, scenes=[scene])  # type: ignore[arg-type]
    assert [point.does for point in only(book, draft).points] == ["setup", "return", "payoff"]


def test_a_point_on_words_over_two_paragraphs(book: BookFile, draft: str, scenes: list[str]) -> None:
    passages = [Passage(3, 4, 9), Passage(4, 0, 6)]
    mark_point(book, "setup", "Late", "setup", scenes=[scenes[0]], passages=passages)
    (point,) = only(book, draft).points
    assert [anchor.quote for anchor in point.anchors] == ["ferry", "“Door,"]
    assert point.anchors[0].before == "The "
    undo(book)
    redo(book)
    assert only(book, draft).points == (point,)


@pytest.mark.parametrize("passage", [Passage(6, 0, 2), Passage(3, 5, 5), Passage(3, 0, 999), Passage(99, 0, 1)])
def test_words_that_are_not_in_the_scene_are_refused(
    book: BookFile, draft: str, scenes: list[str], passage: Passage
) -> None:
    before = desk_dump(book)
    with pytest.raises(NotPossible, match="not in the text of this scene"):
        mark_point(book, "setup", "Late", "setup", scenes=[scenes[0]], passages=[passage])
    assert desk_dump(book) == before


def test_a_reveal_has_the_reader_and_each_person(book: BookFile, draft: str, scenes: list[str]) -> None:
    for who, scene in (("", scenes[0]), ("The reader", scenes[0]), ("Ottla", scenes[1]), ("ottla", scenes[2])):
        mark_point(book, "reveal", "The lock is empty", "learns", scenes=[scene], who=who)
    (ottla,) = book.known("person")
    assert ottla.name == "Ottla"
    assert [(point.scene, point.person) for point in only(book, draft).points] == [
        (scenes[0], None),
        (scenes[1], ottla.id),
        (scenes[2], ottla.id),
    ]
    assert undo(book) == "Ottla learns “The lock is empty” in “Third step”"


def test_what_cannot_be_marked(book: BookFile, scenes: list[str]) -> None:
    for kind, name, does, where in (
        ("thread", "", "opens", scenes[:1]),
        ("thread", "A", "payoff", scenes[:1]),
        ("setup", "A", "setup", []),
    ):
        with pytest.raises(NotPossible):
            mark_point(book, kind, name, does, scenes=where)  # type: ignore[arg-type]
    with pytest.raises(Missing):
        mark_point(book, "thread", "A", "opens", scenes=["sc0"])


def test_a_mark_is_taken_off_with_its_passage(book: BookFile, draft: str, scenes: list[str]) -> None:
    (point,) = mark_point(book, "thread", "A", "opens", scenes=[scenes[0]], passages=[Passage(3, 0, 3)])
    line = only(book, draft).id
    with_mark = desk_dump(book)
    unmark_point(book, line, point)
    assert only(book, draft).points == ()
    assert desk_dump(book)["desk_anchor"] == []
    undo(book)
    assert desk_dump(book) == with_mark
    with pytest.raises(Missing):
        unmark_point(book, line, "pn0")


def test_a_line_goes_with_its_marks_and_comes_back_whole(book: BookFile, draft: str, scenes: list[str]) -> None:
    mark_point(book, "thread", "A", "opens", scenes=[scenes[0]], passages=[Passage(3, 0, 3)])
    mark_point(book, "thread", "A", "carries", scenes=scenes)
    before = desk_dump(book)
    remove_line(book, only(book, draft).id)
    after = desk_dump(book)
    assert not any(after[table] for table in ("desk_line", "desk_point", "desk_anchor"))
    assert undo(book) == "Remove the thread “A”"
    assert desk_dump(book) == before
    with pytest.raises(Missing):
        remove_line(book, "ln0")


def test_two_of_a_kind_have_two_names_but_a_setup_may_be_called_as_a_thread(book: BookFile, draft: str) -> None:
    add_line(book, "thread", "The flood")
    with pytest.raises(NotPossible, match="There is a thread called “the flood” already"):
        add_line(book, "thread", "the flood")
    add_line(book, "setup", "The flood")
    assert [line.letter for line in book.lines(draft)] == ["T", "T"]  # each its own among its kind
    with pytest.raises(NotPossible):
        add_line(book, "reveal", "  ")


def test_letters_are_changed_and_never_shared(book: BookFile, draft: str) -> None:
    one, two = add_line(book, "thread", "Ash"), add_line(book, "thread", "Bell")
    letter_line(book, "line", one, " z ")
    assert book.line(one).letter == "Z"
    with pytest.raises(NotPossible, match="The letter Z is that of “Ash”"):
        letter_line(book, "line", two, "Z")
    for wrong in ("", "ABC", "7"):
        with pytest.raises(NotPossible, match="one or two of A to Z"):
            letter_line(book, "line", two, wrong)
    strand = add_strand(book, "Zinc")
    letter_line(book, "strand", strand, "ZZ")
    assert book.strands(draft)[0].letter == "ZZ"
    with pytest.raises(Missing):
        letter_line(book, "line", "ln0", "Q")


def test_lines_are_ordered_within_their_kind(book: BookFile, draft: str) -> None:
    ids = [add_line(book, kind, name) for kind, name in (("thread", "A"), ("setup", "S"), ("thread", "B"))]  # type: ignore[arg-type]
    reorder(book, "line", ids[2], by=-1)
    assert [line.name for line in book.lines(draft) if line.kind == "thread"] == ["B", "A"]
    top = book.edits().undo
    reorder(book, "line", ids[2], by=-1)  # at the top already
    assert book.edits().undo == top
    undo(book)
    assert [line.name for line in book.lines(draft) if line.kind == "thread"] == ["A", "B"]


def test_a_line_is_renamed_like_any_field_but_not_left_nameless(book: BookFile) -> None:
    line = add_line(book, "thread", "Ash")
    write_once(book, "line", line, "name", "Elm")
    assert book.line(line).name == "Elm"
    with pytest.raises(NotPossible):
        write_once(book, "line", line, "name", " ")


def test_a_scene_is_in_one_strand(book: BookFile, draft: str, scenes: list[str]) -> None:
    put_in_strand(book, scenes, "Then")
    put_in_strand(book, scenes[1:2], "now")
    put_in_strand(book, scenes[2:], "")
    assert [(strand.name, strand.scenes) for strand in book.strands(draft)] == [
        ("Then", (scenes[0],)),
        ("now", (scenes[1],)),
    ]
    before = desk_dump(book)
    remove_strand(book, book.strands(draft)[0].id)
    assert [strand.name for strand in book.strands(draft)] == ["now"]
    undo(book)
    assert desk_dump(book) == before
    with pytest.raises(NotPossible):
        put_in_strand(book, [], "Then")
    with pytest.raises(NotPossible):
        add_strand(book, "THEN")


def test_a_scene_follows_from_others_told_before_or_after_but_not_from_itself(
    book: BookFile, draft: str, scenes: list[str]
) -> None:
    link = link_scenes(book, scenes[1], source=scenes[0], why=" The rain\nbegins. ")
    assert link_scenes(book, scenes[1], source=scenes[0], why="Another") == link
    link_scenes(book, scenes[1], source=scenes[2])
    assert [(one.scene, one.source, one.why) for one in book.follows(draft)] == [
        (scenes[1], scenes[0], "The rain begins."),
        (scenes[1], scenes[2], ""),
    ]
    write_once(book, "follows", link, "why", "The water rises.")
    with pytest.raises(NotPossible, match="cannot follow from itself"):
        link_scenes(book, scenes[1], source=scenes[1])
    unlink_scenes(book, draft, link)
    assert [one.source for one in book.follows(draft)] == [scenes[2]]
    with pytest.raises(Missing):
        unlink_scenes(book, draft, link)
    undo(book)
    assert book.follows(draft)[0].why == "The water rises."


kinds = st.sampled_from(list(DOES))


@given(st.data())
@settings(max_examples=25, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_undoing_every_mark_leaves_the_book_as_it_was(
    book: BookFile, draft: str, scenes: list[str], data: st.DataObject
) -> None:
    before = desk_dump(book)
    depth = book.edits().undo
    states = []
    for _ in range(data.draw(st.integers(1, 6))):
        kind = data.draw(kinds)
        does = data.draw(st.sampled_from(DOES[kind]))
        name = data.draw(st.sampled_from(["A", "B", "C"]))
        chosen = data.draw(st.lists(st.sampled_from(scenes), min_size=1, unique=True))
        was = desk_dump(book)
        mark_point(book, kind, name, does, scenes=chosen, who=data.draw(st.sampled_from(["", "Ottla"])))
        if desk_dump(book) != was:
            states.append(was)
    for was in reversed(states):
        undo(book)
        assert desk_dump(book) == was
    assert desk_dump(book) == before
    assert book.edits().undo == depth
