"""Build the demonstration files from their sources: `python -m demo.build`.

Writes `src/afterdraft/demodata/manuscript.docx` and `work.json`, and `demo/scenes.json` (what the
manuscript holds, for tests). The same sources give the same bytes, every time and everywhere.
"""

import io
import json
import shutil
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from demo.source import Line, SourceChapter, read_chapters
from demo.typescript import typescript

HERE = Path(__file__).parent
DEMODATA = HERE.parent / "src" / "afterdraft" / "demodata"
EPOCH = (1980, 1, 1, 0, 0, 0)  # the earliest time a zip entry can bear: the same at every build
OPENING_WORDS = 8  # as many first words as tell any two scenes of the book apart


def main() -> None:
    chapters = read_chapters(HERE / "first")
    DEMODATA.mkdir(exist_ok=True)
    (DEMODATA / "manuscript.docx").write_bytes(manuscript(chapters))
    shutil.copyfile(HERE / "work.json", DEMODATA / "work.json")
    listing = json.dumps(contents(chapters), ensure_ascii=False, indent=1) + "\n"
    (HERE / "scenes.json").write_text(listing, encoding="utf-8")
    print(f"{len(chapters)} chapters, {count(chapters)} words")


def manuscript(chapters: tuple[SourceChapter, ...]) -> bytes:
    """The docx, with fixed times throughout."""
    return _settle(typescript(chapters, words=count(chapters)))


def contents(chapters: tuple[SourceChapter, ...]) -> dict[str, Any]:
    """Every chapter and scene of the manuscript, in order, as told in README.md."""
    return {
        "words": count(chapters),
        "chapters": [
            {"heading": chapter.heading, "line": chapter.line, "title": chapter.title, "scenes": list(_scenes(chapter))}
            for chapter in chapters
        ],
    }


def count(chapters: tuple[SourceChapter, ...]) -> int:
    """Words of the story: white-space tokens with a letter or a digit."""
    return sum(scene["words"] for chapter in chapters for scene in _scenes(chapter))


def _scenes(chapter: SourceChapter) -> Iterator[dict[str, Any]]:
    began, lines = "heading", list[Line]()
    for line in chapter.lines:
        if line.kind == "mark":
            yield _scene(began, lines)
            began, lines = line.mark, []
        else:
            lines.append(line)
    yield _scene(began, lines)


def _scene(began: str, lines: list[Line]) -> dict[str, Any]:
    words = " ".join(line.text for line in lines).split()
    return {
        "began": began,
        "opens": " ".join(words[:OPENING_WORDS]),
        "ends": " ".join(words[-OPENING_WORDS:]),
        "words": sum(any(map(str.isalnum, word)) for word in words),
        "paragraphs": len(lines),
    }


def _settle(package: bytes) -> bytes:
    """The same package with its entries sorted, their times fixed, and stored plain: packers differ, bytes do not."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(package)) as old, zipfile.ZipFile(out, "w") as new:
        for name in sorted(old.namelist(), key=lambda name: (name != "[Content_Types].xml", name)):
            entry = zipfile.ZipInfo(name, EPOCH)
            entry.external_attr = 0o644 << 16
            new.writestr(entry, old.read(name))
    return out.getvalue()


if __name__ == "__main__":
    main()
