"""The sentences of questions about accidents of drafting."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say, scene


def _placeholder(one: Finding, titles: Sequence[str]) -> str:
    return f"“{one.words['words']}” stands in {scene(titles, one.evidence[0].scene)}. What is to stand there?"


ACCIDENTS: Mapping[str, Say] = {
    "placeholder": _placeholder,
}
