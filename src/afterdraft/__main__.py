"""Where the process begins: the command line, with the server handed to it (neither face imports the other)."""

import sys
from pathlib import Path

from afterdraft.cli.main import run, say


def main() -> int:
    return run(sys.argv[1:], serve=_serve)


def _serve(book: Path | None, *, port: int | None, start_browser: bool) -> int:
    from afterdraft.web.serve import serve  # late: other commands need no server

    return serve(book, port=port, start_browser=start_browser, say=say)


if __name__ == "__main__":
    sys.exit(main())
