"""A name, somebody's or a street's, that is another one for a while."""

from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.drifting import NEXT, drifts
from afterdraft.questions.drifting_kin import Kin
from afterdraft.questions.drifting_streets import RARE, streets
from afterdraft.questions.drifting_surnames import surnames
from afterdraft.questions.drifting_titles import titled
from afterdraft.questions.names_written import FEW, Names
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen

ALIKE, TIED = 0.7, 0.75  # strength


def find(seen: Seen) -> Iterator[Finding]:
    asked: set[str] = set()
    names = Names(seen)
    for one in (
        *drifts(names),
        *streets(seen),
        *surnames(names),
        *titled(names),
        *Kin(names).drifts(),
    ):
        usual, other = one.usual.quote, one.other[0].quote
        if other in asked:
            continue
        asked.add(other)
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
    "name, part or office stands before, or somebody's wife, child or dog of another name: ‘Mr Lamb’, and ‘Mr Lark’ "
    "for a page; ‘Lamb, the mate’ and ‘the mate, Harker’; ‘his wife Maud’, and ‘Gerald,’ Miriam said. A "
    "street that is another kind of street once or twice: ‘Sprat Lane’, and ‘Sprat Street’.",
    method="Takes names behind one title or given name, beside one part, or by themselves where somebody does "
    "something. There is one such name only that may be meant, never near the other one, which is not brought in or "
    "explained (‘a Mr Lark’, ‘her uncle’), and it is no chief person's, no "
    "king and no plural. Behind a title or given name they begin with "
    "two letters alike or look alike; or with one, and their paragraphs share more seldom words than chance would have "
    "(Poisson's numbers); by themselves, one stands up to "
    f"{NEXT} scenes before the other; or one hardly stands, and a rare word is in one sentence with both; or one is "
    "told to be somebody's wife, husband, child or dog, the other begins with the same letter or looks alike, and that "
    "somebody is near both. Likeness is Jaro’s (1989). Or ‘the Prior’ is there by himself, and has two names. "
    "Who is called by the given name has another surname once or twice, like or unlike. A street of "
    f"such a name has two kinds in the book, of which one stands {RARE} times at most. The "
    "rules are our own.",
    blind="Names that are quite unlike, or stand in one paragraph. A name that drifts for several chapters. Two people "
    "who are named alike, of whom the second comes once and without a word about it, are asked about.",
    reads=("words",),
    find=find,
    recipe=7,
)
