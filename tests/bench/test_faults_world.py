"""Planted faults about given names, ways and seasons: places and people are told by counting."""

from bench.faults.kinds import given_name, journey, season
from bench.faults.planted import plant
from tests.bench.novels import travelling


def test_a_given_name_is_changed_for_one_of_the_same_gender() -> None:
    scenes, _ = plant(travelling(), [given_name.plant], "seed")
    (changed,) = {text for scene in scenes for text in scene} - {text for scene in travelling() for text in scene}
    assert changed.split()[0] in given_name.WOMEN
    assert changed.split()[1] == "Brandt"


def test_nobody_s_name_is_taken_for_a_place() -> None:
    _, (fault,) = plant(travelling(), [journey.plant], "seed")
    assert all(
        {"Ashwater", "Thirle"} <= set(one.words.replace(".", "").replace(",", "").split()) for one in fault.shown
    )


def test_no_month_is_told_where_the_author_tells_of_a_season() -> None:
    wintry = tuple((*scene, "It had been a long winter.") for scene in travelling())
    assert plant(wintry, [season.plant], "seed")[1] == ()
