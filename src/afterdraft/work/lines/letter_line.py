"""Give a thread, setup, reveal or strand another letter."""

from afterdraft.desk.lettering import is_letter
from afterdraft.errors import NotPossible
from afterdraft.work.called import quoted
from afterdraft.work.ports import Book, Desk
from afterdraft.work.ports.lines import Lettered


def letter_line(book: Book, kind: Lettered, id: str, letter: str) -> None:
    """One or two capitals, its own among things of its kind. Raises `NotPossible`, `Missing`."""
    wanted = letter.strip().upper()
    if not is_letter(wanted):
        raise NotPossible("A letter is one or two of A to Z.")
    name = book.fields(kind, id).texts["name"]

    def change(desk: Desk) -> None:
        holder = next((one for one in _rivals(desk, kind, id) if one[0] == wanted), None)
        if holder:
            raise NotPossible(f"The letter {wanted} is that of {quoted(holder[1])}.")
        desk.set_letter(kind, id, wanted)

    book.edit(f"Letter {wanted} for {quoted(name)}", change)


def _rivals(desk: Desk, kind: Lettered, id: str) -> list[tuple[str, str]]:
    """Letter and name of each other thing of its kind."""
    if kind == "strand":
        return [(one.letter, one.name) for one in desk.all_strands() if one.id != id]
    lines = desk.all_lines()
    own = next((one.kind for one in lines if one.id == id), None)
    return [(one.letter, one.name) for one in lines if one.kind == own and one.id != id]
