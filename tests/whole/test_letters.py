"""Letters, diaries and dashes: told by an I, with speech as their writers set it."""

import pytest

from afterdraft.whole.book import read_book
from tests.reading.hand import scenes

LETTER = [
    "My dear Joan,",
    "I came to the house, and I saw my aunt at once. Ada Lamb was in.",
    "“Sit,” said Ada.",
    "“No,” I said, for I was tired of my boots.",
    "So I went up to my room.",
]
DIARY = ["Monday. I rose early. I looked at my boat. I was late.", "‘Come down,’ said Pike.", "‘I will,’ I said."]
DASHES = ["Pike came in and Ada rose.", "— Sit, said Ada.", "— No, said Pike.", "— Why?"]


def test_a_letter_is_told_by_its_writer_who_is_on_the_page() -> None:
    found = read_book(scenes([LETTER, LETTER]))
    narrator = found.cast.narrator
    assert narrator is not None
    assert [one.speaker == narrator.id for one in found.spoken[0]] == [False, True]
    assert [one.presence for one in found.appearances if one.person == narrator.id] == ["point of view"] * 2


def test_a_diary_in_single_quotes() -> None:
    found = read_book(scenes([DIARY, DIARY]))
    names = {person.id: person.name for person in found.cast.people}
    assert [names[one.speaker or ""] for one in found.spoken[0]] == ["pike", "the narrator"]


def test_dialogue_of_opening_dashes() -> None:
    found = read_book(scenes([DASHES]))
    names = {person.id: person.name for person in found.cast.people}
    assert [names[one.speaker or ""] for one in found.spoken[0]] == ["ada", "pike", "ada"]


def test_who_is_only_spoken_of_is_only_mentioned() -> None:
    found = read_book(
        scenes(
            [
                ["Pike came in.", "“Where is Ada Lamb?” said Pike.", "“I saw Ada,” said Joan."],
                ["Ada sat. Then Ada smiled."],
            ]
        )
    )
    ada = next(person.id for person in found.cast.people if person.name.startswith("ada"))
    assert [(one.scene, one.presence) for one in found.appearances if one.person == ada] == [
        (0, "mentioned"),
        (1, "on page"),
    ]


def letter(writer: str, *more: str) -> list[str]:
    return [
        "I came to the house, and I saw my aunt at once. I was tired of my boots.",
        "“Sit,” said Quill.",
        "“No,” I said.",
        *more,
        f"Your loving {writer}",
    ]


def test_of_letters_by_several_hands_each_writer_is_the_i() -> None:
    found = read_book(scenes([letter("Ada"), letter("Pike"), letter("Ada", "So Pike came in."), letter("Joan")]))
    names = {person.id: person.name for person in found.cast.people}
    assert found.cast.narrator is None
    assert [names[said[1].speaker or ""] for said in found.spoken] == ["ada", "pike", "ada", "joan"]
    views = [names[one.person] for one in found.appearances if one.presence == "point of view"]
    assert views == ["ada", "pike", "ada", "joan"]


def test_an_unsigned_diary_beside_a_letter_is_the_narrators() -> None:
    found = read_book(scenes([DIARY, letter("Ada"), DIARY]))
    names = {person.id: person.name for person in found.cast.people}
    views = [names[one.person] for one in found.appearances if one.presence == "point of view"]
    assert views == ["the narrator", "ada", "the narrator"]


def test_a_name_at_the_end_of_a_scene_that_no_i_tells_signs_nothing() -> None:
    found = read_book(
        scenes([["Ada saw the boat. Ada felt cold. Ada knew.", "“Who?” said Pike.", "“I,” said Ada.", "Pike"]])
    )
    names = {person.id: person.name for person in found.cast.people}
    assert {names[one.person]: one.presence for one in found.appearances}["ada"] == "point of view"


@pytest.mark.parametrize(
    ("told", "whose"),
    [
        (
            ["Ada saw the boat.", "Mr. Pike came in. He sat.", "She felt cold.", "Ada knew.", "“Sit,” said Ada."],
            {"ada"},
        ),
        (["Ada saw Pike. Pike saw Ada.", "Ada felt cold. Pike felt cold.", "Ada knew, and Pike knew."], set()),
        (["Ada came in.", "“Ada saw it. Ada knew. Ada felt it,” said Pike.", "Ada sat."], set()),
        (["Ada came in. Ada sat. Ada rose.", "“Sit,” said Pike.", "“No,” said Ada."], set()),
    ],
    ids=["perceives and thinks", "two heads", "only in speech", "seen from outside"],
)
def test_whose_viewpoint_a_scene_is_that_no_i_tells(told: list[str], whose: set[str]) -> None:
    found = read_book(scenes([told, ["“Sit,” said Ada.", "“No,” said Pike. She turned to Ada. He sat."]]))
    names = {person.id: person.name for person in found.cast.people}
    views = {names[one.person] for one in found.appearances if one.presence == "point of view" and one.scene == 0}
    assert views == whose
