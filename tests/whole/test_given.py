"""What the writer said of people stands, whatever the text tells."""

import pytest
from hypothesis import given as for_all
from hypothesis import strategies as st

from afterdraft.reading.mentions import form
from afterdraft.whole.cast import Cast, find_cast
from afterdraft.whole.given import Given, GivenPerson
from tests.reading.hand import scenes

TOLD = [
    ["Ada Lamb came in.", "“Sit,” said Ada.", "“No,” said Miss Lamb.", "So Ada sat and Miss Lamb smiled."],
    ["“Who goes?” said the Owl.", "“I,” said Bill.", "“Why?” said the Owl.", "“Oh,” said Bill Pike.", "Ada smiled."],
]
SCENES = scenes(TOLD)
ADA = GivenPerson("p1", "Ada Lamb", ("ada lamb", "ada"))


def names(cast: Cast) -> dict[str, str]:
    return dict(sorted((name, cast.by_form[name]) for name in cast.by_form))


@pytest.mark.parametrize(
    ("typed", "compared"),
    [
        ("Miss Bartlett", "miss bartlett"),
        ("Mrs. Capp", "mrs capp"),
        ("the Old  Man", "old man"),
        ("O’Hara", "o'hara"),
        ("The", "the"),
    ],
)
def test_a_name_that_is_typed_is_compared_as_one_that_is_read(typed: str, compared: str) -> None:
    assert form(typed) == compared


def test_a_given_person_owns_their_names_and_keeps_their_id() -> None:
    cast = find_cast(SCENES, Given((ADA,)))
    assert {cast.by_form["ada"], cast.by_form["ada lamb"]} == {"p1"}
    person = next(one for one in cast.people if one.id == "p1")
    assert (person.name, person.gender) == ("Ada Lamb", "f")


def test_two_given_people_are_never_joined_whatever_tells_for_it() -> None:
    joined, parted = find_cast(SCENES), GivenPerson("p2", "Miss Lamb", ("miss lamb",))
    assert joined.by_form["ada"] == joined.by_form["miss lamb"]
    cast = find_cast(SCENES, Given((ADA, parted)))
    assert (cast.by_form["ada"], cast.by_form["miss lamb"]) == ("p1", "p2")


def test_names_with_nothing_in_common_are_one_person_where_she_says_so() -> None:
    cast = find_cast(SCENES, Given((GivenPerson("p1", "The Owl", ("owl", "bill", "bill pike")),)))
    assert {cast.by_form["owl"], cast.by_form["bill"], cast.by_form["bill pike"]} == {"p1"}


def test_who_is_no_person_is_none() -> None:
    assert "owl" in find_cast(SCENES).by_form
    cast = find_cast(SCENES, Given(nobody=frozenset({"owl"})))
    assert "owl" not in cast.by_form


def test_a_name_that_stands_nowhere_is_told_and_its_person_kept() -> None:
    cast = find_cast(SCENES, Given((GivenPerson("p9", "Nurse Quill", ("nurse quill",)),)))
    assert cast.unmet == ("nurse quill",)
    assert [one.mentions for one in cast.people if one.id == "p9"] == [0]


def test_gender_and_narrator_are_as_she_says() -> None:
    told = ["I came in, and I looked at my hat.", "“Sit down, Wren,” said Ada.", "“No,” I said. I was tired of my day."]
    wren = GivenPerson("p3", "Wren", ("wren",), gender="f", narrator=True)
    cast = find_cast(scenes([told, told]), Given((wren,)))
    assert cast.narrator is not None
    assert (cast.narrator.id, cast.narrator.gender) == ("p3", "f")


FORMS = ("ada", "ada lamb", "miss lamb", "owl", "bill", "bill pike", "nurse quill")


@st.composite
def givens(draw: st.DrawFn) -> Given:
    owners = draw(st.lists(st.integers(0, 3), min_size=len(FORMS), max_size=len(FORMS)))
    people = [
        GivenPerson(f"p{n}", f"Person {n}", tuple(f for f, who in zip(FORMS, owners, strict=True) if who == n))
        for n in (1, 2)
    ]
    nobody = frozenset(f for f, who in zip(FORMS, owners, strict=True) if who == 3)
    return Given(tuple(people), nobody)


@for_all(givens())
def test_whatever_she_says_is_so_in_the_cast_and_so_again(given: Given) -> None:
    cast = find_cast(SCENES, given)
    for person in given.people:
        assert sum(one.id == person.id for one in cast.people) == 1
        assert all(cast.by_form[one] == person.id for one in person.forms)
    assert not given.nobody & cast.by_form.keys()
    assert len({one.id for one in cast.people}) == len(cast.people)
    assert names(find_cast(SCENES, given)) == names(cast)
