"""Work apart from the program: in a process of its own, within limits of memory and time.

Files come from strangers. Whatever a damaged or hostile one does to a parser, the program that holds the writer's book
neither hangs nor fills memory nor ends. And what takes tenths of a second, as the search for unmarked breaks does, or
seconds, as the checks do, holds up no page that she opens meanwhile. The child opens no book: it gets bytes or texts
and answers with plain values; of its answer nothing but `Blocks` is built.
"""

import io
import pickle
import subprocess
import sys
from collections.abc import Callable, Mapping, Sequence
from dataclasses import astuple, replace
from typing import TYPE_CHECKING, Any, Literal

from afterdraft import errors, platform
from afterdraft.desk.table import Sheet
from afterdraft.faultlog import log_to, write_down
from afterdraft.manuscript.blocks import Blocks
from afterdraft.manuscript.draft import Suggestion

if TYPE_CHECKING:
    from afterdraft.questions.question import Finding
    from afterdraft.questions.seen import Seen

What = Literal["manuscripts", "tables", "breaks", "questions"]
Given = tuple[str, Any]  # what it is called where something is wrong with it, and what it is
Scenes = Sequence[Sequence[str]]  # each as its paragraphs
File = tuple[str, bytes]  # a name without folders, and what is in it
SECONDS = 60.0  # a novel takes one; the worst hostile file known ten on a slow machine
MEGABYTES = 1536  # of address space; the worst hostile file known takes 1,000 of memory
PATIENCE = 600.0  # seconds that checks may take of a long book on a busy machine; nobody waits for them
ROOM = 4096  # megabytes of address space for the facts of a long book
MEMORY = "reading it took more memory than there is for one file"
FAULT = "fault"
_MODULE = "afterdraft.manuscript.blocks"


class ReadingFault(Exception):
    """A fault of ours in the child; it has written down where."""


def read(files: Sequence[File]) -> tuple[Blocks, ...]:
    """Read each file. Raises `UnreadableManuscript`, also where the child is ended by its limits; `ReadingFault`."""
    return _asked("manuscripts", files)


def read_tables(file: File) -> tuple[Sheet, ...]:
    """Read the tables of a file. Raises `UnreadableTable`, also where the child is ended by its limits;
    `LockedFile`, `ReadingFault`."""
    try:
        ((sheets,),) = (_asked("tables", [file]),)
    except errors.TooLarge as large:
        what = "reading it took more time or memory than there is for one table"
        raise errors.UnreadableTable(file[0], what) from large
    return tuple(Sheet(*sheet) for sheet in sheets)


def suggested(scenes: Scenes) -> list[tuple[int, Suggestion]]:
    """As `manuscript.unmarked.suggested`. Raises `TooLarge`, where the child is ended by its limits; `ReadingFault`."""
    (found,) = _asked("breaks", [("The draft", tuple(map(tuple, scenes)))])
    return [(scene, Suggestion(*told)) for scene, told in found]


def findings(checks: Sequence[str], seen: "Seen", facts: Sequence[str]) -> dict[str, tuple["Finding", ...]]:
    """What these checks (ids) find, by id; a check that has a fault is left out. `facts` of each scene as
    `reading.keeping` packs them, or none where they are not read. Raises `TooLarge`, where the child is ended by its
    limits; `ReadingFault`."""
    from afterdraft.questions.findings_form import findings_of

    (found,) = _asked("questions", [("The draft", (tuple(checks), seen, tuple(facts)))])
    return findings_of(found)


def _asked(what: What, given: Sequence[Given]) -> tuple[Any, ...]:
    """What the child answers, one for each thing it is given. Raises as `read`."""
    try:
        done = subprocess.run(  # noqa: S603 — our own interpreter, our own module
            [sys.executable, "-P", "-m", __name__],
            input=pickle.dumps((what, tuple(given))),
            stdout=subprocess.PIPE,
            timeout=(PATIENCE if what == "questions" else SECONDS) * max(1, len(given)),
            check=False,
        )
    except subprocess.TimeoutExpired as slow:
        raise errors.TooLarge(_called(given), "reading it took too long") from slow
    if done.returncode or not done.stdout:
        raise errors.TooLarge(_called(given), MEMORY)
    kind, told = _Answer(io.BytesIO(done.stdout)).load()
    if kind == FAULT:
        raise ReadingFault
    if kind:
        raise errors.retold(kind, told)
    return tuple(told)


class _Answer(pickle.Unpickler):
    """Builds nothing but what `Blocks` are made of, and plain values."""

    def find_class(self, module: str, name: str) -> object:
        if module != _MODULE:
            raise pickle.UnpicklingError(f"{module}.{name}")
        return super().find_class(module, name)


def _called(given: Sequence[Given]) -> str:
    return given[0][0] if len(given) == 1 else "One of the files"


def _child() -> None:
    """Read what stands on standard input; answer on standard output."""
    what, given = pickle.load(sys.stdin.buffer)  # noqa: S301 — from our own program
    platform.limit_memory((ROOM if what == "questions" else MEGABYTES) << 20)
    sys.stdout.buffer.write(pickle.dumps(_answer(what, given), protocol=pickle.HIGHEST_PROTOCOL))


def _answer(what: What, given: Sequence[Given]) -> tuple[str, object]:
    """The class and the sentence of a refusal; or "" and what was read."""
    reader = READERS[what]
    read_so_far: list[object] = []
    try:
        for name, one in given:
            read_so_far.append(reader(one, name))
    except errors.UnreadableManuscript as refusal:
        return type(refusal).__name__, str(refusal)
    except MemoryError:
        return "TooLarge", str(errors.TooLarge(given[len(read_so_far)][0], MEMORY))
    except Exception as fault:  # noqa: BLE001 — the last line of this process; the program tells of it
        log_to(platform.folders().log)
        write_down(fault)
        return FAULT, ""
    return "", tuple(read_so_far)


def _manuscript(content: bytes, name: str) -> Blocks:
    from afterdraft.formats import table  # late: only the child needs the parsers

    return table.read(content, name)


def _tables(content: bytes, name: str) -> tuple[tuple[str, tuple[tuple[str, ...], ...]], ...]:
    from afterdraft.formats.tables.read import read as read_table

    return tuple((sheet.name, sheet.rows) for sheet in read_table(content, name))


def _breaks(scenes: Scenes, _: str) -> tuple[tuple[int, tuple[object, ...]], ...]:
    from afterdraft.manuscript.unmarked import suggested as found

    platform.step_back()  # nobody waits for it
    return tuple((scene, astuple(one)) for scene, one in found(scenes))


def _findings(given: "tuple[Sequence[str], Seen, Sequence[str]]", _: str) -> dict[str, list[dict[str, Any]]]:
    from afterdraft.questions.catalogue import BY_ID
    from afterdraft.questions.findings_form import findings_form
    from afterdraft.reading.keeping import unpacked

    platform.step_back()  # nobody waits for it
    checks, seen, facts = given
    seen = replace(seen, facts=tuple(map(unpacked, facts)))
    found = {}
    for check in checks:
        try:
            found[check] = tuple(BY_ID[check].find(seen))
        except (ArithmeticError, AttributeError, LookupError, TypeError, ValueError) as fault:  # of ours
            log_to(platform.folders().log)
            write_down(fault)
    return findings_form(found)


READERS: Mapping[What, Callable[[Any, str], object]] = {
    "manuscripts": _manuscript,
    "tables": _tables,
    "breaks": _breaks,
    "questions": _findings,
}


if __name__ == "__main__":
    _child()
