"""The table, in seconds or minutes.

`python -m bench.structure [--full] [--habit H] [--format F] [--book SLUG] [--half tune|report] [--faults]
[--every N] [--write]`
"""

import argparse
import sys

from bench.report import rewrite
from bench.structure.run import SAMPLE, measured, table
from bench.structure.section import measure


def main() -> int:
    parser = argparse.ArgumentParser(prog="python -m bench.structure", description=__doc__)
    parser.add_argument("--habit", default="", help="part of a habit's name")
    parser.add_argument("--format", default="", help="docx, txt, …")
    parser.add_argument("--full", action="store_true", help="every novel in every habit and format, not a sample")
    parser.add_argument("--book", default="", help="part of a book's name")
    parser.add_argument("--half", choices=("tune", "report"))
    parser.add_argument(
        "--faults", type=int, nargs="?", const=5, default=0, help="show the first N faults of each file"
    )
    parser.add_argument("--every", type=int, default=SAMPLE, help="of each habit and format one novel in so many")
    parser.add_argument("--write", action="store_true", help="measure all and write the section of RESULTS.md anew")
    asked = parser.parse_args()
    if asked.write:
        rewrite(measure(full=asked.full, every=asked.every))
        return 0
    results = measured(
        habit=asked.habit,
        form=asked.format,
        book=asked.book,
        half=asked.half,
        every=1 if asked.full or asked.book else asked.every,
    )
    if not results:
        print("No novel matches, or the corpus folder is missing.", file=sys.stderr)
        return 2
    print(table(results))
    for result in results if asked.faults else ():
        if result.score.faults and result.half == "tune":  # the others are looked at in figures only
            print(f"\n{result.slug} · {result.habit} · {result.form}")
            print("\n".join(f"    {fault}" for fault in result.score.faults[: asked.faults]))
    return 0


if __name__ == "__main__":
    sys.exit(main())
