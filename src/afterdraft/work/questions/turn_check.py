"""How a check asks in this book: as usual, less, not at all."""

from collections.abc import Mapping

from afterdraft.desk.answer import Turned
from afterdraft.errors import Missing
from afterdraft.questions.at_first import is_held_back, turned_as
from afterdraft.work.called import quoted
from afterdraft.work.ports import Book

_SAID: Mapping[Turned, str] = {
    "on": "Ask about {} as usual",
    "down": "Ask less about {}",
    "off": "Do not ask about {}",
}


def turn_check(book: Book, check: str, turned: Turned) -> None:
    """`check`: its id. Raises `Missing` where there is none of that id."""
    from afterdraft.questions.catalogue import BY_ID  # late: with it come all checks

    if check not in BY_ID:
        raise Missing("This kind of question")
    known = book.turned_checks()
    if turned_as(check, known) == turned and not is_held_back(check, known):
        return  # the same again is no edit; of one that waits it says that it shall not be let ask with the others
    name = _SAID[turned].format(quoted(BY_ID[check].name))
    book.edit(name, lambda desk: desk.turn_check(check, turned))
