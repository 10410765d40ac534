"""The real server, as a writer starts it, and what she does with it, timed from outside."""

import os
import re
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import urlsplit

import httpx2

from tests.server import home_variables

PATIENCE = 60.0  # seconds


@dataclass(frozen=True, slots=True)
class Serving:
    client: httpx2.Client
    pid: int
    started: float  # seconds from exec to the first page in hand

    def memory(self) -> tuple[float, float]:
        """Megabytes in use now, and at most so far; of the server's process tree, which is one process."""
        status = Path(f"/proc/{self.pid}/status").read_text("utf-8")
        now, most = (re.search(rf"{name}:\s+(\d+) kB", status) for name in ("VmRSS", "VmHWM"))
        assert now
        assert most
        return int(now[1]) / 1024, int(most[1]) / 1024


@contextmanager
def serving() -> Iterator[Serving]:
    """A server with an empty home, until the block ends."""
    with tempfile.TemporaryDirectory() as folder:
        home = Path(folder)
        began = time.perf_counter()
        with subprocess.Popen(
            [sys.executable, "-m", "afterdraft", "--no-open", "--port", "0"],
            env={**os.environ, **home_variables(home)},
            cwd=home,
            stdout=subprocess.PIPE,
            encoding="utf-8",
        ) as process:
            try:
                address = _address(process)
                with httpx2.Client(
                    base_url=_origin(address), headers={"Origin": _origin(address)}, timeout=PATIENCE
                ) as client:
                    client.get(address, follow_redirects=True).raise_for_status()
                    yield Serving(client, process.pid, time.perf_counter() - began)
            finally:
                process.terminate()
                process.wait(PATIENCE)


def bring_in(client: httpx2.Client, name: str, data: bytes) -> tuple[str, float]:
    """A new book of a manuscript: its address, and the seconds until the page of the split is in hand."""
    began = time.perf_counter()
    answer = client.post("/books", files={"files": (name, data)})
    assert answer.status_code == 303, answer.text[:500]
    split = answer.headers["location"]
    client.get(split).raise_for_status()
    return split.rpartition("/")[0], time.perf_counter() - began


def bring_next(client: httpx2.Client, book: str, name: str, data: bytes) -> float:
    """The next draft of a book; the seconds until the page it leads to is in hand."""
    began = time.perf_counter()
    answer = client.post(f"{book}/drafts/bring", data={"how": "next"}, files={"files": (name, data)})
    assert answer.status_code == 303, answer.text[:500]
    client.get(answer.headers["location"]).raise_for_status()
    return time.perf_counter() - began


def _address(process: "subprocess.Popen[str]") -> str:
    assert process.stdout is not None
    for line in process.stdout:
        found = re.search(r"http://127\.0\.0\.1:\S+", line)
        if found:
            return found.group()
    raise AssertionError("the server ended without an address")


def _origin(address: str) -> str:
    parts = urlsplit(address)
    return f"{parts.scheme}://{parts.netloc}"
