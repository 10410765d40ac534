"""Find by name what runs through the book and who is in it, within an edit; what is not there yet is added."""

from collections.abc import Iterable

from afterdraft.desk.cast import Known, KnownKind
from afterdraft.desk.lettering import free_letter
from afterdraft.desk.lines import Line, LineKind, Strand
from afterdraft.desk.order import between
from afterdraft.errors import NotPossible
from afterdraft.work.plain import line as one_line
from afterdraft.work.ports import Desk

READER = "the reader"
WORDS: dict[LineKind, str] = {"thread": "A thread", "setup": "A setup", "reveal": "A reveal"}


def named(text: str, what: str) -> str:
    """A name as it is kept: on one line. Raises `NotPossible` where there is none; `what` as in "A thread"."""
    name = one_line(text)
    if not name:
        raise NotPossible(f"{what} needs a name.")
    return name


def alike(one: str, other: str) -> bool:
    """Whether two names are the same to a reader: case and white space do not count."""
    return one_line(one).casefold() == one_line(other).casefold()


def line_called(desk: Desk, kind: LineKind, name: str) -> str:
    """Id of the thread, setup or reveal of this name; added where there is none. Raises `NotPossible`."""
    wanted = named(name, WORDS[kind])
    found = next((one for one in desk.all_lines() if one.kind == kind and alike(one.name, wanted)), None)
    return found.id if found else new_line(desk, kind, wanted)


def new_line(desk: Desk, kind: LineKind, name: str) -> str:
    """At the end of its kind, with a letter that none of its kind has."""
    others = [one for one in desk.all_lines() if one.kind == kind]
    letter = free_letter(name, {one.letter for one in others})
    return desk.add_line(kind=kind, name=name, letter=letter, place=at_the_end(others))


def strand_called(desk: Desk, name: str) -> str:
    """Id of the strand of this name; added where there is none. Raises `NotPossible`."""
    wanted = named(name, "A strand")
    found = next((one for one in desk.all_strands() if alike(one.name, wanted)), None)
    return found.id if found else new_strand(desk, wanted)


def new_strand(desk: Desk, name: str) -> str:
    others = desk.all_strands()
    letter = free_letter(name, {one.letter for one in others})
    return desk.add_strand(name=name, letter=letter, place=at_the_end(others))


def known_called(desk: Desk, kind: KnownKind, name: str) -> str:
    """Id of the person or place of this name, or else with this other name; added where there is none.

    Raises `NotPossible`.
    """
    wanted = named(name, "A person" if kind == "person" else "A place")
    found = called(desk.known(kind), wanted)
    return found.id if found else desk.add_known(kind, name=wanted, place=at_the_end(desk.known(kind)))


def called(known: Iterable[Known], name: str) -> Known | None:
    """Whose name this is, or else whose other or earlier name."""
    listed = tuple(known)
    by_name = (one for one in listed if alike(one.name, name))
    by_alias = (one for one in listed if any(alike(other, name) for other in one.names))
    return next(by_name, None) or next(by_alias, None)


def learner(desk: Desk, name: str) -> str | None:
    """Who learns of a reveal: None for the reader, whom no name means too; else a person's id, as `known_called`."""
    return None if not name.strip() or alike(name, READER) else known_called(desk, "person", name)


def at_the_end(listed: Iterable[Line | Strand | Known]) -> str:
    """A text key after all of these."""
    return between(max((one.place for one in listed), default=""), "")
