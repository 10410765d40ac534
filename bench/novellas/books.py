"""The novellas as manuscripts, with their slips and traps. Imports nothing of the program."""

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from bench.slips.books import Listed
from bench.structure.halves import Half

FOLDER = Path(__file__).parent / "texts"
FOR_TUNING = (
    "a-borrowed-wind",
    "the-last-boat",
    "the-hasty-team",
    "half-a-cake",
    "the-parting-of-the-waters",
    "the-winter-slip",
)  # the other ones only report; see the README


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
    found = map(_novella, sorted(FOLDER.glob("*.json")))
    return tuple(one for one in found if (one.slug in FOR_TUNING) == (which == "tune"))


def _novella(path: Path) -> Novella:
    told = json.loads(path.read_text("utf-8"))
    slips, traps = ([_listed(path.stem, told["title"], one) for one in told[name]] for name in ("slips", "traps"))
    return Novella(path.stem, told["title"], tuple(slips), tuple(traps))


def _listed(slug: str, title: str, one: dict[str, Any]) -> Listed:
    """A slip or a trap; its passages without the marks of emphasis, which leave the text when it is read."""
    quotes = tuple(passage.replace("*", "") for passage in one["passages"])
    return Listed(one["what"], title, f"{slug}.md", one.get("kind", "trap"), quotes)
