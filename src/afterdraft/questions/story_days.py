"""The day a scene happens on, where story time knows it."""

from datetime import date

from afterdraft.questions.seen import Seen
from afterdraft.whole.calendar import ANY_YEAR

_WHOLE = len("XXXX-05-03")


def day(seen: Seen, number: int) -> date | None:
    """None where the scene may lie on several days. A year that no page says is taken to be one and the same."""
    one = seen.story.scenes[number]
    first, last = one.earliest[:_WHOLE], one.latest[:_WHOLE]
    if len(first) < _WHOLE or first != last:
        return None
    return date.fromisoformat(first.replace("XXXX", str(ANY_YEAR)))


def days_between(seen: Seen, first: int, second: int) -> int | None:
    """Whole days from the one scene to the other; None where either day is not known."""
    one, other = day(seen, first), day(seen, second)
    return (other - one).days if one and other else None
