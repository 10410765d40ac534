"""The bench of dates and story time as a section of the results."""

import time
from collections.abc import Iterator, Mapping, Sequence

from afterdraft.manuscript.words import count
from afterdraft.reading.times import times
from afterdraft.whole.story_time import story_time
from bench.report import Figure, Section
from bench.time.books import DRACULA, book, marked, parts
from bench.time.places import place_score
from bench.time.score import Answer, answers, entries, in_order


def measure(*, full: bool) -> Section:
    halves, some = parts(), entries()
    found = {slug: answers(slug) for slug in marked("mentions")}
    half = {
        part: [one for slug in found if halves[book(slug).title] == part for one in found[slug]]
        for part in ("tune", "report")
    }
    reading, whole = _time()
    test, dev = place_score("test"), place_score("dev")
    return Section(
        title="Dates and story time",
        corpus=(
            "Marked dates of six novels, dated entries of a seventh; halves by the SHA-256 of titles, written down "
            "first (`history.md`). All marks had been seen as a list when the grammar was written: the halves say what "
            "was looked into for mending, not what is unseen. One novel (The Thirty-Nine Steps) never prints its year."
        ),
        figures=(
            Figure(
                "dated entries read with their day",
                _share([one.said == one.wanted for one in some]),
                target=1,
                at_most=False,
                note=f"{len(some)} entries",
            ),
            Figure("pairs of entries in their true order", in_order(some), target=1, at_most=False),
            Figure(
                "marked dates in their normal form, as printed, report half",
                _share([one.right for one in half["report"]]),
            ),
            Figure(
                "the same, with the year that the rest of the book tells", _share([one.whole for one in half["report"]])
            ),
            Figure("marked dates as printed, tuning half", _share([one.right for one in half["tune"]])),
            Figure("the same, with the year", _share([one.whole for one in half["tune"]])),
            Figure(
                "names of places: precision, LitBank test passages", test.precision, note=f"{test.known} marked names"
            ),
            Figure("names of places: recall, LitBank test passages", test.recall),
            Figure("names of places: precision, LitBank dev passages", dev.precision),
            Figure("names of places: recall, LitBank dev passages", dev.recall),
            Figure("reading times, 120,000 words", reading, unit="s", target=1),
            Figure("the network of a novel of 85 scenes", whole, unit="s"),
        ),
        lines=tuple(_table(found, halves)),
    )


def _share(right: Sequence[bool]) -> float:
    return sum(right) / max(1, len(right))


def _time() -> tuple[float, float]:
    """Seconds for times of 120,000 words, and for the story time of the same book."""
    of = book(DRACULA)
    paragraphs = [text for scene in of.texts for text in scene]
    began = time.process_time()
    for text in paragraphs:
        times(text, 0)
    read = time.process_time()
    story_time(of.scenes)
    done = time.process_time()
    return (read - began) / sum(map(count, paragraphs)) * 120_000, done - read


def _table(found: dict[str, list[Answer]], halves: Mapping[str, str]) -> Iterator[str]:
    yield "| novel | half | marked dates | found | as printed | with the year |"
    yield "|---|---|---:|---:|---:|---:|"
    for slug, some in found.items():
        title = book(slug).title
        yield (
            f"| {title} | {halves[title]} | {len(some)} | {sum(bool(one.said) for one in some)} "
            f"| {sum(one.right for one in some)} | {sum(one.whole for one in some)} |"
        )
