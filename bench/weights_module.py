"""How a module of learned weights is written: `reading/event_weights.py`, `whole/pronoun_weights.py`."""

from collections.abc import Iterable, Mapping
from textwrap import wrap

_MODULE = '''"""{told}"""

from collections.abc import Mapping
from functools import cache

from afterdraft.reading.weights_written import entries
{figures}

@cache
def weights() -> Mapping[str, float]:
    """By sign."""
    return dict(entries(_LINES))


# A weight, and the signs that have it.
_LINES = """
{lines}
"""
'''


def module(told: str, known: Mapping[str, float], figures: str = "") -> str:
    """Its text: what it tells of itself, other figures it holds, and the weights by sign."""
    return _MODULE.format(told=told, figures=figures and f"\n{figures}\n", lines="\n".join(_lines(known)))


def _lines(known: Mapping[str, float]) -> list[str]:
    """Signs of one weight stand together, parted by ' | '."""
    by_weight: dict[float, list[str]] = {}
    for sign, weight in known.items():
        by_weight.setdefault(weight, []).append(sign)
    return [line for weight in sorted(by_weight) for line in _wrapped(weight, sorted(by_weight[weight]))]


def _wrapped(weight: float, signs: Iterable[str]) -> list[str]:
    """At most 120 letters a line; a sign is never broken."""
    held = " | ".join(sign.replace(" ", "\0") for sign in signs)
    lines = wrap(held, 112, break_long_words=False, break_on_hyphens=False)
    return [f"{weight} {line.replace(chr(0), ' ').strip('| ')}" for line in lines]
