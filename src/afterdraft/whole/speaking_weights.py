"""How much each sign of a speaker tells, as a logarithm of odds; set by hand, chosen on the tuning half."""

from collections.abc import Mapping

_BY_KIND = {
    "told": """
acts before 1.10 | acts in -1 0.66 | again 0 -2.64 | again 1 -1.32 | again 2 -0.22 | again 2 own 0.20 |
answers in -1 -0.40 | around 0.22 | back 2 1.10 | back 5 0.33 | gender other -1.32 | gender unknown -0.44 |
meant 0.88 | meant before 0.44 | near 0 0.88 | near 1 0.77 | near 2 0.66 | near 3 0.44 | near 4 0.33 | near 6
0.22 | near no -0.44 | often 1 0.18 | often 2 0.36 | often 3 0.55 | often 4 0.73 | often 5 0.91 | often 6 1.09
| often 7 1.28 | speaks of itself -0.88 | was called 0 1.10 | was called 1 1.10 | was called 2 1.10
""",
    "act": """
acts before 1.10 | acts in -1 0.66 | again 0 -2.64 | again 1 -1.32 | again 2 -0.22 | again 2 own 0.20 |
answers in -1 -0.40 | around 0.22 | back 2 1.10 | back 5 0.33 | gender other -1.32 | gender unknown -0.44 |
meant 0.88 | meant before 0.44 | near 0 0.88 | near 1 0.77 | near 2 0.66 | near 3 0.44 | near 4 0.33 | near 6
0.22 | near no -0.44 | often 1 0.18 | often 2 0.36 | often 3 0.55 | often 4 0.73 | often 5 0.91 | often 6 1.09
| often 7 1.28 | own 2.20 | speaks of itself -0.88 | was called 0 1.10 | was called 1 1.10 | was called 2 1.10
""",
    "none": """
acted 0 0.30 | acted 1 0.30 | acts before 1.70 | acts beside 2.20 | acts in -1 0.66 | again 0 -2.64 | again 1
-1.32 | again 2 -0.22 | again 2 own 0.20 | answers in -1 -0.40 | around 0.22 | back 2 1.10 | back 5 0.33 |
gender other -1.32 | gender unknown -0.44 | meant 0.88 | meant before 0.44 | near 0 0.88 | near 1 0.77 | near
2 0.66 | near 3 0.44 | near 4 0.33 | near 6 0.22 | near no -0.44 | often 1 0.18 | often 2 0.36 | often 3 0.55
| often 4 0.73 | often 5 0.91 | often 6 1.09 | often 7 1.28 | speaks of itself -0.88 | was called 0 1.10 | was
called 1 1.60 | was called 2 1.40
""",
    "pronoun": """
acts before 1.40 | acts in -1 0.66 | again 0 -2.64 | again 1 -1.32 | again 2 -0.22 | again 2 own 0.20 |
answers in -1 -0.40 | around 0.22 | back 2 0.60 | back 5 0.33 | gender other -2.64 | gender unknown -0.44 |
meant 0.88 | meant before 0.44 | narrator -2.64 | near 0 0.88 | near 1 0.77 | near 2 0.66 | near 3 0.44 | near
4 0.33 | near 6 0.22 | near no -0.44 | often 1 0.18 | often 2 0.36 | often 3 0.55 | often 4 0.73 | often 5
0.91 | often 6 1.09 | often 7 1.28 | speaks of itself -0.88 | was called 0 1.10 | was called 1 1.10 | was
called 2 1.10
""",
    "role": """
acts before 1.10 | acts in -1 0.66 | again 0 -2.64 | again 1 -1.32 | again 2 -0.22 | again 2 own 0.20 |
answers in -1 -0.40 | around 0.22 | back 2 1.10 | back 5 0.33 | gender other -2.64 | gender unknown -0.44 |
meant 0.88 | meant before 0.44 | narrator -2.64 | near 0 0.88 | near 1 0.77 | near 2 0.66 | near 3 0.44 | near
4 0.33 | near 6 0.22 | near no -0.44 | often 1 0.18 | often 2 0.36 | often 3 0.55 | often 4 0.73 | often 5
0.91 | often 6 1.09 | often 7 1.28 | speaks of itself -0.88 | was called 0 1.10 | was called 1 1.10 | was
called 2 1.10
""",
    "": """
breaks off -4.40 | calls itself -3.50 | goes on 4.40
""",
}


def _read(kind: str, text: str) -> dict[str, float]:
    rows = (row.split() for row in text.split("|"))
    return {" ".join((kind, *sign)).strip(): float(weight) for *sign, weight in rows}


WEIGHTS: Mapping[str, float] = {
    sign: weight for kind, text in _BY_KIND.items() for sign, weight in _read(kind, text).items()
}
