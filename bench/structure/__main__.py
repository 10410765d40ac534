"""`python -m bench.structure [--habit H] [--book SLUG] [--half tune|report] [--faults]`: the table, in seconds."""

import argparse
import sys

from bench.structure.run import measured, table


def main() -> int:
    parser = argparse.ArgumentParser(prog="python -m bench.structure", description=__doc__)
    parser.add_argument("--habit", default="", help="part of a habit's name")
    parser.add_argument("--book", default="", help="part of a book's name")
    parser.add_argument("--half", choices=("tune", "report"))
    parser.add_argument(
        "--faults", type=int, nargs="?", const=5, default=0, help="show the first N faults of each file"
    )
    asked = parser.parse_args()
    results = measured(habit=asked.habit, book=asked.book, half=asked.half)
    if not results:
        print("No novel matches, or the corpus folder is missing.", file=sys.stderr)
        return 2
    print(table(results))
    for result in results if asked.faults else ():
        if result.score.faults:
            print(f"\n{result.slug} · {result.habit}")
            print("\n".join(f"    {fault}" for fault in result.score.faults[: asked.faults]))
    return 0


if __name__ == "__main__":
    sys.exit(main())
