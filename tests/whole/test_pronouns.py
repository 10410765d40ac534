"""Whom pronouns of the narration mean; how often that is right is measured on LitBank (`bench/reading/pronouns.py`)."""

import pytest

from afterdraft.reading.facts import Mention
from afterdraft.whole.book import read_book
from afterdraft.whole.owners import BY_NAME, owners_in
from afterdraft.whole.pronoun_cautions import ALONE, DOUBTED
from afterdraft.whole.pronoun_signs import Candidate, Place, form, nobody, signs
from afterdraft.whole.pronoun_weights import weights
from afterdraft.whole.pronouns import antecedents, likeliest
from afterdraft.whole.turns import meant as meant_by_name
from tests.reading.hand import scene

KNOWN = [
    "Miss Lamb came in, and Mr. Pike rose.",
    "“Sit,” said Miss Lamb.",
    "“No,” said Mr. Pike.",
    "“Why?” said Miss Lamb.",
]


def meant(*paragraphs: str) -> list[tuple[str, float] | None]:
    """Of the pronouns in the paragraphs that follow `KNOWN`."""
    facts = scene(*KNOWN, *paragraphs)
    book = read_book([facts])
    owners = zip(facts.mentions, owners_in(book, 0, facts), strict=True)
    return [owner for one, owner in owners if one.kind == "pronoun" and one.paragraph >= len(KNOWN)]


def test_who_acts_is_meant_and_never_surer_than_a_name() -> None:
    (owner,) = meant("Miss Lamb sat. Her eyes were grey.")
    assert owner == ("read:miss lamb", BY_NAME)


def test_who_came_since_makes_it_doubtful() -> None:
    (owner,) = meant("Miss Lamb nodded to a girl. Her eyes were grey.")
    assert owner is None or owner[1] <= DOUBTED


def test_whoever_is_nobody_of_the_cast_is_nobody() -> None:
    assert meant("A man sat by the door. His eyes were grey.") == [None]


def test_an_i_is_never_he() -> None:
    """The same words, where the I is Mr. Pike and where nobody knows who it is."""
    facts = scene(*KNOWN, "I sat down by the door. His eyes were grey.")
    cast, spoken = read_book([facts]).told[0], read_book([facts]).spoken[0]
    people = meant_by_name(facts, cast)
    told = ["read:mr pike" if one.kind == "self" else who for one, who in zip(facts.mentions, people, strict=True)]
    assert "read:mr pike" in {owner[0] for owner in antecedents(facts, people, spoken, cast) if owner}
    assert "read:mr pike" not in {owner[0] for owner in antecedents(facts, told, spoken, cast) if owner}


@pytest.mark.parametrize(
    ("word", "subject", "expected"),
    [
        ("he", True, "he"),
        ("her", False, "her"),
        ("hers", False, "his"),
        ("herself", False, "himself"),
        ("him", True, "him"),
    ],
)
def test_forms(word: str, subject: bool, expected: str) -> None:
    assert form(Mention(0, 0, 3, "pronoun", word, subject=subject)) == expected


def test_likelier_the_nearer_and_every_sign_has_a_weight_or_none() -> None:
    near = Candidate("near", "f", of_cast=True, paragraph=3, sentence=9, end=10, acts=True, acted=9, named=3, times=9)
    far = Candidate("far", "f", of_cast=True, paragraph=0, sentence=2, end=10, acts=True, acted=2, named=0, times=9)
    place = Place(
        0, Mention(3, 40, 43, "pronoun", "she", "f", subject=True), 10, (near, far), {}, 0, {"near": 0, "far": 1}
    )
    owner = likeliest(place)
    assert owner is not None and owner[0] == "near"
    known = weights()
    assert any(sign in known for sign in signs(place, 0)) and any(sign in known for sign in nobody(place))
    assert likeliest(Place(0, place.pronoun, 10, (), {}, 0, {})) is None


def test_he_right_behind_speech_is_who_speaks() -> None:
    (owner,) = meant("“Come in,” said Miss Lamb to Mr. Pike.", "“No,” said Mr. Pike. “No.” He sat down.")
    assert owner is not None and owner[0] == "read:mr pike"


def test_who_is_brought_in_and_then_speaks_is_likely() -> None:
    (owner,) = meant("Miss Lamb came in.", "“This is Mr. Pike,” said Miss Lamb.", "“I know.” He sat down.")
    assert owner is not None and owner[0] == "read:mr pike"


def test_who_is_called_answers() -> None:
    (owner,) = meant("“Mr. Pike, come in,” said Miss Lamb.", "“No.” He sat down.")
    assert owner is not None and owner[0] == "read:mr pike" and owner[1] >= ALONE


def test_his_right_behind_he_is_the_same() -> None:
    he, his = meant("Mr. Pike stood with Miss Lamb. He turned his eyes on her lamp.")[:2]
    assert he == his


def test_who_is_named_alone_in_a_paragraph_makes_another_doubtful() -> None:
    owners = meant("Mr. Pike said so to Mr. Voss.", "Mr. Pike sat.", "“Now,” said Mr. Voss, and he stood up.")
    assert all(owner is None or owner[0] == "read:mr voss" or owner[1] <= DOUBTED for owner in owners)
