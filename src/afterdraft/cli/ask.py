"""`afterdraft ask FILE-or-BOOK`: what a sharp first reader would ask, with the passages; as JSON or to be read."""

import json
import sys
from argparse import ArgumentParser, ArgumentTypeError, Namespace
from collections.abc import Iterator, Mapping, Sequence

from afterdraft import __version__, wiring
from afterdraft.cli.options import Command, Serve
from afterdraft.desk.answer import Turned
from afterdraft.questions.ask_form import ask_form
from afterdraft.questions.asking import ask
from afterdraft.questions.at_first import AT_FIRST, is_held_back
from afterdraft.questions.catalogue import CHECKS
from afterdraft.questions.check import Check
from afterdraft.questions.of_draft import places_of
from afterdraft.questions.question import Question
from afterdraft.work.questions.to_answer import waiting

AT_ONCE = 7  # questions that are shown to be read at once, unless told otherwise
UNREAD = (
    "The manuscript is not in English. People, speech and times are read in English only, so what needs them is not "
    "asked; everything else is there."
)
NONE = "Nothing to ask: no check found anything that waits for an answer."


def _options(parser: ArgumentParser) -> None:
    parser.add_argument("name", metavar="FILE-or-BOOK", help="a manuscript, a folder of them, or NAME.afterdraft")
    parser.add_argument("--json", action="store_true", help="all questions as one JSON document, of the form ask/1")
    parser.add_argument("--all", action="store_true", help=f"all questions, and not the {AT_ONCE} sharpest")
    parser.add_argument(
        "--check", action="append", type=_check, metavar="ID", help="only this check; may be given several times"
    )
    parser.add_argument(
        "--less-sure",
        action="store_true",
        help="also the checks that do not ask at first, since they often ask in vain",
    )
    parser.add_argument("--strict", action="store_true", help="exit code 1 if any question waits for an answer")


def _check(id: str) -> Check:
    for check in CHECKS:
        if check.id == id:
            return check
    raise ArgumentTypeError(f"there is no check {id!r}; there are {', '.join(check.id for check in CHECKS)}")


def _run(options: Namespace, _: Serve) -> int:
    answers, turned = wiring.answers_in(options.name)
    let: Mapping[str, Turned] = {**dict.fromkeys(AT_FIRST, "on"), **turned} if options.less_sure else turned
    checks: Sequence[Check] = options.check or [one for one in CHECKS if not is_held_back(one.id, let)]
    seen = wiring.seen_by_checks(options.name)
    if not seen.is_read:
        print(UNREAD, file=sys.stderr)
    questions = ask(seen, checks=checks)
    open_ones = waiting(questions, answers, {one.id: "on" for one in options.check} if options.check else let)
    if options.json:
        print(
            json.dumps(
                ask_form(
                    questions,
                    places=places_of(seen),
                    version=__version__,
                    answers={one.fingerprint: one.answer for one in answers},
                ),
                ensure_ascii=False,
                indent=1,
            )
        )
    else:
        print("\n".join(_lines(open_ones if options.all else open_ones[:AT_ONCE], seen.titles)))
    return 1 if options.strict and open_ones else 0


def _lines(questions: Sequence[Question], titles: Sequence[str]) -> Iterator[str]:
    """For a person: each question and, under it, the passages."""
    if not questions:
        yield NONE
    for number, one in enumerate(questions, 1):
        yield f"{number}. {one.asks}"
        for span in one.evidence:
            yield f"     {titles[span.scene]}: {' '.join(span.quote.split())}"
        yield ""


COMMAND = Command("ask", "ask what a sharp first reader would ask, with the passages", _options, _run)
