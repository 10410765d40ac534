"""Paragraphs as the pipeline analysed them, kept on disk between runs: it is the slow part, and it does not change.

The folder is outside the repository (`AFTERDRAFT_BENCH_KEPT`, else the system's temporary folder): it holds texts of
the corpus.
"""

import gzip
import json
import os
import tempfile
from collections.abc import Sequence
from dataclasses import fields
from hashlib import sha256
from pathlib import Path

from afterdraft.engine.pipeline import MODEL, analyse
from afterdraft.reading.analysed import Analysed

FOLDER = Path(os.environ.get("AFTERDRAFT_BENCH_KEPT", Path(tempfile.gettempdir()) / "afterdraft-bench"))
COLUMNS = tuple(field.name for field in fields(Analysed) if field.name != "text")


def analysed(paragraphs: Sequence[str]) -> list[Analysed]:
    """One chapter's paragraphs, from the folder where it has them."""
    path = FOLDER / f"{sha256(json.dumps([MODEL, *paragraphs]).encode()).hexdigest()}.json.gz"
    if not path.exists():
        path.parent.mkdir(parents=True, exist_ok=True)
        made = [[getattr(one, name) for name in COLUMNS] for one in analyse(paragraphs)]
        partly = path.with_suffix(f".{os.getpid()}")
        partly.write_bytes(gzip.compress(json.dumps(made).encode(), compresslevel=2))
        partly.replace(path)  # several processes may read and write here
    rows = json.loads(gzip.decompress(path.read_bytes()))
    return [
        Analysed(text, **{name: tuple(column) for name, column in zip(COLUMNS, row, strict=True)})
        for text, row in zip(paragraphs, rows, strict=True)
    ]
