"""Which browser the tests drive."""

import subprocess
import sys
from collections.abc import Sequence
from pathlib import Path

import pytest

from scripts import browser


def program(folder: Path, name: str) -> Path:
    folder.mkdir(exist_ok=True)
    path = folder / name
    path.write_text("#!/bin/sh\n", encoding="utf-8")
    path.chmod(0o700)
    return path


def test_the_one_named_comes_first(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    named = program(tmp_path, "her own browser")
    monkeypatch.setenv("PATH", str(program(tmp_path / "bin", "chromium").parent))
    monkeypatch.setenv("BROWSER_PATH", str(named))
    assert browser.find() == str(named)


def test_one_named_that_is_not_there_is_not_replaced_in_silence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PATH", str(program(tmp_path / "bin", "chromium").parent))
    monkeypatch.setenv("BROWSER_PATH", str(tmp_path / "nothing"))
    assert browser.find() is None


@pytest.mark.parametrize("name", ["chromium", "google-chrome", "microsoft-edge"])
def test_else_what_the_system_has(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str) -> None:
    monkeypatch.delenv("BROWSER_PATH", raising=False)
    path = program(tmp_path / "bin", name)
    monkeypatch.setenv("PATH", str(path.parent))
    assert browser.find() == str(path)


def without_a_browser(monkeypatch: pytest.MonkeyPatch, *, root: bool, has: str = "") -> list[Sequence[str]]:
    """Returns what is run, as it is run; apt-get would have worked, for the package `has` only, if one is named."""
    run: list[Sequence[str]] = []

    def note(command: Sequence[str], **_: object) -> "subprocess.CompletedProcess[str]":
        run.append(command)
        fails = "install" in command and has not in ("", command[-1])
        return subprocess.CompletedProcess(command, 100 if fails else 0)

    monkeypatch.setattr(browser, "find", lambda: "/usr/bin/chromium" if len(run) > 1 else None)
    monkeypatch.setattr("os.geteuid", lambda: 0 if root else 1000)
    monkeypatch.setattr("subprocess.run", note)
    monkeypatch.setattr("shutil.which", lambda name: f"/usr/bin/{name}")
    monkeypatch.setattr(Path, "is_file", lambda path: str(path) == "/etc/debian_version")
    return run


def test_else_it_is_installed_where_that_is_allowed(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    run = without_a_browser(monkeypatch, root=True)
    assert browser.main() == 0
    assert [command[1] for command in run] == ["update", "install"]
    assert capsys.readouterr().out == "/usr/bin/chromium\n"


def test_an_older_debian_has_the_one_with_windows(monkeypatch: pytest.MonkeyPatch) -> None:
    run = without_a_browser(monkeypatch, root=True, has="chromium")
    assert browser.install() == "/usr/bin/chromium"
    assert [command[-1] for command in run] == ["-q", "chromium-headless-shell", "chromium"]


def test_else_it_says_what_to_install(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    run = without_a_browser(monkeypatch, root=False)
    assert browser.main() == 1
    assert run == []
    assert "apt-get install chromium" in capsys.readouterr().err


def test_the_script_runs_by_itself(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("BROWSER_PATH", str(program(tmp_path, "mine")))
    done = subprocess.run([sys.executable, browser.__file__], capture_output=True, encoding="utf-8", check=False)
    assert (done.returncode, done.stdout) == (0, f"{tmp_path / 'mine'}\n")
