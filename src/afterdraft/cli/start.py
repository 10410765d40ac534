"""`afterdraft [BOOK]`: open the program."""

from argparse import ArgumentParser, Namespace
from pathlib import Path

from afterdraft.cli.options import Command, Serve, serving


def _options(parser: ArgumentParser) -> None:
    which = parser.add_mutually_exclusive_group()
    which.add_argument("book", nargs="?", type=Path, metavar="BOOK", help="the book to open: a file NAME.afterdraft")
    which.add_argument("--book", dest="named", type=Path, metavar="PATH", help="the same")
    serving(parser)


def _run(options: Namespace, serve: Serve) -> int:
    return serve(options.book or options.named, port=options.port, start_browser=not options.no_open)


COMMAND = Command("", "open the program, in the browser", _options, _run)
