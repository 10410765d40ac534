"""Every check there is, in the order in which they are listed. Nothing is added at run time."""

from afterdraft.questions.check import Check
from afterdraft.questions.each import (
    backstory,
    dates_in_order,
    dead,
    intervals,
    left_over,
    letters,
    many_at_once,
    names_alike,
    person,
    placeholders,
    promised,
    spelled_two_ways,
    tense,
    traits,
    twice,
    weekdays,
    years,
)

CHECKS: tuple[Check, ...] = (
    weekdays.CHECK,
    dates_in_order.CHECK,
    years.CHECK,
    letters.CHECK,
    intervals.CHECK,
    traits.CHECK,
    dead.CHECK,
    promised.CHECK,
    spelled_two_ways.CHECK,
    names_alike.CHECK,
    left_over.CHECK,
    tense.CHECK,
    person.CHECK,
    many_at_once.CHECK,
    backstory.CHECK,
    placeholders.CHECK,
    twice.CHECK,
)
BY_ID = {check.id: check for check in CHECKS}
