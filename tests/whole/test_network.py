"""Points in time and their bounds: against a slow obvious way, and a published example."""

from hypothesis import given
from hypothesis import strategies as st

from afterdraft.whole.network import Bound, Network

POINTS = 6
bounds = st.lists(
    st.builds(
        Bound, st.integers(0, POINTS - 1), st.integers(0, POINTS - 1), st.integers(-10, 20), st.integers(0, 1000)
    ),
    max_size=25,
)


def all_pairs(told: list[Bound[int]]) -> list[list[float]]:
    """Floyd & Warshall: every distance; below 0 from a point to itself is a contradiction."""
    far = [[0 if a == b else float("inf") for b in range(POINTS)] for a in range(POINTS)]
    for one in told:
        far[one.tail][one.head] = min(far[one.tail][one.head], one.most)
    for via in range(POINTS):
        for a in range(POINTS):
            for b in range(POINTS):
                far[a][b] = min(far[a][b], far[a][via] + far[via][b])
    return far


@given(bounds)
def test_it_takes_in_what_floyd_and_warshall_allow_and_knows_the_same_distances(some: list[Bound[int]]) -> None:
    network: Network[int] = Network(POINTS)
    told: list[Bound[int]] = []
    for one in some:
        far = all_pairs([*told, one])
        circle = network.tell(one)
        assert bool(circle) == any(far[point][point] < 0 for point in range(POINTS))
        if not circle:
            told.append(one)
        else:
            assert circle[0] is one
            assert set(circle) <= {*told, one}
            assert sum(bound.most for bound in circle) < 0
            assert {bound.tail for bound in circle} == {bound.head for bound in circle}
    far = all_pairs(told)
    for origin in range(POINTS):
        assert [float("inf") if at is None else at for at in network.latest(origin)] == far[origin]
        assert [float("inf") if at is None else -at for at in network.earliest(origin)] == [row[origin] for row in far]


@given(bounds)
def test_what_a_point_rests_on_alone_gives_its_earliest_and_latest(some: list[Bound[int]]) -> None:
    network: Network[int] = Network(POINTS)
    for one in some:
        network.tell(one)
    for point, rests in enumerate(network.rests_on(0)):
        alone: Network[int] = Network(POINTS)
        for bound in rests:
            assert not alone.tell(bound)
        assert (alone.earliest(0)[point], alone.latest(0)[point]) == (
            network.earliest(0)[point],
            network.latest(0)[point],
        )


def between(network: Network[str], tail: int, head: int, least: int, most: int, why: str = "") -> None:
    assert not network.tell(Bound(tail, head, most, why))
    assert not network.tell(Bound(head, tail, -least, why))


def test_the_example_of_dechter_meiri_and_pearl() -> None:
    """Their example 1.1, from memory: John left home between 7:10 and 7:20 and travels 30–40 minutes; Fred came to work
    between 8:00 and 8:10 after 40–50 minutes; John came 10–20 minutes after Fred left. Their minimal network, from
    memory of figure 5: x1 in [10, 20], x2 in [40, 50], x3 in [20, 30], x4 in [60, 70]."""
    network: Network[str] = Network(5)
    between(network, 0, 1, 10, 20)
    between(network, 1, 2, 30, 40)
    between(network, 3, 2, 10, 20)
    between(network, 3, 4, 40, 50)
    between(network, 0, 4, 60, 70)
    assert network.earliest(0) == [0, 10, 40, 20, 60]
    assert network.latest(0) == [0, 20, 50, 30, 70]


def test_a_contradiction_is_the_circle_of_what_was_said() -> None:
    network: Network[str] = Network(3)
    between(network, 0, 1, 10, 10, "the 10th")
    between(network, 1, 2, 5, 5, "five days later")
    circle = network.tell(Bound(0, 2, 12, "the 12th"))
    assert [bound.why for bound in circle] == ["the 12th", "the 10th", "five days later"]
    assert network.latest(0) == [0, 10, 15]
