"""Whose a trait is, in the whole book: analysed by hand, as `tests.reading.hand` does."""

import pytest

from afterdraft.questions.each.traits import SURE
from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.trait import Trait
from afterdraft.whole.book import read_book
from afterdraft.whole.measures_form import traits_form
from afterdraft.whole.traits import PersonTrait, can_both_be, find_traits
from tests.reading.hand import scene

KNOWN = [
    "Miss Lamb came in, and Mr. Pike rose.",
    "“Sit,” said Miss Lamb.",
    "“No,” said Mr. Pike.",
    "“Why?” said Miss Lamb.",
]


def found(*paragraphs: str) -> list[tuple[str, float]]:
    """Whose eyes they are: of each 'his eyes' and 'her eyes' in the paragraphs that follow `KNOWN`."""
    facts = scene(*KNOWN, *paragraphs)
    owners = [
        n for n, one in enumerate(facts.mentions) if one.form in ("his", "her", "my") and one.paragraph >= len(KNOWN)
    ]
    described = SceneFacts(
        facts.paragraphs,
        facts.mentions,
        facts.quotes,
        traits=tuple(Trait(_at(facts, one).paragraph, 0, 3, "eyes", "grey", one) for one in owners),
    )
    book = read_book([described])
    names = {person.id: person.name for person in book.cast.people}
    return [(names[one.person], one.sure) for one in find_traits(book, [described]) if one.trait == "eyes"]


def _at(facts: SceneFacts, number: int) -> Mention:
    return facts.mentions[number]


@pytest.mark.parametrize(
    ("paragraphs", "expected"),
    [
        (["Miss Lamb sat. Her eyes were grey."], [("miss lamb", True)]),
        (["Mr. Pike sat. Miss Lamb looked at his eyes."], [("mr pike", True)]),
        (["A man sat by the door. His eyes were grey."], []),  # nobody of the cast
        (["“Sit,” said Mr. Pike. His eyes were grey."], [("mr pike", True)]),
        (["Miss Lamb sat.", *["She stood up."] * 14, "Her eyes were grey."], [("miss lamb", True)]),
        (["Miss Lamb turned her eyes on the chair of Miss Lamb."], [("miss lamb", True)]),
        (["Miss Lamb sat.", *["It rained."] * 3, "Her eyes were grey."], [("miss lamb", True)]),
        (["Miss Lamb sat.", *["It rained."] * 7, "Her eyes were grey."], []),  # too far off
        (["Miss Lamb nodded to a girl. Her eyes were grey."], [("miss lamb", False)]),  # who came since
    ],
)
def test_a_pronoun_is_surely_who_acts_unless_somebody_came_since(
    paragraphs: list[str], expected: list[tuple[str, bool]]
) -> None:
    """Who it is, and whether that is sure enough to be asked about."""
    assert [(person, sure >= SURE) for person, sure in found(*paragraphs)] == expected


def test_titles_are_traits_of_names() -> None:
    facts = scene(*KNOWN)
    book = read_book([facts])
    titles = [(one.value, one.paragraph) for one in find_traits(book, [facts]) if one.trait == "title"]
    assert titles == [("miss", 0), ("mr", 0), ("miss", 1), ("mr", 2), ("miss", 3)]


@pytest.mark.parametrize(
    ("trait", "one", "other", "expected"),
    [
        ("eyes", "grey", "grey", True),
        ("eyes", "green", "brown", False),
        ("eyes", "dark", "blue", False),
        ("eyes", "dark", "brown", True),
        ("eyes", "blue", "grey", True),
        ("hair", "fair", "black", False),
        ("hair", "fair", "grey", True),
        ("hair", "curly", "red", True),
        ("hair", "curly", "straight", False),
        ("height", "short", "tall", False),
        ("trade", "doctor", "baker", True),
    ],
)
def test_what_can_be_said_of_one_person(trait: str, one: str, other: str, expected: bool) -> None:
    assert can_both_be(trait, one, other) is expected
    assert can_both_be(trait, other, one) is expected


def test_the_published_keys() -> None:
    one = PersonTrait("person-0", "eyes", "grey", 1, 0, 4, 13, 0.8)
    assert traits_form([one], places=[[0], [40]], texts=[[""], ["Her grey eyes."]]) == [
        {
            "person": "person-0",
            "trait": "eyes",
            "value": "grey",
            "scene": 1,
            "at": 44,
            "quote": "grey eyes",
            "sure": 0.8,
        }
    ]
