"""A thread that is opened and never closed."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines, passages, scenes
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen


def find(seen: Seen) -> Iterator[Finding]:
    for line in lines(seen, "thread"):
        if line.scenes("opens") and not line.scenes("closes"):
            last = line.points[-1]
            yield Finding(
                evidence=passages([last]),
                strength=0.75,
                subject=line.name,
                words={"name": line.name},
                numbers={"last": last.scene},
                scenes=scenes([line.points[0], last]),
            )


CHECK = Check(
    id="thread open",
    name="A thread that is not closed",
    family="cause and thread",
    looks_at="A thread that you marked as opened, with no scene that closes it.",
    method="Reads your marks and nothing else. Common practice.",
    blind="Threads that are left open on purpose; a close that you did not mark.",
    reads=("marks",),
    find=find,
)
