"""Reading a manuscript apart from the program: in a process of its own, within limits of memory and time.

Files come from strangers. Whatever a damaged or hostile one does to a parser, the program that holds the writer's book
neither hangs nor fills memory nor ends. The child gets bytes and answers with plain values; of its answer nothing but
`Blocks` is built.
"""

import io
import pickle
import subprocess
import sys
from collections.abc import Sequence

from afterdraft import errors, platform
from afterdraft.faultlog import log_to, write_down
from afterdraft.manuscript.blocks import Blocks

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
    try:
        done = subprocess.run(  # noqa: S603 — our own interpreter, our own module
            [sys.executable, "-P", "-m", __name__],
            input=pickle.dumps(tuple(files)),
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
    """Builds nothing but what `Blocks` are made of."""

    def find_class(self, module: str, name: str) -> object:
        if module != _MODULE:
            raise pickle.UnpicklingError(f"{module}.{name}")
        return super().find_class(module, name)


def _called(files: Sequence[File]) -> str:
    return files[0][0] if len(files) == 1 else "One of the files"


def _child() -> None:
    """Read what stands on standard input; answer on standard output."""
    platform.limit_memory(MEGABYTES << 20)
    files: tuple[File, ...] = pickle.load(sys.stdin.buffer)  # noqa: S301 — from our own program
    sys.stdout.buffer.write(pickle.dumps(_answer(files), protocol=pickle.HIGHEST_PROTOCOL))


def _answer(files: Sequence[File]) -> tuple[str, object]:
    """The class and the sentence of a refusal; or "" and what was read."""
    from afterdraft.formats import table  # late: only the child needs the parsers

    read_so_far = []
    try:
        for name, content in files:
            read_so_far.append(table.read(content, name))
    except errors.UnreadableManuscript as refusal:
        return type(refusal).__name__, str(refusal)
    except MemoryError:
        return "TooLarge", str(errors.TooLarge(files[len(read_so_far)][0], MEMORY))
    except Exception as fault:  # noqa: BLE001 — the last line of this process; the program tells of it
        log_to(platform.folders().log)
        write_down(fault)
        return FAULT, ""
    return "", tuple(read_so_far)


if __name__ == "__main__":
    _child()
