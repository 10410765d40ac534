"""The bench of reading as a section of the results."""

from collections import Counter
from collections.abc import Callable, Sequence
from itertools import chain

from bench.reading.litbank import Named, people_named
from bench.reading.novels import titles
from bench.reading.pronouns import known, score
from bench.reading.run import Answer, Result, measured
from bench.reading.score import Found, calibration, f1, surest_half
from bench.report import Figure, Section

PUBLISHED = "published: about 0.40 end to end"
GIVEN = (
    "published with the true cast: 0.785 (Vishnubhotla et al. 2023), 0.823 on unseen authors and 0.945 "
    "(Michel et al. 2026, large model), 0.906 (Michel et al. 2025, 8B model)"
)
KINDS = ("Explicit", "Anaphoric", "Implicit")


def measure(*, full: bool) -> Section:
    results = list(measured())
    report = [result for result in results if result.half == "report"]
    names = people_named("test")
    return Section(
        title="Reading: speech and cast",
        corpus=(
            f"{len(titles())} novels of the dialogue corpus (PDNC, evaluation only), {len(report)} of them the half "
            "that only reports ([how they are halved, and what is counted](reading/README.md)). Figures in the "
            "table are of that half; nothing is tuned for a book."
        ),
        figures=(*figures(report), *_names(names), *score([*known("dev"), *known("test")]).figures()),
        lines=(*_halves(results), "", *novels(results), "", *confusion(results)),
    )


def figures(results: Sequence[Result]) -> list[Figure]:
    quotes = sum((result.quotes for result in results), Found())
    own, true = _all(results, "own"), _all(results, "true")
    graded = [(one.sure, one.right) for one in own if one.how]
    met = [sum(result.people[place] for result in results) for place in (0, 1)]
    return [
        _floor("quotations found, precision", quotes.precision, 0.96),
        _floor("quotations found, recall", quotes.recall, 0.99),
        _floor("speakers, own cast", _share(own), 0.75, PUBLISHED),
        _floor("speakers named beside the words, own cast", _share(_of(own, "Explicit")), 0.92),
        _floor("speakers, true cast given", _share(true), 0.80, GIVEN),
        Figure("expected calibration error, own cast", calibration(graded), target=0.05),
        _floor("the surest half, right, own cast", surest_half(graded), 0.93),
        _floor("major and intermediate people found", met[0] / max(1, met[1]), 0.97),
        _floor("aliases, B³ F1, mean of novels", _mean(results, lambda r: f1(*r.aliases)), 0.88),
        Figure(
            "people shown whom the corpus does not know, mean of novels",
            _mean(results, lambda r: float(r.unknown)),
            "a book",
            note="an upper bound of non-people (target 2): the corpus lists those who speak or are spoken of in speech",
        ),
    ]


def _names(names: Named) -> list[Figure]:
    where = f"LitBank's test passages, about 2,000 words each, read alone; {names.held} held, {names.people} known"
    return [
        Figure("names held for people, that are people's", names.right / max(1, names.held), note=where),
        Figure("names of people, that are held for people's", names.met / max(1, names.people), note=where),
    ]


def _floor(name: str, value: float, target: float, reference: str = "") -> Figure:
    return Figure(name, value, target=target, at_most=False, reference=reference)


def _all(results: Sequence[Result], which: str) -> list[Answer]:
    return list(chain.from_iterable(result.own if which == "own" else result.true for result in results))


def _of(answers: Sequence[Answer], kind: str) -> list[Answer]:
    return [one for one in answers if one.kind == kind]


def _share(answers: Sequence[Answer]) -> float:
    return sum(one.right for one in answers) / max(1, len(answers))


def _mean(results: Sequence[Result], of: Callable[[Result], float]) -> float:
    return sum(map(of, results)) / max(1, len(results))


def _halves(results: Sequence[Result]) -> list[str]:
    sides = [(half, [r for r in results if r.half == half]) for half in ("tune", "report")]
    return [*_head("half of the novels"), *(_row(name, some) for name, some in sides)]


def novels(results: Sequence[Result]) -> list[str]:
    return [*_head("novel"), *(_row(f"{titles()[r.slug]} ({r.half})", [r]) for r in results)]


def _head(first: str) -> list[str]:
    names = ["quotations", "found P", "found R", "own: all", *KINDS, "true: all", *KINDS, "people", "B³ F1", "unknown"]
    return [f"| {first} | " + " | ".join(names) + " |", "|---" + "|---:" * len(names) + "|"]


def _row(name: str, results: Sequence[Result]) -> str:
    quotes = sum((result.quotes for result in results), Found())
    cells = [f"{sum(len(r.own) for r in results)}", f"{quotes.precision:.3f}", f"{quotes.recall:.3f}"]
    for which in ("own", "true"):
        answers = _all(results, which)
        cells += [f"{_share(some):.3f}" for some in (answers, *(_of(answers, kind) for kind in KINDS))]
    cells.append(f"{sum(r.people[0] for r in results)} of {sum(r.people[1] for r in results)}")
    cells += [f"{_mean(results, lambda r: f1(*r.aliases)):.3f}", f"{_mean(results, lambda r: float(r.unknown)):.1f}"]
    return f"| {name} | " + " | ".join(cells) + " |"


def confusion(results: Sequence[Result]) -> list[str]:
    """Every wrong quotation of the tuning half by its kind of fault: the other half is not looked into."""
    tuned = [result for result in results if result.half == "tune"]
    own, true = (Counter(one.fault for one in _all(tuned, which) if not one.right) for which in ("own", "true"))
    number = max(1, len(_all(tuned, "own")))
    lines = ["| kind of fault, tuning half | own cast | share of all | true cast |", "|---|---:|---:|---:|"]
    kinds = sorted(own | true, key=lambda kind: (-own[kind], -true[kind], kind))
    return [*lines, *(f"| {kind} | {own[kind]} | {own[kind] / number:.3f} | {true[kind]} |" for kind in kinds)]
