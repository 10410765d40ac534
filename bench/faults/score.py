"""Which of the planted faults are asked about."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from afterdraft.manuscript.naming import shortened
from afterdraft.manuscript.words import count
from afterdraft.questions.asking import ask
from afterdraft.questions.marks import Marks, Renamed
from afterdraft.questions.question import Question, Span
from afterdraft.questions.seen import Seen
from afterdraft.reading.analysed import Analysed
from afterdraft.work.questions.to_answer import waiting
from bench.faults.kinds import KINDS
from bench.faults.novels import Group
from bench.faults.planted import Fault, Scenes, Shown, plant
from bench.reading.kept import analysed
from bench.slips.seen import facts


@dataclass(frozen=True, slots=True)
class Answer:
    """A planted fault, and the check that asks about it; "" where none does."""

    fault: Fault
    check: str


@dataclass(frozen=True, slots=True)
class Result:
    title: str
    half: Group
    words: int
    answers: tuple[Answer, ...]
    others: int  # questions about something else


def result(title: str, half: Group, scenes: Scenes, kinds: Sequence[str], round_: int = 0) -> Result:
    planted, faults = plant(scenes, [KINDS[kind] for kind in kinds], f"{title} {round_}")
    seen = replace(seen_of(scenes, planted), marks=_marks(faults))
    questions = ask(seen)
    answers = tuple(Answer(fault, next(_asking(seen, fault, questions), "")) for fault in faults)
    used = {one.fingerprint for fault in faults for one in questions if _shows(seen, fault, one)}
    return Result(
        title=title,
        half=half,
        words=sum(count(text) for scene in planted for text in scene),
        answers=answers,
        others=sum(one.fingerprint not in used for one in waiting(questions, (), {})),
    )


def _marks(faults: Sequence[Fault]) -> Marks:
    """What the writer herself wrote down of them."""
    told = [one.renamed for one in faults if one.renamed]
    return Marks(renamed=tuple(Renamed(now, (former,)) for former, now in told))


def seen_of(clean: Scenes, planted: Scenes) -> Seen:
    """The planted novel as checks see it. The pipeline takes paragraphs one by one: only changed ones are new."""
    was = dict(zip(planted, clean, strict=True))

    def read(paragraphs: Sequence[str]) -> Sequence[Analysed]:
        known = {one.text: one for one in analysed(was[tuple(paragraphs)])}
        known |= {one.text: one for one in analysed([text for text in paragraphs if text not in known])}
        return [known[text] for text in paragraphs]

    titles = tuple(shortened(scene[0]) for scene in planted)
    return Seen(texts=planted, facts=tuple(facts(planted, read)), titles=titles)


def _asking(seen: Seen, fault: Fault, questions: Sequence[Question]) -> Iterator[str]:
    return (one.check for one in questions if _shows(seen, fault, one))


def _shows(seen: Seen, fault: Fault, question: Question) -> bool:
    """Whether it quotes the planted words, and enough of what they disagree with."""
    first, *others = (any(_meets(seen, one, span) for span in question.evidence) for one in fault.shown)
    return first and 1 + sum(others) >= fault.enough


def _meets(seen: Seen, shown: Shown, span: Span) -> bool:
    if shown.scene != span.scene:
        return False
    at = seen.texts[span.scene][span.paragraph].find(shown.words)
    return at >= 0 and span.start < at + len(shown.words) and at < span.end
