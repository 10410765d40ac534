"""Lettered marks on cards: what each provider says of each scene, in the order of the table."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import Literal

from afterdraft.desk.ink import Colour, Ink
from afterdraft.web import lines
from afterdraft.web.noted import guarded_scenes, ink_ticks
from afterdraft.web.view import BookView


@dataclass(frozen=True, slots=True)
class Mark:
    """A small lettered sign along the lower edge of a card."""

    kind: Literal["ink", "guarded", "thread", "setup", "reveal", "strand"]
    letter: str
    name: str  # read out, and shown on pointing: "Motive: 2 notes"
    colour: Colour | None = None  # of an ink; nothing else has a hue
    sign: lines.Mark | None = None  # how a thread, setup or reveal is drawn


Provider = Callable[[BookView], Mapping[str, tuple[Mark, ...]]]  # by id of the scene, or of a card without one


def runs_through(view: BookView) -> dict[str, tuple[Mark, ...]]:
    """The strand, then threads, setups and reveals."""
    known = lines.lists(view.book, view.draft.id)
    found: dict[str, tuple[Mark, ...]] = {}
    for strand in known.strands:
        for scene in strand.scenes:
            found[scene] = (Mark("strand", strand.letter, f"Strand: {strand.name}"),)
    for place, several in lines.marks_of(known).items():
        drawn = tuple(Mark(one.kind, one.letter, one.words, sign=one) for one in several)
        found[place] = (*found.get(place, ()), *drawn)
    return found


def written_on(view: BookView) -> dict[str, tuple[Mark, ...]]:
    """A tick for each ink that open notes are in."""
    return {place: tuple(_tick(ink, count) for ink, count in own) for place, own in ink_ticks(view).items()}


def guarded(view: BookView) -> dict[str, tuple[Mark, ...]]:
    """A sign where a passage must not be lost."""
    return {
        place: (Mark("guarded", "g", f"{count} guarded {'passage' if count == 1 else 'passages'}"),)
        for place, count in guarded_scenes(view).items()
    }


def _tick(ink: Ink | None, count: int) -> Mark:
    notes = f"{count} {'note' if count == 1 else 'notes'}"
    if ink is None:
        return Mark("ink", "·", f"Plain: {notes}")
    return Mark("ink", ink.letter, f"{ink.name}: {notes}", ink.colour)


PROVIDERS: tuple[Provider, ...] = (written_on, guarded, runs_through)


def marks(view: BookView) -> dict[str, tuple[Mark, ...]]:
    """All marks, by id of the scene, or of a card without one."""
    return _joined(PROVIDERS, view)


def ticks(view: BookView) -> dict[str, tuple[Mark, ...]]:
    """Of `marks`, what is written on the scene and what is guarded in it."""
    return _joined((written_on, guarded), view)


def _joined(providers: Iterable[Provider], view: BookView) -> dict[str, tuple[Mark, ...]]:
    found: dict[str, tuple[Mark, ...]] = {}
    for provider in providers:
        for scene, own in provider(view).items():
            found[scene] = (*found.get(scene, ()), *own)
    return found
