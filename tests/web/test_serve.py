"""The server as a process: its address, its lock, its ways to end.

What is about a start, an end or what either leaves behind has a real one; the others have a forked one, which is
sooner there.
"""

import json
import os
import signal
import socket
import subprocess
import time
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest

from afterdraft.web.serve import DEFAULT_PORT
from tests.cli.manuscripts import harbour
from tests.server import Server, afterdraft, command, environment, running


@cache
def begun() -> bytes:
    with TemporaryDirectory() as folder:
        home = Path(folder)
        made = home / "harbour.afterdraft"
        assert afterdraft("begin", harbour(home), "-o", made, home=home).returncode == 0
        return made.read_bytes()


@pytest.fixture
def book(home: Path) -> Path:
    made = home / "harbour.afterdraft"
    made.write_bytes(begun())
    return made


@pytest.fixture
def started(home: Path) -> Iterator[Server]:
    with running(home) as server:
        yield server


@pytest.fixture
def started_with_book(home: Path, book: Path) -> Iterator[Server]:
    with running(home, book) as server:
        yield server


@pytest.fixture
def with_book(home: Path, book: Path) -> Iterator[Server]:
    with running(home, book, forked=True) as server:
        yield server


def backups(home: Path) -> list[Path]:
    return sorted((home / "data").rglob("*.afterdraft"))


def test_the_address_leads_to_a_page(started: Server) -> None:
    with started.client() as client:
        answer = client.get(started.address, follow_redirects=True)
    assert answer.status_code == 200
    assert answer.headers["content-type"].startswith("text/html")
    assert "key" not in str(answer.url)


def test_listens_to_this_machine_only(server: Server) -> None:
    others = {address[4][0] for address in socket.getaddrinfo("localhost", None)} - {"127.0.0.1"}
    for host in (*others, "127.0.0.2"):
        family = socket.AF_INET6 if ":" in str(host) else socket.AF_INET
        with socket.socket(family) as asking, pytest.raises(OSError, match=r"refused|Cannot assign"):
            asking.connect((host, server.port))


def test_a_book_named_is_opened(started_with_book: Server) -> None:
    with started_with_book.client() as client:
        assert "The Low Harbour" in client.get(started_with_book.address, follow_redirects=True).text


def test_a_second_one_hands_its_book_to_the_first(server: Server, book: Path) -> None:
    second = afterdraft(book.name, "--no-open", home=server.home)  # relative: to where it was typed, not to the server
    assert second.returncode == 0
    address = second.stdout.split()[-1]
    assert address.startswith(f"{server.origin}/books/")
    with server.client() as client:
        assert client.get(address, follow_redirects=True).status_code == 200


def test_a_second_one_without_a_book_prints_the_address(server: Server) -> None:
    second = afterdraft("--no-open", home=server.home)
    assert (second.returncode, second.stdout.split()[-1]) == (0, server.address)


def test_of_two_that_start_at_once_one_serves(home: Path) -> None:
    def begin() -> "subprocess.Popen[str]":
        return subprocess.Popen(
            command("--no-open", "--port", "0"), env=environment(home), stdout=subprocess.PIPE, encoding="utf-8"
        )

    with begin() as one, begin() as other:
        assert one.stdout is not None
        assert other.stdout is not None
        assert one.stdout.readline() == other.stdout.readline() != ""
        until = time.monotonic() + 5
        while (ended := [one.poll(), other.poll()]) == [None, None] and time.monotonic() < until:
            time.sleep(0.05)
        assert sorted(ended, key=str) == [0, None]
        for process in (one, other):
            process.terminate()


def test_what_the_first_refuses_the_second_says(server: Server) -> None:
    second = afterdraft("not there.afterdraft", "--no-open", home=server.home)
    assert second.returncode == 4
    assert "There is no Afterdraft book" in second.stderr
    assert second.stdout == ""


@pytest.mark.slow
def test_one_that_does_not_answer_is_said_to_be_so(started: Server) -> None:
    started.process.send_signal(signal.SIGSTOP)
    try:
        second = afterdraft("--no-open", home=started.home)
    finally:
        started.process.send_signal(signal.SIGCONT)
    assert second.returncode == 4
    assert f"process {started.process.pid}" in second.stderr


def test_a_port_that_is_taken_is_left_to_who_has_it(home: Path) -> None:
    with socket.socket() as other:
        other.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            other.bind(("127.0.0.1", DEFAULT_PORT))
            other.listen()
        except OSError:
            pass  # someone has it already: as good
        first = afterdraft_address(home)
        assert DEFAULT_PORT < first <= DEFAULT_PORT + 50
        asked_for = afterdraft("--no-open", "--port", str(DEFAULT_PORT), home=home / "other")
        assert asked_for.returncode == 2
        assert f"Port {DEFAULT_PORT} cannot be used" in asked_for.stderr


def afterdraft_address(home: Path) -> int:
    """The port chosen when none is asked for."""
    (home / "other").mkdir()
    with running(home, port=None) as server:
        return server.port


@pytest.mark.parametrize("how", [signal.SIGTERM, signal.SIGINT, signal.SIGHUP])
def test_a_signal_closes_it_in_order(started_with_book: Server, book: Path, how: signal.Signals) -> None:
    before = len(backups(started_with_book.home))
    assert started_with_book.stop(how) == 0
    assert len(backups(started_with_book.home)) == before + 1
    assert not book.with_name(f"{book.name}-wal").exists()  # one whole file, fit to be copied


def test_close_ends_it_with_a_backup(started_with_book: Server) -> None:
    before = len(backups(started_with_book.home))
    with started_with_book.client() as client:
        assert client.post("/close").status_code == 200
    assert started_with_book.ended() == 0
    assert len(backups(started_with_book.home)) == before + 1


def test_after_close_nothing_is_opened_any_more(with_book: Server) -> None:
    with with_book.client() as client:
        client.post("/close")
        late = client.get("/", headers={"Accept": "application/json"})
        if late.status_code == 200:
            page = with_book.address.split("?")[0]
            late = client.get(page, headers={"Accept": "application/json"})
        assert late.json() == {"error": "Afterdraft is closing. Nothing was changed."}


def test_after_a_kill_the_next_one_starts(started_with_book: Server, book: Path) -> None:
    started_with_book.kill()
    with running(started_with_book.home, book) as next_one, next_one.client() as client:
        assert client.get(next_one.address, follow_redirects=True).status_code == 200
        assert next_one.key != started_with_book.key


def test_a_deep_link_opens_its_book_after_a_restart(with_book: Server) -> None:
    page = with_book.address.removeprefix(with_book.origin).split("?")[0]
    with_book.stop()
    with running(with_book.home) as next_one, next_one.client() as client:
        assert "The Low Harbour" in client.get(page, follow_redirects=True).text


def test_the_owner_file_is_for_this_user_only(started: Server) -> None:
    (owner,) = (started.home / "run").rglob("owner.json")
    assert json.loads(owner.read_text("utf-8"))["key"] == started.key
    assert owner.stat().st_mode & 0o777 == 0o600
    assert owner.parent.stat().st_mode & 0o777 == 0o700
    started.stop()
    assert owner.read_text("utf-8") == ""


def test_the_key_is_written_nowhere_else(started: Server) -> None:
    with started.client() as client:
        client.get(started.address, follow_redirects=True)
        client.get("/?key=guess")
        client.get("/nowhere")
    started.stop()
    files = [path for path in started.home.rglob("*") if path.is_file()]
    assert files
    assert [path for path in files if started.key.encode() in path.read_bytes()] == []


def test_no_browser_is_started_without_a_screen(home: Path) -> None:
    """Asked to open one, with a browser that would leave a trace."""
    trace = home / "trace"
    browser = home / "browser.sh"
    browser.write_text(f'#!/bin/sh\necho "$1" > {trace}\n', encoding="utf-8")
    browser.chmod(0o700)
    for screen, seen in (({}, False), ({"DISPLAY": ":99"}, True)):
        with running(home, open_browser=True, variables={"BROWSER": str(browser), **screen}) as server:
            until = time.monotonic() + (5 if seen else 0.5)
            while not trace.exists() and time.monotonic() < until:
                time.sleep(0.05)
            assert trace.exists() == seen
            if seen:
                time.sleep(0.1)
                assert trace.read_text("utf-8").strip() == server.address
            server.stop()


@pytest.mark.skipif(not hasattr(os, "geteuid"), reason="POSIX permissions")
def test_a_runtime_folder_of_someone_else_is_not_used(home: Path) -> None:
    (home / "run").chmod(0o755)
    with running(home) as server:
        (owner,) = home.rglob("owner.json")
        assert (home / "run") not in owner.parents
        assert owner.parent.stat().st_mode & 0o777 == 0o700
        assert server.stop() == 0


def test_an_unwritable_list_of_recent_books_does_not_stop_it(home: Path, book: Path) -> None:
    (home / "config").write_text("a file where a folder should be", encoding="utf-8")
    with running(home, book) as server, server.client() as client:
        assert "The Low Harbour" in client.get(server.address, follow_redirects=True).text
        assert server.stop() == 0


def test_where_there_is_no_place_for_the_lock_it_says_so(home: Path) -> None:
    (home / "run" / "afterdraft").write_text("a file where a folder should be", encoding="utf-8")
    done = afterdraft("--no-open", home=home)
    assert done.returncode == 4
    assert "owner.json cannot be written" in done.stderr


def test_an_unwritable_log_does_not_stop_it(home: Path) -> None:
    (home / "state").write_text("a file where a folder should be", encoding="utf-8")
    with running(home) as server:
        assert server.stop() == 0


def test_the_exit_is_clean(started: Server) -> None:
    started.stop()
    assert started.log == ""
    assert (started.home / "stderr.txt").read_text("utf-8") == ""
    assert isinstance(started.process, subprocess.Popen)
