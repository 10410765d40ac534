"""Who is said to be like what."""

import pytest

from afterdraft.reading.mentions import mentions
from afterdraft.reading.trait_words import number
from afterdraft.reading.traits import traits
from tests.reading.rows import parsed

HER_EYES = "Her/PRON/poss/2 grey/ADJ/amod/2 eyes/NOUN/nsubj/3 shone/VERB/ROOT/3"
EYES_WERE = "Ilse/PROPN/poss/2 's/PART/case/0 eyes/NOUN/nsubj/3 were/AUX/ROOT/3 gray/ADJ/acomp/3"
EYED = "Ilse/PROPN/nsubj/1 was/AUX/ROOT/1 grey/ADJ/npadvmod/4 -/PUNCT/punct/4 eyed/ADJ/acomp/1"
HAVING = "She/PRON/nsubj/1 had/VERB/ROOT/1 green/ADJ/amod/3 eyes/NOUN/dobj/1"
WITH = (
    "He/PRON/nsubj/1 was/AUX/ROOT/1 a/DET/det/3 man/NOUN/attr/1 with/ADP/prep/3 a/DET/det/7 red/ADJ/amod/7"
    " beard/NOUN/pobj/4"
)
DARK_SO = "Tom/PROPN/nsubj/1 had/VERB/ROOT/1 eyes/NOUN/dobj/1 so/ADV/advmod/4 dark/ADJ/amod/1"
NOT_SO = "Her/PRON/poss/1 eyes/NOUN/nsubj/2 were/AUX/ROOT/2 not/PART/neg/2 blue/ADJ/acomp/2"
UNDER = "He/PRON/nsubj/1 was/AUX/ROOT/1 grey/ADJ/acomp/1 under/ADP/prep/2 the/DET/det/5 eyes/NOUN/pobj/3"
A_LIGHT_BLUE = (
    "He/PRON/nsubj/1 turned/VERB/ROOT/1 his/PRON/poss/3 eyes/NOUN/dobj/1 ./PUNCT/punct/1",
    "They/PRON/nsubj/6 were/AUX/ROOT/6 a/DET/det/9 light/ADJ/amod/9 blue/NOUN/attr/6",
)
TALL = "Ilse/PROPN/nsubj/1 was/AUX/ROOT/1 tall/ADJ/acomp/1"
TALL_APART = "Ilse/PROPN/nsubj/1 sat/VERB/ROOT/1 ,/PUNCT/punct/1 a/DET/det/5 tall/ADJ/amod/5 woman/NOUN/npadvmod/1"
SHORT_WITH = "Ilse/PROPN/nsubj/1 was/AUX/ROOT/1 short/ADJ/acomp/1 with/ADP/prep/2 him/PRON/pobj/3"
HAND = "She/PRON/nsubj/1 was/AUX/ROOT/1 left/ADJ/advmod/4 -/PUNCT/punct/4 handed/ADJ/acomp/1"
AGE = "She/PRON/nsubj/1 was/AUX/ROOT/1 forty/NUM/attr/1 -/PUNCT/punct/4 five/NUM/attr/1 ./PUNCT/punct/1"
AGED_MAN = (
    "He/PRON/nsubj/1 was/AUX/ROOT/1 a/DET/det/3 man/NOUN/attr/1 of/ADP/prep/3 about/ADV/advmod/6 sixty/NUM/pobj/4"
)
YEARS_OLD = "I/PRON/nsubj/1 am/AUX/ROOT/1 ten/NUM/nummod/3 years/NOUN/npadvmod/4 old/ADJ/acomp/1"
SIX_MINUTES = "She/PRON/nsubj/1 was/AUX/ROOT/1 six/NUM/nummod/3 minutes/NOUN/npadvmod/4 late/ADJ/acomp/1"
FORTIES = "She/PRON/nsubj/1 was/AUX/ROOT/1 in/ADP/prep/1 her/PRON/poss/4 forties/NOUN/pobj/2"
SISTER = "His/PRON/poss/2 sister/NOUN/compound/2 Ilse/PROPN/nsubj/3 came/VERB/ROOT/3"
NEXT_ACTS = "With/ADP/prep/5 his/PRON/poss/2 aunt/NOUN/pobj/0 ,/PUNCT/punct/5 Tom/PROPN/nsubj/5 came/VERB/ROOT/5"
DOCTOR = "Ilse/PROPN/nsubj/1 was/AUX/ROOT/1 a/DET/det/3 doctor/NOUN/attr/1"
PRETENDED = "Ilse/PROPN/nsubj/1 pretended/VERB/ROOT/1 to/PART/aux/3 be/AUX/xcomp/1 a/DET/det/5 doctor/NOUN/attr/3"


@pytest.mark.parametrize(
    ("rows", "expected"),
    [
        ((HER_EYES,), [("eyes", "grey", "her")]),
        ((EYES_WERE,), [("eyes", "grey", "ilse")]),
        ((EYED,), [("eyes", "grey", "ilse")]),
        ((HAVING,), [("eyes", "green", "she")]),
        ((WITH,), [("beard", "red", "he")]),
        ((DARK_SO,), [("eyes", "dark", "tom")]),
        ((NOT_SO,), []),
        ((UNDER,), []),
        (A_LIGHT_BLUE, [("eyes", "blue", "his")]),
        ((TALL,), [("height", "tall", "ilse")]),
        ((TALL_APART,), [("height", "tall", "ilse")]),
        ((SHORT_WITH,), []),
        ((HAND,), [("hand", "left", "she")]),
        ((AGE,), [("age", "45", "she")]),
        ((AGED_MAN,), [("age", "60", "he")]),
        ((YEARS_OLD,), [("age", "10", "i")]),
        ((SIX_MINUTES,), []),
        ((FORTIES,), [("age", "40s", "she")]),
        ((SISTER,), [("kin", "sister: ilse", "his")]),
        ((NEXT_ACTS,), []),
        ((DOCTOR,), [("trade", "doctor", "ilse")]),
        ((PRETENDED,), []),
    ],
)
def test_a_trait_has_its_value_and_its_owner(rows: tuple[str, ...], expected: list[tuple[str, str, str]]) -> None:
    one = parsed(*rows)
    here = mentions(one.of, 0, ())
    assert [(trait.kind, trait.value, here[trait.owner].form) for trait in traits(one, 0, here, 0)] == expected


def test_the_words_that_say_it_are_kept() -> None:
    one = parsed(EYES_WERE)
    (trait,) = traits(one, 3, mentions(one.of, 3, ()), 0)
    assert (trait.paragraph, one.of.text[trait.start : trait.end]) == (3, "eyes were gray")


@pytest.mark.parametrize(
    ("word", "expected"),
    [
        ("forty", 40),
        ("forty-five", 45),
        ("nine-and-twenty", 29),
        ("17", 17),
        ("ten", 10),
        ("1805", None),
        ("0", None),
        ("five-five", None),
        ("forty-fifty", None),
        ("forty-", None),
        ("door", None),
        ("", None),
        ("and", None),
    ],
)
def test_numbers_that_ages_are(word: str, expected: int | None) -> None:
    assert number(word) == expected
