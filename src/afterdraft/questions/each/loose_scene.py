"""A scene that hangs on nothing: it follows from none, none follows from it, and it carries no line."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen

MARKED = 0.33  # share of scenes with a link, below which links are only begun; chosen by hand


def find(seen: Seen) -> Iterator[Finding]:
    linked = {scene for pair in seen.marks.follows for scene in pair}
    if not linked or len(linked) < MARKED * len(seen.texts):
        return
    carried = {point.scene for line in seen.marks.lines for point in line.points}
    for number in seen.scenes[1:]:
        if number not in linked | carried | seen.marks.set_aside and seen.texts[number]:
            yield Finding(
                evidence=(), strength=0.6, subject=" ".join(seen.texts[number][0].split()[:12]), scenes=(number,)
            )


CHECK = Check(
    id="loose scene",
    name="A scene that hangs on nothing",
    family="cause and thread",
    looks_at="A scene that follows from none, from which none follows, and that carries no thread, setup or reveal.",
    method="Reads your marks, once a third of the scenes have a link. The first scene is let be. Common practice.",
    blind="Links and threads that you did not mark.",
    reads=("words", "marks"),
    find=find,
)
