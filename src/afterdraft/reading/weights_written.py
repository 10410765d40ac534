"""Weights of signs as the modules that are made of them hold them: lines of a weight and the signs that have it."""

from collections.abc import Iterator


def entries(lines: str) -> Iterator[tuple[str, float]]:
    """Each sign with its weight.

    >>> dict(entries("-0.5 near | far\\n1.0 named"))
    {'near': -0.5, 'far': -0.5, 'named': 1.0}
    """
    for line in lines.strip().splitlines():
        weight, signs = line.split(" ", 1)
        yield from ((sign, float(weight)) for sign in signs.split(" | "))
