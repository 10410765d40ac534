"""What the repository as a whole must not hold: hosts to fetch from, paths of one machine."""

import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
# Written in pieces, so that this file does not hold them itself.
HOSTS = "|".join(
    (
        r"pypi\.o" + "rg",
        "pythonh" + "osted",
        r"npmj" + r"s\.(?:com|org)",
        "registry" + r"\.npm",
        "unpk" + "g",
        "jsd" + "elivr",
        r"crates\.i" + "o",
    )
)
MACHINE = "|".join((r"(?<![\w.])/wo" + r"rk/", r"(?<![\w.])/ro" + r"ot/", re.escape(f"{ROOT}/")))
BINARY = {".docx", ".woff2", ".png", ".afterdraft", ".ico", ".gz", ".odt"}


def tracked() -> list[Path]:
    listed = subprocess.run(
        ["git", "-c", "safe.directory=*", "ls-files", "-z"], cwd=ROOT, capture_output=True, check=True, encoding="utf-8"
    )
    return [ROOT / name for name in listed.stdout.split("\0") if name and (ROOT / name).is_file()]


@pytest.mark.parametrize("what", [HOSTS, MACHINE], ids=["registry host", "path of one machine"])
def test_no_file_names_a(what: str) -> None:
    pattern = re.compile(what)
    found = [
        f"{path.relative_to(ROOT)}: {match.group()}"
        for path in tracked()
        if path.suffix not in BINARY
        for match in [pattern.search(path.read_text("utf-8", errors="replace"))]
        if match
    ]
    assert found == []


@pytest.mark.parametrize(
    ("what", "text"),
    [
        (HOSTS, "https://pypi.o" + "rg/simple"),
        (HOSTS, "https://npmj" + "s.com/x"),
        (MACHINE, "cd /wo" + "rk/main"),
        (MACHINE, f"cd {ROOT}/src"),
    ],
)
def test_the_search_itself_finds(what: str, text: str) -> None:
    assert re.search(what, text)


def test_locks_carry_a_digest_for_every_package() -> None:
    for name in ("run", "all", "build", "uv"):
        lines = (ROOT / "requirements" / f"{name}.txt").read_text("utf-8")
        packages = re.split(r"\n(?=\S)", lines.strip())
        assert packages
        assert [package for package in packages if "--hash=sha256:" not in package] == []


def test_what_the_program_needs_is_what_the_tests_run_with() -> None:
    def pins(name: str) -> set[str]:
        return set(re.findall(r"^\S+==\S+", (ROOT / "requirements" / f"{name}.txt").read_text("utf-8"), re.MULTILINE))

    assert pins("run") <= pins("all")
    assert pins("build") <= pins("all")
