"""Take the latest edit back, or do it again."""

from afterdraft.work.ports import Book, Edit


def step_back(book: Book, number: int) -> Edit:
    """Take back edit `number`, which the button named. Raises `NothingToUndo` if another is the latest by now."""
    return book.undo(number)


def step_forward(book: Book, number: int) -> Edit:
    """Do edit `number` again. Raises `NothingToUndo` if it is not the next one any more."""
    return book.redo(number)
