"""Sun and moon over a real place, as almanacs have them: London's longest and shortest day (sunrise 3:43 and 8:04,
sunset 20:21 and 15:53, Greenwich time), full moon on 25 January 2024, new moon on 11 January 2024; from memory."""

from dataclasses import replace
from datetime import date

import pytest

from afterdraft.desk.ground import Ground
from afterdraft.questions.each.sky import CHECK
from afterdraft.questions.marks import Marks
from afterdraft.questions.seen import Seen
from afterdraft.questions.sky import located, moon, places, sun
from tests.questions.asked import dated, quotes

LONDON = Ground("London", 51.5, 0.0)


def over(ground: Ground | None, *scenes: list[str]) -> Seen:
    return replace(dated(*scenes), marks=Marks(ground=ground))


@pytest.mark.parametrize(
    ("day", "rise", "down"), [(date(2024, 6, 21), (3, 43), (20, 21)), (date(2024, 12, 21), (8, 4), (15, 53))]
)
def test_the_sun_rises_and_sets_as_in_the_almanac(day: date, rise: tuple[int, int], down: tuple[int, int]) -> None:
    found = sun(LONDON, day)
    assert found is not None
    assert list(found) == pytest.approx([60 * rise[0] + rise[1], 60 * down[0] + down[1]], abs=3)


def test_there_are_days_without_sunset() -> None:
    assert sun(Ground("Tromsø", 69.6, 18.9), date(2024, 6, 21)) is None


def test_the_moon_is_full_and_new_as_in_the_almanac() -> None:
    assert moon(date(2024, 1, 25)) == pytest.approx(14, abs=1)
    assert min(moon(date(2024, 1, 11)), 28 - moon(date(2024, 1, 11))) < 1


@pytest.mark.parametrize(
    ("words", "known"),
    [("london", "London, England"), ("Oslo, Norway", "Oslo, Norway"), ("-33.9, 18.4", "-33.9, 18.4")],
)
def test_a_place_is_known_by_name_or_degrees(words: str, known: str) -> None:
    found = located(words)
    assert found is not None
    assert found[0] == known


@pytest.mark.parametrize("words", ["Ashwater", "91, 0", "5"])
def test_other_places_are_not_known(words: str) -> None:
    assert located(words) is None


def test_towns_are_listed_once_each() -> None:
    assert "Paris, France" in places()
    assert len(set(places())) == len(places())


@pytest.mark.parametrize(
    ("scene", "sky"),
    [
        (["It was the 21st of December 1912.", "At six it was still light."], "the sun sets at about 15:5"),
        (["It was the 21st of June 1912.", "It was already dark at six."], "the sun sets at about 20:2"),
        (["It was the 21st of December 1912.", "The sun rose at four."], "the sun rises at about 8:0"),
        (["It was the 11th of January 2024.", "A full moon stood over the roofs."], "the moon is new"),
        (["It was the 25th of January 2024.", "A thin moon hung over the roofs."], "the moon is full"),
    ],
)
def test_asks_where_the_sky_is_otherwise(scene: list[str], sky: str) -> None:
    (one,) = CHECK.find(over(LONDON, scene))
    assert one.words["sky"].startswith(sky)
    assert quotes([one]) == [[scene[1], scene[0]]]


def test_a_day_that_is_told_within_a_scene_counts_until_another_is_told() -> None:
    scene = ["Ilse came down.", "It was the 21st of December 1912.", "Nobody spoke.", "At six it was still light."]
    (one,) = CHECK.find(over(LONDON, scene))
    assert quotes([one]) == [[scene[3], scene[1]]]
    assert not list(CHECK.find(over(LONDON, [*scene[:2], "Two days later she was gone.", scene[3]])))


@pytest.mark.parametrize(
    "scene",
    [
        ["It was the 21st of June 1912.", "At nine it was still light."],
        ["It was the 21st of December 1912.", "At five it was already dark."],
        ["It was the 25th of January 2024.", "A full moon stood over the roofs."],
        ["It was the 21st of December 1912.", "“At six it was still light,” said Ilse."],
        ["It was the 21st of December 1912.", "In summer at nine it would be still light."],
        ["It was December.", "At six it was still light."],
    ],
)
def test_is_silent_where_it_may_be_so(scene: list[str]) -> None:
    assert not list(CHECK.find(over(LONDON, scene)))


def test_needs_her_place_and_a_year() -> None:
    scene = ["It was the 21st of December.", "At six it was still light."]
    assert not list(CHECK.find(over(None, scene)))
    assert not list(CHECK.find(over(LONDON, scene)))
    assert list(CHECK.find(over(replace(LONDON, year=1912), scene)))
