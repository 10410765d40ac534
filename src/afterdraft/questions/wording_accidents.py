"""The sentences of questions about accidents of drafting."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say, scene


def _placeholder(one: Finding, titles: Sequence[str]) -> str:
    return f"“{one.words['words']}” stands in {scene(titles, one.evidence[0].scene)}. What is to stand there?"


def _twice(one: Finding, titles: Sequence[str]) -> str:
    here, *others = [scene(titles, number) for number in dict.fromkeys(span.scene for span in one.evidence)]
    where = f"in {here} and again in {others[0]}" if others else f"twice in {here}"
    words = f"“{one.words['begins']}…” and what follows, {one.numbers['words']:.0f} words,"
    return f"{words} stand {where}. Are both meant?"


def _echo(one: Finding, titles: Sequence[str]) -> str:
    here, *others = [scene(titles, number) for number in dict.fromkeys(span.scene for span in one.evidence)]
    where = f"in {here} and again in {others[0]}" if others else f"twice in {here}"
    return f"“{one.words['words']}” stands {where}. Is the echo meant?"


ACCIDENTS: Mapping[str, Say] = {
    "placeholder": _placeholder,
    "twice": _twice,
    "echo": _echo,
}
