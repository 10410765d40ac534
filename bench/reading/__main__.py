"""`python -m bench.reading [--half tune|report]`: the figures of one half or both, printed and not written down."""

import argparse

from bench.reading.run import measured
from bench.reading.section import figures, novels
from bench.report import shown


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m bench.reading", description=__doc__)
    parser.add_argument("--half", choices=("tune", "report"))
    results = list(measured(parser.parse_args().half))
    for figure in figures(results):
        print(f"{figure.name:60} {shown(figure):>10}")
    print("\n".join(novels(results)))


if __name__ == "__main__":
    main()
