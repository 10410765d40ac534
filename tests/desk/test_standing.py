"""How lines stand, told as facts."""

import pytest

from afterdraft.desk.lines import DOES, Does, Line, LineKind, Point
from afterdraft.desk.standing import standing


def line(kind: LineKind, *points: tuple[Does, str | None]) -> Line:
    made = tuple(Point(f"p{n}", "l", does, "s", person=person) for n, (does, person) in enumerate(points))
    return Line("l", kind, "A line", "A", points=made)


@pytest.mark.parametrize(
    ("kind", "points", "told"),
    [
        ("thread", [], "not marked in any scene yet"),
        ("thread", ["carries"], "no opening marked yet"),
        ("thread", ["opens", "carries"], "opened, no close marked yet"),
        ("thread", ["opens", "closes"], ""),
        ("setup", [], "not marked in any scene yet"),
        ("setup", ["payoff"], "no setup marked yet"),
        ("setup", ["setup", "return"], "set up, no payoff marked yet"),
        ("setup", ["setup", "payoff"], ""),
        ("reveal", [], "nobody learns it yet"),
        ("reveal", ["learns"], ""),
    ],
)
def test_what_is_said(kind: LineKind, points: list[Does], told: str) -> None:
    assert set(points) <= set(DOES[kind])
    assert standing(line(kind, *((does, None) for does in points))) == told


def test_a_reveal_that_only_people_learn() -> None:
    assert standing(line("reveal", ("learns", "pe1"))) == "not marked yet where the reader learns it"
