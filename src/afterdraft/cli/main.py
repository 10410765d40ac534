"""The command line: which command, and what its outcome is to the shell."""

import os
import sys
from argparse import ArgumentParser, RawDescriptionHelpFormatter
from collections.abc import Sequence
from textwrap import fill

from afterdraft import __version__, errors, platform
from afterdraft.cli import ask, begin, book, compare, demo, next_draft, read, start
from afterdraft.cli.options import Command, Serve
from afterdraft.faultlog import log_to, write_down

COMMANDS = (
    demo.COMMAND,
    begin.COMMAND,
    next_draft.COMMAND,
    read.COMMAND,
    ask.COMMAND,
    compare.COMMAND,
    book.COMMAND,
)
ABOUT = (
    "Afterdraft is for revising a finished draft of a book: it takes a manuscript apart into chapters and scenes, "
    "lets you write what happens in each beside its text, and never changes your file."
)
WIDTH = 79  # columns of help

EXITS: tuple[tuple[type[errors.AfterdraftError], int], ...] = (
    (errors.UnreadableManuscript, 3),
    (errors.BookTrouble, 4),
    (errors.Fault, 70),
    (errors.AfterdraftError, 2),
)


def run(arguments: Sequence[str], *, serve: Serve) -> int:
    """Run one command; returns its exit code. Whatever is wrong is said in one line on standard error."""
    _speak_utf8()
    try:
        return _run(arguments, serve)
    except errors.AfterdraftError as error:
        return _outcome(error)
    except BrokenPipeError:  # who reads our output has seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except KeyboardInterrupt:
        return 130  # as shells say it: 128 and the signal's number
    except Exception as fault:  # noqa: BLE001 the last line: no tangle of code lines for the writer
        log = platform.folders().log
        log_to(log)
        write_down(fault)
        return _outcome(errors.Fault(str(log)))


def say(line: str) -> None:
    """One line to the person at the command, at once."""
    print(line, flush=True)


def _run(arguments: Sequence[str], serve: Serve) -> int:
    named = next((command for command in COMMANDS if arguments and command.name == arguments[0]), None)
    if named is None:
        return _parsed(start.COMMAND, _main_parser(), arguments, serve)
    parser = ArgumentParser(prog=f"afterdraft {named.name}", description=f"{named.help[0].upper()}{named.help[1:]}.")
    return _parsed(named, parser, arguments[1:], serve)


def _parsed(command: Command, parser: ArgumentParser, arguments: Sequence[str], serve: Serve) -> int:
    command.options(parser)
    return command.run(parser.parse_args(arguments), serve)


def _main_parser() -> ArgumentParser:
    longest = max(len(command.name) for command in COMMANDS)
    lines = "\n".join(f"  afterdraft {command.name:<{longest}} {command.help}" for command in COMMANDS)
    parser = ArgumentParser(
        prog="afterdraft",
        description=fill(ABOUT, WIDTH),
        epilog=f"other commands, each with its own --help:\n{lines}",
        formatter_class=RawDescriptionHelpFormatter,
    )
    parser.add_argument("--version", action="version", version=f"Afterdraft {__version__}")
    return parser


def _outcome(error: errors.AfterdraftError) -> int:
    print(error, file=sys.stderr)
    return next(code for kind, code in EXITS if isinstance(error, kind))


def _speak_utf8() -> None:
    """Whatever the system's own encoding: titles and JSON hold any letter."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
