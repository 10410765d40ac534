"""`afterdraft book check|backup|list|restore|table`: look after a book's file; its reverse outline as a table."""

from argparse import ArgumentParser, Namespace
from contextlib import closing
from pathlib import Path

from afterdraft import wiring
from afterdraft.cli.options import Command, Serve
from afterdraft.errors import DamagedBook, Missing


def _options(parser: ArgumentParser) -> None:
    acts = parser.add_subparsers(dest="act", required=True, metavar="check|backup|list|restore|table")
    for name, (what, _) in ACTS.items():
        act = acts.add_parser(name, help=what, description=f"{what[0].upper()}{what[1:]}.")
        act.add_argument("book", type=Path, metavar="BOOK", help="a file NAME.afterdraft")
        if name == "restore":
            act.add_argument("number", nargs="?", type=int, help="which backup, as listed; otherwise the latest")
        if name == "table":
            act.add_argument(
                "-o", "--output", type=Path, required=True, metavar="FILE", help="NAME.xlsx, .csv or .docx"
            )


def _check(options: Namespace) -> None:
    """Raises `DamagedBook` with all that was found."""
    with closing(wiring.look_at(options.book)) as book:
        found = book.check()
    if found:
        raise DamagedBook(str(options.book), " ".join(found).rstrip("."))
    print("The book is sound.")


def _back_up(options: Namespace) -> None:
    with closing(wiring.look_at(options.book)) as book:
        print(f"The backup is at {book.back_up(why='asked for')}")


def _list(options: Namespace) -> None:
    backups = wiring.backups(wiring.book_id(options.book))
    for backup in backups:
        print(f"{backup.number:>6}  {backup.made}  {backup.size / 2**20:6.1f} MB  {backup.why}")
    if not backups:
        print("There are no backups of this book yet. One is made whenever it is closed.")


def _restore(options: Namespace) -> None:
    book = wiring.book_id(options.book)
    backup = _chosen(wiring.backups(book), options.number)
    kept = wiring.restore(options.book.absolute(), book, backup.name)
    print(f"The book is as it was in backup {backup.number} ({backup.made}, {backup.why}).")
    if kept:
        print(f"What it was before is kept at {kept}")


def _table(options: Namespace) -> None:
    """Raises `AlreadyThere`, `NotPossible`, `CannotWrite`."""
    target: Path = options.output
    with closing(wiring.look_at(options.book)) as book:
        content = wiring.outline_file(book, target.suffix.removeprefix(".").lower())
    wiring.put_new(target, content)
    print(f"The table is at {target}")


def _chosen(backups: tuple[wiring.Backup, ...], number: int | None) -> wiring.Backup:
    """The latest, or the one of this number. Raises `Missing`."""
    found = [backup for backup in backups if number in (None, backup.number)]
    if not found:
        raise Missing("A backup of this book" if number is None else f"Backup {number} of this book")
    return found[0]


ACTS = {
    "check": ("say whether the file is sound", _check),
    "backup": ("make a backup now", _back_up),
    "list": ("list the backups", _list),
    "table": ("write the reverse outline as a table: .xlsx, .csv, .docx", _table),
    "restore": ("bring a backup back; what is there now is kept as one", _restore),
}


def _run(options: Namespace, _: Serve) -> int:
    ACTS[options.act][1](options)
    return 0


COMMAND = Command("book", "check a book's file; backups; its reverse outline as a table", _options, _run)
