"""A thread of which nothing is heard for long."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines, longest_silence, passages, scenes
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen

LONG = 0.4  # share of the book's scenes; chosen on the demonstration book
LEAST = 8  # scenes, in a short book


def find(seen: Seen) -> Iterator[Finding]:
    long = max(LEAST, LONG * len(seen.texts))
    for line in lines(seen, "thread"):
        silence = longest_silence(line.points)
        if silence and (between := silence[1].scene - silence[0].scene - 1) + 1 >= long:
            yield Finding(
                evidence=passages(silence),
                strength=min(0.8, 0.4 + 0.5 * between / len(seen.texts)),
                subject=line.name,
                words={"name": line.name},
                numbers={"between": between, "from": silence[0].scene, "to": silence[1].scene},
                scenes=scenes(silence),
            )


CHECK = Check(
    id="thread silent",
    name="A thread silent for long",
    family="cause and thread",
    looks_at="Two fifths of the book's scenes between two marks of one thread.",
    method="Counts scenes between your marks. Common practice.",
    blind="Scenes that carry the thread and are not marked.",
    reads=("words", "marks"),
    find=find,
)
