"""What was read off the page and is kept with the book, and what the writer says of it."""

from collections.abc import Iterable, Mapping, Sequence
from typing import Protocol

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.cast import Gender, KnownKind, SaidBy


class BookReading(Protocol):
    """For `Book`. What was read is no edit: it is never on the stack, and can be made again."""

    def no_names(self, kind: KnownKind) -> frozenset[str]:
        """Words, as compared, that are no name of a person, or of a place."""
        ...

    def absent(self, draft: str) -> frozenset[tuple[str, str]]:
        """Scene, and the person or place that is not there, whatever reading finds."""
        ...

    def scene_times(self, draft: str) -> dict[str, str]:
        """When scenes happen, in her words, by scene."""
        ...

    def said_by(self, draft: str) -> tuple[SaidBy, ...]:
        """Who speaks, as she says, in order of the text."""
        ...

    def kept_facts(self, keys: Sequence[str]) -> dict[str, str]:
        """Facts of scenes as `reading.keeping` packs them, and what `keep_read` got, by key, as far as it is kept."""
        ...

    def keep_facts(self, key: str, facts: str) -> None: ...
    def keep_read(self, rows: Mapping[str, str]) -> None:
        """What makes the next reading shorter, by keys of their own; what was kept under such a key goes."""
        ...

    def read_whole(self, draft: str) -> tuple[str, str] | None:
        """What the facts of all scenes told when last asked: the key it was kept under, and a JSON form."""
        ...

    def keep_whole(self, draft: str, key: str, form: str) -> None: ...
    def drop_read(self) -> None:
        """Throw away all that was read; it is read again when next wanted."""
        ...


class DeskReading(Protocol):
    """For `Desk`."""

    def set_no_name(self, kind: KnownKind, form: str, *, none: bool) -> None: ...
    def set_names(self, kind: KnownKind, id: str, name: str, aliases: Iterable[str]) -> None:
        """Raises `Missing`."""
        ...

    def set_absent(self, scene: str, who: str, *, absent: bool) -> None:
        """Raises `Missing`."""
        ...

    def set_scene_time(self, scene: str, words: str) -> None:
        """ "" takes it off. Raises `Missing`."""
        ...

    def set_gender(self, person: str, gender: Gender) -> None:
        """Raises `Missing`."""
        ...

    def set_narrator(self, person: str | None) -> None:
        """One at most tells a book as I; None: nobody she names. Raises `Missing`."""
        ...

    def set_followed(self, person: str, *, followed: bool) -> None:
        """Raises `Missing`."""
        ...

    def say_speaker(self, anchors: Sequence[Anchor], person: str | None) -> str:
        """Returns its id. Raises `Missing`."""
        ...

    def unsay_speaker(self, id: str) -> None:
        """Raises `Missing`."""
        ...
