"""Find a browser for the tests, or install one; print where it is.

In this order: `$BROWSER_PATH`; Chromium, Chrome or Edge where systems put them, its form without windows first, which
takes a third less of the processor; Debian's own, when run as root there. Otherwise it fails and says what to install.
"""

import os
import shutil
import subprocess
import sys
from pathlib import Path

NAMES = (
    "chromium-headless-shell",
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "chrome",
    "microsoft-edge",
    "msedge",
)
PACKAGES = ("chromium-headless-shell", "chromium")  # older Debians have the second only
PLACES = (  # where macOS and Windows keep them, off the path
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    "C:/Program Files/Google/Chrome/Application/chrome.exe",
    "C:/Program Files (x86)/Google/Chrome/Application/chrome.exe",
    "C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe",
)
ADVICE = (
    "The browser tests need Chromium, Chrome or Edge, and found none. Install one "
    "(on Debian and Ubuntu: apt-get install chromium), or name one in BROWSER_PATH, and try again."
)


def find() -> str | None:
    """The path of a browser; None where there is none. A `BROWSER_PATH` that leads nowhere counts as none."""
    named = os.environ.get("BROWSER_PATH")
    if named:
        return shutil.which(named)
    on_path = (shutil.which(name) for name in NAMES)
    return next((path for path in (*on_path, *PLACES) if path and Path(path).is_file()), None)


def install() -> str | None:
    """Debian's own, where we may; None where that cannot be done."""
    if not (Path("/etc/debian_version").is_file() and os.geteuid() == 0 and shutil.which("apt-get")):
        return None
    wanted = ["apt-get", "install", "-qy", "--no-install-recommends"]
    _done(["apt-get", "update", "-q"])
    for package in PACKAGES:
        if _done([*wanted, package]):
            return find()
    return None


def _done(command: list[str]) -> bool:
    quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    return subprocess.run(command, env=quiet, stdout=sys.stderr, check=False).returncode == 0  # noqa: S603 our own


def main() -> int:
    path = find() or install()
    print(path if path else ADVICE, file=sys.stdout if path else sys.stderr)
    return 0 if path else 1


if __name__ == "__main__":
    sys.exit(main())
