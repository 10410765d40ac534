"""The one place where real adapters meet the use cases."""

import json
import os
from collections.abc import Callable, Mapping, Sequence
from contextlib import closing
from dataclasses import dataclass
from datetime import UTC, datetime
from importlib import resources
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

from afterdraft import apart, platform
from afterdraft.comparison.comparison import Comparison
from afterdraft.desk.answer import Answer, Turned
from afterdraft.desk.table import Sheet
from afterdraft.errors import AlreadyThere, CannotOpen, CannotWrite, EmptyManuscript, Missing, TooLarge
from afterdraft.formats import kinds, table
from afterdraft.formats.joined import is_manuscript, joined, order
from afterdraft.home import SUFFIX, BooksFolder, Recents, seen
from afterdraft.manuscript.draft import Draft, Suggestion
from afterdraft.manuscript.outline import outline, paragraph_offsets
from afterdraft.store import backups as kept
from afterdraft.store import opening, place
from afterdraft.store.shelf import Shelf
from afterdraft.work.cards.outline_table import outline_table
from afterdraft.work.demonstrate import demonstrate
from afterdraft.work.drafts.begin_book import begin_book
from afterdraft.work.drafts.bring_draft import How, bring_draft, refuse_the_same
from afterdraft.work.ports import Book
from afterdraft.work.split.suggest_breaks import suggest_breaks as find_breaks

if TYPE_CHECKING:
    from afterdraft.questions.seen import Seen

T = TypeVar("T")
File = tuple[str, bytes]  # a name without folders, and what is in it
READS = kinds.READS  # the kinds of file that are read, for a person
TABLE_ENDINGS = kinds.TABLE_ENDINGS  # of files that are read as tables
TABLE_TYPES = kinds.TABLE_TYPES  # media type of each form that a table is written in
DEMONSTRATION = "Demonstration book"  # its file's name
FIRST_DRAFT, SECOND_DRAFT = "manuscript.docx", "second.docx"  # of the demonstration book


@dataclass(frozen=True, slots=True)
class Backup:
    name: str  # of its file
    number: int  # grows by one at each backup of the book
    made: str  # day, YYYY-MM-DD
    why: str
    size: int  # bytes


def endings() -> tuple[str, ...]:
    """Of the files that are read as manuscripts: small letters, with the dot."""
    return tuple(ending for form in table.FORMATS for ending in form.endings)


def load(paths: Sequence[Path]) -> tuple[File, ...]:
    """Files, and all manuscripts in folders, from the disk. Raises `CannotOpen`, `EmptyManuscript`."""
    files = [inside for path in paths for inside in (_in_folder(path) if path.is_dir() else [path])]
    return tuple((file.name, _bytes(file)) for file in files)


def in_order(files: Sequence[File]) -> tuple[File, ...]:
    """Put in a writer's order (2 before 10), unless they were named in an order of their own."""
    names = [name for name, _ in files]
    if names != sorted(names):  # sorted is how a shell or a browser lists them
        return tuple(files)
    places = {name: place for place, name in enumerate(order(names))}
    return tuple(sorted(files, key=lambda file: places[file[0]]))


def read(files: Sequence[File]) -> Draft:
    """Read one manuscript from its files. Raises `UnreadableManuscript`."""
    from afterdraft.manuscript.structure import structure  # late: a server that only opens books needs none of it

    files = in_order(files)
    return structure(joined(apart.read(files)))


def facts(draft: Draft) -> dict[str, Any] | None:
    """What reading says of people, speech, times: keys of the form `read/1`; None where the text is not English."""
    from afterdraft.engine.reader import read_scenes  # late: the language pipeline takes seconds to load
    from afterdraft.manuscript.headings import headings_over
    from afterdraft.whole.task import is_read
    from afterdraft.whole.told import told

    if not is_read(draft.language):
        return None
    texts = [block.text for block in draft.source.blocks]
    offsets = paragraph_offsets(draft.division, texts)
    views = outline(draft.division, [0] * len(texts)).scenes
    story = [[texts[index] for index in view.story] for view in views]
    places = [[offsets[index] for index in view.story] for view in views]
    heads = headings_over(draft.division, views, texts)
    return told(list(read_scenes(story)), places=places, texts=story, heads=heads)


def seen_by_checks(name: str) -> "Seen":
    """What checks look at: of a manuscript by its path, or of the newest draft in a book, with what is marked there.

    Raises `UnreadableManuscript`, `BookTrouble`, `Missing`.
    """
    from afterdraft.engine.pipeline import MODEL  # late: the language pipeline takes seconds to load
    from afterdraft.engine.reader import read_scenes
    from afterdraft.questions.of_draft import seen_of
    from afterdraft.work.questions.to_ask import ask_book

    if name.endswith(SUFFIX):
        with closing(look_at(Path(name))) as book:
            return ask_book(book, read_scenes, model=MODEL)
    return seen_of(read(load([Path(name)])), read_scenes)


def answers_in(name: str) -> tuple[tuple[Answer, ...], Mapping[str, Turned]]:
    """What was answered to questions in a book, and by id the checks that are turned down or off there; none where
    `name` is the path of a manuscript. Raises `BookTrouble`."""
    if not name.endswith(SUFFIX):
        return (), {}
    with closing(look_at(Path(name))) as book:
        return book.answers(), book.turned_checks()


def draft_named(name: str) -> Draft:
    """A manuscript by its path, or one of a book's drafts: `BOOK` for the latest, `BOOK#2` for the second.

    Raises `UnreadableManuscript`, `BookTrouble`, `Missing`.
    """
    place, mark, number = name.rpartition("#")
    if mark and number.isdecimal() and place.endswith(SUFFIX) and not os.path.lexists(name):
        return _draft_of(Path(place), int(number))
    return _draft_of(Path(name), None) if name.endswith(SUFFIX) else read(load([Path(name)]))


def compared(old: Draft, new: Draft, *, part_way: bool = False) -> Comparison:
    """Two drafts, scene by scene. `part_way`: the new one goes only as far as the revision has come."""
    from afterdraft.comparison.compare import compare  # late: only comparing needs it
    from afterdraft.comparison.told import told

    first, second = (told(draft.division, [block.text for block in draft.source.blocks]) for draft in (old, new))
    return compare(first, second, part_way=part_way)


def put_new(path: Path, content: bytes) -> None:
    """Write a file that is not there yet. Raises `AlreadyThere`, `CannotWrite`."""
    try:
        with path.open("xb") as file:
            file.write(content)
    except FileExistsError as there:
        raise AlreadyThere(str(path)) from there
    except OSError as error:
        raise CannotWrite(str(path), platform.why(error)) from error


def read_tables(file: File) -> tuple[Sheet, ...]:
    """The tables of a spreadsheet, a text with separators, a document. Raises `UnreadableTable`, `LockedFile`."""
    return apart.read_tables(file)


def suggest_breaks(book: Book, draft: str) -> tuple[Suggestion, ...]:
    """Where scenes may begin unmarked, looked for in a process of its own; none where that failed, which has written
    down why. Raises `Missing`, `BookTrouble`."""
    try:
        return find_breaks(book, draft, search=apart.suggested)
    except (TooLarge, apart.ReadingFault):
        return ()


def make_ready_for_tables() -> None:
    """Load what writes tables, some tenths of a second: nobody is to wait for that who then takes one along."""
    from afterdraft.formats.tables import docx, xlsx  # noqa: F401 — heavy, so only when one may be wanted


def outline_file(book: Book, form: str) -> bytes:
    """The reverse outline as a table: "xlsx", "csv" or "docx". Raises `NotPossible`, `Missing`."""
    from afterdraft.formats.tables.write import write  # late: heavy, and seldom wanted

    return write(outline_table(book), form, title=book.facts().title)


def begin(files: Sequence[File], *, folder: BooksFolder, path: Path | None = None, title: str = "") -> Path:
    """Make a book of a manuscript's files, in the folder, or at `path`. Returns where it lies.

    Raises `UnreadableManuscript`, `AlreadyThere`, `BookTrouble`; then nothing is left.
    """
    files = in_order(files)
    draft = read(files)
    shelf = Shelf(lambda title: path or folder.free(title), backups=_backups())
    return _made(begin_book(shelf, draft, files, title=title))


def next_draft(book: Book, files: Sequence[File], how: How = "next") -> str:
    """Bring a manuscript's files into an open book, as `bring_draft` says; returns the draft's id.

    Raises `UnreadableManuscript`, `NotPossible` where it is the draft that is there already, `BookTrouble`; then
    nothing is changed.
    """
    files = in_order(files)
    draft = read(files)
    refuse_the_same(book, draft)
    return bring_draft(book, draft, files, how)


def open_book(path: Path) -> Book:
    """Open a book file. Raises `BookTrouble`."""
    return opening.open_book(path, backups=_backups())


def look_at(path: Path) -> Book:
    """Open a book file for reading only; it may be open elsewhere. Raises `BookTrouble`."""
    return opening.open_book(path, backups=_backups(), read_only=True)


def adopt(folder: BooksFolder, name: str, content: bytes) -> Path:
    """Copy a book file into the books folder. Raises `BookTrouble`; then nothing is left there."""
    folder.path().mkdir(parents=True, exist_ok=True)
    return _placed(folder, name.removesuffix(SUFFIX), lambda path: opening.take_in(path, content))


def warnings(path: Path) -> tuple[str, ...]:
    """What the writer should know of a book, or a folder of books, that lies there."""
    return place.warnings(path if path.suffix == SUFFIX else path / f"book{SUFFIX}")


def backups(id: str) -> tuple[Backup, ...]:
    """Of the book of this id, latest first."""
    found = kept.in_folder(_backups() / id)
    return tuple(Backup(one.path.name, one.number, one.day, one.why, one.size) for one in found)


def restore(path: Path, id: str, name: str) -> Path | None:
    """Put the backup called `name` in the place of the book at `path`; returns where the present one was kept.

    Raises `Missing`, `BookTrouble`; then the book is as it was.
    """
    folder = _backups() / id
    backup = next((one.path for one in kept.in_folder(folder) if one.path.name == name), None)
    if backup is None:
        raise Missing(f"The backup “{name}”")
    return kept.restore(path, backup, folder=folder, day=_today())


def book_id(path: Path) -> str:
    """The id of a book, also of one that is damaged or gone, if it was open lately. Raises `BookTrouble`."""
    known = Recents(platform.folders()).at(path.absolute())
    if known is not None:
        return known.id
    book = look_at(path)
    book.close()
    return book.id


def demonstration_path(folder: BooksFolder) -> Path:
    """Where the demonstration book goes unless told otherwise."""
    return folder.path() / f"{DEMONSTRATION}{SUFFIX}"


def demonstration(folder: BooksFolder, *, path: Path | None = None) -> Path:
    """Where the demonstration book lies; it is made if it is not there. Raises `BookTrouble`."""
    wanted = path or demonstration_path(folder)
    return wanted if os.path.lexists(wanted) else _made(_demonstration_at(wanted))


def demonstration_anew(path: Path) -> Path | None:
    """Start the demonstration book at `path` again; returns where it was kept as it is. Raises `BookTrouble`."""
    made = _demonstration_at(path.with_name(f".{path.stem}.anew"))
    made.close()
    try:
        return kept.restore(path, Path(made.path), folder=_backups() / book_id(path), day=_today())
    finally:
        Path(made.path).unlink(missing_ok=True)


def next_of_demonstration(book: Book) -> Sequence[File]:
    """The second draft of the demonstration book, as files; none for any other book, or once it is in."""
    known = book.drafts()
    if len(known) != 1 or known[0].files != (FIRST_DRAFT,):
        return ()
    data = resources.files("afterdraft.demodata")
    first = data.joinpath(FIRST_DRAFT).read_bytes()
    return (
        [(SECOND_DRAFT, data.joinpath(SECOND_DRAFT).read_bytes())] if book.originals(known[0].id)[0][1] == first else ()
    )


def _demonstration_at(path: Path) -> Book:
    data = resources.files("afterdraft.demodata")
    files = [(FIRST_DRAFT, data.joinpath(FIRST_DRAFT).read_bytes())]
    work = json.loads(data.joinpath("work.json").read_text(encoding="utf-8"))
    draft = read(files)

    def first(book: Book) -> None:
        demonstrate(book, bring_draft(book, draft, files), work)

    return Shelf(lambda _: path, backups=_backups()).begin(title=draft.title, first=first)[0]


def _made(book: Book) -> Path:
    """Close a book that was just made; it is on the list of recent books from now on."""
    Recents(platform.folders()).put(seen(book))
    book.close()
    return Path(book.path)


def _placed(folder: BooksFolder, name: str, put: Callable[[Path], T]) -> Path:
    """Put a file under a free name; the next free one if someone was quicker."""
    while True:
        path = folder.free(name)
        try:
            put(path)
        except AlreadyThere:
            continue
        return path


def _draft_of(path: Path, number: int | None) -> Draft:
    """A draft in a book, as it is divided there now. Raises `BookTrouble`, `Missing`."""
    with closing(look_at(path)) as book:
        drafts = {draft.number: draft for draft in book.drafts()}
        chosen = drafts.get(max(drafts, default=0) if number is None else number)
        if chosen is None:
            raise Missing(f"Draft {number or 1} of the book at {path}")
        source, division = book.source(chosen.id), book.division(chosen.id)
    return Draft(source, division, title=chosen.title, author=chosen.author, language=chosen.language)


def _in_folder(folder: Path) -> list[Path]:
    found = sorted(path for path in folder.iterdir() if path.is_file() and is_manuscript(path.name))
    if not found:
        raise EmptyManuscript(folder.name)
    return found


def _bytes(file: Path) -> bytes:
    try:
        return file.read_bytes()
    except OSError as error:
        raise CannotOpen(str(file), platform.why(error)) from error


def _backups() -> Path:
    return platform.folders().data / "backups"


def _today() -> str:
    return datetime.now(UTC).date().isoformat()
