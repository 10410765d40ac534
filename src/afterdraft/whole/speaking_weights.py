"""How much each sign of a speaker tells, as a logarithm of odds.

Set by hand, one at a time, chosen on the tuning half of the dialogue corpus. A sign of `speaking_signs` has the kind
of turn before it; what holds for every kind stands first.
"""

from collections.abc import Iterator, Mapping

KINDS = ("told", "act", "none", "pronoun", "role")
_EVERYWHERE = """
often 1 0.18 | often 2 0.36 | often 3 0.55 | often 4 0.73 | often 5 0.91 | often 6 1.09 | often 7 1.28
near 0 0.88 | near 1 0.77 | near 2 0.66 | near 3 0.44 | near 4 0.33 | near 6 0.22 | near no -0.44
acts before 1.10 | meant before 0.44 | around 0.22 | acts in -1 0.66 | answers in -1 -0.40
meant 0.88 | gender unknown -0.44 | gender other -1.32
again 0 -2.64 | again 1 -1.32 | again 2 -0.22 | again 2 own 0.20
back 2 1.10 | back 5 0.33 | was called 0 1.10 | was called 1 1.10 | was called 2 1.10
speaks of itself -0.88
"""
_OF_A_KIND = """
none acts beside 2.20 | none acts before 1.70 | none acted 0 0.30 | none acted 1 0.30
none was called 1 1.60 | none was called 2 1.40
pronoun gender other -2.64 | pronoun narrator -2.64 | pronoun acts before 1.40 | pronoun back 2 0.60
role gender other -2.64 | role narrator -2.64
act own 2.20 | calls itself -3.50 | goes on 4.40 | breaks off -4.40
"""


def _read(text: str) -> Iterator[tuple[str, float]]:
    for row in text.strip().replace("\n", " | ").split(" | "):
        sign, weight = row.rsplit(" ", 1)
        yield sign, float(weight)


WEIGHTS: Mapping[str, float] = {
    f"{kind} {sign}": weight for kind in KINDS for sign, weight in _read(_EVERYWHERE)
} | dict(_read(_OF_A_KIND))
