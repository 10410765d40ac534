"""Two real drafts of one novel, and revisions of a novel made by chance, held to what the bench holds them to."""

import pytest

from bench.comparison import drafts
from bench.comparison.halves import novels, scenes
from bench.comparison.revise import revision
from bench.comparison.score import Tally, score
from bench.comparison.section import SHARES
from tests.support import need

pytestmark = [pytest.mark.corpus, pytest.mark.slow]


def test_chapters_and_listed_paragraphs_of_the_novel_of_1818_and_1831() -> None:
    need(drafts.FOLDER.is_dir(), "the corpus folder beside the checkout")
    found = drafts.measured()
    assert (found.precision, found.recall) == (1.0, 1.0)
    assert found.pairs >= 0.99


def test_three_revisions_of_a_novel_for_tuning() -> None:
    need(drafts.FOLDER.is_dir(), "the corpus folder beside the checkout")
    first, second = novels("tune")[:2]
    tally = Tally()
    for seed in range(3):
        score(revision(scenes(first), [text for scene in scenes(second) for text in scene], seed), tally, seed=seed)
    assert {name: tally.share(key) for name, (key, target) in SHARES.items() if tally.share(key) < target} == {}
    assert tally.counts["anchors wrong"] == 0
