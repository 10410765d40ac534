"""Places in an order as text keys: to move a thing, only its own key changes.

A key is read as a fraction after the point, in base 36. The method is common practice ("fractional indexing"); the code
is ours. Two keys always have room for one between them, because keys may grow.
"""

from collections.abc import Sequence

DIGITS = "0123456789abcdefghijklmnopqrstuvwxyz"
_BASE = len(DIGITS)


def between(before: str, after: str) -> str:
    """A key after `before` and before `after`; "" stands for the beginning or the end.

    It never ends in "0", so that there is always room before it. Raises `ValueError` unless `before` < `after`.
    """
    if after and before >= after:
        raise ValueError(f"{before!r} does not come before {after!r}")
    key = ""
    bounded = bool(after)  # whether `after` still limits the next figure
    for n in range(max(len(before), len(after)) + 1):
        low = DIGITS.index(before[n]) if n < len(before) else 0
        high = DIGITS.index(after[n]) if bounded and n < len(after) else _BASE
        if high - low > 1:
            return key + DIGITS[(low + high) // 2]
        key += DIGITS[low]
        bounded = bounded and high == low
    return key + DIGITS[_BASE // 2]


def spread(count: int) -> tuple[str, ...]:
    """`count` keys in order, evenly apart and as short as may be, none ending in "0"."""
    width = 1
    while _BASE**width < 2 * (count + 1):
        width += 1
    step = _BASE**width / (count + 1)
    return tuple(_written(round(step * (n + 1)), width) for n in range(count))


def several_between(before: str, after: str, count: int) -> tuple[str, ...]:
    """`count` keys in order between two others."""
    keys: list[str] = []
    for _ in range(count):
        before = between(before, after)
        keys.append(before)
    return tuple(keys)


def beside(keys: Sequence[str], index: int) -> tuple[str, str]:
    """The keys on either side of a place in an order: `index` 0 is before the first."""
    return (keys[index - 1] if index else "", keys[index] if index < len(keys) else "")


def _written(number: int, width: int) -> str:
    figures = ""
    for _ in range(width):
        number, figure = divmod(number, _BASE)
        figures = DIGITS[figure] + figures
    return figures.rstrip("0") or DIGITS[1]
