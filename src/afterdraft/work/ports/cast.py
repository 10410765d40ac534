"""Cast and places as the writer enters them: read from an open book, changed in an edit."""

from typing import Literal, Protocol

from afterdraft.desk.cast import Carried, Known, KnownKind, Presence, Present, Setting

Listed = Literal["line", "strand", "person", "place"]


class BookCast(Protocol):
    """For `Book`."""

    def known(self, kind: KnownKind) -> tuple[Known, ...]:
        """The cast, or the places, in their order."""
        ...

    def present(self, draft: str) -> tuple[Present, ...]:
        """Who is in the scenes of a draft, in telling order; within a scene in the order of the cast."""
        ...

    def settings(self, draft: str) -> tuple[Setting, ...]:
        """Where the scenes of a draft happen, in telling order."""
        ...

    def carried(self, draft: str) -> tuple[Carried, ...]:
        """What people come into the scenes of a draft with and leave them with, in telling order."""
        ...


class DeskCast(Protocol):
    """For `Desk`."""

    def known(self, kind: KnownKind) -> tuple[Known, ...]: ...
    def add_known(self, kind: KnownKind, *, name: str, place: str) -> str:
        """Returns its id."""
        ...

    def remove_known(self, kind: KnownKind, id: str) -> None:
        """With everything that is marked with it. Raises `Missing`."""
        ...

    def join_known(self, kind: KnownKind, *, into: str, of: str) -> None:
        """Whatever is marked with `of` is marked with `into`; its names become other names; its note goes under the
        other's. Raises `Missing`."""
        ...

    def set_place(self, kind: Listed, id: str, place: str) -> None:
        """Move it in its list, to a text key. Raises `Missing`."""
        ...

    def viewpoints(self, scene: str) -> tuple[str, ...]:
        """Ids of the people whose viewpoint a scene has."""
        ...

    def set_presence(self, scene: str, person: str, how: Presence | None) -> None:
        """None: not in the scene. Raises `Missing`."""
        ...

    def set_setting(self, scene: str, place: str, *, there: bool) -> None:
        """Raises `Missing`."""
        ...

    def carry(self, scene: str, person: str, *, comes_in: str, leaves: str) -> Carried:
        """Made new; where there is one already its words stay, and the new ones go under them. Raises `Missing`."""
        ...

    def put_down(self, id: str) -> None:
        """Raises `Missing`."""
        ...
