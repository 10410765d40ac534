"""One server a user: it owns the lock, listens on this machine only, and closes its books however it is ended."""

import json
import logging
import os
import secrets
import signal
import socket
import time
import webbrowser
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager, nullcontext
from dataclasses import asdict, dataclass
from datetime import UTC, datetime
from functools import partial
from http import HTTPStatus
from http.client import HTTPConnection, HTTPException
from pathlib import Path
from threading import Event, Thread, Timer
from types import FrameType
from typing import IO, NoReturn
from urllib.parse import quote, urlencode

import uvicorn
from starlette.types import ASGIApp

from afterdraft import faultlog, platform, wiring
from afterdraft.errors import BookTrouble, CannotWrite, NotAnswering, PortTaken
from afterdraft.home import BooksFolder, Recents
from afterdraft.web.app import build
from afterdraft.web.guard import cookie_name
from afterdraft.web.registry import Registry

HOST = "127.0.0.1"
DEFAULT_PORT = 8427  # not assigned in IANA's registry of port numbers, from memory
PORTS_TRIED = 50  # the usual one and those after it; then any that is free
ANSWER_WITHIN = 10.0  # seconds: a running server may be bringing an older book up to date
LOOK_AGAIN = 0.1  # seconds
LINGER = 0.5  # seconds between the answer to Close and the end
SETTLED = 5.0  # seconds after which the first pages have been answered
LOOK_FOR_A_NEW_DAY = 900.0  # seconds
LET_FINISH = 5  # seconds given at the end to requests under way
ENDING = (signal.SIGINT, signal.SIGTERM, *(getattr(signal, n) for n in ("SIGHUP", "SIGBREAK") if hasattr(signal, n)))


@dataclass(frozen=True, slots=True)
class Owner:
    """What the running server leaves for the next one to find; only this user can read it."""

    pid: int
    port: int
    key: str


def serve(book: Path | None, *, port: int | None, start_browser: bool, say: Callable[[str], None]) -> int:
    """Run until closed, or hand `book` to the server that runs already. Returns the exit code.

    `port` None means the usual one or the next free; 0 any free one. Says the address, one line, once the page
    answers. Raises `PortTaken`, `NotAnswering`, and `BookTrouble` for a book that cannot be opened.
    """
    folders = platform.folders()
    place = folders.runtime / "owner.json"
    show = partial(_show, say=say, start_browser=start_browser)
    until = time.monotonic() + ANSWER_WITHIN
    while (owned := _locked(place)) is None:
        owner = _owner(place)
        address = _hand_over(owner, book, wait=max(until - time.monotonic(), LOOK_AGAIN)) if owner else None
        if address:
            show(address)
            return 0
        if time.monotonic() > until:
            raise NotAnswering(owner.pid if owner else 0)
        time.sleep(LOOK_AGAIN)
    with owned:
        return _run(owned, folders, book, port=port, show=show)


def _run(
    owned: IO[str], folders: platform.Folders, book: Path | None, *, port: int | None, show: Callable[[str], None]
) -> int:
    faultlog.log_to(folders.log)
    registry = _registry(folders)
    page = f"/books/{registry.open(book).id}/" if book else "/"
    listening = _listen(port)
    owner = Owner(os.getpid(), listening.getsockname()[1], secrets.token_urlsafe(32))
    ending = Event()
    close = partial(_close, registry, ending)
    app = build(registry, key=owner.key, port=owner.port, close=close, log=str(folders.log))
    Thread(target=_daily, args=(registry, ending), daemon=True).start()
    Thread(target=_make_ready, args=(ending,), daemon=True).start()
    with _signals_end(ending):
        _write(owned, json.dumps(asdict(owner)))
        _Server(app, ending=ending, ready=lambda: show(_address(owner, page))).run(sockets=[listening])
        troubles = registry.close_all()
        _write(owned, "")
    if troubles:
        raise BookTrouble(" ".join(troubles))
    return 0


def _make_ready(ending: Event) -> None:
    """What takes some tenths of a second when it is first wanted, loaded while nobody waits for it."""
    if not ending.wait(SETTLED):
        wiring.make_ready_for_tables()


def _daily(registry: Registry, ending: Event) -> None:
    """Backups of a program that nobody closes."""
    while not ending.wait(LOOK_FOR_A_NEW_DAY):
        for trouble in registry.back_up_daily(datetime.now(UTC).date()):
            logging.getLogger(__name__).warning(trouble)


def _locked(place: Path) -> IO[str] | None:
    try:
        return platform.lock(place)
    except OSError as trouble:
        raise CannotWrite(str(place), platform.why(trouble)) from trouble


def _registry(folders: platform.Folders) -> Registry:
    folder = BooksFolder(folders)
    return Registry(
        opener=wiring.open_book,
        adopter=partial(wiring.adopt, folder),
        restorer=wiring.restore,
        recents=Recents(folders),
        folder=folder,
    )


def _close(registry: Registry, ending: Event) -> tuple[str, ...]:
    """Close the books now; end a little later, so that the page that says so still gets its looks."""
    troubles = registry.close_all()
    timer = Timer(LINGER, ending.set)
    timer.daemon = True
    timer.start()
    return troubles


class _Server(uvicorn.Server):
    """Says when it answers, and ends when told."""

    def __init__(self, app: ASGIApp, *, ending: Event, ready: Callable[[], None]) -> None:
        super().__init__(
            uvicorn.Config(
                app,
                access_log=False,  # addresses may hold the key
                log_config=None,
                lifespan="off",
                server_header=False,
                timeout_graceful_shutdown=LET_FINISH,
            )
        )
        self._ending = ending
        self._ready = ready

    async def startup(self, sockets: list[socket.socket] | None = None) -> None:
        await super().startup(sockets)
        self._ready()

    async def on_tick(self, counter: int) -> bool:
        return await super().on_tick(counter) or self._ending.is_set()

    def capture_signals(self) -> AbstractContextManager[None]:  # type: ignore[override]  # ours stand until the books are closed
        return nullcontext()


@contextmanager
def _signals_end(ending: Event) -> Iterator[None]:
    """Let the system's wish to end be a wish, until the books are closed."""

    def wish(_signal: int, _frame: FrameType | None) -> None:
        ending.set()

    before = {number: signal.signal(number, wish) for number in ENDING}
    try:
        yield
    finally:
        for number, handler in before.items():
            signal.signal(number, handler)


def _listen(port: int | None) -> socket.socket:
    """A socket that listens to this machine only. Raises `PortTaken` for a port asked for by number."""
    if port is not None:
        return _bound(port) or _refuse(port)
    tried = (*range(DEFAULT_PORT, DEFAULT_PORT + PORTS_TRIED), 0)
    return next(bound for number in tried if (bound := _bound(number)))


def _bound(port: int) -> socket.socket | None:
    # With its protocol named, the loop sends each piece at once; without, a page's end waits 40 ms for an answer.
    listening = socket.socket(socket.AF_INET, socket.SOCK_STREAM, socket.IPPROTO_TCP)
    platform.claim_port_alone(listening)
    try:
        listening.bind((HOST, port))
        listening.listen()  # from here on, a second program gets the next port
    except (OSError, OverflowError):
        listening.close()
        return None
    return listening


def _refuse(port: int) -> NoReturn:
    raise PortTaken(port)


def _owner(place: Path) -> Owner | None:
    """None while the one that holds the lock has not got so far."""
    try:
        return Owner(**json.loads(place.read_text(encoding="utf-8")))
    except (OSError, ValueError, TypeError):
        return None


def _hand_over(owner: Owner, book: Path | None, *, wait: float) -> str | None:
    """Ask the running server to open `book`; its address, or None when it does not answer within `wait` seconds."""
    host = f"{HOST}:{owner.port}"
    headers = {
        "Content-Type": "application/x-www-form-urlencoded",
        "Accept": "application/json",
        "Cookie": f"{cookie_name(owner.port)}={owner.key}",
        "Origin": f"http://{host}",
    }
    connection = HTTPConnection(HOST, owner.port, timeout=wait)
    try:
        connection.request("POST", "/open", urlencode({"path": book.absolute() if book else ""}), headers)
        response = connection.getresponse()
        answer = json.loads(response.read())
    except (OSError, HTTPException, ValueError):
        return None
    finally:
        connection.close()
    if response.status != HTTPStatus.OK:
        raise BookTrouble(answer["error"])
    return _address(owner, answer["to"])


def _address(owner: Owner, page: str) -> str:
    return f"http://{HOST}:{owner.port}{quote(page)}?key={owner.key}"


def _show(address: str, *, say: Callable[[str], None], start_browser: bool) -> None:
    say(f"Afterdraft is open at {address}")
    if start_browser and platform.has_screen():
        Thread(target=webbrowser.open, args=(address,), daemon=True).start()


def _write(owned: IO[str], content: str) -> None:
    owned.seek(0)
    owned.truncate()
    owned.write(content)
    owned.flush()
