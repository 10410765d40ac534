"""The suite's own fences: nothing leaves the machine, a skip counts where it is strict."""

import os
import socket
import subprocess
import sys
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread

import pytest

from tests.loopback.sitecustomize import LeavesTheMachine, is_local
from tests.server import LOOPBACK_ONLY, environment

ROOT = Path(__file__).parents[1]
OUTSIDE = "192.0.2.1"  # set aside for documentation by RFC 5737: nobody is there


@pytest.mark.parametrize(
    ("host", "local"),
    [
        ("127.0.0.1", True),
        ("127.9.9.9", True),
        ("::1", True),
        ("localhost", True),
        (OUTSIDE, False),
        ("0.0.0.0", False),  # noqa: S104 all interfaces: the point
        ("::", False),
        ("", False),
        ("elsewhere.example", False),
        (b"elsewhere.example", False),
    ],
)
def test_what_this_machine_is(host: str | bytes, *, local: bool) -> None:
    assert is_local(host) == local


def test_no_socket_leads_out() -> None:
    with socket.socket() as asking:
        for leave in (asking.connect, asking.connect_ex, asking.bind):
            with pytest.raises(LeavesTheMachine):
                leave((OUTSIDE, 80))
    with socket.socket(type=socket.SOCK_DGRAM) as asking, pytest.raises(LeavesTheMachine):
        asking.sendto(b"x", (OUTSIDE, 53))
    with pytest.raises(LeavesTheMachine):
        socket.getaddrinfo("elsewhere.example", 80)


def test_nor_does_one_of_a_process_of_ours(home: Path) -> None:
    code = f"import socket; socket.create_connection(('{OUTSIDE}', 80), 1)"
    done = subprocess.run(
        [sys.executable, "-c", code], env=environment(home), capture_output=True, encoding="utf-8", check=False
    )
    assert str(LOOPBACK_ONLY) in environment(home)["PYTHONPATH"]
    assert "LeavesTheMachine" in done.stderr


SKIPPING = """
import pytest
from tests.support import need

def test_needs():
    need(False, "a thing that is not here")

@pytest.mark.skip(reason="not today")
def test_marked():
    pass
"""


def run_suite(folder: Path, code: str, **variables: str) -> str:
    """What pytest says of a file of tests that is no part of this suite but has its fixtures."""
    suite = folder / "test_other.py"
    suite.write_text(code, encoding="utf-8")
    (folder / "conftest.py").write_text("from tests.conftest import *\n", encoding="utf-8")
    command = [sys.executable, "-m", "pytest", "-c", str(ROOT / "pyproject.toml"), "--rootdir", str(folder), str(suite)]
    done = subprocess.run(
        command,
        env={**os.environ, "PYTHONPATH": str(ROOT), **variables},
        cwd=folder,
        capture_output=True,
        encoding="utf-8",
        check=False,
    )
    return done.stdout


@pytest.mark.parametrize(("strict", "outcome"), [("0", "2 skipped"), ("1", "1 failed, 1 error")])
def test_a_skip_is_a_failure_where_it_is_strict(tmp_path: Path, strict: str, outcome: str) -> None:
    assert outcome in run_suite(tmp_path, SKIPPING, AFTERDRAFT_STRICT=strict)


STRAYING = """
def test_asks_elsewhere(context):
    context.new_page().goto("http://127.0.0.1:{port}/")

def test_offends_the_policy(page):
    page.evaluate("fetch('http://127.0.0.1:{port}/').catch(() => 0)")

def test_a_script_fails(page):
    page.evaluate("setTimeout(() => {{ throw new Error('a script failed') }})")
    page.wait_for_timeout(100)
"""


@pytest.mark.browser
def test_a_browser_that_strays_is_noticed(tmp_path: Path) -> None:
    class Anyone(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            self.send_response(204)
            self.end_headers()

        def log_message(self, *_: object) -> None:
            pass

    with ThreadingHTTPServer(("127.0.0.1", 0), Anyone) as elsewhere:
        Thread(target=elsewhere.serve_forever).start()
        said = run_suite(tmp_path, STRAYING.format(port=elsewhere.server_port))
        elsewhere.shutdown()
    assert "3 errors" in said
    for what in ("asked elsewhere", "Content Security Policy", "a script failed"):
        assert what in said
