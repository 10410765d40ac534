"""Where faults of ours are written down: which kind, at which place in the program, never what the manuscript says."""

import logging
import logging.handlers
import traceback
from pathlib import Path
from types import TracebackType

LOG = logging.getLogger("afterdraft")
SIZE, KEPT = 2**20, 3  # bytes of one log file; older ones kept

_Fault = tuple[type[BaseException], BaseException, TracebackType | None] | tuple[None, None, None]


def log_to(file: Path) -> None:
    """Send warnings and worse, of this program and of its libraries, to `file`; to nowhere if it cannot be written."""
    logging.getLogger().handlers = [_handler(file)]
    logging.getLogger().setLevel(logging.WARNING)


def write_down(fault: BaseException) -> None:
    LOG.error("a fault", exc_info=fault)


class Discreet(logging.Formatter):
    """Leaves out the message of an exception: it may quote the text that was being worked on."""

    def formatException(self, ei: _Fault) -> str:
        kind, _, where = ei
        return f"{kind.__name__ if kind else 'unknown'}\n{''.join(traceback.format_tb(where))}".rstrip()


def _handler(file: Path) -> logging.Handler:
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
        handler: logging.Handler = logging.handlers.RotatingFileHandler(
            file, maxBytes=SIZE, backupCount=KEPT, encoding="utf-8", delay=True
        )
    except OSError:
        return logging.NullHandler()
    handler.setFormatter(Discreet("%(asctime)s %(levelname)s %(name)s: %(message)s"))
    return handler
