"""Reading a manuscript apart from the program: in a process of its own, within limits of memory and time.

Files come from strangers. Whatever a damaged or hostile one does to a parser, the program that holds the writer's book
neither hangs nor fills memory nor ends. The child gets bytes and answers with plain values; of its answer nothing but
`Blocks` is built.
"""

import io
import pickle
import subprocess
import sys
from collections.abc import Callable, Mapping, Sequence
from typing import Any, Literal

from afterdraft import errors, platform
from afterdraft.desk.table import Sheet
from afterdraft.faultlog import log_to, write_down
from afterdraft.manuscript.blocks import Blocks

What = Literal["manuscripts", "tables"]
File = tuple[str, bytes]  # a name without folders, and what is in it
SECONDS = 60.0  # a novel takes one; the worst hostile file known ten on a slow machine
MEGABYTES = 1536  # of address space; the worst hostile file known takes 1,000 of memory
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


def _asked(what: What, files: Sequence[File]) -> tuple[Any, ...]:
    """What the child answers, one for each file. Raises as `read`."""
    try:
        done = subprocess.run(  # noqa: S603 — our own interpreter, our own module
            [sys.executable, "-P", "-m", __name__],
            input=pickle.dumps((what, tuple(files))),
            stdout=subprocess.PIPE,
            timeout=SECONDS * max(1, len(files)),
            check=False,
        )
    except subprocess.TimeoutExpired as slow:
        raise errors.TooLarge(_called(files), "reading it took too long") from slow
    if done.returncode or not done.stdout:
        raise errors.TooLarge(_called(files), MEMORY)
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


def _called(files: Sequence[File]) -> str:
    return files[0][0] if len(files) == 1 else "One of the files"


def _child() -> None:
    """Read what stands on standard input; answer on standard output."""
    platform.limit_memory(MEGABYTES << 20)
    what, files = pickle.load(sys.stdin.buffer)  # noqa: S301 — from our own program
    sys.stdout.buffer.write(pickle.dumps(_answer(what, files), protocol=pickle.HIGHEST_PROTOCOL))


def _answer(what: What, files: Sequence[File]) -> tuple[str, object]:
    """The class and the sentence of a refusal; or "" and what was read."""
    reader = READERS[what]
    read_so_far: list[object] = []
    try:
        for name, content in files:
            read_so_far.append(reader(content, name))
    except errors.UnreadableManuscript as refusal:
        return type(refusal).__name__, str(refusal)
    except MemoryError:
        return "TooLarge", str(errors.TooLarge(files[len(read_so_far)][0], MEMORY))
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


READERS: Mapping[What, Callable[[bytes, str], object]] = {"manuscripts": _manuscript, "tables": _tables}


if __name__ == "__main__":
    _child()
