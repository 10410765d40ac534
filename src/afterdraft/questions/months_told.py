"""Of which month a day is whose month is not said: 'Thursday, the fourteenth'.

The heading of its chapter says it, or what is named above it in the scene, or what was told before as the day; a day
that is announced, and lies ahead, does not, unless it is the one that has come.
"""

import re
from collections.abc import Sequence

from afterdraft.questions.days_apart import is_one_step_off
from afterdraft.questions.running_days import Placed
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.time_words import MONTHS

FAR = 10  # scenes between two days, from which they may be of two years; chosen by hand
_MONTH = "|".join(month.capitalize() for month in MONTHS)
_MONTH_SHORT = "|".join(month[:3].upper() for month in MONTHS)
_NAMED = re.compile(
    rf"\b(?:in|of|till|until|since|early|late|this|last|next)\s(?P<behind>{_MONTH})\b|\b(?P<before>{_MONTH})\s\d"
    rf"|\b\d{{1,2}}(?:st|nd|rd|th)?\s(?:of\s)?(?P<day>{_MONTH}|{_MONTH_SHORT})\b"
)
_HEADS = re.compile(
    rf"(?:^|[,:.;–—(-]\s*|\d(?:st|nd|rd|th)?\s(?:of\s)?|\b(?:in|of|and|to|early|late|mid)[\s-])(?P<month>{_MONTH}|{_MONTH.upper()})"
    rf"(?=\s*(?:$|[,:.;–—()-]|\d|and\b|to\b))"
)  # 'Judith, September', '12 May', not 'The March Hare'
_AHEAD = re.compile(
    r"\b(?:would|will|shall|might|may|(?:is|are|was|were)\s(?:to|due|\w+ing)|due|booked|fixed|set|arranged|expect\w*"
    r"|schedul\w+|planned|promised|announc\w+|invit\w+|next|forward\sto|hop(?:ed|ing)|mean(?:t|s)\sto|till|until|by|for|from"
    r"|before|after|since)\b|[’'](?:ll|d)\b",
    re.IGNORECASE,
)
_IF = re.compile(r"\b(?:if|would|will|shall)\b|[’']ll\b", re.IGNORECASE)  # behind it: 'if that was convenient'


def may_be_held(seen: Seen, one: Placed, other: Placed, by: int, told: Sequence[Placed]) -> bool:
    """Whether two days may be of one month, or of two that are named, or neither is said; `told` are the days that are
    told of what happens. So many scenes off at most, one gives its month to the other."""
    if all(it.day.month or it.day.called for it in (one, other)):
        return True
    months = [it.day.month or _by_heading(seen, it) or _above(seen, it, announced=False) for it in (one, other)]
    if all(months):
        return months[0] == months[1]
    announced = [_above(seen, it, announced=True) for it in (one, other)]
    if not any(months):
        return announced[0] == announced[1]
    named, bare = (one, other) if months[0] else (other, one)
    another = announced[months.index(None)] not in (None, months[0] or months[1])
    return not another and abs(one.scene - other.scene) <= by and _gives_its_month(seen, named, bare, told)


def _gives_its_month(seen: Seen, named: Placed, bare: Placed, told: Sequence[Placed]) -> bool:
    """Whether it stands before the other, or one of its month does that was told some scenes before."""
    if _lies_ahead(seen, named, bare):
        return False
    if _is_before(named, bare):
        return True
    before = [it for it in told if it.day.month and _is_before(it, bare) and bare.scene - it.scene <= FAR]
    return any(it.day.month == named.day.month and not _lies_ahead(seen, it, bare) for it in before)


def _by_heading(seen: Seen, one: Placed) -> int | None:
    """The month that the heading of its chapter names, if it names one alone."""
    over = next((lines for lines in seen.heads[one.scene :: -1] if lines), ()) if seen.heads else ()
    named = {match["month"].lower() for line in over for match in _HEADS.finditer(line)}
    return MONTHS[named.pop()] if len(named) == 1 else None


def _above(seen: Seen, one: Placed, *, announced: bool) -> int | None:
    """The month that is named last before it in its scene, announced or not."""
    if one.heading:
        return None
    scene = seen.texts[one.scene]
    texts = [*scene[: one.day.paragraph], scene[one.day.paragraph][: one.day.start]]
    found = [(text, match) for text in texts for match in _NAMED.finditer(text)]
    if not found or (not announced and _is_ahead(*found[-1])):
        return None
    named = next(filter(None, found[-1][1].groups())).lower()
    return next(number for name, number in MONTHS.items() if name.startswith(named))


def _is_ahead(text: str, match: re.Match[str]) -> bool:
    start = sentence(text, *match.span())[0]
    return bool(_AHEAD.search(text[start : match.end()]))


def _is_before(one: Placed, other: Placed) -> bool:
    places = [(it.scene, not it.heading, it.day.paragraph, it.day.start) for it in (one, other)]
    return places[0] < places[1]


def _lies_ahead(seen: Seen, named: Placed, bare: Placed) -> bool:
    """Whether it is announced, and not the day that has come then."""
    if named.heading or is_one_step_off(named.day, bare.day):
        return False
    text = named.words(seen)
    start, end = sentence(text, named.day.start, named.day.end)
    return bool(_AHEAD.search(text[start : named.day.start]) or _IF.search(text[named.day.end : end]))
