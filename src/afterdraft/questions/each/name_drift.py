"""Somebody's name that is another one for a while."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.drifting import FEW, NEAR, NEXT, drifts
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen

ALIKE, TIED = 0.6, 0.75  # strength


def find(seen: Seen) -> Iterator[Finding]:
    for one in drifts(seen):
        usual, other = one.usual.quote, one.other[0].quote
        yield Finding(
            evidence=tuple(dict.fromkeys(seen.sentence(span) for span in (one.usual, *one.other))),
            strength=TIED if one.tied else ALIKE,
            subject=f"{usual} or {other}",
            words={"usual": usual, "other": other},
            numbers=dict(zip(("usual", "other"), one.times, strict=True)),
        )


CHECK = Check(
    id="name drift",
    name="A name that drifts",
    family="cast",
    looks_at=f"A name that stands {FEW} times at most, in one scene or two, where another of the same title, given "
    "name or part stands before: ‘Mr Lamb’, and ‘Mr Lark’ for a page; ‘Lamb, the mate’ and ‘the mate, Harker’.",
    method="Takes names behind one title or given name, beside one part, or by themselves where somebody does "
    "something. There is one such name only that may be meant, never near the other one, which is not brought in or "
    "explained (‘a Mr Lark’, ‘her uncle’). Behind a title or a given name, and by themselves, they begin alike or look "
    f"alike, and the usual one, which is no chief person's, stands up to {NEAR} scenes before ({NEXT} by itself, or "
    "where only the first letter is the same), or, where it hardly stands, a rare word is in one sentence with both. "
    "Likeness is Jaro’s (1989); the rule is our own.",
    blind="Names that are quite unlike, or stand in one paragraph. A name that drifts for several chapters. Two people "
    "who are named alike, of whom the second comes once and without a word about it, are asked about.",
    reads=("words",),
    find=find,
)
