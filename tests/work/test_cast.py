"""Cast and places by hand: added, marked in scenes, joined, removed; each act one edit that can be undone."""

import pytest

from afterdraft.desk.anchor import Passage
from afterdraft.errors import Missing, NameTaken, NotPossible
from afterdraft.store.book import BookFile
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.carry import carry, put_down
from afterdraft.work.cast.join_known import join_known
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.cast.mark_setting import mark_setting
from afterdraft.work.cast.remove_known import remove_known
from afterdraft.work.lines.mark_point import mark_point
from afterdraft.work.reorder import reorder
from afterdraft.work.write_field import write_once
from tests.store.sample import desk_dump, undo


@pytest.fixture
def scenes(book: BookFile, draft: str) -> list[str]:
    return [scene.id for scene in book.division(draft).scenes]


def hows(book: BookFile, draft: str) -> list[tuple[str, str, str]]:
    names = {one.id: one.name for one in book.known("person")}
    scenes = [scene.id for scene in book.division(draft).scenes]
    return [(str(scenes.index(one.scene)), names[one.person], one.how) for one in book.present(draft)]


def test_a_person_is_added_with_other_names_a_note_and_a_mark(book: BookFile) -> None:
    ottla = add_known(book, "person", " Ottla  Brenn ")
    for field, text in (("aliases", "Miss Brenn\n\n the  Brenn girl "), ("note", "Early."), ("mark", "✣")):
        write_once(book, "person", ottla, field, text)
    (one,) = book.known("person")
    assert (one.name, one.aliases) == ("Ottla Brenn", ("Miss Brenn", "the Brenn girl"))
    assert (one.note, one.mark) == ("Early.", "✣")
    with pytest.raises(NotPossible):
        add_known(book, "person", "")


def test_a_second_of_the_same_name_needs_a_word(book: BookFile) -> None:
    ottla = add_known(book, "person", "Ottla")
    write_once(book, "person", ottla, "aliases", "Tilly")
    for taken in ("OTTLA", "tilly"):
        with pytest.raises(NameTaken, match="There is a person called"):
            add_known(book, "person", taken)
    add_known(book, "person", "Ottla", all_the_same=True)
    add_known(book, "place", "Ottla")
    assert [one.name for one in book.known("person")] == ["Ottla", "Ottla"]


def test_presence_is_one_word_a_person_and_one_viewpoint_unless_two_are_meant(
    book: BookFile, draft: str, scenes: list[str]
) -> None:
    mark_presence(book, scenes[:1], "Ottla", "viewpoint")
    mark_presence(book, scenes[:1], "The keeper", "viewpoint")
    assert hows(book, draft) == [("0", "Ottla", "on page"), ("0", "The keeper", "viewpoint")]
    mark_presence(book, scenes[:1], "Ottla", "viewpoint", also=True)
    assert [how for _, _, how in hows(book, draft)] == ["viewpoint", "viewpoint"]
    mark_presence(book, scenes, "the keeper", "mentioned")
    assert [how for _, who, how in hows(book, draft) if who == "The keeper"] == ["mentioned"] * 3
    mark_presence(book, scenes[1:], "The keeper", None)
    assert [scene for scene, who, _ in hows(book, draft) if who == "The keeper"] == ["0"]
    assert undo(book) == "“The keeper” not in 2 scenes"
    for refused in (("", scenes), ("Ottla", [])):
        with pytest.raises(NotPossible):
            mark_presence(book, refused[1], refused[0], "on page")
    with pytest.raises(Missing):
        mark_presence(book, ["sc0"], "Ottla", "on page")


def test_a_person_is_found_by_another_name(book: BookFile, draft: str, scenes: list[str]) -> None:
    ottla = add_known(book, "person", "Ottla")
    write_once(book, "person", ottla, "aliases", "Miss Brenn")
    mark_presence(book, scenes[:1], "miss brenn", "on page")
    assert hows(book, draft) == [("0", "Ottla", "on page")]


def test_where_a_scene_happens(book: BookFile, draft: str, scenes: list[str]) -> None:
    mark_setting(book, scenes, "The pier")
    mark_setting(book, scenes[:1], "The lock")
    mark_setting(book, scenes[:1], "the pier", there=False)
    names = {one.id: one.name for one in book.known("place")}
    assert [(scenes.index(one.scene), names[one.place]) for one in book.settings(draft)] == [
        (0, "The lock"),
        (1, "The pier"),
        (2, "The pier"),
    ]
    with pytest.raises(NotPossible):
        mark_setting(book, [], "The lock")


def test_what_a_person_carries(book: BookFile, draft: str, scenes: list[str]) -> None:
    carry(book, scenes[0], "Ottla", comes_in="a ticket", leaves="")
    made = carry(book, scenes[0], "ottla", comes_in="a cold", leaves="a grudge")
    assert (made.comes_in, made.leaves) == ("a ticket\na cold", "a grudge")
    assert book.carried(draft) == (made,)
    write_once(book, "carried", made.id, "leaves", "nothing")
    assert undo(book) == "“Leaves with” of “a ticket a cold”"
    put_down(book, scenes[0], made.id)
    assert book.carried(draft) == ()
    undo(book)
    assert book.carried(draft)[0].comes_in == "a ticket\na cold"
    with pytest.raises(NotPossible):
        carry(book, scenes[0], "Ottla", comes_in=" ", leaves="")
    with pytest.raises(Missing):
        put_down(book, scenes[0], "ca0")


def everything(book: BookFile, scenes: list[str], name: str) -> str:
    """Mark a person in every way there is; their id."""
    mark_presence(book, scenes[:2], name, "mentioned")
    carry(book, scenes[0], name, comes_in=f"{name} in", leaves=f"{name} out")
    mark_point(book, "reveal", "A fact", "learns", scenes=scenes[:1], who=name, passages=[Passage(3, 0, 3)])
    return next(one.id for one in book.known("person") if one.name == name)


def test_joining_two_people_takes_everything_along(book: BookFile, draft: str, scenes: list[str]) -> None:
    ottla, brenn = everything(book, scenes, "Ottla"), everything(book, scenes[:1] * 2, "Miss Brenn")
    mark_presence(book, scenes[2:], "Miss Brenn", "on page")
    mark_presence(book, scenes[:1], "Miss Brenn", "viewpoint")
    write_once(book, "person", brenn, "note", "Late.")
    write_once(book, "person", brenn, "mark", "B")
    before = desk_dump(book)
    join_known(book, "person", into=ottla, of=brenn)
    (one,) = book.known("person")
    assert (one.name, one.aliases, one.note, one.mark) == ("Ottla", ("Miss Brenn",), "Late.", "B")
    assert hows(book, draft) == [
        ("0", "Ottla", "viewpoint"),
        ("1", "Ottla", "mentioned"),
        ("2", "Ottla", "on page"),
    ]
    (carried,) = book.carried(draft)
    assert (carried.comes_in, carried.leaves) == ("Ottla in\nMiss Brenn in", "Ottla out\nMiss Brenn out")
    assert {point.person for point in book.lines(draft)[0].points} == {ottla}
    assert undo(book) == "Join “Miss Brenn” to “Ottla”"
    assert desk_dump(book) == before
    with pytest.raises(NotPossible):
        join_known(book, "person", into=ottla, of=ottla)


def test_joining_two_places(book: BookFile, draft: str, scenes: list[str]) -> None:
    mark_setting(book, scenes[:2], "The pier")
    mark_setting(book, scenes[1:], "The quay")
    pier, quay = (one.id for one in book.known("place"))
    join_known(book, "place", into=pier, of=quay)
    assert [one.place for one in book.settings(draft)] == [pier] * 3


def test_removing_a_person_takes_their_marks_and_undo_brings_all_back(
    book: BookFile, draft: str, scenes: list[str]
) -> None:
    ottla = everything(book, scenes, "Ottla")
    before = desk_dump(book)
    remove_known(book, "person", ottla)
    after = desk_dump(book)
    for table in ("desk_person", "desk_presence", "desk_carried", "desk_point", "desk_anchor"):
        assert after[table] == []
    assert book.check() == ()
    assert undo(book) == "Remove “Ottla”"
    assert desk_dump(book) == before
    with pytest.raises(Missing):
        remove_known(book, "place", "pl0")


def test_people_are_ordered(book: BookFile) -> None:
    names = ("Ada", "Bo", "Cy")
    ids = [add_known(book, "person", name) for name in names]
    reorder(book, "person", ids[0], by=2)
    assert [one.name for one in book.known("person")] == ["Bo", "Cy", "Ada"]
    undo(book)
    assert [one.name for one in book.known("person")] == list(names)
