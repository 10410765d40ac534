"""Every check there is, in the order in which they are listed. Nothing is added at run time."""

from afterdraft.questions.check import Check
from afterdraft.questions.each import dead, left_over, names_alike, placeholders, promised, spelled_two_ways, traits, twice, weekdays

CHECKS: tuple[Check, ...] = (
    weekdays.CHECK,
    traits.CHECK,
    dead.CHECK,
    promised.CHECK,
    spelled_two_ways.CHECK,
    names_alike.CHECK,
    left_over.CHECK,
    placeholders.CHECK,
    twice.CHECK,
)
BY_ID = {check.id: check for check in CHECKS}
