"""Whether a day that a sentence names is the one on which what it tells happens."""

import re

from afterdraft.questions.sentences import sentence
from afterdraft.reading.time import Time
from afterdraft.reading.time_words import MONTHS

NEAR = 30  # characters on either side of a day, chosen on the tuning half
_ELSEWHEN = re.compile(r"\b(?:had|has|have|would|ago|if|shall|will|may|might|every|each|year)\b")
_RELATIVE = re.compile(r"\b(?:who|whom|which)\s[^,;:]*$")
_OF_ANOTHER = re.compile(
    r"\b(?:dated|born|died|letter|wrote|written|newspaper|paper|telegram|remember\w*|due|expected|appointed|fixed|arranged"
    r"|promised|anniversary|birthday|proposed|postponed|(?:was|were|is|are|going)\sto)\b"
)
_LOOKED_TO = re.compile(
    r"\b(?:since|until|till|before|by|from|to|between|after|about|for|or|than|next|last)\s(?:the\s)?$", re.IGNORECASE
)


_MONTH = re.compile(rf"\b(?:{'|'.join(name[:3] for name in MONTHS)})", re.IGNORECASE)


def has_month(text: str, one: Time) -> bool:
    """Whether a date is printed with its month, and is no feast: 'at Christmas' is a week."""
    return bool(_MONTH.search(text, one.start, one.end))


def happens(text: str, one: Time) -> bool:
    """Whether nothing in the sentence tells of another time, and nothing near the day looks to it from elsewhere."""
    begins, ends = sentence(text, one.start, one.end)
    return not (
        one.aside
        or _ELSEWHEN.search(text, begins, ends)
        or _OF_ANOTHER.search(text, max(begins, one.start - NEAR), min(ends, one.end + NEAR))
        or _LOOKED_TO.search(text[begins : one.start])
        or _RELATIVE.search(text[begins : one.start])
    )
