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

WHICH_WERE = (
    "Ilse/PROPN/poss/2 's/PART/case/0 eyes/NOUN/nsubj/10 ,/PUNCT/punct/2 which/PRON/nsubj/5 were/AUX/relcl/2"
    " brown/ADJ/acomp/5 ,/PUNCT/punct/2 did/AUX/aux/10 not/PART/neg/10 move/VERB/ROOT/10"
)
OF_A_BROWN = "She/PRON/nsubj/1 had/VERB/ROOT/1 eyes/NOUN/dobj/1 of/ADP/prep/2 a/DET/det/5 brown/NOUN/pobj/3"
OF_BROWN_MEN = "She/PRON/nsubj/1 met/VERB/ROOT/1 eyes/NOUN/dobj/1 of/ADP/prep/2 brown/ADJ/amod/5 men/NOUN/pobj/3"
GREY_AND_BLACK = (
    "The/DET/det/4 grey/ADJ/amod/4 and/CCONJ/cc/1 black/ADJ/conj/1 eyes/NOUN/nsubj/7 of/ADP/prep/4"
    " Ilse/PROPN/pobj/5 shone/VERB/ROOT/7"
)
SHE_SAT = (
    "Ilse/PROPN/nsubj/1 felt/VERB/ROOT/1 that/SCONJ/mark/4 she/PRON/nsubj/4 knew/VERB/ccomp/1 ./PUNCT/punct/1",
    "The/DET/det/8 grey/ADJ/amod/8 eyes/NOUN/nsubj/9 shone/VERB/ROOT/9",
)
SAW_ME = (
    "Ilse/PROPN/nsubj/1 saw/VERB/ROOT/1 me/PRON/dobj/1 ./PUNCT/punct/1",
    "The/DET/det/6 grey/ADJ/amod/6 eyes/NOUN/nsubj/7 shone/VERB/ROOT/7",
)
SAW_HER = (
    "Tom/PROPN/nsubj/1 watched/VERB/ROOT/1 her/PRON/dobj/1 ./PUNCT/punct/1",
    "The/DET/det/6 grey/ADJ/amod/6 eyes/NOUN/nsubj/7 shone/VERB/ROOT/7",
)

WHOSE = (
    "Ilse/PROPN/nsubj/6 ,/PUNCT/punct/0 whose/PRON/poss/3 eyes/NOUN/nsubj/4 were/AUX/relcl/0 green/ADJ/acomp/4"
    " sang/VERB/ROOT/6"
)
STRAW = "Her/PRON/poss/4 straw/NOUN/npadvmod/3 -/PUNCT/punct/3 coloured/ADJ/amod/4 hair/NOUN/nsubj/5 shone/VERB/ROOT/5"
ILSE_SAT = "Ilse/PROPN/nsubj/1 sat/VERB/ROOT/1 ./PUNCT/punct/1"
SHE_SAW_TOM = "She/PRON/nsubj/1 saw/VERB/ROOT/1 Tom/PROPN/dobj/1 ./PUNCT/punct/1"
THE_EYES = "The/DET/det/5 grey/ADJ/amod/5 eyes/NOUN/nsubj/6 shone/VERB/ROOT/6"
WHOSE_EYES = "The/DET/det/6 grey/ADJ/amod/6 eyes/NOUN/nsubj/7 shone/VERB/ROOT/7"
AT_FORTY = "At/ADP/prep/4 forty/NUM/pobj/0 ,/PUNCT/punct/4 she/PRON/nsubj/4 sang/VERB/ROOT/4"
AT_TEN = "At/ADP/prep/4 ten/NUM/pobj/0 ,/PUNCT/punct/4 she/PRON/nsubj/4 sang/VERB/ROOT/4"
NAME_AT = "Tom/PROPN/nsubj/5 ,/PUNCT/punct/0 at/ADP/prep/0 forty/NUM/pobj/2 ,/PUNCT/punct/0 sang/VERB/ROOT/5"
THAT_YEAR = "She/PRON/nsubj/1 was/AUX/ROOT/1 thirty/NUM/attr/1 that/DET/det/4 year/NOUN/npadvmod/1"
WAS_ONE = "She/PRON/nsubj/1 was/AUX/ROOT/1 one/NUM/attr/1 that/PRON/nsubj/4 sang/VERB/relcl/2"
SCAR = (
    "He/PRON/nsubj/1 rubbed/VERB/ROOT/1 the/DET/det/3 scar/NOUN/dobj/1 on/ADP/prep/3 his/PRON/poss/7 left/ADJ/amod/7"
    " cheek/NOUN/pobj/4"
)
LAME = "She/PRON/nsubj/1 was/AUX/ROOT/1 lame/ADJ/acomp/1 of/ADP/prep/2 the/DET/det/6 right/ADJ/amod/6 leg/NOUN/pobj/3"
FROM_HER = (
    "Tom/PROPN/nsubj/1 pushed/VERB/ROOT/1 the/DET/det/4 fair/ADJ/amod/4 hair/NOUN/dobj/1 from/ADP/prep/1"
    " her/PRON/poss/7 forehead/NOUN/pobj/5"
)
BACK_FROM = (
    "Tom/PROPN/nsubj/1 pushed/VERB/ROOT/1 the/DET/det/4 fair/ADJ/amod/4 hair/NOUN/dobj/1 back/ADV/advmod/1"
    " from/ADP/prep/5 her/PRON/poss/8 forehead/NOUN/pobj/6"
)
CHEEK = "Her/PRON/poss/2 left/ADJ/amod/2 cheek/NOUN/nsubj/3 burned/VERB/ROOT/3"
TURNED = "She/PRON/nsubj/2 had/AUX/aux/2 turned/VERB/ROOT/2 thirty/NUM/dobj/2 ./PUNCT/punct/2"
TURNED_PAGES = "She/PRON/nsubj/1 turned/VERB/ROOT/1 thirty/NUM/nummod/3 pages/NOUN/dobj/1 ./PUNCT/punct/1"
HER_YEAR = (
    "Ilse/PROPN/nsubj/6 ,/PUNCT/punct/0 in/ADP/prep/6 her/PRON/poss/5 fortieth/ADJ/amod/5 year/NOUN/pobj/2"
    " sat/VERB/ROOT/6 ./PUNCT/punct/6"
)
HIS_FORTY_FIRST = (
    "He/PRON/nsubj/1 was/AUX/ROOT/1 in/ADP/prep/1 his/PRON/poss/7 forty/NUM/amod/7 -/PUNCT/punct/6 first/ADJ/amod/7"
    " year/NOUN/pobj/2 ./PUNCT/punct/1"
)
THE_FIRST_YEAR = (
    "He/PRON/nsubj/1 was/AUX/ROOT/1 in/ADP/prep/1 his/PRON/poss/5 second/ADJ/amod/5 year/NOUN/pobj/2 ./PUNCT/punct/1"
)
NOW = "She/PRON/nsubj/1 was/AUX/ROOT/1 now/ADV/advmod/1 but/ADV/advmod/4 forty/NUM/attr/1 ./PUNCT/punct/1"
SPINSTER = "She/PRON/nsubj/1 was/AUX/ROOT/1 a/DET/det/3 spinster/NOUN/attr/1 of/ADP/prep/3 forty/NUM/pobj/4"

YEAR_OLD = (
    "Ilse/PROPN/nsubj/1 was/AUX/ROOT/1 a/DET/det/10 forty/NUM/nummod/5 -/PUNCT/punct/5 five/NUM/nummod/7"
    " -/PUNCT/punct/7 year/NOUN/npadvmod/9 -/PUNCT/punct/9 old/ADJ/amod/10 woman/NOUN/attr/1"
)


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
        ((YEAR_OLD,), [("age", "45", "ilse")]),
        ((YEARS_OLD,), [("age", "10", "i")]),
        ((SIX_MINUTES,), []),
        ((FORTIES,), [("age", "40s", "she")]),
        ((SISTER,), [("kin", "sister: ilse", "his")]),
        ((NEXT_ACTS,), []),
        ((DOCTOR,), [("trade", "doctor", "ilse")]),
        ((PRETENDED,), []),
        ((WHOSE,), [("eyes", "green", "ilse")]),
        ((STRAW,), [("hair", "fair", "her")]),
        ((ILSE_SAT, THE_EYES), [("eyes", "grey", "ilse")]),
        ((SHE_SAW_TOM, WHOSE_EYES), []),
        ((AT_FORTY,), [("age", "40", "she")]),
        ((AT_TEN,), []),
        ((NAME_AT,), [("age", "40", "tom")]),
        ((THAT_YEAR,), [("age", "30", "she")]),
        ((WAS_ONE,), []),
        ((TURNED,), [("age", "30", "she")]),
        ((TURNED_PAGES,), []),
        ((HER_YEAR,), [("age", "39", "ilse")]),
        ((HIS_FORTY_FIRST,), [("age", "40", "he")]),
        ((THE_FIRST_YEAR,), []),
        ((NOW,), [("age", "40", "she")]),
        ((SPINSTER,), [("age", "40", "she")]),
        ((SCAR,), [("scar", "left cheek", "his")]),
        ((LAME,), [("limp", "right leg", "she")]),
        ((CHEEK,), []),
        ((FROM_HER,), [("hair", "fair", "her")]),
        ((WHICH_WERE,), [("eyes", "brown", "ilse")]),
        ((OF_A_BROWN,), [("eyes", "brown", "she")]),
        ((OF_BROWN_MEN,), []),
        ((GREY_AND_BLACK,), []),
        (SHE_SAT, [("eyes", "grey", "ilse")]),
        (SAW_ME, [("eyes", "grey", "ilse")]),
        (SAW_HER, []),
        ((BACK_FROM,), [("hair", "fair", "her")]),
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
