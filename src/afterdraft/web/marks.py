"""Lettered marks on cards: what each provider says of each scene, in the order of the table."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Literal

from afterdraft.desk.ink import Colour
from afterdraft.web.view import BookView


@dataclass(frozen=True, slots=True)
class Mark:
    """A small lettered sign along the lower edge of a card."""

    kind: Literal["ink", "guarded", "thread", "setup", "reveal", "strand"]
    letter: str
    name: str  # read out, and shown on pointing: "Motive: 2 notes"
    colour: Colour | None = None  # of an ink; nothing else has a hue


Provider = Callable[[BookView], Mapping[str, tuple[Mark, ...]]]  # by scene id

PROVIDERS: tuple[Provider, ...] = ()


def marks(view: BookView) -> dict[str, tuple[Mark, ...]]:
    """All marks of each scene, by scene id."""
    found: dict[str, tuple[Mark, ...]] = {}
    for provider in PROVIDERS:
        for scene, own in provider(view).items():
            found[scene] = (*found.get(scene, ()), *own)
    return found
