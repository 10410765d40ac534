"""The only place for what differs between systems: folders, the lock on a file, whether there is a screen."""

import os
import socket
import stat
import sys
import tempfile
import warnings
from dataclasses import dataclass
from pathlib import Path
from typing import IO

APP = "afterdraft"
LOCK_AT = 2**30  # the byte locked on Windows: far past the text, because there a locked byte cannot be read


@dataclass(frozen=True, slots=True)
class Folders:
    """Where this user's things lie on this system. None is made until something is written there."""

    config: Path  # settings, recent books
    data: Path  # backups
    logs: Path
    runtime: Path  # the owner file; emptied by the system at its next start
    documents: Path

    @property
    def log(self) -> Path:
        return self.logs / "afterdraft.log"


def folders() -> Folders:
    from platformdirs import PlatformDirs  # late: the version and help need none of it

    dirs = PlatformDirs(APP, appauthor=False)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # that the runtime folder will not do: looked into here, below
        runtime = dirs.user_runtime_path
    return Folders(
        config=dirs.user_config_path,
        data=dirs.user_data_path,
        logs=dirs.user_log_path,
        runtime=_own_runtime(runtime, dirs.user_data_path),
        documents=dirs.user_documents_path,
    )


def private_folder(folder: Path) -> Path:
    """Make a folder that only this user can look into."""
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    return folder


def write_private(path: Path, text: str) -> None:
    """Write a small file that only this user can read: whole, or not at all."""
    handle, name = tempfile.mkstemp(prefix=f".{path.name}.", dir=private_folder(path.parent))  # mkstemp gives 0600
    try:
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(text)
            file.flush()
            os.fsync(file.fileno())
        Path(name).replace(path)
    except OSError:
        Path(name).unlink(missing_ok=True)
        raise


def lock(path: Path) -> IO[str] | None:
    """Take the system's lock on a file, made when absent; None when another process holds it.

    The lock goes when the file is closed or the process ends, however it ends.
    """
    private_folder(path.parent)
    file = os.fdopen(os.open(path, os.O_RDWR | os.O_CREAT, 0o600), "r+", encoding="utf-8")
    if _take(file.fileno()):
        return file
    file.close()
    return None


def claim_port_alone(listening: socket.socket) -> None:
    """Take a port that was just given up, but never one that another program listens on."""
    if sys.platform == "win32":  # there SO_REUSEADDR would let two programs share it
        listening.setsockopt(socket.SOL_SOCKET, socket.SO_EXCLUSIVEADDRUSE, 1)
    else:
        listening.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)


def why(trouble: OSError) -> str:
    """What the system says went wrong, to stand within a sentence."""
    return (trouble.strerror or "the system refused").lower()


def has_screen() -> bool:
    """Whether a browser could be shown."""
    if sys.platform in ("win32", "darwin"):
        return True
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))


def _own_runtime(wanted: Path, fallback: Path) -> Path:
    """The runtime folder may lie in a folder shared by all users: use it only where it is, or will be, ours alone."""
    if sys.platform == "win32":
        return wanted
    for place in (wanted, *wanted.parents):
        if place.is_dir():
            about = place.stat()
            ours = about.st_uid == os.getuid() and not stat.S_IMODE(about.st_mode) & 0o077
            open_to_all = place != wanted and about.st_mode & stat.S_ISVTX and os.access(place, os.W_OK)
            return wanted if ours or open_to_all else fallback / "run"
    return fallback / "run"


if sys.platform == "win32":
    import msvcrt

    def _take(handle: int) -> bool:
        os.lseek(handle, LOCK_AT, os.SEEK_SET)
        try:
            msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        os.lseek(handle, 0, os.SEEK_SET)
        return True

else:
    import fcntl

    def _take(handle: int) -> bool:
        try:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError:
            return False
        return True


def step_back() -> None:
    """Everything else on this machine comes before this process."""
    if sys.platform != "win32":
        os.nice(10)


def limit_memory(size: int) -> None:
    """No more than `size` bytes of address space for this process; on Windows there is no such limit."""
    if sys.platform != "win32":
        import resource  # not there on Windows

        _, most = resource.getrlimit(resource.RLIMIT_AS)
        wanted = size if most == resource.RLIM_INFINITY else min(size, most)
        resource.setrlimit(resource.RLIMIT_AS, (wanted, most))
