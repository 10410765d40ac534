"""What was answered to questions; and the checks: how each finds what it asks, and how it asks in this book."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from starlette.requests import Request
from starlette.responses import Response

from afterdraft.desk.answer import TURNS, Answer, Turned
from afterdraft.errors import NotPossible
from afterdraft.questions.at_first import turned_as
from afterdraft.web.body import form, text
from afterdraft.web.questions import KEY, answering, asked_of
from afterdraft.web.render import back, book_of, frame, go, render
from afterdraft.web.view import BookView, view
from afterdraft.work.questions.let_ask import let_ask
from afterdraft.work.questions.turn_check import turn_check

if TYPE_CHECKING:
    from afterdraft.questions.check import Check, Family


@dataclass(frozen=True, slots=True)
class AnswerRow:
    answer: Answer
    check: "Check | None"  # None where an earlier program asked
    place: str  # where what was made of it stands: a path below the book; "" for none
    asked: bool  # the draft still holds what it was asked about

    @property
    def key(self) -> str:
        return self.answer.fingerprint[:KEY]


@dataclass(frozen=True, slots=True)
class AnswersPage:
    view: BookView
    stands: tuple[AnswerRow, ...]  # the latest first
    noted: tuple[AnswerRow, ...]


@dataclass(frozen=True, slots=True)
class ChecksPage:
    view: BookView
    families: "Mapping[Family, tuple[Check, ...]]"
    turned: Mapping[str, Turned]  # by id
    turns: tuple[tuple[Turned, str], ...] = (("on", "Ask"), ("down", "Ask less"), ("off", "Do not ask"))

    def how(self, check: "Check") -> Turned:
        return turned_as(check.id, self.turned)


def answers(request: Request) -> Response:
    """`/books/{book}/questions/answered`"""
    from afterdraft.questions.catalogue import BY_ID  # late: with it come all checks

    seen = view(book_of(request))
    around = frame(request, "Answered questions", "questions-answered", book=seen)
    asked = asked_of(request, seen)
    known = {one.fingerprint for one in asked.questions} if asked else set()
    rows = [
        AnswerRow(one, BY_ID.get(one.check), _place(seen, one), one.fingerprint in known) for one in seen.book.answers()
    ]
    context = AnswersPage(
        seen,
        tuple(row for row in rows if row.answer.answer == "stands"),
        tuple(row for row in rows if row.answer.answer == "noted"),
    )
    return render(request, "questions_answered.html", context, around)


def checks(request: Request) -> Response:
    """`/books/{book}/questions/checks`"""
    from afterdraft.questions.catalogue import CHECKS  # late: with it come all checks

    seen = view(book_of(request))
    families: dict[Family, tuple[Check, ...]] = {}
    for check in CHECKS:
        families[check.family] = (*families.get(check.family, ()), check)
    context = ChecksPage(seen, families, seen.book.turned_checks())
    return render(request, "questions_checks.html", context, frame(request, "Checks", "questions-checks", book=seen))


def turn(request: Request) -> Response:
    """`POST /books/{book}/questions/checks` with the check's id and how it shall ask: on, down, off; or `let`, for all
    that do not ask at first."""
    book, posted = book_of(request), form(request)
    how: Turned | None = next((one for one in TURNS if one == text(posted, "turned")), None)
    if how is None and not text(posted, "let"):
        raise NotPossible("A check asks, asks less, or does not ask.")
    with answering(request, view(book)):
        if how is None:
            let_ask(book)
        else:
            turn_check(book, text(posted, "check"), how)
    top = book.edits().undo
    return go(back(posted, f"/books/{book.id}/questions/checks"), said=top.name if top else "")


def _place(seen: BookView, answer: Answer) -> str:
    if answer.note:
        return f"notes#note-{answer.note}"
    return f"plan#c-{answer.change}" if answer.change else ""
