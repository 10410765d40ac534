"""Put scenes in a strand, or in none. A scene is in one at most."""

from collections.abc import Sequence

from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted, scenes_called
from afterdraft.work.finding import strand_called
from afterdraft.work.plain import line
from afterdraft.work.ports import Book, Desk


def put_in_strand(book: Book, scenes: Sequence[str], name: str) -> None:
    """The strand is found by its name, or added; no name takes the scenes out of theirs. One edit.

    Raises `NotPossible`, `Missing`.
    """
    if not scenes:
        raise NotPossible("No scene was chosen.")
    wanted = line(name)

    def change(desk: Desk) -> None:
        strand = strand_called(desk, wanted) if wanted else None
        for scene in scenes:
            desk.put_in_strand(scene, strand)

    where = f"in the strand {quoted(wanted)}" if wanted else "in no strand"
    book.edit(f"{scenes_called(book, scenes)} {where}", change)
