"""Where a book lies, and what may go wrong with it there. Only names are looked at, never the disk."""

import re
from pathlib import PurePath

# Folders that a program on the machine keeps in step with other machines, small letters, as their makers name them
# (from memory). They are only recognised; what the writer reads names none.
_SYNCED = re.compile(
    r"dropbox( \(.*\))?|onedrive( - .*)?|google ?drive.*|my drive|icloud ?drive.*|mobile documents|com~apple~clouddocs"
    r"|cloudstorage|nextcloud|owncloud|seafile|pclouddrive|syncthing|resilio sync|box sync|megasync"
)
# How such programs name the second of two versions that do not agree (from memory): "(conflicted copy 2026-11-25)",
# ".sync-conflict-20261125-101500-AB12CDE", "_conflict-20261125"; other languages put their own word in brackets.
_CONFLICT = re.compile(
    r"\([^)]*(conflict|konflikt|conflit)[^)]*\)|[ ._-](sync-)?conflict[-_ ]?\d{4}-?\d\d-?\d\d", re.IGNORECASE
)

SYNCED = (
    "This book lies in a folder that is kept in step with other computers. Work in it on one computer at a time, "
    "and choose Close before you go on elsewhere, or there will be two versions of it."
)
AFAR = (
    "This book lies on another computer's drive. Should the connection break, nothing saved is lost, "
    "but a folder on this computer is safer to work in."
)
CONFLICT = (
    "This looks like a second version of a book, made because it was changed in two places at once. "
    "Look into the other one too before you go on."
)


def warnings(path: PurePath) -> tuple[str, ...]:
    """What the writer should know of a book at `path`, one or two sentences each."""
    said = (
        (any(_SYNCED.fullmatch(part.lower()) for part in path.parts[:-1]), SYNCED),
        (path.drive.startswith(("\\\\", "//")), AFAR),
        (conflict_copy(path.name), CONFLICT),
    )
    return tuple(sentence for holds, sentence in said if holds)


def conflict_copy(name: str) -> bool:
    """Whether a file's name says that it is one of two versions that do not agree."""
    return _CONFLICT.search(name) is not None
