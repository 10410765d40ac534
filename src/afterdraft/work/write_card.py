"""Write on a scene's card."""

from collections.abc import Mapping

from afterdraft.desk.card import CardField
from afterdraft.errors import Stale
from afterdraft.work.called import scene_called
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk, LastSave, Saved

FIELD_NAMES: Mapping[CardField, str] = {
    "summary": "Summary",
    "comes_in": "“Comes in with”",
    "leaves": "“Leaves with”",
    "needed_for": "“Needed for”",
}
_NEVER = LastSave(revision=0, client="", sequence=0)


def write_card(
    book: Book, card: str, field: CardField, text: str, *, revision: int, client: str, sequence: int, done: bool
) -> Saved:
    """Save one field of a card.

    `revision`: the card's, as the window knows it. `client`, `sequence`: which window, and the how-manieth save of it,
    so that a save sent twice, or overtaken on its way, is told from a new one; a plain form has no client, "".
    `done`: the writer has left the field; the next save is an edit of its own.

    Raises `Stale`, and writes nothing, if another window (or undo) changed this field since `revision`. The revision
    returned is what the window knows after it: it stays where it was while another window's change to another field
    is unseen, so that writing over that one is noticed too.
    """
    name = f"{FIELD_NAMES[field]} of {scene_called(book, book.card(card).scene)}"
    merge = f"{card} {field} {client}"
    words = plain(text)

    def change(desk: Desk) -> Saved:
        stands = desk.card(card)
        saves = desk.last_saves(card)
        last = saves.get(field, _NEVER)
        now = stands.revision
        taken_in = _own(last, client) and last.sequence >= sequence
        if not taken_in and getattr(stands, field) != words:
            if _unseen(last, revision, client):
                raise Stale(what=name, stands=getattr(stands, field), revision=now)
            now = desk.set_card_field(card, field, words, client=client, sequence=sequence)
        unseen = any(_unseen(save, revision, client) for other, save in saves.items() if other != field)
        return Saved(revision if unseen else now)

    saved = book.edit(name, change, merge=merge)
    if done:
        book.end_merge(merge)
    return saved


def _unseen(save: LastSave, revision: int, client: str) -> bool:
    """Whether the window does not know this change: it came later than what it read, and is not its own."""
    return save.revision > revision and not _own(save, client)


def _own(save: LastSave, client: str) -> bool:
    return bool(client) and save.client == client
