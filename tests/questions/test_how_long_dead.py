"""How long somebody is dead, and ages of the dead."""

import pytest

from afterdraft.questions.each.how_long_dead import CHECK
from afterdraft.questions.question import Finding
from afterdraft.questions.wording import worded
from tests.questions.asked import dated, found_in, quotes
from tests.questions.people import ILSE, MARTA, NIGHT

RAIN = ["It rained, and the rope was wet."]
THREE = "Tobias Kell died three years ago, of his chest."


def asked(*scenes: list[str]) -> list[Finding]:
    return list(CHECK.find(dated(*scenes)))


@pytest.mark.parametrize(
    ("first", "other"),
    [
        (THREE, "Tobias Kell had been dead for six years."),
        (THREE, "“Tobias Kell’s been dead six years,” said Marta."),
        (THREE, "It was six years since Tobias died."),
        (THREE, "It was six years since Tobias Kell died."),
        (THREE, "There was the pipe of Tobias Kell, who had been six years in the grave."),
        (THREE, "Tobias Kell had been drowned eight years before."),
        (THREE, "Tobias Kell has lain six years in the churchyard, and his pole with him."),
        (THREE, "Tobias Kell, six years dead, looked down at her from the wall."),
        (THREE, "Tobias Kell had died this spring."),
        (THREE, "Tobias Kell was drowned seven years ago, off the landing."),
        (THREE, "“We buried Tobias Kell six years ago,” she said."),
        (THREE, "Tobias Kell was a quiet man. He had been dead six years."),
        (THREE, "Tobias Kell died last winter, on the landing."),
        ("Tobias Kell died nine years ago.", "Six years had passed since Tobias died, and she had not sold it."),
        (THREE, "It was six years now since Tobias had died."),
        (THREE, "For six years, ever since Tobias died, she had kept the pole."),
        (THREE, "“It’s six years since we buried Tobias,” she said."),
        (THREE, "“Six years since Tobias went, and you came up the stairs.”"),
        (THREE, "“Six years Tobias has been dead,” she said."),
        (THREE, "She had not sung since Tobias’s funeral, six years back."),
        (THREE, "Tobias’s death, six years ago, had changed nothing."),
        (THREE, "Tobias, who had died six years ago, had built it."),
        (THREE, "Tobias had been gone for six years."),
        ("Tobias Kell had been gone three years.", "In the six years that Tobias had been gone, it had rained."),
        ("The fire was eleven years ago.", "Seven years had gone by since the fire."),
        ("Tobias Kell had died this very spring.", "Tobias Kell was quiet, and he has lain two winters in the yard."),
        ("Tobias Kell died this year.", "“Tobias has been in his grave these three years,” she said."),
        ("Tobias Kell died eight months ago.", "“Tobias has been dead three years,” she said."),
        ("Tobias Kell died twelve years ago.", "Twenty years since Tobias’s death, and nobody had sold the ferry."),
        ("The fire was eleven years ago.", "It was seven years since the fire."),
        ("“That was after the fire. It’s eleven years since the fire.”", "Seven years ago, at the fire, she had run."),
    ],
)  # fmt: skip
def test_asks_where_two_passages_cannot_both_be(first: str, other: str) -> None:
    (one,) = asked([first], RAIN, [other])
    assert one.words["first"]
    assert one.words["other"]


@pytest.mark.parametrize(
    ("first", "between", "other"),
    [
        (THREE, "It rained.", "Tobias Kell had been dead for three years."),
        (THREE, "It rained.", "It was nearly four years since Tobias died."),
        (THREE, "Three years went by.", "Tobias Kell had been dead for six years."),
        (THREE, "It rained.", "Marta Brandt had been dead for six years."),
        (THREE, "It rained.", "Six years had passed since Tobias went out for the rope."),
        (THREE, "It rained.", "Six years had passed since Tobias died, and she had not sold it."),
        (THREE, "It rained.", "Six years had passed since Marta died."),
        (THREE, "It rained.", "Six years after Tobias died, she sold the pole."),
        (THREE, "It rained.", "Tobias had been gone three years and a half."),
        ("Tobias Kell had been gone two weeks.", "It rained.", "Tobias Kell had been gone a year."),
        ("Tobias Kell had been gone six months.", "It rained.", "Tobias Kell had been gone six weeks."),
        (THREE, "It rained.", "Tobias Kell had been dead tired for six years."),
        (THREE, "It rained.", "If Tobias Kell had died six years ago she would have sold it."),
        (THREE, "It rained.", "Tobias Kell had sold the ferry six years ago."),
        (THREE, "It rained.", "By then Tobias Kell had been dead for a year."),
        (THREE, "It rained.", "Tobias Kell’s father died six years ago."),
        (THREE, "It rained.", "Until Tobias Kell died, six years ago or seven, the pole was his."),
        ("Tobias Kell died ten years ago.", "It rained.", "Tobias Kell had been dead for twelve years."),
        ("Tobias Kell died some ten years ago.", "It rained.", "Tobias Kell had been dead for eight years."),
        ("Tobias Kell died last winter.", "It rained.", "Tobias Kell had been dead for a year."),
        ("The fire was eleven years ago.", "It rained.", "It was seven years since the flood."),
        ("The fire was eleven years ago.", "It rained.", "Four years after the fire she went away."),
    ],
)
def test_is_silent_where_both_can_be(first: str, between: str, other: str) -> None:
    assert not asked([first], [between], [other])


@pytest.mark.parametrize(
    "other",
    [
        "Tobias Kell was forty-four when he died.",
        "“Tobias Kell died at forty-four,” she said.",
        "Tobias Kell died, aged forty-four, on the landing.",
        "Tobias Kell was drowned at the age of 44.",
    ],
)
def test_asks_about_two_ages_at_death(other: str) -> None:
    (one,) = asked(["Tobias Kell died at forty-one, of his chest."], RAIN, [other])
    assert one.numbers == {"first": 41, "other": 44}
    assert not asked(["Tobias Kell died at forty-four, of his chest."], RAIN, [other])


DIED = ["Tobias Kell died at forty-one, of his chest.", THREE]


@pytest.mark.parametrize(
    "would",
    [
        "“He’d have been forty-seven in July,” said Marta.",
        "He would have been forty-seven this year.",
        "Tobias would have been forty-seven.",
        "Tobias Kell would be forty-seven now.",
        "“He’d be forty-seven now,” she said.",
        "He would be fifty if he had lived.",
        "“He’d have been forty now.”",
    ],
)
def test_asks_where_the_sum_is_another(would: str) -> None:
    (one,) = asked(DIED, RAIN, [would])
    assert one.numbers == {"age": 41, "sum": 44}
    assert quotes([one])[0][:2] == DIED


@pytest.mark.parametrize(
    "would",
    [
        "“He’d have been forty-four in July,” said Marta.",
        "He would have been forty-five this year.",
        "He would have been forty-seven pounds the richer.",
        "Ilse Brandt would have been forty-seven.",
        "He would have been glad in July.",
    ],
)
def test_is_silent_where_the_sum_is_right(would: str) -> None:
    gone = ["Ilse Brandt died at forty, of her chest.", "Ilse Brandt died seven years ago."]
    assert not asked([*DIED, *gone] if would.startswith("Ilse") else DIED, RAIN, [would])


def test_reads_a_paragraph_that_tells_it_of_one_man() -> None:
    told = (
        "Three years earlier her husband had gone off the ledge. Tobias Kell was forty-one years old. He died at 4:25."
    )
    (one,) = asked([told], RAIN, ["“He’d have been forty-seven in July,” I said."])
    assert one.numbers == {"age": 41, "sum": 44}


def test_the_death_is_read_first_and_then_the_sum() -> None:
    would = "“He’d have been fifty in July,” said Marta."
    assert quotes(asked(DIED, RAIN, [would])) == [[*DIED, would]]
    assert quotes(asked(DIED[::-1], RAIN, [would])) == [[*DIED[::-1], would]]
    assert quotes(asked([would], RAIN, DIED)) == [[*DIED, would]]


def test_years_that_pass_between_are_in_the_sum() -> None:
    years = ["It was the first of May, 1890.", *DIED], ["It was the first of May, 1896."]
    (one,) = asked(years[0], [*years[1], "Tobias Kell would have been forty-four."])
    assert one.numbers == {"age": 41, "sum": 50}
    assert not asked(years[0], [*years[1], "Tobias Kell would have been fifty."])


@pytest.mark.parametrize(
    ("first", "other", "asks"),
    [
        (
            THREE,
            "Tobias Kell has been dead six years.",
            "Tobias Kell died “three years ago”, or, by a later passage, “six years” ago. Which is meant?",
        ),
        (
            "Tobias Kell, six years dead, looked down.",
            "Tobias Kell died last winter, on the landing.",
            "Tobias Kell died “six years” ago, or, by a later passage, “last winter”. Which is meant?",
        ),
        (
            "Two years earlier, Tobias Kell had been drowned.",
            "“We buried Tobias Kell this year,” she said.",
            "Tobias Kell died “two years earlier”, or, by a later passage, “this year”. Which is meant?",
        ),
        (
            "The fire was eleven years ago.",
            "It was seven years since the fire.",
            "The fire was “eleven years” ago, or, by a later passage, “seven years” ago. Which is meant?",
        ),
        (
            "Tobias Kell had been gone three years.",
            "In the six years that Tobias Kell had been gone, it had rained.",
            "Tobias Kell is gone “three years”, or, by a later passage, “six years”. Which is meant?",
        ),
        (
            DIED[0],
            "Tobias Kell was drowned at the age of 44.",
            "Tobias Kell died at 41, or, by a later passage, at 44. Which is meant?",
        ),
    ],
)
def test_what_is_asked_of_two_passages(first: str, other: str, asks: str) -> None:
    assert [worded(CHECK.id, one, ()) for one in asked([first], RAIN, [other])] == [asks]


def test_what_is_asked_of_a_sum() -> None:
    assert [worded(CHECK.id, one, ()) for one in asked(DIED, RAIN, ["He’d have been fifty in July."])] == [
        "Tobias Kell died at 41, “three years ago”, which makes 44. Is “He’d have been fifty in July” meant?"
    ]


@pytest.mark.slow
def test_whoever_is_meant_by_he_or_she_is_read_from_the_cast() -> None:
    told = [*MARTA, "Ilse had died this very spring, in the boathouse."]
    said = "“Tobias, your Ilse would never hear of it, and she has lain these two winters in the yard.”"
    (one,) = found_in(CHECK, ILSE, told, [*MARTA, said])
    assert one.words["name"] == "Ilse"
    assert not found_in(CHECK, ILSE, told, [*MARTA, said.replace("she has", "he has")])


@pytest.mark.slow
@pytest.mark.parametrize(
    ("other", "asks"),
    [
        ("“My husband died three years ago,” said Ilse.", True),
        ("Ilse’s husband had died three years ago.", True),
        ("It was three years since Ilse’s husband died.", True),
        ("“My husband died three years ago,” said Marta.", False),
        ("“My father died three years ago,” said Ilse.", False),
        ("Marta’s husband had died three years ago.", False),
        ("“My husband died six years ago,” said Ilse.", False),
        ("“I’ve been a widow three years,” said Ilse.", True),
        ("Ilse had been a widow for three years.", True),
        ("Ilse, three years a widow, coiled the rope.", True),
        ("Ilse had been a widow for six years.", False),
        ("Ilse was a widow of forty years.", False),
        ("Ilse had been a widow for three years when she sold the boat.", False),
        ("Marta had been a widow for three years.", False),
    ],
)
def test_those_who_are_called_by_kinship_are_known_by_whose_they_are(other: str, asks: bool) -> None:
    first = "Ilse was slow that year. Her husband had been dead for six years."
    assert bool(found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])) == asks


@pytest.mark.slow
def test_whose_father_it_is_may_stand_in_the_paragraph_before() -> None:
    told = [*ILSE, "She sat still. Her father had been dead for six years."]
    other = "“My father died three years ago,” said"
    assert found_in(CHECK, told, MARTA, [*NIGHT, f"{other} Ilse."])
    assert not found_in(CHECK, told, MARTA, [*NIGHT, f"{other} Marta."])
