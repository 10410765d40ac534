"""Which of the listed passages are asked about, and how often anything is asked."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.manuscript.words import count
from afterdraft.questions.asking import ask
from afterdraft.questions.question import Question, Span
from afterdraft.questions.seen import Seen
from afterdraft.work.questions.to_answer import waiting
from bench.slips.books import Listed
from bench.structure.halves import Half

ENOUGH = 2  # passages that a question must show side by side; one where the calendar alone says the rest
ALONE = frozenset({"weekday", "year", "tense", "placeholder", "person", "viewpoint"})  # checks that show one passage


@dataclass(frozen=True, slots=True)
class Answer:
    """A slip or a control, and the check that asks about it; "" where none does."""

    listed: Listed
    check: str


@dataclass(frozen=True, slots=True)
class Result:
    title: str
    half: Half
    words: int
    questions: tuple[Question, ...]
    slips: tuple[Answer, ...] = ()
    controls: tuple[Answer, ...] = ()

    @property
    def often(self) -> float:
        """Questions per 10,000 words."""
        return 10_000 * len(self.questions) / self.words

    def by_check(self) -> Counter[str]:
        return Counter(one.check for one in self.questions)


def result(title: str, half: Half, seen: Seen, slips: Sequence[Listed] = (), controls: Sequence[Listed] = ()) -> Result:
    questions = waiting(ask(seen), (), {})
    return Result(
        title=title,
        half=half,
        words=sum(count(text) for scene in seen.texts for text in scene),
        questions=questions,
        slips=tuple(_answer(seen, one, questions) for one in slips),
        controls=tuple(_answer(seen, one, questions) for one in controls),
    )


def _answer(seen: Seen, listed: Listed, questions: Sequence[Question]) -> Answer:
    places = [list(_places(seen, quote)) for quote in listed.quotes]
    for one in questions:
        shown = sum(any(_meet(span, place) for span in one.evidence for place in some) for some in places)
        if shown >= (1 if one.check in ALONE else min(ENOUGH, len(places))):
            return Answer(listed, one.check)
    return Answer(listed, "")


def _places(seen: Seen, quote: str) -> Iterator[tuple[int, int, int, int]]:
    """Where the lines of a quotation stand: scene, paragraph, start, end."""
    for line in filter(None, quote.split("\n")):
        for number, scene in enumerate(seen.texts):
            for paragraph, text in enumerate(scene):
                if (at := text.find(line)) >= 0:
                    yield number, paragraph, at, at + len(line)


def _meet(span: Span, place: tuple[int, int, int, int]) -> bool:
    number, paragraph, start, end = place
    return (span.scene, span.paragraph) == (number, paragraph) and span.start < end and start < span.end
