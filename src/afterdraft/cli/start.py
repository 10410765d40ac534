"""`afterdraft [BOOK]`: open the program."""

from argparse import ArgumentParser, Namespace
from pathlib import Path

from afterdraft import wiring
from afterdraft.cli.options import Command, Serve, serving
from afterdraft.errors import NotABookYet


def _options(parser: ArgumentParser) -> None:
    which = parser.add_mutually_exclusive_group()
    which.add_argument("book", nargs="?", type=Path, metavar="BOOK", help="the book to open: a file NAME.afterdraft")
    which.add_argument("--book", dest="named", type=Path, metavar="PATH", help="the same")
    serving(parser)


def _run(options: Namespace, serve: Serve) -> int:
    book: Path | None = options.book or options.named
    if book and book.suffix.lower() in wiring.endings():
        raise NotABookYet(str(book))
    return serve(book, port=options.port, start_browser=not options.no_open)


COMMAND = Command("", "open the program, in the browser", _options, _run)
