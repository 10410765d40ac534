"""The bench of pronouns: weights are the likeliest, and those in the package are the ones that LitBank gives."""

from math import exp

import pytest

from afterdraft.whole.pronoun_weights import weights
from bench.corpus import CORPUS
from bench.reading import learn_pronouns as learn
from bench.reading.pronouns import known, score
from tests.support import need

ROWS = [["near", "acts"], ["near"], ["nobody"]]


def test_weights_are_where_the_slope_is_nothing() -> None:
    """A softmax with a ridge: at the best weights what is expected of each sign differs from what is right by it."""
    some = [(ROWS, 0), (ROWS, 0), (ROWS, 1), (ROWS, 2), (ROWS, 0)]
    found = learn.fitted(some)
    assert set(found) == {"near", "acts", "nobody"}
    scores = [sum(found[sign] for sign in row) for row in ROWS]
    likely = [exp(score) / sum(map(exp, scores)) for score in scores]
    for sign, weight in found.items():
        expected = len(some) * sum(share for row, share in zip(ROWS, likely, strict=True) if sign in row)
        right = sum(sign in rows[at] for rows, at in some)
        assert expected - right + learn.RIDGE * weight == pytest.approx(0, abs=0.05)


def test_a_sign_that_is_seldom_met_has_no_weight() -> None:
    rare = [([["near", "odd"], ["nobody"]], 0)]
    assert "odd" not in learn.fitted([*rare, *[(ROWS, 0)] * learn.SEEN])


@pytest.mark.corpus
def test_the_weights_of_the_package_are_those_that_litbank_gives() -> None:
    need((CORPUS / "litbank").exists(), "the corpus folder beside the checkout")
    learned, kept = learn.learned(known("train")), weights()
    assert set(learned) == set(kept)
    assert all(
        learned[sign] == pytest.approx(kept[sign], abs=0.02) for sign in kept
    )  # other processors round otherwise


@pytest.mark.corpus
def test_whom_they_mean_is_right_where_it_is_sure() -> None:
    """On passages that no weight was learned from: LitBank's own (CC BY 4.0)."""
    need((CORPUS / "litbank").exists(), "the corpus folder beside the checkout")
    held_out = score([*known("dev"), *known("test")])
    assert held_out.right / held_out.sure > 0.85
    assert held_out.right / held_out.of_cast > 0.3
