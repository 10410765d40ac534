"""What the writer has said of people, speech, places and times: reading starts from it, and it outlives reading.

A person whom she named, joined, parted or corrected has a permanent id and names of their own. What names two people
share with nobody else settles who is the same and who is not: two forms with one person are one, with two people two.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field

from afterdraft.reading.facts import Gender

Said = tuple[int, int, int]  # a quote: scene, paragraph, start


@dataclass(frozen=True, slots=True)
class GivenPerson:
    """Somebody of the cast as the writer has them; in every cast, also where no text holds them."""

    id: str
    name: str  # as she writes it
    forms: tuple[str, ...]  # their names as compared; each leads to this person and no other
    gender: Gender = ""
    narrator: bool = False


@dataclass(frozen=True, slots=True)
class GivenPlace:
    """A place as the writer has it; among the places of the book, also where no text holds it."""

    id: str
    name: str  # as she writes it
    forms: tuple[str, ...]  # its names as compared


@dataclass(frozen=True, slots=True)
class Given:
    people: tuple[GivenPerson, ...] = ()
    nobody: frozenset[str] = frozenset()  # forms, as compared, that are no person
    speakers: Mapping[Said, str] = field(default_factory=dict)  # person's id, "" for nobody
    places: tuple[GivenPlace, ...] = ()
    nowhere: frozenset[str] = frozenset()  # forms, as compared, that are no place
    settings: Mapping[int, str] = field(default_factory=dict)  # by scene the id of the place it is set in
    times: Mapping[int, str] = field(default_factory=dict)  # by scene her own words for when it happens


NOTHING = Given()
