"""Planned changes: read from an open book, changed in an edit."""

from typing import Protocol

from afterdraft.desk.change import Change, When


class ChangesBook(Protocol):
    """For `Book`."""

    def changes(self, *, scene: str | None = None, draft: str | None = None) -> tuple[Change, ...]:
        """In the writer's order; all, or those that have a place in a scene. With their places in a draft: the newest,
        unless another is named."""
        ...

    def change(self, id: str) -> Change:
        """Raises `Missing`."""
        ...


class ChangesDesk(Protocol):
    """For `Desk`."""

    def changes(self) -> tuple[Change, ...]: ...
    def add_change(self, *, wrong: str, decide: str, when: When, place: str, note: str | None = None) -> str:
        """`place`: text key of its order. Returns its id. Raises `Missing`."""
        ...

    def remove_change(self, id: str) -> None:
        """With its places. Raises `Missing`."""
        ...

    def put_change(self, id: str, *, when: When, place: str) -> None:
        """Raises `Missing`."""
        ...

    def add_change_place(self, change: str, *, scene: str | None, laid: str | None = None, words: str = "") -> str:
        """After its other places. Returns its id. Raises `Missing`."""
        ...

    def remove_change_place(self, id: str) -> None:
        """Raises `Missing`."""
        ...

    def tick(self, place: str, *, done: bool) -> None:
        """Raises `Missing`."""
        ...
