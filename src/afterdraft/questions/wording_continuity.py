"""The sentences of questions about continuity."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say


def _weekday(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    if "first" not in words:
        return f"“{words['said']}”: by the calendar that day was a {words['was']}. Is {words['told']} meant?"
    return f"By “{words['first']}” the day of “{words['said']}” is a {words['was']}. Which of the two is meant?"


CONTINUITY: Mapping[str, Say] = {
    "weekday": _weekday,
}
