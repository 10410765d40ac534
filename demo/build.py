"""Build the demonstration files from their sources: `python -m demo.build`.

Writes both drafts, the readers' copies and the writer's work into `src/afterdraft/demodata/`, and beside the sources
what a test must know (`scenes.json`, `changes.json`). The same sources give the same bytes, every time and everywhere.
"""

import io
import json
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from demo.margins import copy_of
from demo.revise import changes, second_chapters, stored
from demo.source import Line, SourceChapter, read_chapters
from demo.typescript import typescript

HERE = Path(__file__).parent
DEMODATA = HERE.parent / "src" / "afterdraft" / "demodata"
EPOCH = (1980, 1, 1, 0, 0, 0)  # the earliest time a zip entry can bear: the same at every build
OPENING_WORDS = 8  # as many first words as tell any two scenes of the book apart


def main() -> None:
    for path, content in built().items():
        path.parent.mkdir(exist_ok=True)
        path.write_bytes(content)
    for name, chapters in (("first", read_chapters(HERE / "first")), ("second", second_chapters())):
        print(f"{name} draft: {len(chapters)} chapters, {count(chapters)} words")


def built() -> dict[Path, bytes]:
    """Every file that is made from the sources, and what belongs in it."""
    first = read_chapters(HERE / "first")
    return {
        DEMODATA / "manuscript.docx": manuscript(first),
        DEMODATA / "second.docx": manuscript(second_chapters()),
        DEMODATA / "work.json": listing(stored("work.json")),
        HERE / "scenes.json": listing(contents(first)),
        HERE / "changes.json": listing(changes()),
        **{DEMODATA / "readers" / name: content for name, content in copies(first)},
    }


def copies(chapters: tuple[SourceChapter, ...]) -> Iterator[tuple[str, bytes]]:
    """What each reader sent back: a copy with her remarks in it, or a letter."""
    given = stored("readers.json")
    for reader in given["readers"]:
        if reader["file"].endswith(".txt"):
            yield reader["file"], (HERE / "readers" / reader["file"]).read_bytes()
        else:
            remarks = [remark for remark in given["remarks"] if remark["reader"] == reader["name"]]
            yield reader["file"], manuscript(copy_of(chapters, remarks), words=count(chapters))


def listing(found: Any) -> bytes:
    return (json.dumps(found, ensure_ascii=False, indent=1) + "\n").encode()


def manuscript(chapters: tuple[SourceChapter, ...], *, words: int | None = None) -> bytes:
    """The docx, with fixed times throughout. `words` is what the title page tells; counted where it is not given."""
    return _settle(typescript(chapters, words=count(chapters) if words is None else words))


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
