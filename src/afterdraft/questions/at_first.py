"""How checks ask in a book until she turns them. By itself, since with the catalogue come all checks."""

from collections.abc import Mapping

from afterdraft.desk.answer import Turned

AT_FIRST: Mapping[str, Turned] = dict.fromkeys(
    (
        "age",
        "backstory",
        "charge",
        "count",
        "dead",
        "doubled word",
        "interval",
        "late",
        "many at once",
        "names alike",
        "person",
        "said twice",
        "spelling",
        "still there",
        "tense",
        "viewpoint",
    ),
    "off",
)
"""By id those that do not ask at once: most of what they asked of texts that nobody had worked on was in vain. Which
these are follows from what was measured, by a rule (decisions 18 and 20)."""


def turned_as(check: str, turned: Mapping[str, Turned]) -> Turned:
    """How the check of that id asks, where `turned` holds those that she turned."""
    return turned.get(check) or AT_FIRST.get(check, "on")


def is_held_back(check: str, turned: Mapping[str, Turned]) -> bool:
    """Whether it would ask, and has not been let or turned by her."""
    return check in AT_FIRST and check not in turned
