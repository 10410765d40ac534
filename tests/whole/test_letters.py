"""Letters, diaries and dashes: told by an I, with speech as their writers set it."""

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
