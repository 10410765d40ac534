"""Valence, against the reference implementation (vaderSentiment 3.3.2 of the method's author)."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from vaderSentiment.vaderSentiment import SentimentIntensityAnalyzer

from afterdraft.reading.lexicon import words_of
from afterdraft.reading.valence import plain, valence
from afterdraft.reading.valence_lexicon import lexicon

REFERENCE = SentimentIntensityAnalyzer()
EXACT = 1e-6
# Words that the rules know, so that every rule is met.
RULED = words_of(
    """
    no not never so this without doubt or nor least at very kind of sort but kiss death to die for beating heart the
    bomb bus stop yeah right just enough shit bad ass really REALLY hardly n't didn't cannot BAD GOOD good love hate
    happy :) ! ? ?? ???? !!!!!! x a
    """
)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "The book was good.",
        "At least it isn't a horrible book.",
        "The book was only kind of good.",
        "It is the BEST of all, and very funny!!!",
        "It was good, but the end was not great at all???",
        "He had never been so glad.",
        "Without a doubt it was a lovely day.",
        "There was no joy or comfort in it.",
        "It hardly helped that she was kind of kind.",
    ],
)
def test_a_sentence_has_the_value_that_the_reference_gives(text: str) -> None:
    assert valence(text) == pytest.approx(REFERENCE.polarity_scores(text)["compound"], abs=EXACT)


@settings(max_examples=400)
@given(
    st.lists(st.one_of(st.sampled_from(sorted(RULED)), st.sampled_from(sorted(lexicon()))), max_size=14).map(" ".join)
)
def test_any_words_have_the_value_that_the_reference_gives(text: str) -> None:
    assert valence(text) == pytest.approx(REFERENCE.polarity_scores(text)["compound"], abs=EXACT)


def test_the_lexicon_is_all_that_its_rules_can_reach() -> None:
    reachable = {word: value for word, value in REFERENCE.lexicon.items() if word.lower() == word and " " not in word}
    assert dict(lexicon()) == reachable


def test_typographic_marks_are_read_as_typed_ones() -> None:
    assert plain("“Don’t—go…”") == '"Don\'t - go..."'
    assert valence(plain("“It isn’t good.”")) == valence('"It isn\'t good."') < 0
