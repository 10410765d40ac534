"""Questions: what a sharp first reader would ask, seven at a time, with the passages side by side."""

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from starlette.datastructures import FormData
from starlette.requests import Request
from starlette.responses import JSONResponse, Response

from afterdraft.desk.answer import Answer
from afterdraft.errors import Missing, NotPossible
from afterdraft.questions.question import Question
from afterdraft.web.asking import Asked, Asking
from afterdraft.web.body import form, text
from afterdraft.web.facts_here import FactsHere, progress_of
from afterdraft.web.noted import InkView, with_keys
from afterdraft.web.questions import KEY, QuestionView, answering, asked_last, asked_of, question_views
from afterdraft.web.render import back, book_of, frame, go, render
from afterdraft.web.view import BookView, view
from afterdraft.work.questions.let_stand import let_stand
from afterdraft.work.questions.note_question import note_question, plan_question
from afterdraft.work.questions.take_answer_back import take_answer_back
from afterdraft.work.questions.to_answer import held_back, waiting

AT_ONCE = 7


@dataclass(frozen=True, slots=True)
class QuestionsPage:
    view: BookView
    rows: tuple[QuestionView, ...]  # these seven, with those of them that are answered by now
    more: int  # questions that wait besides these
    answered: int  # in all
    inks: tuple[InkView, ...]
    facts: FactsHere  # how far reading is
    looking: bool  # nothing has been found yet, but may be soon
    lacking: bool  # some checks want facts that are not read
    trouble: bool
    past: str = ""  # keys of those left for now
    held_back: int = 0  # questions of checks that do not ask until she lets them

    @property
    def tells_of_reading(self) -> bool:
        """Not after every edit: only where something waits for it, or never comes."""
        return self.lacking or self.looking or not self.rows or self.facts.progress.state == "other language"

    @property
    def open(self) -> tuple[QuestionView, ...]:
        return tuple(row for row in self.rows if row.answer is None)

    @property
    def here(self) -> str:
        """What the address of these seven ends in."""
        return f"?these={','.join(row.key for row in self.rows)}" if self.rows else ""

    def after(self, row: QuestionView) -> str:
        """The fragment of the next question that waits for an answer."""
        later = self.rows[self.rows.index(row) + 1 :]
        earlier = self.rows[: self.rows.index(row)]
        following = next((one for one in (*later, *earlier) if one.answer is None), None)
        return f"#q-{following.key}" if following else "#more"


def questions(request: Request) -> Response:
    """`/books/{book}/questions`, with `?these=` certain ones by key, parted by commas, or all but those `?past=`."""
    seen = view(book_of(request))
    around = frame(request, "Questions", "questions", book=seen)
    asked = asked_of(request, seen)
    asking: Asking = request.app.state.asking
    answers = {one.fingerprint: one for one in seen.book.answers()}
    past = request.query_params.get("past", "")
    shown, open_ones = _chosen(seen, asked, answers, request.query_params.get("these", ""), past)
    context = QuestionsPage(
        view=seen,
        rows=tuple(question_views(seen, shown, answers)),
        more=len([one for one in open_ones if one not in shown and one.fingerprint[:KEY] not in past]),
        answered=len(answers),
        inks=with_keys(seen.book.inks()),
        facts=progress_of(request, seen),
        looking=(asked is None or asked.stamp is None) and asking.busy(seen.book, seen.draft.id),
        lacking=bool(asked and asked.lacking),
        trouble=bool(asked and asked.trouble),
        past=past,
        held_back=len(held_back(asked.questions if asked else (), answers.values(), seen.book.turned_checks())),
    )
    return render(request, "questions.html", context, around)


def _chosen(
    seen: BookView, asked: Asked | None, answers: Mapping[str, Answer], these: str, past: str
) -> tuple[Sequence[Question], Sequence[Question]]:
    """Those to be shown, and all that wait for an answer."""
    known = asked.questions if asked else ()
    open_ones = waiting(known, answers.values(), seen.book.turned_checks())
    keys = [key for key in these.split(",") if key]
    by_key = {one.fingerprint[:KEY]: one for one in known if one in open_ones or one.fingerprint in answers}
    shown = [by_key[key] for key in keys[: 2 * AT_ONCE] if key in by_key]
    others = [one for one in open_ones if one.fingerprint[:KEY] not in past]
    return shown or (others or open_ones)[:AT_ONCE], open_ones


def answer(request: Request) -> Response:
    """`POST /books/{book}/questions` with a question's fingerprint and what is to be done: note, plan, stand, again."""
    book, posted = book_of(request), form(request)
    act = ACTS.get(text(posted, "do"))
    if act is None:
        raise NotPossible("Nothing was chosen for this question.")
    seen = view(book)
    with answering(request, seen):
        act(request, seen, posted)
    top = book.edits().undo
    return go(back(posted, f"/books/{book.id}/questions"), said=top.name if top else "")


def state(request: Request) -> Response:
    """`/books/{book}/questions/state`: whether there may soon be others, for scripts that look on."""
    book = book_of(request)
    asking: Asking = request.app.state.asking
    draft = book.facts().draft
    running = draft is not None and asking.busy(book, draft.id)
    return JSONResponse({"running": running, "told": LOOKING if running else "", "words": 1, "words_done": 1})


LOOKING = "The draft is being looked over for questions."


def _question(request: Request, seen: BookView, posted: FormData) -> Question:
    """Raises `Missing` where it is not asked any more."""
    asked = asked_last(request, seen) or asked_of(request, seen)
    wanted = text(posted, "question")
    found = next((one for one in asked.questions if one.fingerprint == wanted), None) if asked else None
    if found is None:
        raise Missing("This question")
    return found


def _note(request: Request, seen: BookView, posted: FormData) -> None:
    question = _question(request, seen, posted)
    words, ink = text(posted, "text"), text(posted, "ink")
    note_question(seen.book, seen.draft.id, question, ink=ink or None, text=words)


def _plan(request: Request, seen: BookView, posted: FormData) -> None:
    plan_question(seen.book, seen.draft.id, _question(request, seen, posted))


def _stand(request: Request, seen: BookView, posted: FormData) -> None:
    let_stand(seen.book, _question(request, seen, posted), why=text(posted, "why"))


def _again(request: Request, seen: BookView, posted: FormData) -> None:
    take_answer_back(seen.book, text(posted, "question"))


ACTS: Mapping[str, Callable[[Request, BookView, FormData], None]] = {
    "note": _note,
    "plan": _plan,
    "stand": _stand,
    "again": _again,
}
