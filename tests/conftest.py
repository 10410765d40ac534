"""For every test: no way out of the machine, a home of its own, a skip that counts. For some: a server, a browser."""

import os
from collections.abc import Generator, Iterator
from pathlib import Path
from typing import Any, TypeVar
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import BrowserContext, ConsoleMessage, Page, expect

from scripts import browser as browser_finder
from tests import facts
from tests.loopback import sitecustomize  # noqa: F401 importing it closes the way out
from tests.server import ORIGINS, Server, home_variables, running
from tests.support import STRICT, need

expect.set_options(timeout=15_000)  # milliseconds, on a machine that is busy; how long a page takes is for the bench
LONG = ("corpus", "browser", "slow")  # markers of tests that take long, those that take longest first
Report = TypeVar("Report", pytest.TestReport, pytest.CollectReport)


@pytest.fixture(autouse=True)
def home(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty home; whatever this process asks the system for lies below it."""
    folder = tmp_path_factory.mktemp("home")
    for name, value in home_variables(folder).items():
        monkeypatch.setenv(name, value)
    monkeypatch.delenv("DISPLAY", raising=False)
    monkeypatch.delenv("WAYLAND_DISPLAY", raising=False)
    return folder


@pytest.fixture(scope="session")
def read_scenes(tmp_path_factory: pytest.TempPathFactory) -> facts.Read:
    """As the program's own, by the real model; what one process of this run has read no other reads again."""
    base = tmp_path_factory.getbasetemp()
    folder = (base.parent if "PYTEST_XDIST_WORKER" in os.environ else base) / "facts"
    folder.mkdir(exist_ok=True)
    return facts.reader(folder)


@pytest.fixture
def opens() -> Path | None:
    """The book that the server opens as it starts; a file of tests may have another `opens` (`tests.browser.walk`)."""
    return None


@pytest.fixture
def server(home: Path, opens: Path | None) -> Iterator[Server]:
    """The real server with an empty home; its log is shown when the test fails."""
    with running(home, *([opens] if opens else []), forked=True) as server:
        yield server


@pytest.fixture(scope="session")
def browser_type_launch_args() -> dict[str, Any]:
    """A browser of the system's own, that asks nobody for anything."""
    path = browser_finder.find()
    need(path, browser_finder.ADVICE)
    return {
        "executable_path": path,
        "headless": True,
        "args": [
            "--no-sandbox",  # as root there is none
            "--disable-dev-shm-usage",  # containers keep it small
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-domain-reliability",
            "--no-first-run",
            "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
        ],
    }


@pytest.fixture
def context(context: BrowserContext) -> Iterator[BrowserContext]:
    """Every request is written down and must be to a server of ours; no script may fail, no policy be offended."""
    asked: list[str] = []
    trouble: list[str] = []
    context.on("request", lambda request: asked.append(request.url))
    context.on("weberror", lambda error: trouble.append(str(error.error)))
    context.on("console", lambda message: trouble.extend(_offences(message)))
    yield context
    elsewhere = [url for url in asked if _origin(url) not in ORIGINS]
    assert not elsewhere, f"asked elsewhere: {elsewhere}"
    assert not trouble, trouble


@pytest.fixture
def page(page: Page, server: Server) -> Page:
    """A browser window, let in, at the first page: of the folder of books, or of the book that was opened."""
    page.goto(server.address)
    return page


def _offences(message: ConsoleMessage) -> list[str]:
    return [message.text] if "Content Security Policy" in message.text else []


def _origin(url: str) -> str:
    parts = urlsplit(url)
    return f"{parts.scheme}://{parts.netloc}"


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Files that take long come first, so that no worker is left with one alone at the end; each file stays whole."""
    long = {item.path: _place(item) for item in items}
    for item in items:
        long[item.path] = min(long[item.path], _place(item))
    items.sort(key=lambda item: long[item.path])


def _place(item: pytest.Item) -> int:
    """0 for what takes longest."""
    return next((place for place, mark in enumerate(LONG) if item.get_closest_marker(mark)), len(LONG))


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item,
) -> Generator[None, pytest.TestReport, pytest.TestReport]:
    report = yield
    return _counted(report)


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report() -> Generator[None, pytest.CollectReport, pytest.CollectReport]:
    report = yield
    return _counted(report)


def _counted(report: Report) -> Report:
    """Where it is strict, what was skipped has failed; what is expected to fail may."""
    if STRICT and report.skipped and not hasattr(report, "wasxfail"):
        report.outcome = "failed"
        report.longrepr = f"skipped, which counts as failed here: {report.longrepr}"
    return report
