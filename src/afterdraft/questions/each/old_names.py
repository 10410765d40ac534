"""An earlier name that still stands in the text after a renaming."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.marks import Renamed
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen

FAMILY = 4  # letters from which a name with an s may be meant; 'Ros' and 'Ross' are two names
SHOWN = 3  # passages of one scene
STRENGTH = 0.96  # she said herself that the name is given up


def find(seen: Seen) -> Iterator[Finding]:
    kept = [name for one in seen.marks.renamed for name in (one.name, *one.also)]
    for one in seen.marks.renamed:
        for former in one.former:
            still = _still(seen, former, [name for name in kept if former in name and name != former])
            if former not in kept and len(still) <= _times(seen, one):
                for number in sorted({span.scene for span in still}):
                    yield _finding(seen, one, former, [span for span in still if span.scene == number])


def _still(seen: Seen, former: str, longer: Sequence[str]) -> list[Span]:
    """Wherever it stands, but for where it is part of a longer name that somebody still has."""
    whole = [_standing(name) for name in sorted(longer, key=len, reverse=True)]
    pattern = re.compile("|".join([*whole, f"(?P<former>{_standing(former)})"]))
    return [
        seen.span(number, place, *match.span())
        for number, scene in enumerate(seen.texts)
        for place, text in enumerate(scene)
        for match in pattern.finditer(text)
        if match["former"]
    ]


def _times(seen: Seen, one: Renamed) -> int:
    """How often the names that it has now stand in the book: fewer times than the earlier one, and the renaming is
    still to be done."""
    now = re.compile("|".join(map(_standing, (one.name, *one.also))))
    return sum(len(now.findall(text)) for scene in seen.texts for text in scene)


def _standing(name: str) -> str:
    """A pattern of it as words of their own, whichever apostrophe is typed; of a family too ('the Alans')."""
    typed = "[’']".join(re.escape(piece) for piece in re.split("[’']", name))
    family = "s?" if len(name) >= FAMILY else ""
    return rf"(?<!\w){typed}{family}(?!\w)"


def _finding(seen: Seen, one: Renamed, former: str, still: Sequence[Span]) -> Finding:
    return Finding(
        evidence=tuple(dict.fromkeys(seen.sentence(span) for span in still))[:SHOWN],
        strength=STRENGTH,
        subject=former,
        words={"former": former, "name": one.name},
        numbers={"times": len(still)},
    )


CHECK = Check(
    id="old name",
    name="An earlier name that still stands",
    family="accidents",
    looks_at="A name that you wrote among the earlier names of somebody, or of a place, and that still stands in the "
    "text.",
    method="Looks for the name as you wrote it, capital letters too, one question a scene. Not where it is part of a "
    "longer name that is still in use, and not while it stands more often than the names that took its place: then "
    "the renaming is still ahead. Common practice of copy editors.",
    blind="Other forms of the earlier name that you did not write down. Somebody who is called by the earlier name on "
    "purpose; another who has it rightly.",
    reads=("words", "marks"),
    find=find,
)
