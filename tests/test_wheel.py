"""The package that is built carries all that the program needs."""

import subprocess
import sys
import zipfile
from pathlib import Path

ROOT = Path(__file__).parents[1]


def test_the_wheel_holds_every_file_of_the_program(tmp_path: Path) -> None:
    command = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)]
    subprocess.run(command, cwd=ROOT, check=True, capture_output=True)
    (wheel,) = tmp_path.glob("*.whl")
    with zipfile.ZipFile(wheel) as package:
        holds = {name for name in package.namelist() if name.startswith("afterdraft/")}
    files = (path for path in (ROOT / "src").rglob("*") if path.is_file() and "__pycache__" not in path.parts)
    assert holds == {path.relative_to(ROOT / "src").as_posix() for path in files}
