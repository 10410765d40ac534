"""`python -m bench.speed.stages FILE FOLDER`: bring a manuscript into a new book, and say in JSON what each took.

Run as a process of its own, so that the memory it says is its own and nothing is warm.
"""

import json
import resource
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path


def main(file: Path, folder: Path) -> None:
    took: dict[str, float] = {}

    @contextmanager
    def stage(name: str) -> Iterator[None]:
        began = time.perf_counter()
        yield
        took[name] = time.perf_counter() - began

    with stage("imports"):
        from afterdraft.formats.docx import read as _  # noqa: F401 the reader is imported when first needed
        from afterdraft.formats.table import read
        from afterdraft.manuscript.structure import structure
        from afterdraft.store.shelf import Shelf
        from afterdraft.work.drafts.begin_book import begin_book
    data = file.read_bytes()
    with stage("read"):
        blocks = read(data, file.name)
    with stage("structure"):
        draft = structure(blocks)
    with stage("store"):
        shelf = Shelf(lambda title: folder / f"{title}.afterdraft", backups=folder / "backups")
        book = begin_book(shelf, draft, [(file.name, data)])
    book.close()
    text = sum(len(block.text.encode()) for block in blocks.blocks)
    # ru_maxrss is in kilobytes on Linux, in bytes on macOS.
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / (1024 if sys.platform != "darwin" else 1024 * 1024)
    size = Path(book.path).stat().st_size
    print(
        json.dumps(
            {
                "took": took,
                "peak": peak,
                "scenes": len(draft.division.scenes),
                "text": text,
                "book": size,
                "original": len(data),
            }
        )
    )


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]))
