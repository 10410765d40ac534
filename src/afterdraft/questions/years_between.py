"""Years that pass between two scenes, as far as story time or the telling says."""

import re

from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import silenced

YEAR = 365.25  # days
EVER = 200.0  # years: as many as pass where the telling only says that they do
_YEAR = re.compile(
    r"\b(?:January|February|March|April|May|June|July|August|September|October|November|December|spring|summer|autumn"
    r"|fall|winter),?\s(?:of\s)?(?:\d{1,2}(?:st|nd|rd|th)?,\s)?((?:1[5-9]|20)\d\d)\b"
)  # a year alone may be of long ago
_HEADED = re.compile(r"(?<!\d)(?:1[5-9]|20)\d\d(?!\d)")
_PASS = re.compile(
    r"\byears? (?:later|after\w*|passed|pass|went|go by|gone|rolled|had (?:passed|gone)|have (?:passed|gone))\b"
    r"|\bafter (?:\w+ )?(?:\w+ )?years\b|\b(?:next|following) year\b",
    re.IGNORECASE,
)


def years_between(seen: Seen, first: int, second: int, *, unsaid: float) -> tuple[float, float]:
    """Fewest and most, with the second told later; up to `unsaid` where nothing tells."""
    one, other = (seen.story.scenes[number].days for number in (first, second))
    before = next((number for number in range(first, -1, -1) if _years(seen, number)), first)
    told = {year for number in (before, *range(first, second + 1)) for year in _years(seen, number)}
    apart = max(told) - min(told) + 1.0 if len(told) > 1 else 0.0
    if None not in (*one, *other):
        most = ((other[1] or 0) - (one[0] or 0)) / YEAR
        return max(0.0, ((other[0] or 0) - (one[1] or 0)) / YEAR), max(apart, most)
    return 0.0, EVER if any(_pass(seen, number) for number in range(first, second + 1)) else max(apart, unsaid)


def _years(seen: Seen, number: int) -> set[int]:
    """Those of the dates that a scene or its heading says, outside speech."""
    scene = seen.facts[number]
    texts = [silenced(text, scene.quotes, place) for place, text in enumerate(seen.texts[number])]
    return {int(year) for text in texts for year in _YEAR.findall(text)} | headed(seen, number)


def headed(seen: Seen, number: int) -> set[int]:
    """The years that the heading right over a scene says: 'Part Two: 1926'."""
    return {int(year) for line in (seen.heads[number] if seen.heads else ()) for year in _HEADED.findall(line)}


def _pass(seen: Seen, number: int) -> bool:
    """Whether a scene tells, outside speech, that years go by."""
    speech = [(one.paragraph, one.start, one.end) for one in seen.facts[number].quotes]
    return any(
        not any(one == place and start <= match.start() < end for one, start, end in speech)
        for place, text in enumerate(seen.texts[number])
        for match in _PASS.finditer(text)
    )
