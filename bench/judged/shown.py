"""A question with its evidence in context, as a judge reads it."""

from collections.abc import Iterator, Sequence

from afterdraft.questions.question import Question, Span
from afterdraft.questions.seen import Seen

AROUND = 1  # paragraphs before and behind that are shown
OPENS, CLOSES = "⟦", "⟧"  # around the words in evidence


def shown(seen: Seen, question: Question) -> Iterator[str]:
    """Its lines; scenes and paragraphs count from 0."""
    yield f"{question.check}, {question.strength:.2f}: {question.asks}"
    yield f"  {question.fingerprint}"
    for span in question.evidence:
        yield f"  scene {span.scene}, paragraph {span.paragraph}:"
        yield from (f"    {line}" for line in _context(seen.texts[span.scene], span))


def _context(scene: Sequence[str], span: Span) -> Iterator[str]:
    for place in range(max(0, span.paragraph - AROUND), min(len(scene), span.paragraph + AROUND + 1)):
        text = scene[place]
        if place == span.paragraph:
            text = text[: span.start] + OPENS + text[span.start : span.end] + CLOSES + text[span.end :]
        yield text
