"""`python -m bench.faults [KIND…] [--half tune] [--full]`: planted faults; those missed with their words on screen."""

import argparse

from bench.faults.kinds import KINDS
from bench.faults.section import HALVES, measured


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m bench.faults", description=__doc__)
    parser.add_argument("kinds", nargs="*", help="all where none is named")
    parser.add_argument("--half", choices=HALVES, default="tune", help="looking at the other one spoils it")
    parser.add_argument("--full", action="store_true", help="every novel of that half")
    parser.add_argument("--processes", type=int, default=1)
    asked = parser.parse_args()
    kinds = tuple(asked.kinds or KINDS)
    results = measured((asked.half,), kinds, full=asked.full, processes=asked.processes)
    for kind in kinds:
        answers = [(one.title, answer) for one in results for answer in one.answers if answer.fault.kind == kind]
        print(f"{kind}: {sum(bool(answer.check) for _, answer in answers)} of {len(answers)}")
        for title, answer in answers:
            if not answer.check:
                print(f"  {title}: " + " | ".join(f"{one.scene}: {one.words[:200]}" for one in answer.fault.shown))
    words = sum(one.words for one in results)
    print(f"about something else: {10_000 * sum(one.others for one in results) / words:.2f} per 10,000 words")


if __name__ == "__main__":
    main()
