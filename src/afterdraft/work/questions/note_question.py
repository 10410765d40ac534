"""A question is worth a note, on the passages it rests on; or a change of the plan, with its scenes as places."""

from collections.abc import Sequence

from afterdraft.desk.answer import Answer
from afterdraft.desk.note import About
from afterdraft.errors import NotPossible
from afterdraft.manuscript.outline import SceneView, outline
from afterdraft.questions.question import Question
from afterdraft.work.called import quoted
from afterdraft.work.notes.fastening import fastened
from afterdraft.work.plain import plain
from afterdraft.work.plan.plan_change import at_the_end
from afterdraft.work.ports import Book, Desk
from afterdraft.work.questions.to_answer import passages_of

DIVIDED = "The draft is divided otherwise than when this was asked. Nothing is changed; look at the questions again."


def note_question(book: Book, draft: str, question: Question, *, ink: str | None = None, text: str = "") -> str:
    """Its sentence becomes a note, unless she gives other words. Returns the note's id. Raises `NotPossible` where
    the text is not as it was when the question was asked; `Missing`."""
    words = plain(text).strip() or question.asks
    scenes = _scenes(book, draft, question)

    def make(desk: Desk) -> str:
        anchors = fastened(desk, draft, passages_of(question, scenes))
        first = [one.scene for one in question.evidence] or question.scenes
        about = About(scenes[first[0]].scene.id) if first else About(book=True)
        note = desk.add_note(text=words, about=about, ink=ink, anchors=anchors)
        desk.answer(Answer(question.fingerprint, question.check, "noted", question.asks, note=note.id))
        return note.id

    return book.edit(f"Note {quoted(words)}", make)


def plan_question(book: Book, draft: str, question: Question) -> str:
    """Its sentence becomes what is wrong, its scenes are the places. Returns the change's id. Raises
    `NotPossible` as `note_question`; `Missing`."""
    scenes = _scenes(book, draft, question)

    def make(desk: Desk) -> str:
        made = desk.add_change(wrong=question.asks, decide="", when="must", place=at_the_end(desk.changes()))
        for scene in question.scenes:
            desk.add_change_place(made, scene=scenes[scene].scene.id)
        desk.answer(Answer(question.fingerprint, question.check, "noted", question.asks, change=made))
        return made

    return book.edit(f"Plan {quoted(question.asks)}", make)


def _scenes(book: Book, draft: str, question: Question) -> Sequence[SceneView]:
    division = book.division(draft)
    scenes = outline(division, [0] * len(division.roles)).scenes
    if any(number >= len(scenes) for number in question.scenes) or any(
        one.paragraph >= len(scenes[one.scene].story) for one in question.evidence
    ):
        raise NotPossible(DIVIDED)
    return scenes
