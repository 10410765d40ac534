"""What somebody leaves a scene with, against what they come into the next with."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.marks import Carried
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.reading.valence import valence

DAYS = 4  # of story time, up to which little lies between; chosen on the demonstration book
SCENES = 4  # apart in telling, likewise
APART = 0.4  # between how glad or sorry the two fields sound, of -1 to 1, likewise
_WORD = re.compile(r"[^\W\d_]{4,}")


def find(seen: Seen) -> Iterator[Finding]:
    names = {one.id: one.name for one in seen.given.people}
    last: dict[str, Carried] = {}
    for one in seen.marks.carried:
        before = last.get(one.person)
        if before and _differs(before, one) and _is_soon(seen, before.scene, one.scene):
            yield Finding(
                evidence=(),
                strength=0.5,
                subject=f"{names.get(one.person, '').lower()}: {before.leaves} / {one.comes_in}",
                words={"name": names.get(one.person, ""), "leaves": before.leaves, "comes": one.comes_in},
                people=(one.person,),
                scenes=(before.scene, one.scene),
            )
        if one.leaves:
            last[one.person] = one
        elif one.comes_in:
            last.pop(one.person, None)


def _differs(before: Carried, one: Carried) -> bool:
    """Whether what is written of the two scenes has nothing in common, and one sounds glad and the other sorry."""
    if one.scene <= before.scene or not one.comes_in or _words(before.leaves) & _words(one.comes_in):
        return False
    leaves, comes = valence(before.leaves), valence(one.comes_in)
    return leaves * comes < 0 and abs(leaves - comes) >= APART


def _is_soon(seen: Seen, first: int, second: int) -> bool:
    if second - first > SCENES:
        return False
    if not seen.is_read:
        return True
    least = seen.story.scenes[second].days[0], seen.story.scenes[first].days[1]
    return least[0] is None or least[1] is None or least[0] - least[1] <= DAYS


def _words(text: str) -> set[str]:
    return {word.lower() for word in _WORD.findall(text)}


CHECK = Check(
    id="carried",
    name="Leaves with, comes in with",
    family="cause and thread",
    looks_at="What you wrote that somebody leaves a scene with, and what you wrote that they come into the next with, "
    "where little time lies between and one sounds glad, the other sorry.",
    method="Compares the longer words of the two fields, up to four scenes and four days apart. The rule is our own.",
    blind="The same thing in other words is asked about. What you did not write.",
    reads=("time", "marks"),
    find=find,
)
