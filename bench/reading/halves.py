"""Which novels of the dialogue corpus rules may be tuned on, and which only report.

Written down before the first tuning (`bench/history.md`): the novels in the order of the SHA-256 of their titles;
the first half, six, is for tuning, the other seven only report.
"""

import hashlib
from collections.abc import Iterable
from typing import Literal

Half = Literal["tune", "report"]


def halves(titles: Iterable[str]) -> dict[str, Half]:
    """
    >>> halves(["Emma", "Daisy Miller"])
    {'Daisy Miller': 'tune', 'Emma': 'report'}
    """
    order = sorted(titles, key=lambda title: hashlib.sha256(title.encode()).hexdigest())
    return {title: "tune" if place < len(order) // 2 else "report" for place, title in enumerate(order)}
