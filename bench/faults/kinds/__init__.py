"""Each kind of fault, one file each: `plant(scenes, random)` gives places for it, in the order to be tried."""

from collections.abc import Mapping

from bench.faults.kinds import (
    age,
    date,
    duplicate,
    given_name,
    gone,
    interval,
    journey,
    leftover,
    name,
    origin,
    person,
    relation,
    renamed,
    season,
    tense,
    trait,
    two_places,
    viewpoint,
    weekday,
)
from bench.faults.planted import Plant

KINDS: Mapping[str, Plant] = {
    "leftover": leftover.plant,  # first: it takes many paragraphs
    "renamed": renamed.plant,
    "weekday": weekday.plant,
    "date": date.plant,
    "interval": interval.plant,
    "name": name.plant,
    "tense": tense.plant,
    "duplicate": duplicate.plant,
    "trait": trait.plant,
    "age": age.plant,
    "two places": two_places.plant,
    "gone": gone.plant,
    "viewpoint": viewpoint.plant,
    "person": person.plant,
    "origin": origin.plant,
    "relation": relation.plant,
    "given name": given_name.plant,
    "season": season.plant,
    "journey": journey.plant,
}
