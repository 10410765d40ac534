"""How a line stands: what of it is marked, said as a fact and never as a judgement."""

from collections.abc import Mapping

from afterdraft.desk.lines import Does, Line, LineKind

_NONE: Mapping[LineKind, str] = {
    "thread": "not marked in any scene yet",
    "setup": "not marked in any scene yet",
    "reveal": "nobody learns it yet",
}


def standing(line: Line) -> str:
    """For example "set up, no payoff marked yet"; "" where there is nothing to say."""
    done = {point.does for point in line.points}
    if not done:
        return _NONE[line.kind]
    return _STANDINGS[line.kind](line, done)


def _thread(line: Line, done: set[Does]) -> str:
    if "opens" not in done:
        return "no opening marked yet"
    return "" if "closes" in done else "opened, no close marked yet"


def _setup(line: Line, done: set[Does]) -> str:
    if "setup" not in done:
        return "no setup marked yet"
    return "" if "payoff" in done else "set up, no payoff marked yet"


def _reveal(line: Line, done: set[Does]) -> str:
    knows = any(point.person is None for point in line.points)
    return "" if knows else "not marked yet where the reader learns it"


_STANDINGS = {"thread": _thread, "setup": _setup, "reveal": _reveal}
