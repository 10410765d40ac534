"""What runs through the book, and what follows from what: read from an open book, changed in an edit."""

from collections.abc import Sequence
from typing import Literal, Protocol

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.lines import Does, Follows, Line, LineKind, Strand

Lettered = Literal["line", "strand"]


class BookLines(Protocol):
    """For `Book`."""

    def lines(self, draft: str) -> tuple[Line, ...]:
        """In their order, each with its points in this draft, in telling order; those of planned cards come last."""
        ...

    def line(self, id: str) -> Line:
        """With all its points, in whatever draft. Raises `Missing`."""
        ...

    def strands(self, draft: str) -> tuple[Strand, ...]:
        """In their order, each with its scenes in this draft, in telling order."""
        ...

    def follows(self, draft: str) -> tuple[Follows, ...]:
        """In telling order of the scenes that follow."""
        ...


class DeskLines(Protocol):
    """For `Desk`."""

    def all_lines(self) -> tuple[Line, ...]:
        """Without their points."""
        ...

    def add_line(self, *, kind: LineKind, name: str, letter: str, place: str) -> str:
        """Returns its id."""
        ...

    def remove_line(self, id: str) -> None:
        """With its points. Raises `Missing`."""
        ...

    def add_point(
        self,
        line: str,
        does: Does,
        *,
        scene: str | None,
        laid: str | None = None,
        person: str | None = None,
        anchors: Sequence[Anchor] = (),
    ) -> str:
        """Returns its id; that of the same point where there is one without a passage already, when none is given.
        Raises `Missing`."""
        ...

    def remove_point(self, id: str) -> None:
        """Raises `Missing`."""
        ...

    def all_strands(self) -> tuple[Strand, ...]:
        """Without their scenes."""
        ...

    def add_strand(self, *, name: str, letter: str, place: str) -> str: ...
    def remove_strand(self, id: str) -> None: ...
    def put_in_strand(self, scene: str, strand: str | None) -> None:
        """Take a scene out of the strand it is in, and put it in another. Raises `Missing`."""
        ...

    def set_letter(self, kind: Lettered, id: str, letter: str) -> None: ...
    def add_follows(self, *, scene: str, source: str, why: str) -> str:
        """Returns its id; where they are linked already, that link's, as it stands. Raises `Missing`."""
        ...

    def remove_follows(self, id: str) -> None:
        """Raises `Missing`."""
        ...
