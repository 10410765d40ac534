"""`python -m bench.comparison.child OLD NEW`: compares two texts, a paragraph a line and scenes parted by empty lines.

Prints seconds and processor seconds for the comparison itself, and the highest memory of the process in MB.
"""

import json
import resource
import sys
import time
from pathlib import Path

from afterdraft.comparison.compare import compare
from bench.comparison.score import told


def main() -> None:
    drafts = [
        told([scene.split("\n") for scene in Path(name).read_text("utf-8").split("\n\n")]) for name in sys.argv[1:3]
    ]
    before, worked = time.perf_counter(), time.process_time()
    found = compare(*drafts)
    seconds, processor = time.perf_counter() - before, time.process_time() - worked
    peak = _peak()
    print(json.dumps({"seconds": seconds, "processor": processor, "peak": peak, "kept": found.totals.kept}))


def _peak() -> float:
    """MB since this program began, where the system tells; what its parent had before counts otherwise."""
    status = Path("/proc/self/status")
    if status.exists():
        line = next(line for line in status.read_text("ascii").splitlines() if line.startswith("VmHWM"))
        return int(line.split()[1]) / 1024
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


if __name__ == "__main__":
    main()
