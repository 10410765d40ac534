"""Reading a draft alongside the program: in a process of its own that steps back for everything else.

The child never opens a book. It gets the words of the scenes, what the writer has said of people, and what is known
from before; it answers each scene's facts as they are read, and then what they tell together, as lines of JSON. The
language pipeline is loaded only where a paragraph has to be analysed that never was.
"""

import json
import os
import subprocess
import sys
from collections.abc import Callable, Iterator, Mapping
from threading import Lock, Thread
from typing import Any

from afterdraft import platform
from afterdraft.faultlog import log_to, write_down
from afterdraft.whole.task import Task, given_form, given_of

MEGABYTES = 4096  # of address space, of which a twelfth is used; what maps files counts here too
TOLD = b"told "  # begins the line with what all scenes tell
KEEP = b"keep "  # begins a line with what is asked for again at the next reading
ONE_THREAD = dict.fromkeys(("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"), "1")


class Reader:
    """One reading, from start to end or to `stop`."""

    def __init__(self) -> None:
        self._process: subprocess.Popen[bytes] | None = None
        self._stopped = False
        self._lock = Lock()

    def run(
        self,
        task: Task,
        known: Mapping[str, str],
        *,
        on_scene: Callable[[str, str], None],
        keep: Callable[[dict[str, str]], None] = lambda _: None,
    ) -> str | None:
        """Read the scenes whose facts are not `known` by their keys, each one's key and facts handed to `on_scene`.

        `keep` gets by their keys what the next reading need not work out again where it is `known` to it (`wanted`
        says which of it); what was kept under such a key goes. Returns what all of it tells, as JSON
        (`whole.told.told`, in place, and the scenes' ids under `scenes`); None where it was stopped or the child ended
        early.
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
                elif line.startswith(KEEP):
                    keep(json.loads(line.removeprefix(KEEP)))
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


def wanted(task: Task, known: Mapping[str, str]) -> list[str]:
    """Keys of what helps a reading that knows the facts of some of its scenes."""
    from afterdraft.engine.reader import paragraph_key
    from afterdraft.whole.speakers_kept import SPEAKERS

    unread = (texts for key, texts in zip(task.keys, task.texts, strict=True) if key not in known)
    return [SPEAKERS, *{paragraph_key(text): None for texts in unread for text in texts}]


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
        "known": {key: known[key] for key in (*task.keys, *wanted(task, known)) if key in known},
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
    from afterdraft.engine.reader import read_again
    from afterdraft.reading.keeping import packed, unpacked
    from afterdraft.whole.speakers_kept import SPEAKERS, KeptSpeakers
    from afterdraft.whole.told import RECIPE, told

    scenes = []
    for key, paragraphs in zip(task.keys, task.texts, strict=True):
        if key in known:
            scenes.append(unpacked(known[key]))
            continue
        facts, words = read_again(paragraphs, known)
        if words:
            yield KEEP + json.dumps(words).encode()
        yield json.dumps([key, packed(facts)]).encode()
        scenes.append(facts)
    speak = KeptSpeakers(task.keys, known.get(SPEAKERS, ""), recipe=RECIPE)
    whole = told(
        scenes,
        places=task.places,
        texts=task.texts,
        given=task.given,
        heads=task.heads,
        in_place=True,
        speak=speak,
    )
    if speakers := speak.form:
        yield KEEP + json.dumps({SPEAKERS: speakers}).encode()
    form = whole | {"scenes": list(task.ids), "recipe": RECIPE}
    yield TOLD + json.dumps(form, ensure_ascii=False, separators=(",", ":")).encode()


if __name__ == "__main__":
    _child()
