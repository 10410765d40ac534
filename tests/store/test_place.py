"""Folders that are kept in step elsewhere, and second versions, are recognised by their names (from memory)."""

from pathlib import PurePath, PurePosixPath, PureWindowsPath

import pytest

from afterdraft.store.place import AFAR, CONFLICT, SYNCED, conflict_copy, warnings


@pytest.mark.parametrize(
    ("path", "said"),
    [
        (PurePosixPath("/home/o/Documents/Afterdraft/Sluice.afterdraft"), ()),
        (PurePosixPath("/home/o/Dropbox/Sluice.afterdraft"), (SYNCED,)),
        (PurePosixPath("/Users/o/Library/Mobile Documents/com~apple~CloudDocs/Sluice.afterdraft"), (SYNCED,)),
        (PurePosixPath("/Users/o/Library/CloudStorage/X/Sluice.afterdraft"), (SYNCED,)),
        (PureWindowsPath(r"C:\Users\o\OneDrive - Amsel\Documents\Sluice.afterdraft"), (SYNCED,)),
        (PureWindowsPath(r"C:\Users\o\Documents\Sluice.afterdraft"), ()),
        (PureWindowsPath(r"\\attic\books\Sluice.afterdraft"), (AFAR,)),
        (PurePosixPath("/home/o/Books/dropbox.afterdraft"), ()),
        (PurePosixPath("/home/o/Nextcloud/Sluice (conflicted copy 2026-11-25).afterdraft"), (SYNCED, CONFLICT)),
    ],
)
def test_warnings(path: PurePath, said: tuple[str, ...]) -> None:
    assert warnings(path) == said


@pytest.mark.parametrize(
    ("name", "second"),
    [
        ("Sluice (Ottla's conflicted copy 2026-11-25).afterdraft", True),
        ("Sluice.sync-conflict-20261125-101500-AB12CDE.afterdraft", True),
        ("Sluice_conflict-20261125-101500.afterdraft", True),
        ("Sluice (in Konflikt stehende Kopie).afterdraft", True),
        ("Sluice.afterdraft", False),
        ("Sluice 2.afterdraft", False),
        ("The conflict.afterdraft", False),
        ("The Conflict 1914.afterdraft", False),
    ],
)
def test_conflict_copy(name: str, second: bool) -> None:
    assert conflict_copy(name) is second
