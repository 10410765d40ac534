"""What is to be read of a draft: the words of its scenes, and what the writer has said of people."""

import json
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from hashlib import sha256
from typing import Any

from afterdraft.reading.keeping import key
from afterdraft.whole.given import Given, GivenPerson, GivenPlace
from afterdraft.whole.told import RECIPE


@dataclass(frozen=True, slots=True)
class Task:
    ids: tuple[str, ...]  # of the scenes
    keys: tuple[str, ...]  # of each scene's facts
    texts: tuple[tuple[str, ...], ...]  # of each scene's story paragraphs
    places: tuple[tuple[int, ...], ...]  # where each begins in the story text
    given: Given
    heads: tuple[tuple[str, ...], ...] = ()  # lines of the heading right over each scene

    @property
    def key(self) -> str:
        """Of what all of it tells: the same scenes and the same words of hers have the same."""
        told = [RECIPE, self.ids, self.keys, self.places, given_form(self.given), self.heads]
        return sha256(json.dumps(told).encode()).hexdigest()


def task(
    ids: Sequence[str],
    texts: Sequence[Sequence[str]],
    places: Sequence[Sequence[int]],
    given: Given,
    *,
    model: str,
    heads: Sequence[Sequence[str]] = (),
) -> Task:
    """`model` names what analyses the words."""
    return Task(
        ids=tuple(ids),
        keys=tuple(key(paragraphs, model=model) for paragraphs in texts),
        texts=tuple(map(tuple, texts)),
        places=tuple(map(tuple, places)),
        given=given,
        heads=tuple(map(tuple, heads)),
    )


def given_form(given: Given) -> dict[str, Any]:
    """As JSON has it; `given_of` gives the same back."""
    return {
        "people": [asdict(person) for person in given.people],
        "nobody": sorted(given.nobody),
        "speakers": [[*place, person] for place, person in sorted(given.speakers.items())],
        "places": [asdict(place) for place in given.places],
        "nowhere": sorted(given.nowhere),
        "settings": sorted(given.settings.items()),
        "times": sorted(given.times.items()),
    }


def given_of(form: dict[str, Any]) -> Given:
    people = tuple(GivenPerson(**{**one, "forms": tuple(one["forms"])}) for one in form["people"])
    speakers = {(scene, paragraph, start): person for scene, paragraph, start, person in form["speakers"]}
    places = tuple(GivenPlace(**{**one, "forms": tuple(one["forms"])}) for one in form["places"])
    return Given(
        people,
        frozenset(form["nobody"]),
        speakers,
        places,
        frozenset(form["nowhere"]),
        dict(form["settings"]),
        dict(form["times"]),
    )


def is_read(language: str) -> bool:
    """Whether people, speech, places and times are read in this language; "" is taken for English."""
    return not language or language.lower().startswith("en")
