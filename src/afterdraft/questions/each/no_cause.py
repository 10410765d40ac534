"""A run of scenes none of which follows from another."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen

RUN = 5  # scenes; chosen by hand
MARKED = 0.33  # share of scenes with a link, below which links are only begun, likewise


def find(seen: Seen) -> Iterator[Finding]:
    follows = seen.marks.follows
    if len({scene for pair in follows for scene in pair}) < max(1, MARKED * len(seen.texts)):
        return
    best = (0, 0)
    start = 0
    for number in seen.scenes:
        sources = [source for scene, source in follows if scene == number and source >= start]
        start = max([start, *(source + 1 for source in sources)])
        best = max(best, (start, number + 1), key=lambda run: run[1] - run[0])
    if best[1] - best[0] >= RUN:
        yield Finding(
            evidence=(),
            strength=0.55,
            subject=" ".join(seen.texts[best[0]][0].split()[:12]) if seen.texts[best[0]] else "",
            numbers={"scenes": best[1] - best[0], "first": best[0], "last": best[1] - 1},
            scenes=tuple(range(*best)),
        )


CHECK = Check(
    id="no cause",
    name="A run of scenes without cause",
    family="cause and thread",
    looks_at="The longest run of five scenes or more none of which follows from another of the run.",
    method="Reads what you marked as following from what, once a third of the scenes have a link. Common practice.",
    blind="Links that you did not mark.",
    reads=("words", "marks"),
    find=find,
)
