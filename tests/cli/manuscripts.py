"""Small manuscripts for the commands; invented for the purpose."""

from pathlib import Path

HARBOUR = """The Low Harbour

by Nell Ashby


Chapter One

The boats came in late that evening, and nobody on the wall counted them.

“Seven,” said Orla at last. “There should be eight.”

* * *

By morning the whole town had counted, and the count was the same.


Chapter Two

The eighth boat lay on the sand at Marrow Point with her lamp still burning.
"""


def harbour(folder: Path, *, name: str = "The Low Harbour.txt") -> Path:
    """Two chapters, three scenes, as plain text."""
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / name
    path.write_text(HARBOUR, encoding="utf-8")
    return path
