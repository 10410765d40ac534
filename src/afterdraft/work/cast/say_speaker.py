"""Say who speaks a quotation."""

from collections.abc import Sequence

from afterdraft.desk.anchor import Passage
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted
from afterdraft.work.cast.found import Found, kept
from afterdraft.work.notes.fastening import fastened
from afterdraft.work.ports import Book, Desk


def say_speaker(book: Book, draft: str, passages: Sequence[Passage], who: Found | None) -> None:
    """None: nobody of the cast. What was said of the same words before goes. One edit.

    Raises `NotPossible` where the passage is not in the text, `Missing`.
    """
    if not passages:
        raise NotPossible("Choose the words that somebody speaks.")
    first = passages[0]
    before = [
        one.id for one in book.said_by(draft) if (one.anchors[0].paragraph, one.anchors[0].start) == _place(first)
    ]
    blocks = book.blocks(draft, first.paragraph, first.paragraph + 1)
    words = blocks[0].text[first.start : first.end] if blocks else ""

    def change(desk: Desk) -> None:
        for old in before:
            desk.unsay_speaker(old)
        desk.say_speaker(fastened(desk, draft, passages), kept(desk, "person", who) if who else None)

    book.edit(f"{who.told if who else 'Nobody of the cast'} speaks {quoted(words)}", change)


def _place(passage: Passage) -> tuple[int, int]:
    return passage.paragraph, passage.start
