"""A book of ten scenes that is asked nine things without a word of it being read off the page."""

from collections.abc import Sequence
from dataclasses import replace
from functools import cache
from pathlib import Path

from afterdraft.engine.pipeline import MODEL
from afterdraft.formats import table
from afterdraft.formats.joined import joined
from afterdraft.manuscript.structure import structure
from afterdraft.questions.catalogue import BY_ID
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import packed
from afterdraft.store.book import BookFile
from afterdraft.store.opening import begin_book
from afterdraft.work.cast.to_read import to_read
from afterdraft.work.drafts.bring_draft import bring_draft
from afterdraft.work.ports import Book
from tests.kept import content, copy

AGAIN = (
    "The lamp over the lock swung twice in the wind and went out, and for as long as it takes to count the steps down "
    "to the water nobody on the quay said anything at all."
)
SCENES = (
    "Odile came down to the slip on Tuesday 14th February 1965, before it was light.",
    f"Bram shut the ledger. {AGAIN}",
    "Hester turned the lamp down and asked what TK had said of the boat.",
    f"The low boat lay where nobody had left her. {AGAIN}",
    "The skipper’s name was XXX, and he coiled the line without looking up.",
    "They went up by the towpath. [describe the weir] Then it rained.",
    "“They all ask,” said Hester, “and TK tells them.” She laid the pen across the ledger.",
    "At the bridge Bram paid TKTK for the two sacks, and had no change.",
    "In the morning ??? came to the door of the lock house, and would not sit down.",
    "The price of the boat was TBD in both of the ledgers.",
)
TEXT = "THE LOW BOAT\n\nby Perrin Vane\n\n\nCHAPTER ONE\n\n" + "\n\n***\n\n".join(SCENES) + "\n"


def low_boat(folder: Path, text: str = TEXT, *, language: str = "") -> Path:
    """Where the book lies, closed."""
    book = begun(folder, text, language=language)
    book.close()
    return Path(book.path)


def begun(folder: Path, text: str = TEXT, *, language: str = "") -> BookFile:
    """The book, open."""
    return copy(_kept(text, language), folder / "Low boat.afterdraft", backups=folder / "backups")


@cache
def _kept(text: str, language: str) -> bytes:
    return content(
        lambda folder: begin_book(
            folder / "Low boat.afterdraft",
            title="The Low Boat",
            backups=folder / "backups",
            first=lambda book: bring_text(book, text, language=language),
        )[0]
    )


def bring_text(book: Book, text: str, *, language: str = "") -> str:
    """As the next draft; its id."""
    file = ("low boat.txt", text.encode())
    made = structure(joined([table.read(file[1], file[0])]))
    return bring_draft(book, replace(made, language=language or made.language), [file])


def found_here(checks: Sequence[str], seen: Seen, facts: Sequence[str]) -> dict[str, tuple[Finding, ...]]:
    """As `apart.findings`, in this process; what rests on facts finds nothing."""
    return {check: tuple(BY_ID[check].find(seen)) if set(BY_ID[check].reads) == {"words"} else () for check in checks}


def read(book: Book) -> None:
    """As though all of it had been read."""
    task = to_read(book, book.drafts()[0].id, model=MODEL)
    for key, text in zip(task.keys, task.texts, strict=True):
        book.keep_facts(key, packed(SceneFacts(len(text))))
