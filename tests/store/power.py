"""What a disk holds after the power fails: every write of the engine is recorded, and those not synced are taken away.

A shim over the engine's own file system layer (sqlite.org/vfs.html; the structures are those of its sqlite3.h) notes
each write, truncation and sync, and hands it on. From the record the files can be made as they would be found after a
power cut at any moment: what was synced is there; of what was not, nothing, or any part.
"""

import _sqlite3
import ctypes
import random
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from ctypes import CFUNCTYPE, POINTER, Structure, c_char_p, c_int, c_int64, c_void_p
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any
from unittest.mock import patch

_NAME = "recording"
_WRITE = CFUNCTYPE(c_int, c_void_p, c_void_p, c_int, c_int64)
_TRUNCATE = CFUNCTYPE(c_int, c_void_p, c_int64)
_SYNC = CFUNCTYPE(c_int, c_void_p, c_int)
_SHIMS: list[object] = []  # never let go: a connection left open by a failing test must not call what is freed
_OPEN = CFUNCTYPE(c_int, c_void_p, c_void_p, c_void_p, c_int, c_void_p)
_DELETE = CFUNCTYPE(c_int, c_void_p, c_char_p, c_int)
_CREATE, _JOURNALS = 0x4, 0x80800  # SQLITE_OPEN_CREATE; …_MAIN_JOURNAL | …_WAL


class _Methods(Structure):
    _fields_ = (
        ("version", c_int),
        ("close", c_void_p),
        ("read", c_void_p),
        ("write", _WRITE),
        ("truncate", _TRUNCATE),
        ("sync", _SYNC),
        ("others", c_void_p * 13),  # from xFileSize to xUnfetch, version 3
    )


class _File(Structure):
    _fields_ = (("methods", POINTER(_Methods)),)


class _Vfs(Structure):
    _fields_ = (
        ("version", c_int),
        ("file_size", c_int),
        ("longest_path", c_int),
        ("next", c_void_p),
        ("name", c_char_p),
        ("data", c_void_p),
        ("open", _OPEN),
        ("delete", _DELETE),
        ("others", c_void_p * 14),  # from xAccess to xNextSystemCall, version 3
    )


@dataclass(frozen=True, slots=True)
class Event:
    kind: str  # "write", "truncate", "delete", "sync", "sync folder", "said"
    file: str = ""
    at: int = 0  # offset of a write, size of a truncation
    content: bytes = b""
    said: int = 0  # what the caller was told


@dataclass(slots=True)
class Record:
    """Everything that went to disk, in order, and what was `said` in between."""

    before: dict[str, bytes]  # files as they were durably there at the start, by path
    events: list[Event] = field(default_factory=list)

    def say(self, number: int) -> None:
        """Note that the caller has been told: edit `number` is saved."""
        self.events.append(Event("said", said=number))

    def after_power_cut(self, moment: int, *, survives: random.Random | None = None) -> dict[str, bytes]:
        """Files as found after a power cut before event `moment`. Of what was not synced nothing is there, or, with
        `survives`, any part of it, in any combination."""
        past = self.events[:moment]
        synced = {event.file: n for n, event in enumerate(past) if event.kind == "sync"}
        folder = max((n for n, event in enumerate(past) if event.kind == "sync folder"), default=-1)
        files = {path: bytearray(content) for path, content in self.before.items()}
        for n, event in enumerate(past):
            durable = n < (folder if event.kind == "delete" else synced.get(event.file, -1))
            if durable or (survives and survives.random() < 0.5):
                _apply(files, event)
        return {path: bytes(content) for path, content in files.items()}


@contextmanager
def recorded(book: Path) -> Iterator[Record]:
    """Within this, connections that the program opens go through the shim. `book` must be closed and whole."""
    record = Record({str(book): book.read_bytes()})
    shim = _Shim(record)
    _SHIMS.append(shim)
    connect = sqlite3.connect

    def through_shim(target: Any, *given: Any, **named: Any) -> sqlite3.Connection:
        if str(target).startswith("file:"):
            target = f"{target}&vfs={_NAME}"
        opened: sqlite3.Connection = connect(target, *given, **named)
        return opened

    with shim.registered(), patch("sqlite3.connect", through_shim):
        yield record


def _apply(files: dict[str, bytearray], event: Event) -> None:
    if event.kind == "delete":
        files.pop(event.file, None)
    elif event.kind == "truncate":
        del files.setdefault(event.file, bytearray())[event.at :]
    elif event.kind == "write":
        content = files.setdefault(event.file, bytearray())
        content.extend(bytes(max(0, event.at - len(content))))
        content[event.at : event.at + len(event.content)] = event.content


class _Shim:
    def __init__(self, record: Record) -> None:
        self._events = record.events
        self._library = ctypes.CDLL(_sqlite3.__file__)
        self._library.sqlite3_vfs_find.restype = POINTER(_Vfs)
        self._below = self._library.sqlite3_vfs_find(None)
        self._names: dict[int, str] = {}  # address of an open file to its path
        self._patched: dict[int, _Methods] = {}  # by address of the methods below
        self._vfs = _Vfs.from_buffer_copy(self._below.contents)
        self._vfs.name = _NAME.encode()
        self._vfs.open = _OPEN(self._open)
        self._vfs.delete = _DELETE(self._delete)
        self._fresh: set[int] = set()  # whose first sync syncs the folder too: unixSync in the engine's os_unix.c

    @contextmanager
    def registered(self) -> Iterator[None]:
        self._library.sqlite3_vfs_register(ctypes.byref(self._vfs), 0)
        try:
            yield
        finally:
            self._library.sqlite3_vfs_unregister(ctypes.byref(self._vfs))

    def _open(self, _: int, name: int | None, file: int, flags: int, out: int) -> int:
        said = int(self._below.contents.open(ctypes.addressof(self._below.contents), name, file, flags, out))
        opened = _File.from_address(file)
        if said == sqlite3.SQLITE_OK and name and opened.methods:
            self._names[file] = ctypes.string_at(name).decode()
            opened.methods = ctypes.pointer(self._recording(opened.methods.contents))
            if flags & _CREATE and flags & _JOURNALS:
                self._fresh.add(file)
        return said

    def _delete(self, _: int, name: bytes, sync_folder: int) -> int:
        self._events.append(Event("delete", name.decode()))
        said = int(self._below.contents.delete(ctypes.addressof(self._below.contents), name, sync_folder))
        if sync_folder:
            self._events.append(Event("sync folder"))
        return said

    def _recording(self, below: _Methods) -> _Methods:
        address = ctypes.addressof(below)
        if address not in self._patched:
            patched = _Methods.from_buffer_copy(below)
            patched.write = _WRITE(lambda file, data, size, at: self._write(below, file, data, size, at))
            patched.truncate = _TRUNCATE(lambda file, size: self._truncate(below, file, size))
            patched.sync = _SYNC(lambda file, flags: self._sync(below, file, flags))
            self._patched[address] = patched
        return self._patched[address]

    def _write(self, below: _Methods, file: int, data: int, size: int, at: int) -> int:
        self._events.append(Event("write", self._names[file], at, ctypes.string_at(data, size)))
        return int(below.write(file, data, size, at))

    def _truncate(self, below: _Methods, file: int, size: int) -> int:
        self._events.append(Event("truncate", self._names[file], size))
        return int(below.truncate(file, size))

    def _sync(self, below: _Methods, file: int, flags: int) -> int:
        said = int(below.sync(file, flags))
        self._events.append(Event("sync", self._names[file]))
        if file in self._fresh:
            self._fresh.remove(file)
            self._events.append(Event("sync folder"))
        return said
