"""Kills a program in the midst of a stream of edits, again and again, and looks what became of the book.

    python -m tests.store.killing BOOK BACKUPS ROUNDS SEED

Three processes: this one kills and judges; a child makes edits; what the child asked for and was told is written down
by a third, so that nothing the child believed can die with it. Prints a JSON object.
"""

import json
import os
import random
import signal
import sys
import time
import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import asdict, dataclass, field
from functools import partial
from pathlib import Path

from afterdraft.store.book import BookFile
from afterdraft.store.opening import open_book
from afterdraft.work.notes.write_note import write_note
from afterdraft.work.write_field import write_field
from tests.store.sample import undo

_TAIL = 4096  # bytes at the end of what was heard; the latest of both kinds stands there
LONGEST = 0.12  # seconds of edits before a kill
UNDO_EVERY = 5  # edits of which one is made of something more, taken back again
PASSING = "in passing"


@dataclass(slots=True)
class Outcome:
    kills: int = 0
    in_flight: int = 0  # kills that met an edit asked for and not yet answered
    saved: int = 0  # edits that had been answered
    lost: list[str] = field(default_factory=list)  # answered edits that are not there
    troubles: list[str] = field(default_factory=list)  # what is wrong with the file


@dataclass(frozen=True, slots=True)
class Heard:
    """What the child asked for and was told, by number of edit."""

    asked: int  # the latest; -1 for none
    told: int
    settled: int  # likewise: up to which kill all is written down


def main(book: Path, backups: Path, rounds: int, seed: int) -> Outcome:
    """Kill `rounds` times; the book must be closed."""
    chance = random.Random(seed)  # noqa: S311 — when to kill
    outcome = Outcome()
    first = 0
    with _recorder(book.with_suffix(".heard")) as (tell, heard):
        while outcome.kills < rounds:
            child = _forked(partial(_edit, book, backups, first, tell))
            _wait_for(first, heard)
            time.sleep(chance.uniform(0, LONGEST))
            os.kill(child, signal.SIGKILL)
            os.waitpid(child, 0)
            last = _settled(outcome.kills, tell, heard)
            outcome.kills += 1
            outcome.in_flight += last.asked > last.told
            outcome.saved += last.told + 1 - first
            first = _judge(book, backups, last, outcome)
    return outcome


def _edit(book: Path, backups: Path, first: int, tell: int) -> None:
    """The child: edits without end, each told of before and after. Edit `n` leaves the note "n" and the summary "n"."""
    with open_book(book, backups=backups) as opened:
        draft = opened.drafts()[0].id
        n = first
        while True:
            os.write(tell, b"asked %d\n" % n)
            _one_edit(opened, draft, n)
            os.write(tell, b"told %d\n" % n)
            n += 1


def _one_edit(book: BookFile, draft: str, n: int) -> None:
    if n % UNDO_EVERY == 0:
        write_note(book, PASSING)
        undo(book)
    card = next(iter(book.cards(draft).values()))
    write_field(book, "card", card.id, "summary", str(n), revision=card.revision, client="a", sequence=n, done=True)
    write_note(book, str(n))


def _judge(book: Path, backups: Path, last: Heard, outcome: Outcome) -> int:
    """Look into the book after a kill; the number that the next child begins with."""
    with open_book(book, backups=backups) as opened:
        notes = {int(note.text) for note in opened.notes() if note.text != PASSING}
        card = next(iter(opened.cards(opened.drafts()[0].id).values()))
        summary = int(card.summary or -1)
        outcome.lost += [f"note {n}" for n in range(last.told + 1) if n not in notes]
        outcome.lost += [f"summary {last.told}"] if summary < last.told else []
        outcome.troubles += ["what nobody asked for"] if max(summary, *notes, -1) > last.asked else []
        outcome.troubles += opened.check()
        if last.asked not in notes:  # cut short: done now, so that the numbers have no gap
            write_note(opened, str(last.asked))
    return last.asked + 1


@contextmanager
def _recorder(file: Path) -> Iterator[tuple[int, Callable[[], Heard]]]:
    """A process that writes down what comes through the pipe; its writing end, and what it has heard so far."""
    source, tell = os.pipe()
    file.write_bytes(b"the program was asked, and told:\n")

    def record() -> None:
        os.close(tell)
        with file.open("ab", buffering=0) as to:
            while said := os.read(source, 65536):
                to.write(said)

    recorder = _forked(record)
    os.close(source)
    try:
        yield tell, lambda: _heard(file)
    finally:
        os.close(tell)
        os.waitpid(recorder, 0)


def _heard(file: Path) -> Heard:
    with file.open("rb") as written:
        written.seek(max(0, file.stat().st_size - _TAIL))
        words = [line.split() for line in written.read().splitlines()[1:]]
    numbers = [
        max((int(word[1]) for word in words if word[0] == verb), default=-1) for verb in (b"asked", b"told", b"settled")
    ]
    return Heard(*numbers)


def _settled(kill: int, tell: int, heard: Callable[[], Heard]) -> Heard:
    """What was heard, once the recorder has written down all that the dead child left in the pipe: a mark put in
    behind it has come out. (A pause would not do: on a busy machine the recorder may sleep longer.)"""
    os.write(tell, b"settled %d\n" % kill)
    for _ in range(3000):
        if (now := heard()).settled >= kill:
            return now
        time.sleep(0.005)
    raise TimeoutError("the recorder does not write")


def _wait_for(first: int, heard: Callable[[], Heard]) -> None:
    """Until the child has asked for edit `first`."""
    for _ in range(3000):
        if heard().asked >= first:
            return
        time.sleep(0.005)
    raise TimeoutError("the child does not edit")


def _forked(work: Callable[[], None]) -> int:
    child = os.fork()
    if child:
        return child
    try:
        work()
    except Exception:  # noqa: BLE001 — a child ends here, whatever happened
        traceback.print_exc()
    finally:
        os._exit(0)


if __name__ == "__main__":
    book, backups, rounds, seed = sys.argv[1:]
    sys.stdout.write(json.dumps(asdict(main(Path(book), Path(backups), int(rounds), int(seed)))))
