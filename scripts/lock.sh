#!/bin/sh
# Write the locks anew: every version with its digests, for every system, naming no host.
# run: what the program needs; build: what installs it into .venv/; all: both, and what the tests need.
set -eu
cd "$(dirname "$0")/.."
export UV_CUSTOM_COMPILE_COMMAND="make lock"

compile() {
    .venv/bin/uv pip compile --quiet --universal --generate-hashes --no-header --no-annotate "$@"
}

compile --group test pyproject.toml -o requirements/all.txt
compile -c requirements/all.txt pyproject.toml -o requirements/run.txt
printf 'editables\nhatchling\n' | compile -c requirements/all.txt - -o requirements/build.txt
printf 'uv\n' | compile -c requirements/uv.in - -o requirements/uv.txt
