"""Take a thread, setup, reveal or strand out of the book, with its marks."""

from afterdraft.work.called import quoted
from afterdraft.work.ports import Book


def remove_line(book: Book, line: str) -> None:
    """Its marks go with it; one edit. Raises `Missing`."""
    stands = book.line(line)
    book.edit(f"Remove the {stands.kind} {quoted(stands.name)}", lambda desk: desk.remove_line(line))


def remove_strand(book: Book, strand: str) -> None:
    """Its scenes are in no strand then; one edit. Raises `Missing`."""
    name = book.fields("strand", strand).texts["name"]
    book.edit(f"Remove the strand {quoted(name)}", lambda desk: desk.remove_strand(strand))
