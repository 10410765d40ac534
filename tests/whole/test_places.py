"""The places of a book and where its scenes are set."""

import pytest

from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.place import Place, Sign
from afterdraft.whole.given import Given, GivenPlace
from afterdraft.whole.places import Places, find_places


def at(
    form: str, sign: Sign = "in", *, paragraph: int = 0, name: bool = True, taken: bool = True, spoken: bool = False
) -> Place:
    return Place(paragraph, 0, len(form), form, name, taken, spoken, sign)


def scene(*places: Place, mentions: tuple[Mention, ...] = ()) -> SceneFacts:
    return SceneFacts(9, mentions=mentions, places=places)


def settings(found: Places) -> list[str | None]:
    return [one.place if one else None for one in found.settings]


def test_a_scene_is_set_where_its_words_stand_in_and_at() -> None:
    found = find_places([scene(at("kitchen", name=False), at("harrow", "", spoken=True)), scene(at("harrow", "heads"))])
    assert settings(found) == ["place:kitchen", "place:harrow"]
    assert [one.named for one in found.places] == [True, False]


def test_a_place_that_is_only_talked_of_is_no_setting() -> None:
    assert settings(find_places([scene(at("harrow", "in", spoken=True))])) == [None]


def test_the_rectory_by_name_and_by_kind_is_one_place() -> None:
    found = find_places([scene(at("rectory")), scene(at("rectory", name=False, taken=False))])
    assert [(one.id, one.scenes) for one in found.places] == [("place:rectory", (0, 1))]


@pytest.mark.parametrize(("sign", "is_one"), [("in", True), ("", False)])
def test_a_name_that_the_pipeline_does_not_know_needs_a_word_of_place(sign: Sign, is_one: bool) -> None:
    assert bool(find_places([scene(at("longmere", sign, taken=False))]).places) == is_one


def test_who_acts_is_no_place() -> None:
    acts = Mention(0, 0, 4, "name", "lucy", subject=True)
    assert find_places([scene(at("lucy", ""), mentions=(acts,))]).places == ()


def test_what_she_says_wins() -> None:
    hers = Given(
        places=(GivenPlace("p1", "The Old Mill", ("old mill", "mill")), GivenPlace("p2", "Nowhere yet", ("nowhere",))),
        nowhere=frozenset({"kitchen"}),
        settings={1: "p2"},
    )
    found = find_places([scene(at("mill", name=False)), scene(at("kitchen", name=False))], hers)
    assert settings(found) == ["p1", "p2"]
    assert [(one.id, one.name, one.scenes) for one in found.places] == [
        ("p1", "The Old Mill", (0,)),
        ("p2", "Nowhere yet", ()),
    ]
    assert found.settings[1] is not None
    assert found.settings[1].sure == 1


def test_a_person_of_the_cast_is_no_place() -> None:
    assert find_places([scene(at("ada"))], people=["ada"]).places == ()
