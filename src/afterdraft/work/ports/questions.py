"""What the writer answered to questions, and what checks found."""

from collections.abc import Mapping
from typing import Protocol

from afterdraft.desk.answer import Answer, Turned
from afterdraft.desk.ground import Ground


class QuestionsBook(Protocol):
    """For `Book`. What checks found is no edit: it is never on the stack, and can be worked out again."""

    def answers(self) -> tuple[Answer, ...]:
        """The latest first."""
        ...

    def turned_checks(self) -> Mapping[str, Turned]:
        """By id, those that are turned down or off in this book."""
        ...

    def ground(self) -> Ground | None:
        """The real place and year it is set in, where she says so."""
        ...

    def kept_findings(self, draft: str) -> str:
        """What checks found in a draft when last asked (JSON, as `questions.findings_form`); "" where they were not."""
        ...

    def keep_findings(self, draft: str, form: str) -> None: ...


class QuestionsDesk(Protocol):
    """For `Desk`."""

    def answer(self, answer: Answer) -> None:
        """In the place of an earlier one to the same question."""
        ...

    def take_answer_back(self, fingerprint: str) -> None:
        """Raises `Missing`."""
        ...

    def turn_check(self, check: str, turned: Turned) -> None: ...

    def set_ground(self, ground: Ground | None) -> None: ...
