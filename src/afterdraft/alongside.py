"""Reading a draft alongside the program: in a process of its own that steps back for everything else.

The child never opens a book. It gets the words of the scenes and what the writer has said of people; it answers
each scene's facts as they are read, and then what they tell together, as lines of JSON. The language pipeline is
loaded only where a scene has to be read.
"""

import json
import os
import subprocess
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from threading import Lock, Thread
from typing import TYPE_CHECKING, Any

from afterdraft import platform
from afterdraft.faultlog import log_to, write_down
from afterdraft.whole.task import Task, given_form, given_of

if TYPE_CHECKING:
    from afterdraft.reading.facts import SceneFacts

MEGABYTES = 4096  # of address space, of which a twelfth is used; what maps files counts here too
TOLD = b"told "  # begins the line with what all scenes tell
ONE_THREAD = dict.fromkeys(("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"), "1")


class Reader:
    """One reading, from start to end or to `stop`."""

    def __init__(self) -> None:
        self._process: subprocess.Popen[bytes] | None = None
        self._stopped = False
        self._lock = Lock()

    def run(self, task: Task, known: Mapping[str, str], *, on_scene: Callable[[str, str], None]) -> str | None:
        """Read the scenes whose facts are not `known` by their keys, each one's key and facts handed to `on_scene`.

        Returns what all of it tells, as JSON (`whole.told.told`, in place, and the scenes' ids under `scenes`); None
        where it was stopped or the child ended early.
        """
        with self._lock:
            if self._stopped:
                return None
            self._process = process = _spawned()
        Thread(target=_hand_over, args=(process, task, known), daemon=True).start()
        result: str | None = None
        with process:
            for line in process.stdout or ():
                if not line.endswith(b"\n"):
                    break  # the child ended in the middle of it
                if line.startswith(TOLD):
                    result = line.removeprefix(TOLD).decode()
                else:
                    on_scene(*json.loads(line))
        return None if self._stopped or process.returncode else result

    def stop(self) -> None:
        """End it where it is. What was read is kept by whoever it was handed to."""
        with self._lock:
            self._stopped = True
            if self._process is not None:
                self._process.kill()

    @property
    def stopped(self) -> bool:
        return self._stopped

    @property
    def process(self) -> int | None:
        """Number of the child, once there is one."""
        return self._process.pid if self._process else None


def _spawned() -> "subprocess.Popen[bytes]":
    return subprocess.Popen(  # noqa: S603 — our own interpreter, our own module
        [sys.executable, "-P", "-m", __name__],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        env={**os.environ, **ONE_THREAD},
    )


def _hand_over(process: "subprocess.Popen[bytes]", task: Task, known: Mapping[str, str]) -> None:
    if process.stdin is None:
        return
    try:
        with process.stdin as stdin:
            stdin.write(json.dumps(_packed(task, known)).encode())
    except OSError:
        return  # it was ended meanwhile


def _packed(task: Task, known: Mapping[str, str]) -> dict[str, Any]:
    return {
        "ids": task.ids,
        "keys": task.keys,
        "texts": task.texts,
        "places": task.places,
        "given": given_form(task.given),
        "heads": task.heads,
        "known": dict(known),
    }


def _unpacked(form: dict[str, Any]) -> tuple[Task, dict[str, str]]:
    task = Task(
        ids=tuple(form["ids"]),
        keys=tuple(form["keys"]),
        texts=tuple(map(tuple, form["texts"])),
        places=tuple(map(tuple, form["places"])),
        given=given_of(form["given"]),
        heads=tuple(map(tuple, form["heads"])),
    )
    return task, form["known"]


def _child() -> None:
    """Read the task on standard input; answer on standard output, a line as soon as it is known."""
    log_to(platform.folders().log)
    platform.step_back()
    platform.limit_memory(MEGABYTES << 20)
    try:
        for line in answers(*_unpacked(json.load(sys.stdin.buffer))):
            sys.stdout.buffer.write(line + b"\n")
            sys.stdout.buffer.flush()
    except OSError:  # nobody listens any more
        sys.exit(1)
    except Exception as fault:  # noqa: BLE001 — the last line of this process; the program tells of it
        write_down(fault)
        sys.exit(1)


def answers(task: Task, known: Mapping[str, str]) -> Iterator[bytes]:
    """What the child says, line by line: each scene read, its key and facts; at the end, behind `TOLD`, the whole."""
    from afterdraft.reading.keeping import packed, unpacked
    from afterdraft.whole.told import RECIPE, told

    scenes = []
    for key, paragraphs in zip(task.keys, task.texts, strict=True):
        facts = known.get(key)
        if facts is None:
            facts = packed(_read(paragraphs))
            yield json.dumps([key, facts]).encode()
        scenes.append(unpacked(facts))
    whole = told(scenes, places=task.places, texts=task.texts, given=task.given, heads=task.heads, in_place=True)
    form = whole | {"scenes": list(task.ids), "recipe": RECIPE}
    yield TOLD + json.dumps(form, ensure_ascii=False, separators=(",", ":")).encode()


def _read(paragraphs: Sequence[str]) -> "SceneFacts":
    from afterdraft.engine.reader import read_scenes  # late: the pipeline takes seconds

    (facts,) = read_scenes([paragraphs])
    return facts


if __name__ == "__main__":
    _child()
