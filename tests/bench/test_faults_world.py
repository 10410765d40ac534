"""Planted faults about where people come from, whom they belong to, ways and seasons: their words stand, the same seed
gives the same, and places and people are told by counting."""

import pytest

from bench.faults.kinds import given_name, journey, origin, relation, season
from bench.faults.planted import Plant, Scenes, plant

ALL: dict[str, Plant] = {
    one.__name__.rsplit(".")[-1]: one.plant for one in (given_name, journey, origin, relation, season)
}


def novel(chapters: int = 14) -> Scenes:
    """An invented one, in which two people act, and go to two towns."""
    return tuple(
        (
            f"Ilse Brandt came down to the ferry for the {number}th crossing. Ilse wondered who had coiled the rope.",
            f"“You’re early,” said Tobias. “The river’s up, and there are {number} boats out.”",
            f"Tobias turned to the {number}th post and untied it with his cold hands. He was slow.",
            "“It was up yesterday,” said Ilse. She hoped that it would rain.",
            f"Ilse thought of her sister in Ashwater. She knew that she had {number} letters to write.",
            f"Tobias pushed off for Thirle. He had his pipe with him, and {number} matches.",
            f"She had come from Thirle to Ashwater by the {number}th boat, and she was tired.",
            "“We’ll be slow,” said Tobias.",
        )
        for number in range(1, chapters + 1)
    )


@pytest.mark.parametrize("kind", ALL)
def test_words_stand_once_and_the_author_s_stand_elsewhere(kind: str) -> None:
    for round_ in range(5):
        scenes, (fault,) = plant(novel(), [ALL[kind]], f"seed {round_}")
        for one in fault.shown:
            assert sum(text.count(one.words) for text in scenes[one.scene]) == 1, one
        assert fault.shown[0].words not in "\n".join(text for scene in novel() for text in scene)


@pytest.mark.parametrize("kind", ALL)
def test_the_same_seed_gives_the_same_and_others_give_others(kind: str) -> None:
    assert plant(novel(), [ALL[kind]], "one") == plant(novel(), [ALL[kind]], "one")
    assert len({plant(novel(), [ALL[kind]], str(seed))[1] for seed in range(6)}) > 1


def test_a_given_name_is_changed_for_one_of_the_same_gender() -> None:
    scenes, _ = plant(novel(), [given_name.plant], "seed")
    (changed,) = {text for scene in scenes for text in scene} - {text for scene in novel() for text in scene}
    assert changed.split()[0] in given_name.WOMEN
    assert changed.split()[1] == "Brandt"


def test_nobody_s_name_is_taken_for_a_place() -> None:
    _, (fault,) = plant(novel(), [journey.plant], "seed")
    assert all(
        {"Ashwater", "Thirle"} <= set(one.words.replace(".", "").replace(",", "").split()) for one in fault.shown
    )


def test_no_month_is_told_where_the_author_tells_of_a_season() -> None:
    wintry = tuple((*scene, "It had been a long winter.") for scene in novel())
    assert plant(wintry, [season.plant], "seed")[1] == ()
