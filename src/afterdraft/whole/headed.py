"""Whose chapters are, where a book heads them with the names of those who tell them or whose they are."""

import re
from collections.abc import Collection, Iterator, Sequence

from afterdraft.reading.mentions import form

MOST = 0.5  # share of the headings that name somebody, from which that is what the book's headings are for
AT_LEAST = 2  # people so named: a chapter may also be called by whom it is about
_APART = re.compile(r"[—–:;,.|/()\[\]]+(?:\s|$)|\s*[—–]\s*|\s-\s")
_NUMBER = re.compile(
    r"^(?:(?:chapter|part)\s+)?(?:\d+|[ivxl]+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\s+",
    re.IGNORECASE,
)
_TOLD = r"(?:narrative|story|account|diary|journal|statement|testimony|tale)"
_OF = re.compile(
    rf"^(?:(?:told|written|contributed)\s+by|(?:the\s+)?{_TOLD}\s+of)\s+(.+)$|^(.+)[’']s?\s+{_TOLD}$", re.IGNORECASE
)


def names_over(heads: Sequence[Sequence[str]], forms: Collection[str]) -> tuple[str, ...]:
    """For each scene which of the `forms` of names, as compared, its chapter is headed with; "" for none. All are ""
    where headings are no names as a rule. `heads` has for each scene the lines of the heading right over it, none
    within a chapter. The rule is our own; to head chapters so is common practice."""
    found = [next((name for line in lines for name in _names(line) if name in forms), "") for lines in heads]
    headings = [name for name, lines in zip(found, heads, strict=True) if lines]
    named = [name for name in headings if name]
    if len(named) < MOST * len(headings) or len(set(named)) < AT_LEAST:
        return ("",) * len(heads)
    over, told = "", []
    for name, lines in zip(found, heads, strict=True):
        over = name if lines else over
        told.append(over)
    return tuple(told)


def _names(line: str) -> Iterator[str]:
    """What of a heading may be a name, as compared."""
    for part in (line, *_APART.split(line)):
        plain = _NUMBER.sub("", part.strip())
        of = _OF.match(plain)
        yield form((of.group(1) or of.group(2)) if of else plain)
