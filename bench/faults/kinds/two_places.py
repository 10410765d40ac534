"""Somebody is shown in two places at one stated time, in two scenes."""

from collections.abc import Iterator
from random import Random

from bench.faults.people import Person, acts, alone, behind, holds, people
from bench.faults.planted import Fault, Scenes, Shown

OFTEN = 8  # of the novel's people, the most named
APART = 2  # scenes between, at least
PLACES = (
    ("at Plymouth", "in York"),
    ("in the library", "on the pier at Brighton"),
    ("in church", "on the platform at Euston"),
    ("at the bank", "by the river, three miles off"),
    ("in a hotel in Paris", "in the drawing-room at home"),
    ("in the garden", "in Edinburgh"),
    ("in the kitchen", "at the station"),
    ("on the quay at Dover", "in Oxford Street"),
    ("at the theatre", "at the inn"),
    ("on the moor", "in a London restaurant"),
)
HOURS = (
    ("at nine o’clock in the evening", "at nine in the evening"),
    ("at ten in the morning", "at ten o’clock in the morning"),
    ("at half-past three in the afternoon", "at half past three in the afternoon"),
    ("at a quarter to eight in the evening", "about a quarter to eight in the evening"),
    ("at noon", "at twelve o’clock noon"),
    ("at eleven at night", "at eleven o’clock at night"),
    ("at midnight", "on the stroke of midnight"),
)
DAYS = ("the {d} of {m}", "{m} the {d}")
MONTHS = ("January", "February", "March", "April", "June", "September", "October", "November")
NTH = ("second", "fourth", "fifth", "seventh", "eleventh", "fourteenth", "seventeenth", "twentieth", "twenty-third")
SAYS = (
    "{Hour} on {day} {n} was {place}.",
    "On {day}, {hour}, {n} was {place}.",
    "{Hour} on {day} {n} stood {place} and looked about {him}.",
    "It was {day}, and {hour} {he} was {place}.",
    "{Hour}, on {day}, {n} found {him}self alone {place}.",
    "On {day} {n} waited {place} {hour}, and nobody came.",
    "{Hour} on {day} {he} met an acquaintance {place}.",
    "{n} had been {place} {hour} on {day}.",
)


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    chosen = list(people(scenes)[:OFTEN])
    random.shuffle(chosen)
    for person in chosen * 3:
        found = list(acts(scenes, person))
        places, hours = list(random.choice(PLACES)), list(random.choice(HOURS))
        random.shuffle(places)
        random.shuffle(hours)
        nth, month = random.choice(NTH), random.choice(MONTHS)
        days = [random.choice(DAYS).format(d=nth, m=month) for _ in range(2)]
        first = random.choice(found) if found else None
        later = [one for one in found if first and one.scene >= first.scene + APART]
        if first and later:
            ends = (first, random.choice(later))
            said = [
                _said(person, day, hour, where, random, named=not alone(scenes, person, place))
                for day, hour, where, place in zip(days, hours, places, ends, strict=True)
            ]
            edits = tuple(behind(scenes, place, f" {words}") for place, words in zip(ends, said, strict=True))
            shown = tuple(Shown(place.scene, words) for place, words in zip(ends, said, strict=True))
            if holds(scenes, fault := Fault("two places", edits, shown[::-1])):
                yield fault


def _said(person: Person, day: str, hour: str, place: str, random: Random, *, named: bool) -> str:
    pattern = random.choice([one for one in SAYS if "{n}" in one or not named])
    return pattern.format(day=day, hour=hour, Hour=hour[0].upper() + hour[1:], place=place, **person.pronouns)
