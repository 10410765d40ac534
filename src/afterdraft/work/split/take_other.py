"""Answer doubts with the other reading: a line becomes what the program nearly took it for."""

from collections.abc import Mapping
from typing import Any, Final, NamedTuple

from afterdraft.errors import EditRefused, Missing, NotPossible
from afterdraft.manuscript.division import Division, Doubt, Reading
from afterdraft.manuscript.outline import leaves
from afterdraft.work.called import line_called
from afterdraft.work.ports import Book, Desk
from afterdraft.work.split.mending import keep_cards
from afterdraft.work.split.replay import ACTS

CALLED: Final[Mapping[Reading, tuple[str, str]]] = {  # one, and several
    "part": ("the heading of a part", "headings of parts"),
    "chapter": ("the heading of a chapter", "headings of chapters"),
    "scene": ("a new scene", "new scenes"),
    "mark": ("a scene break", "scene breaks"),
    "text": ("text", "text"),
    "front matter": ("front matter", "front matter"),
    "back matter": ("back matter", "back matter"),
}


class Answer(NamedTuple):
    """A correction, as `replay` makes it and the book keeps it."""

    kind: str
    paragraph: int
    detail: Mapping[str, Any]


def take_other(book: Book, draft: str, *paragraphs: int) -> None:
    """Make each line what its doubt's `other` says, as one edit.

    Of several lines those that cannot become so stay as they are, and in doubt. Raises `Missing` where a line is in no
    doubt, and `Missing` or `NotPossible` where none of them can become so.
    """
    asked = {doubt.paragraph: doubt for doubt in book.doubts(draft)}
    doubts = [asked[paragraph] for paragraph in paragraphs if paragraph in asked]
    if len(doubts) < len(paragraphs) or not doubts:
        raise Missing("This doubt")

    def change(desk: Desk) -> None:
        refused = [why for doubt in doubts if (why := _taken(desk, draft, doubt))]
        if len(refused) == len(doubts):
            raise refused[0]
        desk.follow_anchors(draft)

    one, several = CALLED[doubts[0].other]
    alone = len(doubts) == 1
    name = f"Make {line_called(book, draft, paragraphs[0])} {one}" if alone else f"Make {len(doubts)} lines {several}"
    book.edit(name, change)


def _taken(desk: Desk, draft: str, doubt: Doubt) -> EditRefused | None:
    """Why the line cannot become the other; None where it has."""
    before = desk.division(draft)
    try:
        answer = _answer(before, doubt)
        now = ACTS[answer.kind](desk, draft, before, answer.paragraph, answer.detail)
    except EditRefused as refused:
        return refused
    keep_cards(desk, before, now)
    desk.set_division(draft, now)
    desk.close_doubt(draft, doubt.paragraph)
    desk.record_correction(draft, answer.kind, answer.paragraph, answer.detail)
    return None


def _answer(division: Division, doubt: Doubt) -> Answer:
    at = doubt.paragraph
    if doubt.other in ("front matter", "back matter"):
        start, end = next((start, end) for _, start, end in leaves(division) if start <= at < end)
        where = "front" if doubt.other == "front matter" else "back"
        return Answer("matter", start, {"paragraphs": end - start, "where": where, "kind": "other"})
    if doubt.chosen in ("front matter", "back matter"):
        return Answer("unmatter", max((one.at for one in division.matter if one.at <= at), default=at), {})
    return Answer(_kind(division, doubt), at, {})


def _kind(division: Division, doubt: Doubt) -> str:
    at = doubt.paragraph
    if doubt.other == "chapter":
        return "part to chapter" if any(part.at == at for part in division.parts) else "make chapter"
    if doubt.other == "mark":
        return "mark"
    if doubt.other == "scene":
        return "unmake chapter" if any(chapter.at == at for chapter in division.chapters) else "split"
    if division.roles[at] == "mark":
        return "unmark"
    if all(scene.at != at for scene in division.scenes):
        raise NotPossible("This line is text already.")
    return "join"
