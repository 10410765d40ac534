"""All checks that do not ask at first are let ask in this book."""

from afterdraft.questions.at_first import AT_FIRST, is_held_back
from afterdraft.work.ports import Book
from afterdraft.work.ports.questions import QuestionsDesk


def let_ask(book: Book) -> None:
    """But for those that she turned herself. No edit where none is left."""
    turned = book.turned_checks()
    waiting = [check for check in AT_FIRST if is_held_back(check, turned)]

    def turn(desk: QuestionsDesk) -> None:
        for check in waiting:
            desk.turn_check(check, "on")

    if waiting:
        book.edit("Let the less sure checks ask", turn)
