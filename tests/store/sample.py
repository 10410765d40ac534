"""A small invented manuscript, and a book with it."""

import hashlib
from dataclasses import replace
from functools import cache
from pathlib import Path

from afterdraft.manuscript.blocks import Aside, Block, Blocks, Gap, Look, Run, Source
from afterdraft.manuscript.division import Chapter, Division, Doubt, Matter, Part, Role, Scene
from afterdraft.manuscript.draft import Draft
from afterdraft.store.book import BookFile
from afterdraft.store.opening import begin_book
from afterdraft.work.drafts.bring_draft import bring_draft
from tests.kept import content, copy

LINES: tuple[tuple[Role, str], ...] = (
    ("matter", "THE SLUICE-KEEPER"),
    ("heading", "PART ONE"),
    ("heading", "1. The ferry"),
    ("story", "The ferry wasn’t late; Ottla Brenn was early, and she held that against it."),
    ("story", "“Door,” said the keeper, and the door stayed as it was."),
    ("mark", "* * *"),
    ("story", "It rained on the well-known pier at Côte-Vieille and nobody minded."),
    ("story", "Nobody but Ottla."),
    ("heading", "2"),
    ("story", "By noon the water stood at the third step. 🌊"),
    ("story", "She counted them twice AND once more, for luck."),
    ("matter", "With thanks to all at the lock."),
)
TEXTS = tuple(text for _, text in LINES)
ORIGINAL = ("sluice.txt", "\n\n".join(TEXTS).encode())


def draft(texts: tuple[str, ...] = TEXTS) -> Draft:
    """The manuscript as structure recovery gives it, provisional ids and all; `texts` has as many lines as LINES."""
    roles = tuple(role for role, _ in LINES)
    blocks = tuple(Block(text, source=Source(ordinal=n * 2)) for n, text in enumerate(texts))
    fancy = Block(texts[3], (Run(4, 9, "italic"),), Look(style="Body", indent=18.0), Gap(blanks=1), Source(ordinal=6))
    original = "\n\n".join(texts).encode()
    return Draft(
        source=Blocks(
            name="sluice.txt",
            format="txt",
            sha256=hashlib.sha256(original).hexdigest(),
            size=len(original),
            blocks=(*blocks[:3], fancy, *blocks[4:]),
            asides=(Aside("comment", 3, 4, 9, "Which ferry?", "V.", "2026-01-02T03:04:05Z"),),
            notices=("One picture was left out.",),
        ),
        division=Division(
            parts=(Part("part-0", 1, "PART ONE"),),
            chapters=(
                Chapter("chapter-0", 2, "part-0", "chapter", 1, "The ferry", ("noon",)),
                Chapter("chapter-1", 8, "part-0", "chapter", 2, ""),
            ),
            scenes=(
                Scene("scene-0", 2, began="heading"),
                Scene("scene-1", 5, began="mark", sure=0.9),
                Scene("scene-2", 8, began="heading", title="Third step"),
            ),
            matter=(Matter("matter-0", 0, "front", "title page"), Matter("matter-1", 11, "back", "other")),
            roles=roles,
        ),
        doubts=(Doubt("This line may be a chapter heading.", 8, "chapter", "text"),),
        title="The Sluice-Keeper",
        author="V. Amsel",
        language="en",
    )


def begun(folder: Path, *, name: str = "Sluice", asides: tuple[Aside, ...] | None = None) -> tuple[BookFile, str]:
    """A book at `folder`/`name`.afterdraft with the manuscript in it, open; and the draft's id. A copy, which is made
    sooner, where the beginning is not what is looked at."""
    book = copy(_kept(name, asides), folder / f"{name}.afterdraft", backups=folder / "backups")
    return book, book.drafts()[0].id


def begun_anew(folder: Path, *, name: str = "Sluice", asides: tuple[Aside, ...] | None = None) -> tuple[BookFile, str]:
    """The same, and no copy."""
    made = draft() if asides is None else replace(draft(), source=replace(draft().source, asides=asides))
    return begin_book(
        folder / f"{name}.afterdraft",
        title="The Sluice-Keeper",
        backups=folder / "backups",
        first=lambda book: bring_draft(book, made, [ORIGINAL]),
    )


@cache
def _kept(name: str, asides: tuple[Aside, ...] | None) -> bytes:
    return content(lambda folder: begun_anew(folder, name=name, asides=asides)[0])


def desk_dump(book: BookFile) -> dict[str, list[tuple[object, ...]]]:
    """Every row of the writer's half."""
    with book._reading() as db:
        tables = [
            name for (name,) in db.execute("SELECT name FROM sqlite_schema WHERE type = 'table' AND name GLOB 'desk_*'")
        ]
        return {table: sorted(db.execute(f"SELECT * FROM {table}"), key=repr) for table in tables}  # noqa: S608


def undo(book: BookFile) -> str:
    """Take the latest edit back; its name."""
    top = book.edits().undo
    assert top
    return book.undo(top.number).name


def redo(book: BookFile) -> str:
    """Do the edit taken back last again; its name."""
    top = book.edits().redo
    assert top
    return book.redo(top.number).name
