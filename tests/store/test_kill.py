"""Edits that were answered survive `kill -9` in the midst of a stream of them."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.store import sample
from tests.support import need

ROUNDS = 30


@pytest.mark.slow
def test_thirty_kills_lose_nothing_that_was_answered(tmp_path: Path) -> None:
    need(hasattr(os, "fork"), "a system with fork and SIGKILL")
    book, _ = sample.begun(tmp_path)
    book.close()
    command = [sys.executable, "-m", "tests.store.killing", book.path, str(tmp_path / "backups"), str(ROUNDS), "1"]
    done = subprocess.run(command, capture_output=True, text=True, timeout=240, check=False)
    assert done.returncode == 0 and not done.stderr, done.stderr
    outcome = json.loads(done.stdout)
    assert outcome["lost"] == [] and outcome["troubles"] == []
    assert outcome["kills"] == ROUNDS and outcome["in_flight"] >= ROUNDS / 2
    assert outcome["saved"] >= ROUNDS  # it was a stream
