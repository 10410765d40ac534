"""Cast and places, entered by hand; what reading finds meets them later."""

from dataclasses import dataclass
from typing import Literal, get_args

KnownKind = Literal["person", "place"]
Presence = Literal["viewpoint", "on page", "mentioned"]
PRESENCES: tuple[Presence, ...] = get_args(Presence)


@dataclass(frozen=True, slots=True)
class Known:
    """A person of the cast, or a place."""

    id: str
    kind: KnownKind
    name: str
    aliases: tuple[str, ...] = ()
    note: str = ""
    mark: str = ""  # a colourless mark the writer chose: one or two characters
    place: str = ""  # text key of its place in the order
    revision: int = 0


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
