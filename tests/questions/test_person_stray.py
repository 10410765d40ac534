"""An I among others, or a name for the I, is asked about only where it is plain narration."""

from dataclasses import replace

import pytest

from afterdraft.questions.each.person import CHECK
from tests.questions.asked import found_in, quotes, read
from tests.questions.people import MARTA, NIGHT
from tests.questions.test_person import NELL, OF_OTHERS, OTHERS, STRAY, TELLER, TESS

pytestmark = pytest.mark.slow


@pytest.mark.parametrize(
    ("told", "slip"),
    [
        ("Tobias had two bowls of it, and I felt each one go down, and I was warm.", ""),
        ("It was a long street. Half the landing watched me, and I watched her.", "Half the landing watched me, and I"),
        ("Marta came up the ladder. I knew it was Marta by the fourth rung.", "I knew it was Marta"),
        ("I took the lamp down and shut the door. My hands were cold, and I put them in my coat.", "I took"),
        ("The key was on its nail. I took it down and I put it in my coat before she saw.", "I took it down"),
    ],
)
def test_asks_about_plain_narration(told: str, slip: str) -> None:
    (one,) = quotes(found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told]))
    assert one[0].startswith(slip)


@pytest.mark.parametrize(
    "told",
    [
        "I drank it for a week. A thing like that had somebody inside it.",
        "She had the letter by heart. I took the key down and I put it in my coat.",
        "She turned the page. I took the key down and I put it in my coat before noon.",
        "She remembered how it began. I took the key down and I put it in my coat.",
        "I saw Tobias on the steps. I had my lamp with me. She had said it to the notebook.",
        "I took the key down and I put it in my coat. Every word of it was so.",
        "That one was mine, she was saying. I burned the pocket, and I sewed it up again.",
        "— I took the key down and I put it in my coat.",
        "She had told it to the constable so. I took the key down and I put it in my coat.",
        "There was a song that he had. I took the boat, and I took my love to the fair.",
        "She dreamed again. I took the key down, and I put it in my coat, and I ran.",
        "Under Charles I there was a ferry here. The fare had doubled.",
        "It was on the headstone. I kept the ferry, and I never lost my rope.",
    ],
)
def test_is_silent_about_what_is_read_said_or_remembered(told: str) -> None:
    assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told])


def test_is_silent_about_a_line_in_italics() -> None:
    told = "The key was on its nail. I took it down and I put it in my coat before she saw."
    seen = read([*OTHERS, [*NIGHT, *MARTA, OF_OTHERS, told]])
    assert list(CHECK.find(seen))
    place = (len(OTHERS), len(NIGHT) + len(MARTA) + 1)
    assert not list(CHECK.find(replace(seen, italics={place: ((25, len(told)),)})))


def test_is_silent_about_a_line_that_stands_elsewhere_too() -> None:
    line = "The rope was new. I took the key down, and I put it in my coat."
    first = "Tobias gave it to her. “I took the key down, and I put it in my coat,” said Tobias."
    assert found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, line])
    assert not found_in(CHECK, *OTHERS, [*NIGHT, first], [*NIGHT, *MARTA, OF_OTHERS, line])


def test_is_silent_behind_a_paragraph_that_says_who_wrote_or_thought_it() -> None:
    line = "I took the key down, and I put it in my coat."
    for above in ("It was his letter that she had in her hand.", "She lay there and remembered."):
        assert not found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, above, line])
    assert found_in(CHECK, *OTHERS, [*NIGHT, *MARTA, OF_OTHERS, "She lay there and slept.", line])


def test_is_silent_where_a_teller_says_so_elsewhere() -> None:
    line = "The rope was new. I took the key down, and I put it in my coat."
    teller = [*NIGHT, *MARTA, *[OF_OTHERS] * 3, "We have all known such a ferry, I think."]
    assert not found_in(CHECK, *OTHERS, *[teller] * 5, [*NIGHT, *MARTA, OF_OTHERS, line])


LETTER = "I have asked him twice. I want one the colour of my frock, and I know that I am asking, and I am ill. I do."
HERS = [
    "She had the house to herself. She had found it weeks ago, and she knew it by heart.",
    "She sat down. She had been nine years old, and she had supposed that it was his own idea, and he had let her.",
    "She got up, and she went to see if the hens were shut in, and her back was sore.",
]


def test_a_letter_in_a_scene_told_of_somebody_makes_no_teller_of_her() -> None:
    told = "Nell moved the lamp."
    scenes = [
        ["Nell", HERS[0], "Arthur my dear,", LETTER, "M.", *HERS[1:], told],
        TESS,
        [*NELL, *NELL[1:]],
        TESS,
    ]
    seen = replace(read([one[1:] for one in scenes]), heads=tuple((one[0],) for one in scenes))
    assert not list(CHECK.find(seen))


def test_a_he_for_the_i_is_asked_about_amid_the_i_alone() -> None:
    assert found_in(CHECK, [*TELLER, *TELLER, STRAY, *TELLER])
    assert not found_in(CHECK, [*TELLER, *TELLER, STRAY, "The rain had stopped.", "The boats lay still."])
    assert not found_in(CHECK, [*TELLER, "I had left the rope for Tobias, and I sat down.", *TELLER, STRAY, *TELLER])
    assert not found_in(CHECK, [*TELLER, *TELLER, "I had the story in a letter, and I read it.", STRAY, *TELLER])
