"""A payoff that is told before its setup."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines, passages, scenes
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen


def find(seen: Seen) -> Iterator[Finding]:
    for line in lines(seen, "setup"):
        setups, payoffs = line.scenes("setup"), line.scenes("payoff")
        if setups and payoffs and payoffs[0] < setups[0]:
            points = [one for one in line.points if one.scene in (payoffs[0], setups[0])]
            yield Finding(
                evidence=passages(points),
                strength=0.85,
                subject=line.name,
                words={"name": line.name},
                numbers={"setup": setups[0], "payoff": payoffs[0]},
                scenes=scenes(points),
            )


CHECK = Check(
    id="payoff first",
    name="A payoff before its setup",
    family="setups and reveals",
    looks_at="A payoff that you marked in a scene told before the first scene of its setup.",
    method="Reads your marks in the order of telling. Common practice.",
    blind="What you did not mark.",
    reads=("marks",),
    find=find,
)
