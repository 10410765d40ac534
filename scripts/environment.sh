#!/bin/sh
# Make .venv/ ready, in seconds where it is already.
#
#   scripts/environment.sh run    what the program needs
#   scripts/environment.sh all    and what its tests need
#
# Every package is checked against the digests in requirements/. A stamp in .venv/ holds the digest of the locks it
# was made from; an environment that has all is left as it is when only `run` is asked for.
set -eu
cd "$(dirname "$0")/.."
wanted=$1

fits() {
    "$1" -c 'import sys, venv, ensurepip; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1
}

find_python() {
    for name in python3 python3.14 python3.13 python3.12 python3.11 python; do
        if command -v "$name" >/dev/null 2>&1 && fits "$name"; then
            echo "$name"
            return
        fi
    done
    echo "Afterdraft needs Python 3.11 or newer, with its venv module, and found none." >&2
    echo "Install it (on Debian and Ubuntu: apt-get install python3 python3-venv) and try again." >&2
    exit 1
}

if [ -d .venv/Scripts ]; then bin=.venv/Scripts; else bin=.venv/bin; fi
if ! "$bin/python" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1; then
    rm -rf .venv
    python=$(find_python)
    "$python" -m venv .venv
    if [ -d .venv/Scripts ]; then bin=.venv/Scripts; else bin=.venv/bin; fi
fi

# The folder is part of the stamp: the editable install points at it, so a moved checkout is made ready again.
stamp=$("$bin/python" - <<'PYTHON'
import hashlib, pathlib
files = sorted(pathlib.Path("requirements").glob("*.txt")) + [pathlib.Path("pyproject.toml")]
parts = [str(pathlib.Path.cwd()).encode(), *(file.read_bytes() for file in files)]
print(hashlib.sha256(b"\0".join(parts)).hexdigest())
PYTHON
)
has=$(cat .venv/stamp 2>/dev/null || true)
if [ "$has" = "all $stamp" ] || [ "$has" = "$wanted $stamp" ]; then
    exit 0
fi
case $has in all\ *) wanted=all ;; esac # what the tests need is not taken away again

echo "Making the environment in .venv/ …" >&2
rm -f .venv/stamp
"$bin/python" -m pip install --quiet --disable-pip-version-check --require-hashes -r requirements/uv.txt
if [ "$wanted" = all ]; then locks=requirements/all.txt; else locks="requirements/run.txt requirements/build.txt"; fi
# shellcheck disable=SC2086 # several names on purpose
"$bin/uv" pip sync --quiet --python "$bin/python" --require-hashes $locks
"$bin/uv" pip install --quiet --python "$bin/python" --no-deps --no-build-isolation --editable .
echo "$wanted $stamp" >.venv/stamp
