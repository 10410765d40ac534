"""Folders, locks, private files: what the system is asked for."""

import subprocess
import sys
from pathlib import Path

import pytest

from afterdraft import platform

HOLD = """
import sys
from pathlib import Path
from afterdraft import platform
held = platform.lock(Path(sys.argv[1]))
print("held" if held else "taken", flush=True)
sys.stdin.read()
"""


def holder(path: Path) -> "subprocess.Popen[str]":
    return subprocess.Popen(
        [sys.executable, "-c", HOLD, str(path)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, encoding="utf-8"
    )


def first_line(process: "subprocess.Popen[str]") -> str:
    assert process.stdout is not None
    return process.stdout.readline().strip()


def test_everything_lies_below_the_users_own_folders(home: Path) -> None:
    places = platform.folders()
    for place in (places.config, places.data, places.logs, places.runtime, places.documents):
        assert home in place.parents
        assert not place.exists()


def test_a_lock_is_one_process_at_a_time_and_goes_with_it(tmp_path: Path) -> None:
    path = tmp_path / "run" / "owner.json"
    with holder(path) as first:
        assert first_line(first) == "held"
        assert platform.lock(path) is None
        first.kill()
        first.wait(10)
        ours = platform.lock(path)
        assert ours is not None
        with ours, holder(path) as second:
            assert first_line(second) == "taken"
            second.communicate("", 10)


def test_a_lock_leaves_the_content_readable(tmp_path: Path) -> None:
    path = tmp_path / "owner.json"
    path.write_text("what stood there", encoding="utf-8")
    held = platform.lock(path)
    assert held is not None
    with held:
        assert path.read_text("utf-8") == "what stood there"


def test_a_private_file_is_whole_and_private(tmp_path: Path) -> None:
    path = tmp_path / "config" / "settings.json"
    for text in ("one", "another, longer"):
        platform.write_private(path, text)
        assert path.read_text("utf-8") == text
    assert path.stat().st_mode & 0o777 == 0o600
    assert list(path.parent.iterdir()) == [path]


def test_a_private_file_that_cannot_be_written_leaves_the_old_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = tmp_path / "settings.json"
    platform.write_private(path, "old")

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("os.fsync", full)
    with pytest.raises(OSError, match="No space"):
        platform.write_private(path, "new")
    assert path.read_text("utf-8") == "old"
    assert list(tmp_path.iterdir()) == [path]


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="there a screen is always taken for granted")
@pytest.mark.parametrize(
    ("variables", "screen"), [({}, False), ({"DISPLAY": ":0"}, True), ({"WAYLAND_DISPLAY": "wayland-0"}, True)]
)
def test_a_screen_is_told_by_its_server(
    monkeypatch: pytest.MonkeyPatch, variables: dict[str, str], *, screen: bool
) -> None:
    for name, value in variables.items():
        monkeypatch.setenv(name, value)
    assert platform.has_screen() == screen
