"""Something that somebody learns twice."""

from collections import defaultdict
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.lines import lines, passages, scenes
from afterdraft.questions.marks import Point
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen


def find(seen: Seen) -> Iterator[Finding]:
    names = {one.id: one.name for one in seen.given.people}
    for line in lines(seen, "reveal"):
        by: defaultdict[str | None, list[Point]] = defaultdict(list)
        for one in line.points:
            by[one.person].append(one)
        for person, points in by.items():
            if len({one.scene for one in points}) > 1:
                yield Finding(
                    evidence=passages(points),
                    strength=0.75,
                    subject=f"{line.name}: {names.get(person or '', 'the reader').lower()}",
                    words={"name": line.name, "who": names.get(person or "", "the reader")},
                    numbers={"first": points[0].scene, "again": points[1].scene},
                    people=(person,) if person else (),
                    scenes=scenes(points),
                )


CHECK = Check(
    id="learned twice",
    name="Learned twice",
    family="setups and reveals",
    looks_at="A reveal that the same person, or the reader, learns in two scenes.",
    method="Reads your marks of who learns what where. Common practice.",
    blind="What you did not mark. Somebody who forgets, or is told again on purpose.",
    reads=("marks", "cast"),
    find=find,
)
