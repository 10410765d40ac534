"""Which questions wait for an answer, and where in the text their evidence stands."""

from collections.abc import Iterable, Mapping, Sequence

from afterdraft.desk.anchor import Passage
from afterdraft.desk.answer import Answer, Turned
from afterdraft.manuscript.outline import SceneView
from afterdraft.questions.at_first import is_held_back, turned_as
from afterdraft.questions.question import Question

STRONG = 0.85  # from which a check that is turned down still asks; 8 of the 29 questions of the demonstration book


def waiting(
    questions: Iterable[Question], answers: Iterable[Answer], turned: Mapping[str, Turned]
) -> tuple[Question, ...]:
    """Those without an answer, of checks that ask in this book; in the same order.

    An answer holds for as long as the check asks about the same on the same words, in whichever draft they stand.
    """
    answered = {one.fingerprint for one in answers}
    return tuple(
        one for one in questions if one.fingerprint not in answered and asks(turned_as(one.check, turned), one.strength)
    )


def held_back(
    questions: Iterable[Question], answers: Iterable[Answer], turned: Mapping[str, Turned]
) -> tuple[Question, ...]:
    """Those without an answer, of checks that do not ask until she lets them."""
    answered = {one.fingerprint for one in answers}
    return tuple(one for one in questions if one.fingerprint not in answered and is_held_back(one.check, turned))


def asks(turned: Turned, strength: float) -> bool:
    return turned == "on" or (turned == "down" and strength >= STRONG)


def passages_of(question: Question, scenes: Sequence[SceneView]) -> tuple[Passage, ...]:
    """Its evidence by paragraphs of the file; `scenes` as laid out when it was asked."""
    return tuple(
        Passage(scenes[one.scene].story[one.paragraph], one.start, one.end)
        for one in question.evidence
        if one.start < one.end
    )
