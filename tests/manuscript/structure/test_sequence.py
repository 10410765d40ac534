"""The best run of numbers, against trying every subset."""

from itertools import combinations, pairwise

from hypothesis import given
from hypothesis import strategies as st

from afterdraft.manuscript.structure.lines import read_lines
from afterdraft.manuscript.structure.sequence import SKIPPED, Candidate, best_chain, step
from tests.manuscript.build import heading, made

LINE = read_lines(made(heading("1")).blocks)[0]

CANDIDATES = st.lists(
    st.tuples(st.integers(1, 9), st.sampled_from([-1.0, -0.25, 0.5, 2.0]), st.integers(50, 900)), max_size=9
)


def candidates(drawn: list[tuple[int, float, int]]) -> list[Candidate]:
    told, found = 0, []
    for number, worth, words in drawn:
        told += words
        found.append(Candidate(LINE, number, worth, told, 0))
    return found


def allowed(before: Candidate, after: Candidate) -> bool:
    return after.number == 1 or 0 <= after.number - before.number <= SKIPPED


def by_trying(found: list[Candidate]) -> float:
    """The highest sum of any run whose neighbours may follow each other; ends count only what pays."""
    best = 0.0
    for size in range(1, len(found) + 1):
        for run in combinations(found, size):
            pairs = list(pairwise(run))
            if all(allowed(before, after) for before, after in pairs):
                best = max(best, sum(one.worth for one in run) + sum(step(before, after) for before, after in pairs))
    return best


@given(CANDIDATES)
def test_no_run_is_better_where_numbers_do_not_begin_anew(drawn: list[tuple[int, float, int]]) -> None:
    found = [one for one in candidates(drawn) if one.number > 1]
    few = [one for place, one in enumerate(found) if sum(other.number == one.number for other in found[:place]) < 3]
    assert abs(best_chain(few).score - by_trying(few)) < 1e-9


@given(CANDIDATES)
def test_the_score_is_that_of_the_run(drawn: list[tuple[int, float, int]]) -> None:
    chain = best_chain(candidates(drawn))
    pairs = list(pairwise(chain.found))
    total = sum(one.worth for one in chain.found) + sum(step(before, after) for before, after in pairs)
    assert abs(chain.score - total) < 1e-9
    assert all(allowed(before, after) for before, after in pairs)
