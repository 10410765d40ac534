"""Cast and places as the writer has them, entered by hand or kept from what reading found; reading meets them."""

from dataclasses import dataclass
from typing import Literal, get_args

from afterdraft.desk.anchor import Anchor

KnownKind = Literal["person", "place"]
Presence = Literal["viewpoint", "on page", "mentioned"]
PRESENCES: tuple[Presence, ...] = get_args(Presence)
Gender = Literal["f", "m", "n", ""]


@dataclass(frozen=True, slots=True)
class Known:
    """A person of the cast, or a place."""

    id: str
    kind: KnownKind
    name: str
    aliases: tuple[str, ...] = ()
    former: tuple[str, ...] = ()  # names from before a renaming; where they still stand is asked about
    note: str = ""
    mark: str = ""  # a colourless mark the writer chose: one or two characters
    place: str = ""  # text key of its place in the order
    revision: int = 0
    gender: Gender = ""  # of a person: as she says, "" where she has not said
    narrator: bool = False  # of a person: the I that tells
    followed: bool = False  # of a person: she wants to see what they say

    @property
    def in_use(self) -> tuple[str, ...]:
        return (self.name, *self.aliases)

    @property
    def names(self) -> tuple[str, ...]:
        """All that it is known by; the text of a draft may hold any of them."""
        return (*self.in_use, *self.former)


@dataclass(frozen=True, slots=True)
class SaidBy:
    """Who speaks a quotation, as she says."""

    id: str
    person: str | None  # None: nobody of the cast
    anchors: tuple[Anchor, ...]


@dataclass(frozen=True, slots=True)
class Present:
    """A person in a scene."""

    scene: str  # id
    person: str  # id
    how: Presence


@dataclass(frozen=True, slots=True)
class Setting:
    """A scene happens in a place."""

    scene: str  # id
    place: str  # id


@dataclass(frozen=True, slots=True)
class Carried:
    """What one person comes into a scene with and leaves it with."""

    id: str
    scene: str
    person: str
    comes_in: str = ""
    leaves: str = ""
    revision: int = 0
