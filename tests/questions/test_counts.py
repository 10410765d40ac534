"""One thing counted in two ways."""

import pytest

from afterdraft.questions.each.counts import CHECK
from afterdraft.questions.wording import worded
from tests.questions.asked import found, quotes

RAIN = ["It rained all day."]


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("Larch Hill had three hundred and six acres.", "“Three hundred and forty acres,” said the agent."),
        (
            "It came to £18,350 with the stamp.",
            "The sum of £13,850 was paid over on Friday.",
        ),  # two have changed places
        ("He read it off as four thousand and fourteen feet.", "Height above the sea, four thousand and forty-one."),
        ("The bank lent him twenty-three hundred dollars.", "He owed the bank twenty-six hundred dollars."),
        ("There are fourteen hives in the orchard.", "All sixteen hives were humming."),
        ("The hives stood in a row. Fourteen of them, and all painted.", "She lifted the lids of all sixteen hives."),
        ("The loft at Penn Farm held nine bells.", "Nobody at Penn had rung those eleven bells."),
        ("There were six trunks in the hall.", "The four trunks were on the quay."),
        ("Nine trunks, bound in brass, stood there.", "The eleven trunks were of brass and oak."),
        ("They sold it with six hundred and four bales.", "She signed for six hundred and forty bales."),
        ("Penn is four miles from the ferry.", "“Six miles from the ferry to us,” said Ada."),
        ("Sixty-one for, and nineteen against.", "They had voted by sixty-seven to nineteen."),
        ("“Eight for the bridge,” said the clerk. “Eight against.”", "The vote was nine all, and the Mayor decided."),
    ],
)
def test_asks_where_one_thing_is_counted_in_two_ways(one: str, other: str) -> None:
    (asked,) = found(CHECK, [one], RAIN, [other])
    assert [span.scene for span in asked.evidence] == [0, 2]


def test_says_both_numbers_and_shows_the_sentences() -> None:
    one, other = "There are fourteen hives in the orchard.", "All sixteen hives were humming."
    (asked,) = found(CHECK, [f"{one} It was May."], [other])
    assert quotes([asked]) == [[one, other]]
    assert worded("count", asked, ["May", "June"]) == (
        "It is “fourteen hives” in “May” and “sixteen hives” in “June”. Which is meant?"
    )


def test_votes_are_said_in_figures() -> None:
    (asked,) = found(CHECK, ["Sixty-one for, and nineteen against."], ["They voted by sixty-seven to nineteen."])
    assert worded("count", asked, ["May", "June"]).startswith("The vote is 61 to 19 in “May” and 67 to 19 in “June”.")


@pytest.mark.parametrize(
    "scenes",
    [
        ["Larch Hill had three hundred and six acres.", "The three hundred acres lay under snow."],  # as people say it
        ["Larch Hill had three hundred and six acres.", "About three hundred and forty acres burned."],
        ["Larch Hill had three hundred and six acres.", "Ash Hill had six hundred and forty acres."],  # far apart
        ["It was 306 acres.", "It was 340 acres.", "It was 322 acres."],  # there are many
        ["The horse cost 150 pounds.", "The cart cost 120 pounds."],  # round
        ["Nine trunks, bound in brass, stood there.", "The eleven trunks were of oak."],
        ["There are six trunks in the hall.", *20 * ["He shut a trunk."], "The four trunks stood at Penn quay."],
        ["“Six trunks came,” said Bram.", "“Four trunks went back,” said Bram."],
        ["There are six trunks in the hall.", "Ada and Bram had four trunks."],  # or of somebody else
        ["Penn is four miles from the ferry.", "He had walked the six miles home."],
        ["There are fourteen hives in the orchard.", "He had sold two hives.", "All twelve hives were humming."],
        ["There are fourteen hives in the orchard.", "All thirteen hives were humming."],  # one is gone
        ["There are fourteen hives in the orchard.", "Ada had seen sixteen hives at the fair."],
        ["There are fourteen people in the orchard.", "All sixteen people sang."],
        ["Loft and tower held nine bells.", "Someone was ringing eleven bells."],
        ["The bells on Monday were nine bells.", "They rang eleven bells before Monday."],
        ["Sixty-one for, and nineteen against.", "They voted by thirty to twenty-two."],
        ["“Two thousand and fifty,” said the bidder.", "“Two thousand and sixty,” said another."],
        ["The deed was dated eighteen hundred and sixty-one.", "They owed him £1,862."],  # a year
    ],
)
def test_asks_nothing_else(scenes: list[str]) -> None:
    assert not found(CHECK, *([text] for text in scenes))


def test_within_one_scene_they_reckon() -> None:
    assert not found(CHECK, ["“It comes to £18,350,” he said.", "“I make it £13,850,” she said."])


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("The sign man wanted eleven hundred dollars for it.", "She had sold her car for nine hundred dollars."),
        ("It was two hundred and sixty-four yards.", "“Two hundred and sixty-three yards and a bit over.”"),
        ("Seven white wagons stood at the edge.", "Five wagons stood along the edge, humming."),
        ("The house had all eleven floors.", "Beyond it there were nine floors of air."),
    ],
)
def test_is_silent_about_other_sums_what_is_measured_again_and_what_stands_there_now(one: str, other: str) -> None:
    assert not found(CHECK, [one], RAIN, [other])


def test_is_silent_about_women_of_whom_there_are_others() -> None:
    assert not found(CHECK, ["It was a room of eleven women at Penn."], RAIN, ["The shop at Penn had nine women."])
    assert found(CHECK, ["It was a yard of eleven hives at Penn."], RAIN, ["The shop at Penn had nine hives."])
