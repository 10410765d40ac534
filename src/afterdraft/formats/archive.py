"""Zip archives from strangers: looked over before anything in them is opened.

A manuscript is at most some ten times larger unpacked than packed; an archive made to fill memory is
a thousand times larger. The sizes an archive states are checked first; what is then read stops at the
stated size, so that a false statement gains nothing (`zipfile` holds each entry to it and checks its sum).
"""

import io
import lzma
import zipfile
import zlib

from afterdraft.errors import DamagedFile, LockedFile, TooLarge

_MEGABYTE = 1 << 20
MOST_ENTRIES = 10_000  # a novel has about 20, one with a picture on each page some hundred
MOST_UNPACKED = 512 * _MEGABYTE  # pictures included
MOST_RATIO = 300  # unpacked to packed; a novel has about 10, one sentence repeated with heavy markup 250, a bomb 1,000
SMALL = 8 * _MEGABYTE  # below this unpacked size no ratio is suspect
MOST_TEXT = (
    64 * _MEGABYTE
)  # one XML part; a million words with heavy markup stay below, and parsing takes about ten times as much

_TROUBLE = (zipfile.BadZipFile, zlib.error, lzma.LZMAError, EOFError, OSError, ValueError, NotImplementedError)


class Archive:
    """A zip archive found sound in size and names. `name` is the file's name, for messages."""

    def __init__(self, data: bytes, name: str) -> None:
        """Raises DamagedFile, LockedFile or TooLarge."""
        self.name = name
        try:
            self._zip = zipfile.ZipFile(io.BytesIO(data))
        except _TROUBLE as trouble:
            raise DamagedFile(name, "it is cut short or damaged") from trouble
        entries = self._zip.infolist()
        _check(entries, len(data), name)
        self._entries = {entry.filename: entry for entry in entries}

    def __contains__(self, entry: str) -> bool:
        return entry in self._entries

    def names(self) -> tuple[str, ...]:
        return tuple(self._entries)

    def read(self, entry: str, *, most: int = MOST_TEXT) -> bytes:
        """The bytes of one entry. KeyError if there is none; DamagedFile; TooLarge above `most` bytes."""
        info = self._entries[entry]
        if info.file_size > most:
            raise TooLarge(self.name, f"its text alone takes {info.file_size // _MEGABYTE} MB")
        try:
            return self._zip.read(info)
        except _TROUBLE as trouble:
            raise DamagedFile(self.name, f"its part “{entry}” is damaged") from trouble
        except RuntimeError as trouble:  # how `zipfile` says that an entry is encrypted
            raise LockedFile(self.name) from trouble


def _check(entries: list[zipfile.ZipInfo], packed: int, name: str) -> None:
    unpacked = sum(entry.file_size for entry in entries)
    if len(entries) > MOST_ENTRIES:
        raise TooLarge(name, f"it holds {len(entries):,} files")
    if unpacked > MOST_UNPACKED or unpacked > max(SMALL, packed * MOST_RATIO):
        raise TooLarge(name, f"{packed / _MEGABYTE:.1f} MB that unpack to {unpacked // _MEGABYTE:,} MB")
    if any(entry.flag_bits & 0x1 for entry in entries):
        raise LockedFile(name)
    if any(_escapes(entry.filename) for entry in entries):
        raise DamagedFile(name, "it holds files whose names lead out of it, as only harmful files do")


def _escapes(entry: str) -> bool:
    """Absolute, with a drive letter, or climbing out of the folder."""
    path = entry.replace("\\", "/")
    return path.startswith("/") or path[1:2] == ":" or ".." in path.split("/")
