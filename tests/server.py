"""The real server as a process of its own, with an empty home, on a port of its own."""

import os
import re
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import parse_qs, urlsplit

import httpx2

from tests.forked import Forked

ROOT = Path(__file__).parents[1]
LOOPBACK_ONLY = ROOT / "tests" / "loopback"
ANSWERS_WITHIN = 20.0  # seconds, on a machine that is busy with other tests
ENDS_WITHIN = 20.0
LOOK = 0.01  # between two looks at what it has printed
LEFT_OUT = ("DISPLAY", "WAYLAND_DISPLAY", "PYTHONDONTWRITEBYTECODE")  # compiled once, not at each of many starts
ORIGINS: set[str] = set()  # of every server started in this process: where a browser may ask


def home_variables(home: Path) -> dict[str, str]:
    """Everything by which a system tells a program where its user's things lie, all below `home`."""
    runtime = home / "run"
    runtime.mkdir(mode=0o700, parents=True, exist_ok=True)
    return {
        "HOME": str(home),
        "USERPROFILE": str(home),
        "APPDATA": str(home / "config"),
        "LOCALAPPDATA": str(home / "local"),
        "XDG_CONFIG_HOME": str(home / "config"),
        "XDG_DATA_HOME": str(home / "data"),
        "XDG_STATE_HOME": str(home / "state"),
        "XDG_CACHE_HOME": str(home / "cache"),
        "XDG_RUNTIME_DIR": str(runtime),
        "AFTERDRAFT_HOME": str(home / "Books"),
        "AFTERDRAFT_READING": "off",  # tests of reading turn it on; the others need no second process
    }


def environment(home: Path) -> dict[str, str]:
    """For a process of ours: that home, no screen, no way out of the machine."""
    kept = {name: value for name, value in os.environ.items() if name not in LEFT_OUT}
    temporary = home / "tmp"
    temporary.mkdir(exist_ok=True)
    return {
        **kept,
        **home_variables(home),
        "TMPDIR": str(temporary),
        "PYTHONPATH": str(LOOPBACK_ONLY),
        "PYTHONWARNINGS": "error",
    }


def _varied(home: Path, variables: Mapping[str, str] | None) -> dict[str, str]:
    return {**environment(home), **(variables or {})}


def command(*arguments: str | Path) -> list[str]:
    return [sys.executable, "-m", "afterdraft", *map(str, arguments)]


def afterdraft(
    *arguments: str | Path, home: Path, variables: Mapping[str, str] | None = None
) -> "subprocess.CompletedProcess[str]":
    """Run a command to its end."""
    with tempfile.TemporaryDirectory() as folder:
        out, errors = Path(folder) / "out.txt", Path(folder) / "errors.txt"
        told = [*map(str, arguments)]
        code = Forked(told, environment=_varied(home, variables), cwd=home, out=out, errors=errors).wait(60)
        return subprocess.CompletedProcess(told, code, out.read_text("utf-8"), errors.read_text("utf-8"))


@dataclass
class Server:
    process: "Forked | subprocess.Popen[str]"
    address: str  # with the key
    home: Path

    @property
    def origin(self) -> str:
        parts = urlsplit(self.address)
        return f"{parts.scheme}://{parts.netloc}"

    @property
    def port(self) -> int:
        return urlsplit(self.address).port or 0

    @property
    def key(self) -> str:
        return parse_qs(urlsplit(self.address).query)["key"][0]

    @property
    def log(self) -> str:
        return _log(self.home)

    def client(self) -> httpx2.Client:
        """A browser that was let in, as far as a program can be one."""
        return httpx2.Client(
            base_url=self.origin,
            cookies={f"afterdraft-{self.port}": self.key},
            headers={"Origin": self.origin},
            timeout=ANSWERS_WITHIN,
        )

    def stop(self, how: signal.Signals = signal.SIGTERM) -> int:
        """Ask it to end; its exit code."""
        self.process.send_signal(how)
        return self.ended()

    def ended(self) -> int:
        return self.process.wait(ENDS_WITHIN)

    def kill(self) -> None:
        self.process.kill()
        self.process.wait(ENDS_WITHIN)


@contextmanager
def running(
    home: Path,
    *arguments: str | Path,
    port: int | None = 0,
    open_browser: bool = False,
    variables: Mapping[str, str] | None = None,
    forked: bool = False,
) -> Iterator[Server]:
    """A server from its first answer to its end. `port` 0 is any free one, None the program's own choice. A `forked`
    one starts sooner, where the start is not what is looked at."""
    home.mkdir(parents=True, exist_ok=True)
    options = [*([] if port is None else ["--port", str(port)]), *([] if open_browser else ["--no-open"])]
    told = [*map(str, arguments), *options]
    errors = home / "stderr.txt"
    with tempfile.TemporaryDirectory() as folder:  # what it prints has the key, which stands nowhere in the home
        out = Path(folder) / "stdout.txt"
        for file in (out, errors):
            file.write_bytes(b"")
        start = Forked if forked else _real
        process = start(told, environment=_varied(home, variables), cwd=home, out=out, errors=errors)
        try:
            server = Server(process, _address(process, out, errors), home)
            ORIGINS.add(server.origin)
            yield server
        finally:
            if process.poll() is None:
                process.kill()
            process.wait(ENDS_WITHIN)
            print(errors.read_text("utf-8"), _log(home))  # noqa: T201 pytest shows it when the test fails


def _real(
    arguments: Sequence[str], *, environment: Mapping[str, str], cwd: Path, out: Path, errors: Path
) -> "subprocess.Popen[str]":
    with out.open("w", encoding="utf-8") as stdout, errors.open("w", encoding="utf-8") as stderr:
        return subprocess.Popen(command(*arguments), env=environment, cwd=cwd, stdout=stdout, stderr=stderr, text=True)


def _log(home: Path) -> str:
    return "".join(file.read_text("utf-8") for file in sorted(home.rglob("afterdraft.log*")))


def _address(process: "Forked | subprocess.Popen[str]", out: Path, errors: Path) -> str:
    until = time.monotonic() + ANSWERS_WITHIN
    while time.monotonic() < until:
        over = process.poll() is not None
        found = re.search(r"http://127\.0\.0\.1:\S+(?=\s)", out.read_text("utf-8"))
        if found:
            return found.group()
        if over:
            break
        time.sleep(LOOK)
    raise AssertionError(f"the server gave no address: {errors.read_text('utf-8')}")
