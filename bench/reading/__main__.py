"""`python -m bench.reading [--half tune|report] [--confusion]`: the figures of one half or both, printed and not
written down; with `--confusion` every wrong quotation of the tuning half by its kind of fault."""

import argparse

from bench.reading.run import measured
from bench.reading.section import confusion, figures, novels
from bench.report import shown


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m bench.reading", description=__doc__)
    parser.add_argument("--half", choices=("tune", "report"))
    parser.add_argument("--confusion", action="store_true", help="the tuning half's faults by kind")
    asked = parser.parse_args()
    results = list(measured("tune" if asked.confusion else asked.half))
    for figure in figures(results):
        print(f"{figure.name:60} {shown(figure):>10}")
    print("\n".join(novels(results)))
    if asked.confusion:
        print("\n".join(confusion(results)))


if __name__ == "__main__":
    main()
