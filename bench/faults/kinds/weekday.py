"""A weekday that its date did not have: with the year beside it, with the year told before, or against another such day
of the book with no year told. Sentences of the author's are made to say the days."""

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from random import Random

from bench.faults import days
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import Place, head, leaps, names, opened, takes_a_day

NEAR = 3  # scenes between two days
APART = range(3, 40)  # days, likewise
WITH_YEAR = ("On {weekday}, {day}, {year},", "It was {weekday}, {day}, {year}.", "{Day}, {year}, was a {weekday}.")
ALONE = ("On {weekday}, {day},", "It was {weekday}, {day}.", "It was {day}, a {weekday}.")
YEAR_TOLD = ("On {day}, {year},", "It was {day}, {year}.", "It was {month} of {year}.")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    known = names(scenes, 20)
    places = [
        (number, at) for number, scene in enumerate(scenes) for at, text in enumerate(scene) if takes_a_day(text, known)
    ]
    for index in random.sample(range(len(places)), len(places)):
        later = [
            one
            for one in places[index + 1 :]
            if one[0] <= places[index][0] + NEAR and not leaps(scenes, places[index], one)
        ]
        day, style = days.some_day(random), random.choice(days.STYLES)
        form = random.choice((_alone, _year_before, _two_days))
        yield from form(scenes, random, places[index], later, day, style)


def _alone(
    scenes: Scenes, random: Random, place: Place, later: Sequence[Place], day: date, style: str
) -> Iterator[Fault]:
    phrase = _phrase(random.choice(WITH_YEAR), day, style, days.another_weekday(day, random))
    yield _fault(scenes, [(place, phrase)], enough=1)


def _year_before(
    scenes: Scenes, random: Random, place: Place, later: Sequence[Place], day: date, style: str
) -> Iterator[Fault]:
    if later:
        then = day + timedelta(days=random.choice(APART))
        told = YEAR_TOLD[:2] if then.year != day.year else YEAR_TOLD
        first = _phrase(random.choice(told), day, style)
        wrong = _phrase(random.choice(ALONE), then, style, days.another_weekday(then, random))
        yield _fault(scenes, [(random.choice(later), wrong), (place, first)])


def _two_days(
    scenes: Scenes, random: Random, place: Place, later: Sequence[Place], day: date, style: str
) -> Iterator[Fault]:
    then = day + timedelta(days=random.choice(APART))
    if later and not day.month < 3 <= then.month:  # a leap day may stand between
        first = _phrase(random.choice(ALONE), day, style, days.weekday(day))
        wrong = _phrase(random.choice(ALONE), then, style, days.another_weekday(then, random))
        yield _fault(scenes, [(random.choice(later), wrong), (place, first)])


def _phrase(form: str, day: date, style: str, weekday: str = "") -> str:
    said = days.said(day, style)
    return form.format(
        weekday=weekday, day=said, Day=said[0].upper() + said[1:], year=day.year, month=days.MONTHS[day.month - 1]
    )


def _fault(scenes: Scenes, told: Sequence[tuple[Place, str]], enough: int = 2) -> Fault:
    """The planted day first."""
    texts = [opened(phrase, scenes[scene][at]) for (scene, at), phrase in told]
    return Fault(
        "weekday",
        tuple(Edit(*place, (text,)) for (place, _), text in zip(told, texts, strict=True)),
        tuple(Shown(place[0], head(phrase, text)) for (place, phrase), text in zip(told, texts, strict=True)),
        enough,
    )
