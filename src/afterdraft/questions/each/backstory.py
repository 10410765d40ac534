"""Backstory that is heavy in the first fifth."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences

FIRST = 0.2  # share of the book's words: its opening, as the trade has it
RUN = 5  # sentences looking back, almost on end, from which they are a passage
HEAVY = 0.3  # share of the opening's sentences outside speech; chosen on the tuning half
TIMES = 1.5  # as much as in the rest of the book, likewise
MOST = 3  # passages shown
_BACK = re.compile(
    r"\b(?:had|[’']d)\s(?:(?:not|never|always|once|only|just|been|also|already|\w+ly)\s)*"
    r"(?:\w+(?:ed|en|wn|ught|ade|eld|elt|ept|ost|ood|old|aid|ame|one|un|ung|ut|et|it|ound|ead|eft)|been|had|become|come|gone)\b"
)


def find(seen: Seen) -> Iterator[Finding]:
    opening, rest = [0, 0], [0, 0]
    runs: list[tuple[int, int, int, int, int]] = []  # sentences, scene, paragraph, start, end
    whole = sum(len(text) for scene in seen.texts for text in scene)
    gone = 0
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            back, told, run = _looks_back(seen, number, place)
            counts = opening if gone < FIRST * whole else rest
            counts[0] += back
            counts[1] += told
            if counts is opening and run and run[0] >= RUN:
                runs.append((run[0], number, place, run[1], run[2]))
            gone += len(text)
    share, others = (counts[0] / counts[1] if counts[1] else 0.0 for counts in (opening, rest))
    if runs and share >= HEAVY and share >= TIMES * others:
        longest = sorted(sorted(runs, reverse=True)[:MOST], key=lambda run: run[1:])
        yield Finding(
            evidence=tuple(seen.span(*run[1:]) for run in longest),
            strength=min(0.7, 0.4 + share / 2),
            subject="backstory",
            numbers={"share": round(share, 3), "rest": round(others, 3)},
        )


def _looks_back(seen: Seen, number: int, place: int) -> tuple[int, int, tuple[int, int, int] | None]:
    """Of a paragraph: sentences outside speech that look back, all outside speech, and the longest run of the former as
    how many, start, end."""
    text = seen.texts[number][place]
    speech = [(one.start, one.end) for one in seen.facts[number].quotes if one.paragraph == place]
    back = told = 0
    best: tuple[int, int, int] | None = None
    run: tuple[int, int, int] | None = None
    for start, end in sentences(text):
        if any(begun < end and start < done for begun, done in speech):
            continue
        told += 1
        if not _BACK.search(text, start, end):
            run = None
            continue
        back += 1
        run = (run[0] + 1, run[1], end) if run else (1, start, end)
        best = max(best or run, run, key=lambda one: one[0])
    return back, told, best


CHECK = Check(
    id="backstory",
    name="Backstory in the opening",
    family="opening",
    looks_at="Whether the first fifth of the book looks back much, and more than the rest.",
    method="Counts sentences outside speech with a verb in the past perfect (‘had gone’). It is asked where three in "
    "ten of the opening look back, and half as many again as later on. Where an opening ends is common "
    "practice.",
    blind="Backstory told in the simple past, or in talk.",
    reads=("words", "facts"),
    find=find,
)
