"""500 damaged files of each format: each is read, or refused in words. (`make bench-full` does 10,000.)"""

import time

import pytest

from bench.fuzz import mutants, outcome, specimens

COUNT = 500
SECONDS = 10  # most for one file


@pytest.mark.slow
@pytest.mark.parametrize("ending", specimens())
def test_damaged_files_are_read_or_refused_in_words(ending: str) -> None:
    outcomes = []
    for data in mutants(specimens()[ending], COUNT, seed=1):
        start = time.process_time()
        outcomes.append(outcome(data, f"damaged.{ending}"))
        assert time.process_time() - start < SECONDS
    assert any(outcomes)
