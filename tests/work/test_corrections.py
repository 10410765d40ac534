"""What she says of people, places and times against what reading found: one edit each, undone, kept with the book."""

import pytest

from afterdraft.desk.anchor import Passage
from afterdraft.errors import Missing, NotPossible
from afterdraft.store.book import BookFile
from afterdraft.whole.given import GivenPerson
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.found import Found
from afterdraft.work.cast.given import given
from afterdraft.work.cast.join_found import join_found
from afterdraft.work.cast.part_name import part_name
from afterdraft.work.cast.refuse_name import allow_name, refuse_name
from afterdraft.work.cast.remove_known import remove_known
from afterdraft.work.cast.say_present import say_present, say_setting
from afterdraft.work.cast.say_speaker import say_speaker
from afterdraft.work.cast.set_scene_time import set_scene_time
from afterdraft.work.cast.tell_of_person import follow_speech, tell_gender, tell_narrator
from afterdraft.work.split.join_scenes import join_scenes
from tests.store.sample import desk_dump, undo

OTTLA = Found("Ottla Brenn", ("Ottla",))
KEEPER = Found("the keeper")


@pytest.fixture
def scenes(book: BookFile, draft: str) -> list[str]:
    return [scene.id for scene in book.division(draft).scenes]


def names(book: BookFile) -> list[tuple[str, ...]]:
    return [one.names for one in book.known("person")]


def test_whom_reading_found_is_kept_at_the_first_correction_with_their_names(book: BookFile, draft: str) -> None:
    tell_gender(book, OTTLA, "f")
    (ottla,) = book.known("person")
    assert (ottla.names, ottla.gender) == (("Ottla Brenn", "Ottla"), "f")
    people = given(book, draft, {}).people
    assert people == (GivenPerson(ottla.id, "Ottla Brenn", ("ottla brenn", "ottla"), "f"),)
    assert undo(book) == "Pronouns of “Ottla Brenn”"
    assert book.known("person") == ()


def test_whom_she_entered_before_is_met_and_not_doubled(book: BookFile) -> None:
    row = add_known(book, "person", "ottla brenn")
    tell_narrator(book, OTTLA, narrator=True)
    assert [(one.id, one.narrator) for one in book.known("person")] == [(row, True)]


def test_one_person_at_most_tells_a_book(book: BookFile) -> None:
    tell_narrator(book, OTTLA, narrator=True)
    tell_narrator(book, KEEPER, narrator=True)
    assert [(one.name, one.narrator) for one in book.known("person")] == [("Ottla Brenn", False), ("the keeper", True)]
    tell_narrator(book, KEEPER, narrator=False)
    assert not any(one.narrator for one in book.known("person"))


@pytest.mark.parametrize("name", ["", "  ", "\0"])
def test_no_name_is_refused(book: BookFile, name: str) -> None:
    before = desk_dump(book)
    with pytest.raises(NotPossible):
        refuse_name(book, "person", Found(name))
    with pytest.raises(NotPossible):
        allow_name(book, "person", name)
    assert desk_dump(book) == before


def test_what_is_no_text_is_left_out_of_names(book: BookFile, draft: str) -> None:
    tell_gender(book, Found("Ottla\0 Brenn", ("Ottla\0", "\0")), "f")
    assert names(book) == [("Ottla Brenn", "Ottla")]
    undo(book)
    assert names(book) == []


def test_two_that_only_reading_knows_are_joined(book: BookFile, draft: str) -> None:
    row = join_found(book, "person", into=OTTLA, of=Found("Miss Brenn", ("the girl", "Ottla")))
    assert names(book) == [("Ottla Brenn", "Ottla", "Miss Brenn", "the girl")]
    assert given(book, draft, {}).people[0].forms == ("ottla brenn", "ottla", "miss brenn", "girl")
    with pytest.raises(NotPossible):
        join_found(book, "person", into=Found("Ottla Brenn", row=row), of=Found("Ottla Brenn", row=row))


def test_two_rows_are_joined_with_all_that_she_said_of_them(book: BookFile, draft: str, scenes: list[str]) -> None:
    tell_gender(book, KEEPER, "m")
    say_present(book, scenes[0], KEEPER, "not here")
    say_speaker(book, draft, [Passage(4, 0, 7)], KEEPER)
    keeper = book.known("person")[0]
    say_present(book, scenes[1], OTTLA, "on page")
    ottla = book.known("person")[1]
    before = desk_dump(book)
    join_found(book, "person", into=Found(ottla.name, row=ottla.id), of=Found(keeper.name, row=keeper.id))
    (one,) = book.known("person")
    assert (one.id, one.gender) == (ottla.id, "m")
    assert book.absent(draft) == {(scenes[0], ottla.id)}
    assert [said.person for said in book.said_by(draft)] == [ottla.id]
    assert undo(book) == "Join “the keeper” to “Ottla Brenn”"
    assert desk_dump(book) == before


def test_one_of_several_names_is_parted(book: BookFile, draft: str) -> None:
    part_name(book, "person", OTTLA, "Ottla")
    assert names(book) == [("Ottla Brenn",), ("Ottla",)]
    assert [one.forms for one in given(book, draft, {}).people] == [("ottla brenn",), ("ottla",)]
    for name in ("Nobody", "Ottla Brenn"):
        with pytest.raises(NotPossible):
            part_name(book, "person", Found("Ottla Brenn"), name)


def test_a_name_that_two_of_hers_have_is_the_first_ones(book: BookFile, draft: str) -> None:
    add_known(book, "person", "Ottla")
    add_known(book, "person", "Ottla", all_the_same=True)
    assert [one.forms for one in given(book, draft, {}).people] == [("ottla",), ()]


def test_what_is_no_person_is_none_until_it_is_one_after_all(book: BookFile, draft: str) -> None:
    refuse_name(book, "person", Found("Third Step", ("the Step",)))
    assert given(book, draft, {}).nobody == {"third step", "step"}
    assert book.no_names("place") == frozenset()
    allow_name(book, "person", "the Step")
    assert book.no_names("person") == {"third step"}
    assert undo(book) == "“the Step” a person after all"
    assert undo(book) == "“Third Step” no person"
    assert book.no_names("person") == frozenset()


def test_who_is_here_and_who_is_not(book: BookFile, draft: str, scenes: list[str]) -> None:
    say_present(book, scenes[0], OTTLA, "viewpoint")
    say_present(book, scenes[0], KEEPER, "viewpoint")
    assert [one.how for one in book.present(draft)] == ["on page", "viewpoint"]
    say_present(book, scenes[0], KEEPER, "not here")
    keeper = book.known("person")[1].id
    assert book.absent(draft) == {(scenes[0], keeper)}
    assert [one.how for one in book.present(draft)] == ["on page"]
    say_present(book, scenes[0], KEEPER, "mentioned")
    assert book.absent(draft) == frozenset()


def test_a_place_of_hers_is_no_person_unless_she_says_that_too(book: BookFile, draft: str) -> None:
    add_known(book, "place", "the Pier")
    assert given(book, draft, {}).nobody == {"pier"}
    add_known(book, "person", "Pier")
    assert given(book, draft, {}).nobody == frozenset()


def test_where_a_scene_happens_and_where_not(book: BookFile, draft: str, scenes: list[str]) -> None:
    pier = Found("Côte-Vieille")
    say_setting(book, scenes[1], pier, there=True)
    (row,) = book.known("place")
    assert [one.place for one in book.settings(draft)] == [row.id]
    say_setting(book, scenes[1], pier, there=False)
    assert book.settings(draft) == ()
    assert book.absent(draft) == {(scenes[1], row.id)}
    remove_known(book, "place", row.id)
    assert book.absent(draft) == frozenset()


def test_when_a_scene_happens_follows_the_scene(book: BookFile, draft: str, scenes: list[str]) -> None:
    set_scene_time(book, scenes[0], " Tuesday,\n noon ")
    set_scene_time(book, scenes[1], "the day after")
    assert book.scene_times(draft) == {scenes[0]: "Tuesday, noon", scenes[1]: "the day after"}
    before = desk_dump(book)
    join_scenes(book, scenes[1])
    assert book.scene_times(draft) == {scenes[0]: "Tuesday, noon; the day after"}
    undo(book)
    assert desk_dump(book) == before
    set_scene_time(book, scenes[0], "")
    assert book.scene_times(draft) == {scenes[1]: "the day after"}


def test_who_speaks_a_quotation(book: BookFile, draft: str) -> None:
    say_speaker(book, draft, [Passage(4, 0, 7)], OTTLA)
    say_speaker(book, draft, [Passage(4, 0, 7)], KEEPER)
    keeper = book.known("person")[1].id
    assert given(book, draft, {4: (0, 1)}).speakers == {(0, 1, 0): keeper}
    say_speaker(book, draft, [Passage(4, 0, 7)], None)
    assert given(book, draft, {4: (0, 1)}).speakers == {(0, 1, 0): ""}
    remove_known(book, "person", keeper)
    assert len(book.said_by(draft)) == 1
    with pytest.raises(NotPossible):
        say_speaker(book, draft, [Passage(99, 0, 7)], None)


def test_whom_she_follows(book: BookFile) -> None:
    follow_speech(book, OTTLA, followed=True)
    assert [one.followed for one in book.known("person")] == [True]
    follow_speech(book, OTTLA, followed=False)
    assert [one.followed for one in book.known("person")] == [False]


def test_a_row_that_is_gone_is_told(book: BookFile) -> None:
    with pytest.raises(Missing, match="This person"):
        tell_gender(book, Found("Ottla", row="pe-gone"), "f")
    with pytest.raises(NotPossible):
        tell_gender(book, OTTLA, "q")


def test_what_was_read_is_no_edit_and_can_be_thrown_away(book: BookFile, draft: str) -> None:
    before = book.edits()
    book.keep_facts("k1", "[1]")
    book.keep_facts("k1", "[2]")
    book.keep_whole(draft, "w1", "{}")
    book.keep_whole(draft, "w2", '{"people": []}')
    book.keep_read({"r1": "a", "r2": "b"})
    book.keep_read({"r1": "c"})
    assert book.kept_facts(["k1", "k2"]) == {"k1": "[1]"}
    assert book.kept_facts(["r1", "r2"]) == {"r1": "c", "r2": "b"}
    assert book.read_whole(draft) == ("w2", '{"people": []}')
    assert book.edits() == before
    book.drop_read()
    assert book.kept_facts(["k1", "r1"]) == {}
    assert book.read_whole(draft) is None
    assert book.check() == ()
