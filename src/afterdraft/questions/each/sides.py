"""A lasting mark of somebody's body that is on the left in one place and on the right in another."""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sided.hurt_words import HURTS
from afterdraft.questions.sided.hurts import on_both
from afterdraft.questions.sided.kind_words import PLAIN_GOOD
from afterdraft.questions.sided.owners import SURE, Mark, owned_marks
from afterdraft.whole.traits import can_both_be

HEALS = 10  # scenes within which an injured arm is the same one
HEALS_WORDS = 10_000  # the same in words, where scenes are short; both chosen by hand
MOST = 4  # passages shown
_TRAITS = {"scar": "scar", "lame leg": "limp", "bad knee": "limp", "bad hip": "limp", "bad leg": "limp"}
_SAME = {"lame leg": "bad leg", "bad knee": "bad leg"}  # who limps on the left has no bad knee on the right
_FROM = {"bad leg": "injured leg", "bad hip": "injured leg", "bad shoulder": "injured arm"}

Marks = Sequence[tuple[Mark, float]]


def find(seen: Seen) -> Iterator[Finding]:
    if not seen.is_read:
        return
    by: defaultdict[tuple[str, str], list[tuple[Mark, float]]] = defaultdict(list)
    for mark, owner in owned_marks(seen):
        by[owner[0], _SAME.get(mark.said.kind, mark.said.kind)].append((mark, owner[1]))
    told: set[tuple[str, Span]] = set()
    for (person, kind), marks in by.items():
        hurts = by.get((person, _FROM.get(kind, "")), [])
        held = _healing(seen, kind, marks) if kind in HURTS else _lasting(seen, marks, hurts)
        differ = any(_differ(kind, one, other) for (one, _), (other, _) in combinations(held, 2))
        if differ and not _is_told_by_traits(seen, person, kind):
            found = _finding(seen, person, kind, held)
            if not told & {(person, span) for span in found.evidence}:  # a wrist is of the hand and of the arm
                told |= {(person, span) for span in found.evidence}
                yield found


def _lasting(seen: Seen, marks: Marks, hurts: Marks) -> Marks:
    """Without those that a hurt of that side, told shortly before, accounts for: who is shot in the right leg limps on
    it, whichever knee is bad."""
    fresh = [one for one, _ in hurts if one.said.fresh]
    return [
        (one, sure)
        for one, sure in marks
        if not any(
            hurt.said.side == one.said.side and hurt.span < one.span and _is_near(seen, hurt, one) for hurt in fresh
        )
    ]


def _healing(seen: Seen, kind: str, marks: Marks) -> Marks:
    """Of hurts that heal, the first that is told to be on a side on which none was got, and what tells of the other
    side within the time that it may be the same one."""
    for place, (one, sure) in enumerate(marks):
        since = [other for other in marks[:place] if _is_near(seen, other[0], one)]
        apart = [other for other, _ in since if not other.said.good and _differ("", other, one)]
        got = any(other.said.fresh and other.said.side == one.said.side for other, _ in since)
        if apart and not got and not one.said.fresh and not _is_on_both(seen, kind, apart[0], one):
            return [*since, (one, sure)]
    return ()


def _is_on_both(seen: Seen, kind: str, one: Mark, other: Mark) -> bool:
    between = seen.texts[one.span.scene : other.span.scene + 1]
    return any(on_both(kind, paragraph) for scene in between for paragraph in scene)


def _is_near(seen: Seen, one: Mark, other: Mark) -> bool:
    between = seen.texts[one.span.scene : other.span.scene]
    words = sum(len(paragraph.split()) for scene in between for paragraph in scene)
    return other.span.scene - one.span.scene <= HEALS or words <= HEALS_WORDS


def _differ(kind: str, one: Mark, other: Mark) -> bool:
    """Whether both cannot be so; 'good' of two hands in turn can."""
    if one.said.side == other.said.side or one.span == other.span or (one.said.weak and other.said.weak):
        return False
    return not (one.said.good and other.said.good) or kind in PLAIN_GOOD


def _is_told_by_traits(seen: Seen, person: str, kind: str) -> bool:
    """Whether the check of looks asks about it."""
    trait = next((trait for begins, trait in _TRAITS.items() if kind.startswith(begins)), None)
    said = [one for one in seen.traits if (one.person, one.trait) == (person, trait) and one.sure >= SURE]
    return any(not can_both_be(one.trait, one.value, other.value) for one, other in combinations(said, 2))


def _finding(seen: Seen, person: str, kind: str, marks: Marks) -> Finding:
    """The passages of the side told less often, and as many of the other."""
    sides = {side: [one for one in marks if one[0].said.side == side] for side in ("left", "right")}
    few, many = sorted(map(_telling, sides.values()), key=len)
    few = few[: MOST // 2]
    shown = sorted([*few, *many[: MOST - len(few)]], key=lambda one: one[0].span)
    kinds = {one.said.kind for one, _ in shown}
    kind = kinds.pop() if len(kinds) == 1 else kind
    name, first = _name(seen, person), shown[0][0].said.side
    other = next(one for one, _ in shown if one.said.side != first)
    return Finding(
        evidence=tuple(dict.fromkeys(one.span for one, _ in shown)),
        strength=round(0.3 + 0.6 * min(sure for _, sure in shown), 3),
        subject=f"side of the {kind} of {name.lower()}",
        words={"name": name, "mark": kind, "first": first, "other": other.said.side},
        numbers={"scene": float(other.span.scene)},
        people=() if person.startswith("my ") else (person,),
    )


def _telling(marks: Marks) -> Marks:
    """Those that tell it outright, where there are any."""
    return [one for one in marks if not one[0].said.weak] or marks


def _name(seen: Seen, person: str) -> str:
    return f"the narrator’s {person.removeprefix('my ')}" if person.startswith("my ") else seen.name(person)


CHECK = Check(
    id="side",
    name="A mark that changes sides",
    family="continuity",
    looks_at="What somebody has on one side for good, and which is on the left in one place and on the right in "
    "another: a deaf ear, a blind or a weak eye, a hand short of fingers, a lost arm, a wooden or a lame leg, a bad "
    "knee, hip or shoulder, a torn ear, the side that a stroke has weakened, a signet or a wedding ring, an earring, a "
    "watch, a monocle, a gold tooth, a tattoo, a scar or a mole, a pale streak in the hair, a leg in a cast. "
    "Within ten scenes, or ten thousand words where scenes are short, also hurts that heal: a cut, burned or "
    "bandaged hand, an arm in a sling, a sprained ankle, a black eye.",
    method="Words for the mark, and the nearest ‘left hand’, ‘the left’ or ‘the other’ of the same sentence, or of the "
    "one before where it goes on with ‘it’ or ‘the other’; of a good ear, eye or hand, the other one is meant. "
    "How a hurt came and how it is since are told apart: two hurts can befall two hands, but what is bandaged "
    "later is what was hurt. What is only done or felt on a side (‘he rubbed his left knee’) counts of somebody "
    "who is told elsewhere to have the mark. It is given to whoever is named or most likely meant by ‘his’ or "
    "‘her’, surer than three in four, or, of a ‘he’ who is not known or was named right before, to the one person"
    " of the book who is told to have such a mark; ‘my mother’ is one person in a book told by an I. The rules "
    "are our own.",
    blind="Marks told over sentences that do not lean on each other. Who has two moles or two tattoos is asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=4,
)
