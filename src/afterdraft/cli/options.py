"""Options that several commands share, and what a command is."""

from argparse import ArgumentParser, ArgumentTypeError, Namespace
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol


class Serve(Protocol):
    """Opens the program; returns its exit code."""

    def __call__(self, book: Path | None, *, port: int | None, start_browser: bool) -> int: ...


@dataclass(frozen=True, slots=True)
class Command:
    name: str
    help: str  # one line
    options: Callable[[ArgumentParser], None]  # adds its own
    run: Callable[[Namespace, Serve], int]  # returns the exit code; raises AfterdraftError


def serving(parser: ArgumentParser) -> None:
    """Options of what opens the program."""
    parser.add_argument("--port", type=_port, metavar="N", help="the port to use; otherwise the usual one or the next")
    parser.add_argument("--no-open", action="store_true", help="print the address, start no browser")


def _port(text: str) -> int:
    if text.isdecimal() and int(text) < 2**16:
        return int(text)
    raise ArgumentTypeError(f"a port is a number from 0 (any free one) to 65535, not {text!r}")
