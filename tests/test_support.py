"""The suite's own fences: nothing leaves the machine, a skip counts where it is strict."""

import os
import socket
import subprocess
import sys
from pathlib import Path

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


@pytest.mark.parametrize(("strict", "outcome"), [("0", "2 skipped"), ("1", "1 failed, 1 error")])
def test_a_skip_is_a_failure_where_it_is_strict(tmp_path: Path, strict: str, outcome: str) -> None:
    suite = tmp_path / "test_skipping.py"
    suite.write_text(SKIPPING, encoding="utf-8")
    command = [sys.executable, "-m", "pytest", "-p", "tests.conftest", "-c", str(ROOT / "pyproject.toml"), str(suite)]
    done = subprocess.run(
        command,
        env={**os.environ, "AFTERDRAFT_STRICT": strict, "PYTHONPATH": str(ROOT)},
        cwd=tmp_path,
        capture_output=True,
        encoding="utf-8",
        check=False,
    )
    assert outcome in done.stdout
