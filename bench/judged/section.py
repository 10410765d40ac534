"""The judged questions as a section of the results."""

from collections import Counter
from collections.abc import Iterator, Sequence

from bench.judged.judgements import VERDICTS
from bench.judged.novels import GROUPS, chosen
from bench.judged.score import FIRST, Result, result, share_good
from bench.report import Figure, Section

ENOUGH = 0.7  # of the first ten


def measure(*, full: bool) -> Section:
    """The same novels in the short run and in the full one."""
    del full
    results = [result(novel, group) for group in GROUPS for novel in chosen(group)]
    return Section(
        title="The first questions of novels, judged",
        corpus=(
            f"{len(results)} novels by a rule written down first (`bench/judged`). The first "
            f"{FIRST} questions of each, all where fewer are asked, are judged against the text. What was asked of the "
            "report half has been read, and checks mended by it, so that these are no fresh figures: those are in "
            "`bench/history.md`, rounds 7, 12, 14 and 18. Questions that have no judgement yet are not in the share."
        ),
        figures=tuple(figure for group in GROUPS for figure in figures(group, results)),
        lines=tuple(lines(results)),
    )


def figures(group: str, results: Sequence[Result]) -> Iterator[Figure]:
    mine = [one for one in results if one.group == group]
    verdicts = sum((one.verdicts() for one in mine), Counter[str]())
    judged = verdicts.total() - verdicts[""]
    if judged:
        share = round(share_good(mine), 3)
        note = f"{judged} judged, {verdicts['']} not yet"
        yield Figure(f"questions judged good, {group}", share, "", ENOUGH, at_most=False, note=note)
    words = sum(one.words for one in mine)
    if words:
        often = round(10_000 * sum(one.asked for one in mine) / words, 2)
        yield Figure(f"questions asked, {group}", often, "per 10,000 words", 1, note=f"{words:,} words")


def lines(results: Sequence[Result]) -> Iterator[str]:
    """By novel and by check; no words of the novels."""
    yield f"| novel | group | words | asked | {' | '.join(VERDICTS)} | not yet judged |"
    yield "|---|---|---:|---:|" + "---:|" * (len(VERDICTS) + 1)
    for one in results:
        counted = one.verdicts()
        cells = " | ".join(str(counted[verdict]) for verdict in (*VERDICTS, ""))
        yield f"| {one.title} | {one.group} | {one.words:,} | {one.asked} | {cells} |"
    yield ""
    yield f"| check | {' | '.join(VERDICTS)} | not yet judged |"
    yield "|---|" + "---:|" * (len(VERDICTS) + 1)
    by_check: Counter[tuple[str, str]] = Counter(
        (question.check, judgement.verdict if judgement else "")
        for one in results
        for question, judgement in zip(one.first, one.judged, strict=True)
    )
    for check in sorted({check for check, _ in by_check}):
        yield f"| {check} | {' | '.join(str(by_check[check, verdict]) for verdict in (*VERDICTS, ''))} |"
