"""How notes and changes stand when a draft comes in: what the counts of a round are taken from."""

import json
from collections.abc import Mapping, Sequence
from typing import Protocol

from afterdraft.desk.change import Change
from afterdraft.desk.note import Note


class Standing(Protocol):
    """What of a book, or of an edit, this reads."""

    def notes(self) -> Sequence[Note]: ...
    def changes(self) -> Sequence[Change]: ...


def standing(desk: Standing, draft: str) -> str:
    """JSON: by id of every note its state, and by id of every change whether it is done.

    `draft`: the one that is the newest now.
    """
    form = {
        "draft": draft,
        "notes": {note.id: note.state for note in desk.notes()},
        "changes": {change.id: "done" if change.done else "open" for change in desk.changes()},
    }
    return json.dumps(form, separators=(",", ":"))


class Kept(Protocol):
    """What of a book the counts of rounds read."""

    def rounds(self) -> Mapping[str, str]: ...
    def kept_findings(self, draft: str) -> str: ...


def changes_then(book: Kept, draft: str) -> frozenset[str] | None:
    """Ids of the changes that were in the plan when `draft` came in; None where that was not written down."""
    form = book.rounds().get(draft)
    return frozenset(json.loads(form)["changes"]) if form else None


def asked_then(book: Kept, draft: str) -> frozenset[str] | None:
    """Fingerprints of all that is asked about a draft, answered or not; None where it was never looked over."""
    form = book.kept_findings(draft)
    return frozenset(json.loads(form)["asked"]) if form else None
