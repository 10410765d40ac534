"""Years that pass between two scenes, as far as story time or the telling says."""

import re

from afterdraft.questions.seen import Seen

YEAR = 365.25  # days
EVER = 200.0  # years: as many as pass where the telling only says that they do
_PASS = re.compile(
    r"\byears? (?:later|after\w*|passed|pass|went|go by|gone|rolled|had (?:passed|gone)|have (?:passed|gone))\b"
    r"|\bafter (?:\w+ )?(?:\w+ )?years\b|\b(?:next|following) year\b",
    re.IGNORECASE,
)


def years_between(seen: Seen, first: int, second: int, *, unsaid: float) -> tuple[float, float]:
    """Fewest and most, with the second told later; up to `unsaid` where nothing tells."""
    one, other = (seen.story.scenes[number].days for number in (first, second))
    if None not in (*one, *other):
        return max(0.0, ((other[0] or 0) - (one[1] or 0)) / YEAR), ((other[1] or 0) - (one[0] or 0)) / YEAR
    return 0.0, EVER if any(_pass(seen, number) for number in range(first, second + 1)) else unsaid


def _pass(seen: Seen, number: int) -> bool:
    """Whether a scene tells, outside speech, that years go by."""
    speech = [(one.paragraph, one.start, one.end) for one in seen.facts[number].quotes]
    return any(
        not any(one == place and start <= match.start() < end for one, start, end in speech)
        for place, text in enumerate(seen.texts[number])
        for match in _PASS.finditer(text)
    )
