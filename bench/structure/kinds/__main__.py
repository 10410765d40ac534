"""`python -m bench.structure.kinds [--kind K] [--habit H] [--format F] [--every N]`

writes novels of the tune half as books of each kind, reads them back and prints one row a kind.
"""

import argparse

from bench import corpus
from bench.structure.decisions import Tally, tally
from bench.structure.halves import half
from bench.structure.kinds import KINDS
from bench.structure.manuscripts import habits, make
from bench.structure.run import read_back, readable


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--kind", default="", help="part of a kind's name")
    parser.add_argument("--habit", default="", help="part of a habit's name")
    parser.add_argument("--format", default="odt", help="docx, txt, …")
    parser.add_argument("--every", type=int, default=3, help="one novel in so many")
    asked = parser.parse_args()
    novels = [novel for path in corpus.paths() if half((novel := corpus.novel(path)).title) == "tune"][:: asked.every]
    print("kind", "right", "wrong", "doubted", "doubts", sep="\t")
    for name, change in KINDS.items():
        told = Tally()
        for habit in habits(asked.habit) if asked.kind in name else ():
            for novel in novels if asked.format in readable(habit) else ():
                made = make(change(novel), habit, asked.format)
                told += tally(read_back(made), made.plan)
        print(name, told.right, told.wrong, told.doubted, told.doubts, sep="\t")


if __name__ == "__main__":
    main()
