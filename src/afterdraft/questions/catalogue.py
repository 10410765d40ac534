"""Every check there is, in the order in which they are listed. Nothing is added at run time."""

from afterdraft.questions.check import Check
from afterdraft.questions.each import placeholders, weekdays

CHECKS: tuple[Check, ...] = (
    weekdays.CHECK,
    placeholders.CHECK,
)
BY_ID = {check.id: check for check in CHECKS}
