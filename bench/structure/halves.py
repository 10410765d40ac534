"""Which half of the novels a rule may be tuned on, and which half only reports.

Written down before the first tuning: a novel whose title's SHA-256 begins with an even hexadecimal digit is
for tuning; the others only report. `README.md` lists both.
"""

import hashlib
from typing import Literal

Half = Literal["tune", "report"]


def half(title: str) -> Half:
    """
    >>> half("Dracula")
    'tune'
    """
    return "tune" if int(hashlib.sha256(title.encode()).hexdigest()[0], 16) % 2 == 0 else "report"
