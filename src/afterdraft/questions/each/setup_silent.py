"""A setup of which nothing is heard for long."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines, longest_silence, passages, scenes
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen

LONG = 0.5  # share of the book's scenes; chosen on the demonstration book
LEAST = 8  # scenes, in a short book


def find(seen: Seen) -> Iterator[Finding]:
    long = max(LEAST, LONG * len(seen.texts))
    for line in lines(seen, "setup"):
        silence = longest_silence(line.points)
        if silence and (between := silence[1].scene - silence[0].scene - 1) + 1 >= long:
            yield Finding(
                evidence=passages(silence),
                strength=min(0.75, 0.35 + 0.5 * between / len(seen.texts)),
                subject=line.name,
                words={"name": line.name},
                numbers={"between": between},
                scenes=scenes(silence),
            )


CHECK = Check(
    id="setup silent",
    name="A setup not touched for long",
    family="setups and reveals",
    looks_at="Half the book's scenes between two marks of one setup.",
    method="Counts scenes between your marks of setup, return and payoff. Common practice.",
    blind="Returns that you did not mark.",
    reads=("words", "marks"),
    find=find,
)
