import pytest

from afterdraft.reading.tense import tensed
from afterdraft.reading.tense_forms import Form, form, stem
from tests.reading.rows import parsed


@pytest.mark.parametrize(
    ("words", "expected"),
    [
        ("walk walks walked walking", "walk"),
        ("hop hops hopped hopping", "hop"),
        ("move moves moved moving", "mov"),
        ("carry carries carried carrying", "carri"),
        ("make makes made making", "mak"),
        ("sing sings sang sung singing", "sing"),
        ("pass passed passing", "pass"),
        ("door doors", "door"),
    ],
)
def test_forms_of_one_word_have_one_stem(words: str, expected: str) -> None:
    assert {stem(word) for word in words.split()} == {expected}


@pytest.mark.parametrize(
    ("word", "expected"),
    [
        ("went", "past"),
        ("gone", "part"),
        ("said", "both"),
        ("walked", "both"),
        ("bed", "base"),
        ("need", "base"),
        ("bring", "base"),
        ("going", "base"),
        ("walking", "ing"),
        ("would", "modal"),
        ("goes", "s"),
        ("pass", "base"),
    ],
)
def test_the_form_of_a_verb(word: str, expected: Form) -> None:
    assert form(word) == expected


@pytest.mark.parametrize(
    ("row", "expected"),
    [
        ("She/PRON/nsubj/1 opened/VERB/ROOT/1", (1, 0)),
        ("She/PRON/nsubj/1 opens/VERB/ROOT/1", (0, 1)),
        ("She/PRON/nsubj/2 had/AUX/aux/2 gone/VERB/ROOT/2", (1, 0)),
        ("She/PRON/nsubj/2 has/AUX/aux/2 gone/VERB/ROOT/2", (0, 1)),
        ("I/PRON/nsubj/1 wait/VERB/ROOT/1", (0, 1)),
        ("She/PRON/nsubj/1 put/VERB/ROOT/1", (0, 0)),  # either
        ("She/PRON/nsubj/1 rose/VERB/ROOT/1 and/CCONJ/cc/1 walked/VERB/conj/1", (2, 0)),
        ("She/PRON/nsubj/1 wanted/VERB/ROOT/1 to/PART/aux/3 go/VERB/xcomp/1", (1, 0)),
        ("The/DET/det/1 broken/VERB/amod/2 door/NOUN/ROOT/2", (0, 0)),
        ("It/PRON/nsubj/1 was/AUX/ROOT/1 late/ADJ/acomp/1", (1, 0)),
    ],
)
def test_each_clause_has_its_tense(row: str, expected: tuple[int, int]) -> None:
    assert tensed(parsed(row)) == expected


def test_speech_is_left_out() -> None:
    said = parsed("I/PRON/nsubj/1 go/VERB/ccomp/3 she/PRON/nsubj/3 said/VERB/ROOT/3", speech=[(0, 4)])
    assert tensed(said) == (1, 0)
