"""Margin comments in the writer's own file: taken as notes, or left where they are."""

from collections.abc import Sequence

from afterdraft.desk.anchor import Anchor, Passage
from afterdraft.desk.note import About
from afterdraft.desk.offer import Offer
from afterdraft.errors import Missing
from afterdraft.work.notes.fastening import fastened, scene_of
from afterdraft.work.ports import Book, Desk


def take_comments(book: Book, draft: str, asides: Sequence[int], *, ink: str | None = None) -> tuple[str, ...]:
    """The comments with these numbers become notes on their passages, as one edit; returns the notes' ids.

    One that her word processor says is resolved becomes a note that is done. Raises `Missing` where one is not offered
    (any more).
    """
    wanted = _offered(book, draft, asides)

    def change(desk: Desk) -> tuple[str, ...]:
        return tuple(_take(desk, draft, offer, ink) for offer in wanted)

    return book.edit(_called("Keep", len(wanted), "as a note", "as notes"), change)


def leave_comments(book: Book, draft: str, asides: Sequence[int]) -> None:
    """They are not offered again. One edit. Raises `Missing`."""
    wanted = _offered(book, draft, asides)

    def change(desk: Desk) -> None:
        for offer in wanted:
            for number in offer.numbers:
                desk.answer_offer(draft, number, None)

    book.edit(_called("Leave", len(wanted), "where it is", "where they are"), change)


def _take(desk: Desk, draft: str, offer: Offer, ink: str | None) -> str:
    comment = offer.comment
    scene = scene_of(desk.division(draft), comment.block)
    made = desk.add_note(
        text=offer.text.strip() or "(a comment without words)",
        about=About(scene, book=scene is None),
        ink=ink,
        state="done" if comment.done else "open",
        anchors=_anchors(desk, draft, offer) if scene else (),
    )
    for number in offer.numbers:
        desk.answer_offer(draft, number, made.id)
    return made.id


def _anchors(desk: Desk, draft: str, offer: Offer) -> tuple[Anchor, ...]:
    """The words it is on; none where it stands at a point between words."""
    comment = offer.comment
    length = len(desk.text(draft, comment.block))
    start, end = comment.start, min(comment.end, length)
    return fastened(desk, draft, [Passage(comment.block, start, end)]) if start < end else ()


def _offered(book: Book, draft: str, asides: Sequence[int]) -> tuple[Offer, ...]:
    known = {offer.aside: offer for offer in book.offers(draft, 0, len(book.words(draft)))}
    if not asides or any(number not in known for number in asides):
        raise Missing("This comment")
    return tuple(known[number] for number in asides)


def _called(act: str, count: int, one: str, several: str) -> str:
    return f"{act} a comment {one}" if count == 1 else f"{act} {count} comments {several}"
