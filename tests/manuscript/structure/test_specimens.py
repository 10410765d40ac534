"""A small novel as pandoc and LibreOffice wrote it, and how it divides (`tests/specimens/README.md` says how)."""

from pathlib import Path

import pytest

from afterdraft.formats.table import read
from afterdraft.manuscript.structure import structure

HERE = Path(__file__).parents[2] / "specimens" / "structure"
FILES = sorted(path.name for path in HERE.iterdir())


def test_all_are_there() -> None:
    assert len(FILES) == 10


@pytest.mark.parametrize("name", FILES)
def test_a_small_novel_divides_the_same_whoever_wrote_the_file(name: str) -> None:
    division = structure(read((HERE / name).read_bytes(), name)).division
    assert [part.title for part in division.parts] == ["Part One: Over", "Part Two: Back"]
    assert [(one.number, one.title, one.kind) for one in division.chapters] == [
        (1, "The Ferry", "chapter"),
        (2, "The Weir", "chapter"),
        (3, "The Orchard", "chapter"),
        (4, "The Ledger", "chapter"),
    ]
    assert [one.head for one in division.chapters] == [("Who goes over comes not back.",), (), (), ()]
    assert [scene.began for scene in division.scenes] == ["heading", "mark"] * 4
