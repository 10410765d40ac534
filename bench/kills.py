"""Two hundred kills in the midst of edits: what was answered and is not there afterwards."""

import json
import subprocess
import sys
import tempfile
from pathlib import Path
from typing import Any

from bench.report import Figure, Section
from tests.store import sample

KILLS = 200
SEED = 20


def measure(*, full: bool) -> Section:
    """Kills a child that edits, and looks into its book each time; `full` or not makes no difference."""
    found = _killed()
    return Section(
        title="Kills",
        corpus=(
            f"A stream of edits on a small book, cut short by SIGKILL {KILLS} times at random moments; "
            "a third process wrote down what had been asked and answered."
        ),
        figures=(
            Figure("answered edits lost", len(found["lost"]), "edits", 0, reference="none may be"),
            Figure("files with something wrong after a kill", len(found["troubles"]), "files", 0),
            Figure("kills with an edit in flight", found["in_flight"], "kills", KILLS / 2, at_most=False),
            Figure("edits answered in all", found["saved"], "edits"),
        ),
        lines=tuple(f"- {said}" for said in (*found["lost"], *found["troubles"])),
    )


def _killed() -> Any:
    with tempfile.TemporaryDirectory() as folder:
        book, _ = sample.begun(Path(folder))
        book.close()
        command = [sys.executable, "-m", "tests.store.killing", book.path, f"{folder}/backups", str(KILLS), str(SEED)]
        done = subprocess.run(command, capture_output=True, encoding="utf-8", check=True)
    return json.loads(done.stdout)
