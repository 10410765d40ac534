"""The bench of planted faults as a section of the results."""

from collections.abc import Iterable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor

from bench.faults.kinds import KINDS
from bench.faults.novels import Group, novels
from bench.faults.planted import Scenes
from bench.faults.score import Answer, Result, result
from bench.report import Figure, Section
from bench.structure.halves import Half

HALVES: tuple[Half, Half] = ("tune", "report")
NOVELS = 4  # of each half in the short run: those of the fewest words
OFTEN, HALF_WAY = 0.90, 0.70  # share to be found: what a calendar or the words alone show, and what takes reading
TARGETS = {  # of a name left over only where the writer wrote the earlier one down: docs/decisions/0016
    **dict.fromkeys(("weekday", "date", "interval", "name", "duplicate", "tense", "renamed"), OFTEN),
    **dict.fromkeys(("trait", "age", "two places", "gone", "viewpoint"), HALF_WAY),
}
ROUNDS, SHORT = 4, 2  # copies of each novel, with other seeds: docs/decisions/0021


def measure(*, full: bool) -> Section:
    rounds = ROUNDS if full else SHORT
    results = measured(HALVES, tuple(KINDS), full=full, copies=range(rounds))
    return Section(
        title="Planted faults",
        corpus=(
            f"{len({one.title for one in results})} novels of the structure corpus with one fault of each kind in it "
            f"that it has a place for, {rounds} copies of each with other seeds; the planter (`bench/faults`) imports "
            "nothing of the program. A fault counts as found where one question quotes the planted words and what they "
            "disagree with. Checks were mended on the tuning half."
        ),
        figures=tuple(figure for which in HALVES for figure in _figures(which, results)),
        lines=tuple(_lines(results)),
    )


def measured(
    halves: Sequence[Group],
    kinds: Sequence[str],
    *,
    full: bool,
    copies: Sequence[int],
    processes: int = 2,
) -> list[Result]:
    """Of each novel copies with these numbers, which are their seeds."""
    jobs = [
        (title, which, scenes, kinds, number)
        for which in halves
        for title, scenes in _some(which, full=full)
        for number in copies
    ]
    if processes == 1:
        return [_result(job) for job in jobs]
    with ProcessPoolExecutor(processes) as pool:
        return list(pool.map(_result, jobs))


def _result(job: tuple[str, Group, Scenes, Sequence[str], int]) -> Result:
    return result(*job)


def _some(which: Group, *, full: bool) -> list[tuple[str, Scenes]]:
    found = list(novels(which))
    return found if full else sorted(found, key=_length)[:NOVELS]


def _length(novel: tuple[str, Scenes]) -> int:
    return sum(len(text) for scene in novel[1] for text in scene)


def _figures(which: Half, results: Sequence[Result]) -> Iterator[Figure]:
    mine = [one for one in results if one.half == which]
    for kind in KINDS:
        asked = [answer.check for answer in _of(kind, mine)]
        if asked:
            yield Figure(
                f"{kind}, {which} half",
                round(sum(map(bool, asked)) / len(asked), 3),
                "found",
                target=TARGETS.get(kind),
                at_most=False,
                note=f"{len(asked)} planted",
            )
    words = sum(one.words for one in mine)
    yield Figure(
        f"questions about something else, {which} half",
        round(10_000 * sum(one.others for one in mine) / words, 2),
        "per 10,000 words",
    )


def _of(kind: str, results: Iterable[Result]) -> list[Answer]:
    return [answer for one in results for answer in one.answers if answer.fault.kind == kind]


def _lines(results: Sequence[Result]) -> Iterator[str]:
    """How many of each kind were found where, and by which checks; no words of the novels."""
    yield from ("| kind | half | planted | found | asked by |", "|---|---|---:|---:|---|")
    for kind in KINDS:
        for which in HALVES:
            asked = [answer.check for answer in _of(kind, [one for one in results if one.half == which])]
            by = ", ".join(f"{check} {asked.count(check)}" for check in sorted(set(asked) - {""}))
            yield f"| {kind} | {which} | {len(asked)} | {sum(map(bool, asked))} | {by or '–'} |"
    yield from ("", "Not found:", "")
    for one in results:
        missed = [answer.fault for answer in one.answers if not answer.check]
        if missed:
            yield f"- {one.title}: " + ", ".join(
                f"{fault.kind} in scene {fault.shown[0].scene + 1}" for fault in missed
            )
