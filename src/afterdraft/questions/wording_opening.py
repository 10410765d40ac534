"""The sentences of questions about the opening."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say, number


def _backstory(one: Finding, titles: Sequence[str]) -> str:
    share = f"{one.numbers['share']:.0%}"
    return f"In the first fifth, {share} of the sentences look back, as these passages do. Is all of it needed so soon?"


def _many_at_once(one: Finding, titles: Sequence[str]) -> str:
    return (
        f"{number(one.numbers['people']).capitalize()} people are named for the first time within two pages: "
        f"{one.words['names']}. Will a reader hold them all?"
    )


OPENING: Mapping[str, Say] = {
    "backstory": _backstory,
    "many at once": _many_at_once,
}
