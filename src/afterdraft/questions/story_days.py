"""The day a scene happens on, where story time knows it."""

from dataclasses import dataclass
from datetime import date

from afterdraft.questions.days_told import happens
from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.reading.time import Time
from afterdraft.whole.calendar import ANY_YEAR
from afterdraft.whole.story_time import SceneTime

_WHOLE = len("XXXX-05-03")


def day(seen: Seen, number: int) -> date | None:
    """None where the scene may lie on several days. A year that no page says is taken to be one and the same."""
    one = seen.story.scenes[number]
    first, last = one.earliest[:_WHOLE], one.latest[:_WHOLE]
    if len(first) < _WHOLE or first != last:
        return None
    return _read(first)


def days_of(seen: Seen, number: int) -> tuple[int, int] | None:
    """The first and the last day on which a scene may lie, as ordinals; None where either is not known."""
    one = seen.story.scenes[number]
    first, last = _read(one.earliest[:_WHOLE]), _read(one.latest[:_WHOLE])
    return (first.toordinal(), last.toordinal()) if first and last else None


@dataclass(frozen=True, slots=True)
class Told:
    """The day at a place of a scene."""

    day: date
    year_said: bool  # where not, `ANY_YEAR` stands for it
    span: Span | None = None  # the sentence that tells it; None where story time knows it


def day_at(seen: Seen, number: int, paragraph: int) -> Told | None:
    """The day that was told last above a paragraph of a scene, if nothing since tells of another; else the scene's."""
    told: Told | None = None
    gone_on = False
    for one in seen.facts[number].times:
        if one.paragraph > paragraph:
            break
        if not one.spoken and one.kind in ("date", "weekday", "interval") and not one.lasting:
            before, told = told, _told(seen, number, one)
            gone_on = told is None and (gone_on or before is not None)
    whole = None if told or gone_on else day(seen, number)
    said = not seen.story.scenes[number].earliest.startswith("XXXX")
    return Told(whole, said) if whole else told


def _told(seen: Seen, number: int, one: Time) -> Told | None:
    """None where it tells of no day, or of another than the one that is told of."""
    text = seen.texts[number][one.paragraph]
    if one.kind != "date" or len(one.value) != _WHOLE or one.movable or not happens(text, one):
        return None
    here = _read(one.value)
    span = seen.sentence(seen.span(number, one.paragraph, one.start, one.end))
    return Told(here, not one.value.startswith("XXXX"), span) if here else None


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


def goes_back(seen: Seen, number: int, since: int) -> bool:
    """Whether a scene lies before another that is told earlier, as far as that is known.

    Where most of the book lies before what its first scenes tell, they are its frame: a scene behind them whose time
    nothing says is as likely of what follows."""
    scene, earlier = seen.story.scenes[number], seen.story.scenes[since]
    if not scene.flashback:
        return False
    if earlier.flashback:
        return _is_before(scene, earlier)
    back = sum(one.flashback for one in seen.story.scenes)
    return 2 * back <= len(seen.story.scenes) or any(said.scene == since for said in earlier.rests_on)


def _is_before(one: SceneTime, other: SceneTime) -> bool:
    last, first = one.days[1], other.days[0]
    if last is not None and first is not None:
        return last < first
    years_known = one.latest and "X" not in one.latest + other.earliest
    return bool(years_known) and one.latest[:_WHOLE] < other.earliest[:_WHOLE]
