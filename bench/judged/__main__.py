"""`python -m bench.judged [--group GROUP]`: the kept judgements against what is asked now.
`python -m bench.judged ask TITLE`: a novel's first questions with their evidence in context, for a judge."""

import argparse
import sys

from afterdraft.questions.asking import ask
from afterdraft.work.questions.to_answer import waiting
from bench import corpus
from bench.judged.judgements import judgements
from bench.judged.novels import GROUPS, chosen, named
from bench.judged.score import FIRST, beside, result
from bench.judged.section import figures, lines
from bench.judged.shown import shown as in_context
from bench.report import shown
from bench.slips.seen import of_novel


def main() -> int:
    parser = argparse.ArgumentParser(prog="python -m bench.judged", description=__doc__)
    parser.add_argument("--group", choices=GROUPS, help="all where none is named")
    verbs = parser.add_subparsers(dest="verb")
    verbs.add_parser("ask").add_argument("title", help="of a novel, or how its file is called")
    asked = parser.parse_args()
    if not corpus.paths():
        print("The corpus folder beside the checkout is missing; nothing was asked.", file=sys.stderr)
        return 2
    return _ask(asked.title) if asked.verb else _sum([asked.group] if asked.group else list(GROUPS))


def _ask(title: str) -> int:
    novel = named(title)
    if novel is None:
        print(f"No novel of the corpus is called {title!r}.", file=sys.stderr)
        return 2
    seen = of_novel(novel)
    questions = waiting(ask(seen), (), {})[:FIRST]
    for place, (one, judged) in enumerate(zip(questions, beside(questions, judgements(novel.slug)), strict=True), 1):
        print(f"{place}. " + "\n".join(in_context(seen, one)))
        print(f"  {judged.verdict}: {judged.why}\n" if judged else "  not yet judged\n")
    return 0


def _sum(groups: list[str]) -> int:
    results = [result(novel, group) for group in groups for novel in chosen(group)]
    for group in groups:
        for figure in figures(group, results):
            print(f"{figure.name:60} {shown(figure):>24}  {figure.note}")
    print("\n".join(["", *lines(results)]))
    return 0


if __name__ == "__main__":
    sys.exit(main())
