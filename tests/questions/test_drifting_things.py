"""Two given names that hardly stand, and a thing beside both. The text is invented; so are the names."""

import pytest

from afterdraft.questions.each.name_drift import CHECK
from tests.questions.asked import Scenes, found

RAIN = ["It rained on the quay.", "“No,” she said."]


def book(usual: str, other: str) -> Scenes:
    return [[*RAIN, usual], RAIN, [other, *RAIN]]


HORACE = "“Horace worked the winch for thirty years,” she said."


@pytest.mark.parametrize(
    "other",
    [
        "“I said, Albert, you never went short by that winch.”",
        "“There’s his photograph. Albert hated it. It’s the winch behind him.”",
        "“This was Albert’s,” she said, and showed the handle of a winch.",
        "“Bert said so,” she told him. “He said it of his winch.”",
    ],
)
def test_asks_where_one_thing_of_the_book_is_beside_two_names(other: str) -> None:
    (one,) = found(CHECK, *book(HORACE, other))
    assert one.words["usual"] == "Horace"
    assert [span.scene for span in one.evidence] == [0, 2]


@pytest.mark.parametrize(
    "other",
    [
        "“I said, Albert, you never went short by that crane.”",
        "“I said, Edith, you never went short by that winch.”",  # of a woman
        "“I said, Horry, you never went short by that winch.”",
        "“Albert Moss had the winch after him,” she said.",
        "“Mr Albert had the winch after him,” she said.",
        "“His son Albert had the winch after him,” she said.",
        "“There was an Albert who had the winch after him,” she said.",
        "“Albert was in. Albert ate. Albert slept. Albert had the winch.”",
        "Nobody sat by the winch. It was cold. “No,” said Albert.",
    ],
)
def test_is_silent_about_other_people_and_other_things(other: str) -> None:
    assert not found(CHECK, *book(HORACE, other))


def test_is_silent_where_the_thing_is_everywhere_or_both_are_in_one_scene() -> None:
    other = "“I said, Albert, you never went short by that winch.”"
    assert not found(CHECK, *book(HORACE, other), ["The winch was wet."])
    assert not found(CHECK, [*RAIN, HORACE, *RAIN, *RAIN, other])
