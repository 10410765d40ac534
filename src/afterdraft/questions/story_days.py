"""The day a scene happens on, where story time knows it."""

from datetime import date

from afterdraft.questions.days_told import happens
from afterdraft.questions.seen import Seen
from afterdraft.reading.time import Time
from afterdraft.whole.calendar import ANY_YEAR

_WHOLE = len("XXXX-05-03")


def day(seen: Seen, number: int) -> date | None:
    """None where the scene may lie on several days. A year that no page says is taken to be one and the same."""
    one = seen.story.scenes[number]
    first, last = one.earliest[:_WHOLE], one.latest[:_WHOLE]
    if len(first) < _WHOLE or first != last:
        return None
    return _read(first)


def day_at(seen: Seen, number: int, paragraph: int) -> date | None:
    """The day that was told last above a paragraph of a scene, if nothing since tells of another; else the scene's."""
    told: date | None = None
    for one in seen.facts[number].times:
        if one.paragraph > paragraph:
            break
        if not one.spoken and one.kind in ("date", "weekday", "interval") and not one.lasting:
            told = _read(one.value) if _is_now(seen.texts[number][one.paragraph], one) else None
    return told or day(seen, number)


def _is_now(text: str, one: Time) -> bool:
    return one.kind == "date" and len(one.value) == _WHOLE and not one.movable and happens(text, one)


def _read(value: str) -> date | None:
    """None for what no calendar has, and for a month or a day that is not said."""
    try:
        return date.fromisoformat(value.replace("XXXX", str(ANY_YEAR)))
    except ValueError:
        return None


def days_between(seen: Seen, first: int, second: int) -> int | None:
    """Whole days from the one scene to the other; None where either day is not known."""
    one, other = day(seen, first), day(seen, second)
    return (other - one).days if one and other else None
