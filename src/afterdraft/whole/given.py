"""What the writer has said of people and speech: constraints that reading starts from, and that outlive it.

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
class Given:
    people: tuple[GivenPerson, ...] = ()
    nobody: frozenset[str] = frozenset()  # forms, as compared, that are no person
    speakers: Mapping[Said, str] = field(default_factory=dict)  # person's id, "" for nobody


NOTHING = Given()
