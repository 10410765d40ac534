"""A setup without a payoff."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines, passages, scenes
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen


def find(seen: Seen) -> Iterator[Finding]:
    for line in lines(seen, "setup"):
        if line.scenes("setup") and not line.scenes("payoff"):
            yield Finding(
                evidence=passages(line.points),
                strength=0.8,
                subject=line.name,
                words={"name": line.name},
                numbers={"scene": line.scenes("setup")[0]},
                scenes=scenes(line.points),
            )


CHECK = Check(
    id="setup open",
    name="A setup without a payoff",
    family="setups and reveals",
    looks_at="A setup that you marked, with no payoff marked.",
    method="Reads your marks and nothing else. Common practice.",
    blind="Setups that you did not mark; a payoff that is there and not marked.",
    reads=("marks",),
    find=find,
)
