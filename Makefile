# make demo    open the demonstration book in the browser
# make test    run every check
# Both make .venv/ first, from Python 3.11 or newer and nothing else. Other targets are for who works on the program.
# Options for the command: make demo ARGS="--port 9000 --no-open"; for pytest: make test ARGS="tests/store -x"

PYTHON = .venv/bin/python
CHECKED = src tests bench demo scripts
ARGS =

.PHONY: demo test check compiled bench bench-full lock clean
.DEFAULT_GOAL := demo

demo:
	@scripts/environment.sh run
	@.venv/bin/afterdraft demo $(ARGS)

test:
	@scripts/environment.sh all
	@$(MAKE) --no-print-directory --jobs 2 check compiled
	@browser=$$($(PYTHON) scripts/browser.py) && \
	PYTHONDONTWRITEBYTECODE= BROWSER_PATH="$$browser" $(PYTHON) -m pytest -n 3 --dist loadfile --no-loadscope-reorder $(ARGS)

# Modules of the tests, compiled once beside the checks, not by each worker
compiled:
	@PYTHONDONTWRITEBYTECODE= $(PYTHON) -m pytest --collect-only -q $(ARGS) >/dev/null 2>&1 || true

check:
	@scripts/environment.sh all
	@.venv/bin/ruff format --check $(CHECKED)
	@.venv/bin/ruff check $(CHECKED)
	@.venv/bin/mypy
	@.venv/bin/lint-imports --config pyproject.toml

bench:
	@scripts/environment.sh all
	@$(PYTHON) -m bench

bench-full:
	@scripts/environment.sh all
	@$(PYTHON) -m bench --full

lock:
	@scripts/environment.sh all
	@scripts/lock.sh

clean:
	rm -rf .venv build dist .cache .pytest_cache .mypy_cache .ruff_cache .hypothesis .import_linter_cache test-results
