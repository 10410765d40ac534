"""How checks ask in a book until she turns them. By itself, since with the catalogue come all checks."""

from collections.abc import Mapping

from afterdraft.desk.answer import Turned

AT_FIRST: Mapping[str, Turned] = {"left over": "off", "many at once": "off", "said twice": "off"}
"""By id those that do not ask at once: what they asked of finished novels was nearly always in vain."""


def turned_as(check: str, turned: Mapping[str, Turned]) -> Turned:
    """How the check of that id asks, where `turned` holds those that she turned."""
    return turned.get(check) or AT_FIRST.get(check, "on")
