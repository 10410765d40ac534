"""Write in one field of what is the writer's: a card, its Next side, a thread, a change …"""

from collections.abc import Callable, Mapping

from afterdraft.desk.arranging import everything
from afterdraft.errors import NotPossible, Stale
from afterdraft.work.called import quoted, scene_called
from afterdraft.work.cards.arranging import card_called, draft_id
from afterdraft.work.cards.unit_called import unit_called
from afterdraft.work.older import refuse_older
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book, Desk, Fields, LastSave, Saved, Written

FIELD_NAMES: Mapping[tuple[Written, str], str] = {
    ("card", "summary"): "Summary",
    ("card", "comes_in"): "“Comes in with”",
    ("card", "leaves"): "“Leaves with”",
    ("card", "needed_for"): "“Needed for”",
    ("next", "title"): "Title",
    ("next", "what"): "“What shall happen”",
    ("next", "viewpoint"): "Viewpoint, next",
    ("next", "people"): "People, next",
    ("next", "place"): "Place, next",
    ("next", "time"): "Time, next",
    ("next", "length"): "Length, next",
    ("unit", "summary"): "Summary",
    ("unit", "whose"): "“Whose story”",
    ("unit", "wants"): "“What they want”",
    ("unit", "answers"): "“What the end answers”",
    ("arrangement", "why"): "Why",
    ("guarded", "why"): "Why it is guarded",
    ("follows", "why"): "Why it follows",
    ("carried", "comes_in"): "“Comes in with”",
    ("carried", "leaves"): "“Leaves with”",
    ("change", "wrong"): "“What is wrong”",
    ("change", "decide"): "“What I decide”",
    ("change", "work"): "The work",
    ("change place", "words"): "What to do there",
}
_OTHERS = {
    "name": "Name",
    "title": "Title",
    "aliases": "Other names",
    "former": "Earlier names",
    "note": "Note",
    "mark": "Mark",
}
_THINGS: Mapping[Written, str] = {
    "ink": "An ink",
    "line": "It",
    "strand": "A strand",
    "person": "A person",
    "place": "A place",
    "arrangement": "An arrangement",
}
_NEVER = LastSave(revision=0, client="", sequence=0)


def write_field(
    book: Book,
    kind: Written,
    id: str,
    field: str,
    text: str,
    *,
    revision: int,
    client: str,
    sequence: int,
    done: bool,
) -> Saved:
    """Save one field of a row.

    `revision`: the row's, as the window knows it. `client`, `sequence`: which window, and the how-manieth save of it,
    so that a save sent twice, or overtaken on its way, is told from a new one; a plain form has no client, "".
    `done`: the writer has left the field; the next save is an edit of its own.

    Raises `Stale`, and writes nothing, if another window (or undo) changed this field since `revision`; `NotPossible`
    where a name would be left empty, or for a card of an older draft; `Missing`. The revision returned is what the
    window knows after it: it stays where it was while another window's change to another field is unseen, so that
    writing over that one is noticed too.
    """
    refuse_older(book, kind, id)
    name = _named(book, kind, id, field)
    merge = f"{id} {field} {client}"
    words = plain(text)
    _refuse_nameless(kind, field, words)

    def change(desk: Desk) -> Saved:
        stands = desk.fields(kind, id)
        last = stands.last.get(field, _NEVER)
        now = stands.revision
        taken_in = _own(last, client) and last.sequence >= sequence
        if not taken_in and stands.texts[field] != words:
            if _unseen(last, revision, client):
                raise Stale(what=name, stands=stands.texts[field], revision=now)
            now = desk.set_field(kind, id, field, words, client=client, sequence=sequence)
        others = [save for other, save in stands.last.items() if other != field] + list(stands.beside)
        return Saved(revision if any(_unseen(save, revision, client) for save in others) else now)

    saved = book.edit(name, change, merge=merge)
    if done:
        book.end_merge(merge)
    return saved


def write_once(book: Book, kind: Written, id: str, field: str, text: str) -> None:
    """Write a field as one edit of its own, whatever stands there: for forms without a window's memory, for tables
    read in. Raises as `write_field`, but for `Stale`."""
    now = book.fields(kind, id).revision
    write_field(book, kind, id, field, text, revision=now, client="", sequence=0, done=True)


def _refuse_nameless(kind: Written, field: str, words: str) -> None:
    if field == "name" and kind in _THINGS and not words.strip():
        raise NotPossible(f"{_THINGS[kind]} needs a name.")


def _named(book: Book, kind: Written, id: str, field: str) -> str:
    stands = book.fields(kind, id)
    what = FIELD_NAMES.get((kind, field)) or _OTHERS.get(field, field)
    called = _CALLED.get(kind, _first_text)(book, id, stands)
    return f"{what} of {called}" if called else what


def _scenes_card(book: Book, id: str, stands: Fields) -> str:
    return scene_called(book, book.card(id).scene)


def _first_text(book: Book, id: str, stands: Fields) -> str:
    text = next((text for text in stands.texts.values() if text.strip()), "")
    return quoted(text) if text else ""


def _laid_card(book: Book, id: str, stands: Fields) -> str:
    cards = (card for one in book.arrangements(draft_id(book)) for card in everything(one))
    found = next((card for card in cards if card.id == id), None)
    return card_called(book, found) if found else _first_text(book, id, stands)


def _unit_card(book: Book, id: str, stands: Fields) -> str:
    draft = draft_id(book)
    found = next((card for card in book.unit_cards(draft) if card.id == id), None)
    return unit_called(book, draft, found.kind, found.unit) if found else _first_text(book, id, stands)


_CALLED: Mapping[Written, Callable[[Book, str, Fields], str]] = {
    "card": _scenes_card,
    "next": _laid_card,
    "unit": _unit_card,
}


def _unseen(save: LastSave, revision: int, client: str) -> bool:
    """Whether the window does not know this change: it came later than what it read, and is not its own."""
    return save.revision > revision and not _own(save, client)


def _own(save: LastSave, client: str) -> bool:
    return bool(client) and save.client == client
