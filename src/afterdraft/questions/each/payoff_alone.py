"""A payoff without a setup."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines, passages, scenes
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen


def find(seen: Seen) -> Iterator[Finding]:
    for line in lines(seen, "setup"):
        if line.scenes("payoff") and not line.scenes("setup"):
            yield Finding(
                evidence=passages(line.points),
                strength=0.8,
                subject=line.name,
                words={"name": line.name},
                numbers={"scene": line.scenes("payoff")[0]},
                scenes=scenes(line.points),
            )


CHECK = Check(
    id="payoff alone",
    name="A payoff without a setup",
    family="setups and reveals",
    looks_at="A payoff that you marked, with no setup marked.",
    method="Reads your marks and nothing else. Common practice.",
    blind="Payoffs that you did not mark; a setup that is there and not marked.",
    reads=("marks",),
    find=find,
)
