"""A place that lies on two sides."""

import pytest

from afterdraft.questions.bearings import bearings
from afterdraft.questions.each.compass import CHECK
from tests.questions.asked import found, quotes


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("To the west, the lights of Kell were going on.", [("Kell", "west")]),
        ("To the north lay Kell, and the moor.", [("Kell", "north")]),
        ("Kell lay a little to the south, in its hollow.", [("Kell", "south")]),
        ("They saw the mainland, far away to the east, in a haze.", [("the mainland", "east")]),
        (
            "Looking south across the water, beyond the boat, she could see the lights of the city.",
            [("the city", "south")],
        ),
        ("The sun came up over Kell.", [("Kell", "east")]),
        ("The sun was going down behind the mainland.", [("the mainland", "west")]),
        ("The red sun sank slowly into the sea.", [("the sea", "west")]),
        ("They sailed in the north Atlantic.", []),
        ("The west wind came from the sea.", []),
        ("Kell lay to the west of Ash.", []),  # from where, is another check's
        ("The sun shone over Kell.", []),
        ("She had come up over the moor.", []),
    ],
)
def test_on_which_side_a_place_is_told_to_lie(text: str, told: list[tuple[str, str]]) -> None:
    assert [(one.place, one.side) for one in bearings(text)] == told


WEST, RISES = "Far down to the west, the lights of Kell went on.", "The sun rose over Kell, straight into their faces."


def test_asks_where_the_sun_rises_over_what_lies_to_the_west() -> None:
    (one,) = found(CHECK, [WEST], ["It rained."], [RISES])
    assert quotes([one]) == [[WEST, RISES]]
    assert dict(one.words) == {"place": "Kell", "first": "lies to the west", "other": "has the sun rise over it"}


@pytest.mark.parametrize(
    "scenes",
    [
        [[WEST], ["The sun went down behind Kell."]],
        [[WEST], ["To the north lay Kell."]],
        [[WEST], ["The sun rose over Ash."]],
        [[WEST], [RISES], ["To the north lay Kell."]],  # they go round it
    ],
)
def test_asks_nothing_else(scenes: list[list[str]]) -> None:
    assert not found(CHECK, *scenes)
