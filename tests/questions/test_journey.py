"""Ways and their lengths: places and distances are invented."""

import pytest

from afterdraft.questions.each.journey import CHECK
from tests.questions.asked import dated, found_in, quotes
from tests.questions.people import ILSE, MARTA

pytestmark = pytest.mark.slow
FOUR = "It was four miles from Ashwater to Thirle."


@pytest.mark.parametrize(
    ("one", "other"),
    [
        (FOUR, "Thirle is nine miles from Ashwater."),
        (FOUR, "From Thirle to Ashwater it was three leagues by the road."),
        (
            "It was two days’ ride from Ashwater to Thirle.",
            "A ride of six days from Thirle to Ashwater was nothing to him.",
        ),
        ("Thirle lies to the north of Ashwater.", "Ashwater lay nine miles north of Thirle."),
    ],
)
def test_asks_where_a_way_is_told_in_two_ways(one: str, other: str) -> None:
    (asked,) = found_in(CHECK, [*ILSE, one], [*MARTA, other])
    assert quotes([asked]) == [[one, other]]


@pytest.mark.parametrize(
    "other",
    [
        "It was five miles from Ashwater to Thirle.",
        "It was twenty miles from Ashwater to Brigsea.",
        "It was an hour’s walk from Ashwater to Thirle.",
        "It was nine miles from here to Thirle.",
        "Thirle lay four miles south of Ashwater.",
    ],
)
def test_is_silent_about_other_ways_and_measures(other: str) -> None:
    assert not found_in(CHECK, [*ILSE, FOUR], [*MARTA, other])


def test_asks_where_there_is_no_time_for_the_way() -> None:
    said = "It was six days’ journey from Ashwater to Thirle, and the road was bad."
    first = [
        "On the third of May Ilse came to Ashwater. In Ashwater it rained.",
        "“Wet,” said Ilse. She stayed in Ashwater.",
        said,
    ]
    second = [
        "On the fifth of May Ilse came to Thirle. In Thirle it was dry.",
        "“Dry,” said Ilse. She was glad to be in Thirle.",
    ]
    (one,) = found_in(CHECK, first, second)
    assert (one.numbers["days"], one.numbers["apart"], one.scenes) == (6, 2, (0, 1))
    later = [second[0].replace("fifth", "ninth"), second[1]]
    assert not found_in(CHECK, first, later)


def test_needs_two_places() -> None:
    assert not list(CHECK.find(dated(["Nothing is told here."])))
