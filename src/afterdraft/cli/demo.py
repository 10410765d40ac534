"""`afterdraft demo`: open the demonstration book, made if it is not there."""

from argparse import ArgumentParser, Namespace
from pathlib import Path

from afterdraft import platform, wiring
from afterdraft.cli.options import Command, Serve, serving
from afterdraft.home import BooksFolder


def _options(parser: ArgumentParser) -> None:
    parser.add_argument("--book", type=Path, metavar="PATH", help="where the book lies, or goes")
    parser.add_argument("--fresh", action="store_true", help="start again; the book as it is becomes a backup")
    parser.add_argument("--make-only", action="store_true", help="make the book and end")
    serving(parser)


def _run(options: Namespace, serve: Serve) -> int:
    folder = BooksFolder(platform.folders())
    path = options.book or wiring.demonstration_path(folder)
    again = options.fresh and path.exists()
    path = wiring.demonstration(folder, path=path)
    if again:
        print(f"What it was before is kept at {wiring.demonstration_anew(path)}")
    if options.make_only:
        print(f"The demonstration book is at {path}")
        return 0
    return serve(path, port=options.port, start_browser=not options.no_open)


COMMAND = Command("demo", "open the demonstration book", _options, _run)
