"""Join two people, or two places, that are one, whether she entered them or reading found them."""

from afterdraft.desk.cast import KnownKind
from afterdraft.errors import NotPossible
from afterdraft.work.cast.found import Found, kept
from afterdraft.work.finding import alike
from afterdraft.work.ports import Book, Desk


def join_found(book: Book, kind: KnownKind, *, into: Found, of: Found) -> str:
    """All names and marks of `of` are those of `into` then; returns its row's id. One edit.

    Raises `NotPossible` for one and itself, `Missing`.
    """
    if into == of or (into.row and into.row == of.row):
        raise NotPossible("These are one already.")

    def change(desk: Desk) -> str:
        stays = kept(desk, kind, into)
        if of.row:
            desk.join_known(kind, into=stays, of=kept(desk, kind, of))
            return stays
        mine = next(one for one in desk.known(kind) if one.id == stays)
        more = [name for name in (of.name, *of.aliases) if not any(alike(name, other) for other in mine.names)]
        desk.set_names(kind, stays, mine.name, [*mine.aliases, *dict.fromkeys(more)])
        return stays

    return book.edit(f"Join {of.told} to {into.told}", change)
