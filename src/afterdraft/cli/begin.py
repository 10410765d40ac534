"""`afterdraft begin FILE…`: make a book of a manuscript."""

from argparse import ArgumentParser, Namespace
from pathlib import Path

from afterdraft import platform, wiring
from afterdraft.cli.options import Command, Serve
from afterdraft.errors import AlreadyThere
from afterdraft.home import SUFFIX, BooksFolder, free_name


def _options(parser: ArgumentParser) -> None:
    parser.add_argument("files", nargs="+", type=Path, metavar="FILE", help="the manuscript: a file, several, a folder")
    parser.add_argument("-o", dest="output", type=Path, metavar="PATH", help="where the book goes: a file or a folder")
    parser.add_argument("--title", default="", help="what the book is called; otherwise as the manuscript says")


def _run(options: Namespace, _: Serve) -> int:
    folder = BooksFolder(platform.folders())
    path = _wanted(options.output, options.title or options.files[0].stem) if options.output else None
    made = wiring.begin(wiring.load(options.files), folder=folder, path=path, title=options.title)
    print(f"The book is at {made}")
    return 0


def _wanted(output: Path, title: str) -> Path:
    """Raises `AlreadyThere` before the manuscript is read."""
    if output.is_dir():
        return free_name(output, title)
    path = output if output.suffix == SUFFIX else output.with_name(output.name + SUFFIX)
    if path.exists():
        raise AlreadyThere(str(path))
    return path


COMMAND = Command("begin", "make a book of a manuscript", _options, _run)
