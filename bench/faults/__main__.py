"""`python -m bench.faults [KIND…] [--half tune|others] [--full] [--copies 3]`: those missed with their words;
of the report half only how many, since looking at them spoils it."""

import argparse

from bench.faults.kinds import KINDS
from bench.faults.section import HALVES, ROUNDS, measured


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m bench.faults", description=__doc__)
    parser.add_argument("kinds", nargs="*", help="all where none is named")
    parser.add_argument("--half", choices=(*HALVES, "others"), default="tune")
    parser.add_argument("--full", action="store_true", help="every novel of it")
    parser.add_argument("--copies", type=int, default=ROUNDS, help="of each novel, each with a seed of its own")
    parser.add_argument("--first", type=int, default=0, help="number of the first copy: others are other seeds")
    parser.add_argument("--processes", type=int, default=1)
    asked = parser.parse_args()
    kinds = tuple(asked.kinds or KINDS)
    copies = range(asked.first, asked.first + asked.copies)
    results = measured((asked.half,), kinds, full=asked.full, copies=copies, processes=asked.processes)
    for kind in kinds:
        answers = [(one.title, answer) for one in results for answer in one.answers if answer.fault.kind == kind]
        print(f"{kind}: {sum(bool(answer.check) for _, answer in answers)} of {len(answers)}")
        for title, answer in answers:
            if not answer.check and asked.half != "report":
                print(f"  {title}: " + " | ".join(f"{one.scene}: {one.words[:200]}" for one in answer.fault.shown))
    words = sum(one.words for one in results)
    print(f"about something else: {10_000 * sum(one.others for one in results) / words:.2f} per 10,000 words")


if __name__ == "__main__":
    main()
