"""Processes of the program that begin where Python and its modules are loaded already, so that tests wait less.

Each is forked anew from one that waits (the fork server of `multiprocessing`) and shares nothing with any other. What
is about a start itself starts a real one: `tests.server.running`.
"""

import multiprocessing
import os
import signal
import sys
import tempfile
import warnings
from collections.abc import Mapping, Sequence
from contextlib import suppress
from functools import cache
from multiprocessing.context import ForkServerContext
from pathlib import Path

OURS = ["tests.loopback.sitecustomize", "tests.forked", "tests.preloaded"]
LOADED = [*OURS, "afterdraft.__main__", "afterdraft.web.serve"]


class Forked:
    """As much of `subprocess.Popen` as tests use; what it prints goes to files."""

    def __init__(
        self, arguments: Sequence[str], *, environment: Mapping[str, str], cwd: Path, out: Path, errors: Path
    ) -> None:
        told = (list(arguments), dict(environment), str(cwd), str(out), str(errors))
        self._process = _waiting().Process(target=_run, args=told)
        self._process.start()

    @property
    def pid(self) -> int:
        assert self._process.pid is not None
        return self._process.pid

    def poll(self) -> int | None:
        return self._process.exitcode

    def wait(self, timeout: float | None = None) -> int:
        self._process.join(timeout)
        if self._process.exitcode is None:
            raise TimeoutError(f"process {self.pid} has not ended within {timeout} s")
        return self._process.exitcode

    def send_signal(self, how: int) -> None:
        with suppress(ProcessLookupError):
            os.kill(self.pid, how)

    def kill(self) -> None:
        self.send_signal(signal.SIGKILL)


@cache
def _waiting() -> ForkServerContext:
    context = multiprocessing.get_context("forkserver")
    context.set_forkserver_preload(LOADED)
    return context


def _run(arguments: Sequence[str], environment: Mapping[str, str], cwd: str, out: str, errors: str) -> None:
    """As `python -m afterdraft` would with these arguments, in this environment and folder."""
    os.environ.clear()
    os.environ.update(environment)
    os.chdir(cwd)
    tempfile.tempdir = None  # asked for anew, of this environment
    for path, descriptor in ((out, 1), (errors, 2)):
        file = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
        os.dup2(file, descriptor)
        os.close(file)
    warnings.simplefilter("error")
    sys.argv = ["afterdraft", *arguments]
    from afterdraft.__main__ import main  # here, so that this module is small where only its class is wanted

    sys.exit(main())
