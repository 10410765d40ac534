"""The questions that are asked now beside their judgements."""

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from afterdraft.manuscript.words import count
from afterdraft.questions.asking import ask
from afterdraft.questions.question import Question
from afterdraft.work.questions.to_answer import waiting
from bench import corpus
from bench.judged.judgements import Judgement, judgements
from bench.slips.seen import of_novel

FIRST = 10  # questions of a novel that are judged


@dataclass(frozen=True, slots=True)
class Result:
    title: str
    group: str
    words: int
    asked: int  # questions in all
    first: tuple[Question, ...]
    judged: tuple[Judgement | None, ...]  # one for each of `first`

    def verdicts(self) -> Counter[str]:
        """How many of the first ten have each; those without are under ""."""
        return Counter(one.verdict if one else "" for one in self.judged)


def result(novel: corpus.Novel, group: str) -> Result:
    seen = of_novel(novel)
    questions = waiting(ask(seen), (), {})
    return Result(
        title=novel.title,
        group=group,
        words=sum(count(text) for scene in seen.texts for text in scene),
        asked=len(questions),
        first=questions[:FIRST],
        judged=beside(questions[:FIRST], judgements(novel.slug)),
    )


def beside(questions: Iterable[Question], known: Sequence[Judgement]) -> tuple[Judgement | None, ...]:
    """What was judged of each question; None where nothing was."""
    by_fingerprint = {one.fingerprint: one for one in known}
    return tuple(by_fingerprint.get(one.fingerprint) for one in questions)


def share_good(results: Sequence[Result]) -> float:
    """Of all that are judged."""
    verdicts = sum((one.verdicts() for one in results), Counter[str]())
    judged = verdicts.total() - verdicts[""]
    return verdicts["good"] / judged if judged else 0.0
