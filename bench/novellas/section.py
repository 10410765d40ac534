"""The novellas as a section of the results."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from afterdraft import wiring
from afterdraft.questions.of_draft import seen_of
from afterdraft.questions.seen import Seen
from bench.judged.judgements import Judgement, judgements
from bench.judged.score import FIRST, beside
from bench.novellas.books import Novella, novellas
from bench.novellas.fresh import Fresh, fresh, table
from bench.report import Figure, Section
from bench.slips.score import Result, result
from bench.slips.seen import facts
from bench.structure.halves import Half

JUDGED = Path(__file__).parent / "judgements"
SINCE = 9  # the first set asked after it was chosen which checks ask at first
FRESH = "As first asked of drafts that nobody had worked on, all checks together, before what they show was mended:"
HALVES: tuple[Half, Half] = ("tune", "report")


@dataclass(frozen=True, slots=True)
class Asked:
    """What is asked of a novella, and how its first ten questions were judged; None for one that was not."""

    result: Result
    judged: tuple[Judgement | None, ...]

    def verdicts(self, verdict: str) -> int:
        return sum((one.verdict if one else "") == verdict for one in self.judged)


def seen(novella: Novella) -> Seen:
    """Divided and read by the program, as a writer's file would be."""
    return seen_of(wiring.read([(novella.file, novella.text())]), facts)


def asked(novella: Novella, which: Half) -> Asked:
    found = result(novella.title, which, seen(novella), novella.slips, novella.traps)
    return Asked(found, beside(found.questions[:FIRST], judgements(novella.slug, JUDGED)))


def measure(*, full: bool) -> Section:
    found = [asked(one, which) for which in HALVES for one in novellas(which)]
    return Section(
        title="Questions about novellas written for it",
        corpus=(
            f"{len(found)} novellas of 14,000 to 20,000 words, invented (`bench/novellas`), each with 16 slips of a "
            "reviser and 8 to 10 traps, by writers who knew nothing of the checks. A slip counts as found where one "
            "question shows two of its passages (one, where it has no other or the check shows one only)."
        ),
        figures=(*(figure for which in HALVES for figure in _figures(which, found)), *_fresh()),
        lines=(*_listed(found), "", *_by_check(found), "", FRESH, "", *table(fresh())),
    )


def _figures(which: Half, found: Sequence[Asked]) -> Iterator[Figure]:
    mine = [one for one in found if one.result.half == which]
    slips = [answer for one in mine for answer in one.result.slips]
    traps = [answer for one in mine for answer in one.result.controls]
    yield Figure(
        f"slips asked about, {which}", sum(bool(one.check) for one in slips) / len(slips), note=f"{len(slips)} slips"
    )
    yield Figure(
        f"traps asked about, {which}", sum(bool(one.check) for one in traps), target=0, note=f"of {len(traps)}"
    )
    judged = sum(one.verdicts(verdict) for one in mine for verdict in ("good", "answered", "mistaken"))
    if judged:
        good = sum(one.verdicts("good") for one in mine)
        open_ = sum(one.verdicts("") for one in mine)
        yield Figure(
            f"first ten questions judged good, {which}",
            good / judged,
            target=0.7,
            at_most=False,
            note=f"{judged} judged, {open_} not yet",
        )


def _fresh() -> Iterator[Figure]:
    """Of each set of fresh drafts, as the program stood when it was asked; the target is for those since it was chosen
    which checks ask at first."""
    asked = [one for one in fresh() if one.at_first]
    for number in sorted({one.set for one in asked}):
        yield _good(f"questions of fresh drafts judged good, set {number}", [one for one in asked if one.set == number])
    if since := [one for one in asked if one.set >= SINCE]:
        name = f"questions of fresh drafts judged good, sets from {SINCE}"
        yield replace(_good(name, since), target=0.7, at_most=False)


def _good(name: str, asked: Sequence[Fresh]) -> Figure:
    good = sum(one.verdict == "good" for one in asked)
    return Figure(name, good / len(asked), note=f"{len(asked)} asked, of {len({one.draft for one in asked})} drafts")


def _listed(found: Sequence[Asked]) -> Iterator[str]:
    yield from ("| novella | half | slip | asked by |", "|---|---|---|---|")
    for one in found:
        for answer in one.result.slips:
            yield f"| {one.result.title} | {one.result.half} | {answer.listed.kind} | {answer.check or '–'} |"


def _by_check(found: Sequence[Asked]) -> Iterator[str]:
    yield from (
        "| novella | half | questions | good | answered | mistaken | not yet judged |",
        "|---|---|" + 5 * "---:|",
    )
    for one in found:
        verdicts = " | ".join(str(one.verdicts(verdict)) for verdict in ("good", "answered", "mistaken", ""))
        yield f"| {one.result.title} | {one.result.half} | {len(one.result.questions)} | {verdicts} |"
