"""The novellas as manuscripts, with their slips and traps. Imports nothing of the program.

Halves, as written down before any of them was read: by the SHA-256 of their titles the first three are for tuning, the
others only report.
"""

import hashlib
import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from bench.slips.books import Listed
from bench.structure.halves import Half

FOLDER = Path(__file__).parent / "texts"
FOR_TUNING = 3


@dataclass(frozen=True, slots=True)
class Novella:
    slug: str
    title: str
    slips: tuple[Listed, ...]
    traps: tuple[Listed, ...]  # they only look like slips

    @property
    def file(self) -> str:
        return f"{self.slug}.md"

    def text(self) -> bytes:
        return (FOLDER / self.file).read_bytes()


def novellas(which: Half) -> tuple[Novella, ...]:
    found = sorted(map(_novella, FOLDER.glob("*.json")), key=lambda one: hashlib.sha256(one.title.encode()).hexdigest())
    return tuple(found[:FOR_TUNING] if which == "tune" else found[FOR_TUNING:])


def _novella(path: Path) -> Novella:
    told = json.loads(path.read_text("utf-8"))
    slips, traps = ([_listed(path.stem, told["title"], one) for one in told[name]] for name in ("slips", "traps"))
    return Novella(path.stem, told["title"], tuple(slips), tuple(traps))


def _listed(slug: str, title: str, one: dict[str, Any]) -> Listed:
    """A slip or a trap; its passages without the marks of emphasis, which leave the text when it is read."""
    quotes = tuple(passage.replace("*", "") for passage in one["passages"])
    return Listed(one["what"], title, f"{slug}.md", one.get("kind", "trap"), quotes)
