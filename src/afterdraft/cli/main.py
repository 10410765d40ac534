"""The command line: which command, and what its outcome is to the shell."""

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import Protocol


class Serve(Protocol):
    def __call__(self, book: Path | None, *, port: int | None, start_browser: bool) -> int: ...


def run(arguments: Sequence[str], *, serve: Serve) -> int:
    parser = argparse.ArgumentParser(prog="afterdraft")
    parser.add_argument("book", nargs="?", type=Path)
    parser.add_argument("--port", type=int)
    parser.add_argument("--no-open", action="store_true")
    options = parser.parse_args(arguments)
    return serve(options.book, port=options.port, start_browser=not options.no_open)


def say(line: str) -> None:
    """One line to the person at the command, at once."""
    print(line, flush=True)
