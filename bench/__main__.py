"""`python -m bench [--full] [--only NAME]`: every bench, and `RESULTS.md`."""

import argparse
import sys
from collections.abc import Callable, Mapping

from bench import corpus, fuzz, kills, laden, reading_speed, ten_drafts
from bench.comparison import section as comparison
from bench.faults import section as faults
from bench.judged import section as judged
from bench.measures import section as measures
from bench.novellas import section as novellas
from bench.reading import by_hand
from bench.reading import section as reading
from bench.report import Section, rewrite, shown, write
from bench.slips import section as slips
from bench.speed import section as speed
from bench.structure import section as structure
from bench.time import section as story_times
from bench.unmarked import section as unmarked

SECTIONS: Mapping[str, Callable[..., Section]] = {
    "structure": structure.measure,
    "reading": reading.measure,
    "cast": by_hand.measure,
    "reading-speed": reading_speed.measure,
    "measures": measures.measure,
    "time": story_times.measure,
    "unmarked": unmarked.measure,
    "comparison": comparison.measure,
    "slips": slips.measure,
    "faults": faults.measure,
    "novellas": novellas.measure,
    "judged": judged.measure,
    "ten-drafts": ten_drafts.measure,
    "speed": speed.measure,
    "laden": laden.measure,
    "kills": kills.measure,
    "fuzz": fuzz.measure,
}


def main() -> int:
    parser = argparse.ArgumentParser(prog="python -m bench", description=__doc__)
    parser.add_argument("--full", action="store_true", help="all of it, where a sample is taken otherwise")
    parser.add_argument("--only", choices=SECTIONS, help="one bench, printed and not written down")
    parser.add_argument("--write", action="store_true", help="with --only: its section of the results is written anew")
    asked = parser.parse_args()
    if not corpus.paths():
        print("The corpus folder beside the checkout is missing; nothing was measured.", file=sys.stderr)
        return 2
    names = [asked.only] if asked.only else list(SECTIONS)
    sections = [_measured(name, full=asked.full) for name in names]
    if not asked.only:
        write(sections)
    elif asked.write:
        rewrite(sections[0])
    missed = [figure for section in sections for figure in section.figures if figure.met is False]
    return 1 if missed else 0


def _measured(name: str, *, full: bool) -> Section:
    print(f"{name} …", flush=True)
    section = SECTIONS[name](full=full)
    for figure in section.figures:
        print(f"  {figure.name:60} {shown(figure):>12}  {'' if figure.met is not False else 'MISSED'}", flush=True)
    return section


if __name__ == "__main__":
    sys.exit(main())
