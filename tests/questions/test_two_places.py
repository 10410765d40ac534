"""Somebody in two places at once."""

import pytest

from afterdraft.questions.each.two_places import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow
KITCHEN = [
    "On the 3rd of May 1921, at ten o’clock in the morning, Tobias was in the kitchen.",
    "“It’s cold in the kitchen,” said Tobias. He walked about in the kitchen.",
    "Nobody else was in the kitchen.",
]


def _chapel(day: str, hour: str, who: str = "Tobias") -> list[str]:
    return [
        f"On the {day} of May 1921, at {hour} in the morning, {who} was in the chapel.",
        f"“It’s cold in the chapel,” said {who}. He walked about in the chapel.",
        "Nobody else was in the chapel.",
    ]


def test_asks_where_somebody_is_in_two_places_at_one_hour() -> None:
    (one,) = found_in(CHECK, KITCHEN, MARTA, _chapel("3rd", "ten o’clock"))
    assert one.words["name"] == "Tobias"
    assert {span.scene for span in one.evidence} == {0, 2}


FERRY = "On the third of May, at nine in the evening, Tobias was on the ferry."


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("At nine o’clock in the evening on May the third Tobias stood in the chapel.", 1),
        ("At nine o’clock in the evening on the third of May Tobias waited in the chapel.", 1),
        ("Tobias was slow. It was the third of May, and at nine in the evening he was in the chapel.", 1),
        ("At nine o’clock in the evening on May the third Tobias was on the ferry.", 0),
        ("At nine o’clock in the morning on May the third Tobias stood in the chapel.", 0),
        ("At nine o’clock in the evening on May the fourth Tobias stood in the chapel.", 0),
        ("At nine o’clock in the evening on May the third Marta stood in the chapel.", 0),
        ("“At nine o’clock in the evening on May the third Tobias stood in the chapel,” said Marta.", 0),
    ],
)
def test_asks_where_two_sentences_put_somebody_in_two_places(said: str, asked: int) -> None:
    assert len(found_in(CHECK, [*ILSE, FERRY], MARTA, [*NIGHT, said])) == asked


@pytest.mark.parametrize(
    "scene",
    [_chapel("4th", "ten o’clock"), _chapel("3rd", "eleven o’clock"), _chapel("3rd", "ten o’clock", "Edgar")],
)
def test_is_silent_about_other_days_hours_and_people(scene: list[str]) -> None:
    assert not found_in(CHECK, KITCHEN, MARTA, scene)
