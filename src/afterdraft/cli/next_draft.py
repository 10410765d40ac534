"""`afterdraft next BOOK FILE…`: bring the next draft into a book."""

import json
from argparse import ArgumentParser, Namespace
from contextlib import closing
from pathlib import Path

from afterdraft import __version__, wiring
from afterdraft.cli.compare import lines
from afterdraft.cli.options import Command, Serve
from afterdraft.comparison.compare_form import compare_form


def _options(parser: ArgumentParser) -> None:
    parser.add_argument("book", type=Path, metavar="BOOK", help="the book's file")
    parser.add_argument("files", nargs="+", type=Path, metavar="FILE", help="the draft: a file, several, a folder")
    parser.add_argument(
        "--json", action="store_true", help="what became of every scene: a document of the form compare/1"
    )
    how = parser.add_mutually_exclusive_group()
    how.add_argument(
        "--part-way",
        dest="how",
        action="store_const",
        const="part-way",
        help="it goes only as far as the revision has come: what is beyond is not cut",
    )
    how.add_argument(
        "--again",
        dest="how",
        action="store_const",
        const="again",
        help="the newest draft once more, with typing mistakes mended: no new round, everything stays on its scenes",
    )
    how.add_argument(
        "--older",
        dest="how",
        action="store_const",
        const="older",
        help="a draft from before those in the book: it is put in behind them",
    )
    parser.set_defaults(how="next")


def _run(options: Namespace, _: Serve) -> int:
    files = wiring.load(options.files)
    with closing(wiring.open_book(options.book)) as book:
        made = wiring.next_draft(book, files, options.how)
        known = book.drafts()
    place = next(n for n, draft in enumerate(known) if draft.id == made)
    pair = (place, place + 1) if options.how == "older" else (place - 1, place)
    if pair[0] < 0:
        print(f"It is draft {place + 1} of the book now.")
        return 0
    old, new = (wiring.draft_named(f"{options.book}#{known[n].number}") for n in pair)
    found = wiring.compared(old, new, part_way=known[pair[1]].part_way)
    form = compare_form(old, new, found, version=__version__)
    if options.json:
        print(json.dumps(form, ensure_ascii=False))
    else:
        print(f"It is draft {place + 1} of the book now. Draft {pair[0] + 1} beside draft {pair[1] + 1}:")
        print("\n".join(lines(form, found, old, new)))
    return 0


COMMAND = Command("next", "bring the next draft into a book", _options, _run)
