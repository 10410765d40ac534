"""The published form `ask/1`."""

from collections.abc import Mapping, Sequence
from typing import Any

from afterdraft.questions.question import Question, Span

Form = dict[str, Any]  # JSON


def ask_form(
    questions: Sequence[Question],
    *,
    places: Sequence[Sequence[int]],
    version: str,
    answers: Mapping[str, str] | None = None,
) -> Form:
    """`places` says for each scene where each of its story paragraphs begins in the story text; `answers` what she
    answered, by fingerprint: "noted", "stands"."""
    return {
        "afterdraft": version,
        "form": "ask/1",
        "questions": [_entry(one, (answers or {}).get(one.fingerprint), places) for one in questions],
    }


def _entry(one: Question, answer: str | None, places: Sequence[Sequence[int]]) -> Form:
    return {
        "id": one.fingerprint,
        "check": one.check,
        "asks": one.asks,
        "scenes": list(one.scenes),
        "people": list(one.people),
        "strength": one.strength,
        "numbers": dict(one.numbers),
        "evidence": [_span(span, places) for span in one.evidence],
        "answer": answer,
    }


def _span(span: Span, places: Sequence[Sequence[int]]) -> Form:
    begins = places[span.scene][span.paragraph]
    return {
        "scene": span.scene,
        "start": begins + span.start,
        "end": begins + span.end,
        "quote": span.quote,
    }
