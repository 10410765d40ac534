"""A lasting mark of somebody's body that is on the left in one place and on the right in another."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.sided import PASSING, PLAIN_GOOD, Sided, sided
from afterdraft.questions.whose import Whose
from afterdraft.reading.facts import Mention
from afterdraft.whole.book import genders
from afterdraft.whole.pronoun_cautions import Owner
from afterdraft.whole.traits import can_both_be

SURE = 0.75  # of whose it is, as of traits
KIN = 0.85  # the same, of 'my mother' who acted last; chosen by hand
ALONE = 0.75  # of a 'he' who is not known, where one man of the book alone has such a mark; chosen by hand
RARE = frozenset(("deaf ear", "blind eye", "maimed hand", "lost arm", "false leg"))  # one in a book, mostly
HEALS = 10  # scenes within which an arm in a sling is the same one
MOST = 4  # passages shown
DOUBTED = 0.6  # below it, who is meant may well be another who is near; chosen by hand
BACK = 2  # paragraphs before, in which such a one is named
_BETWEEN = re.compile(r"[’']?s? ?(?:\w+,? ){0,2}$")  # of an owner and 'left'
_SEES = re.compile(
    r"\W*(?:had |could )?(?:saw|see|watched|noticed|looked at|knew|remembered|took|held|touched|heard)\b"
)
_TRAITS = {"scar": "scar", "lame leg": "limp", "bad knee": "limp", "bad hip": "limp"}


@dataclass(frozen=True, slots=True)
class _Mark:
    said: Sided
    span: Span  # its sentence
    owner: Owner | None
    gender: str  # of the words for whose it is
    near: frozenset[str] = frozenset()  # people who are named there or right before


def find(seen: Seen) -> Iterator[Finding]:
    if not seen.is_read:
        return
    by: defaultdict[tuple[str, str], list[tuple[_Mark, float]]] = defaultdict(list)
    for mark, owner in _owned(seen, list(_marks(seen))):
        by[owner[0], mark.said.kind].append((mark, owner[1]))
    for (person, kind), marks in by.items():
        differ = any(_differ(kind, one, other) for (one, _), (other, _) in combinations(marks, 2))
        if differ and not _is_told_by_traits(seen, person, kind):
            yield _finding(seen, person, kind, marks)


def _marks(seen: Seen) -> Iterator[_Mark]:
    whose = Whose(seen)
    for number in seen.scenes:
        for place, text in enumerate(seen.texts[number]):
            for said in sided(text):
                span = seen.span(number, place, *sentence(text, said.start, said.end))
                found = _mention(seen, whose, span, said)
                if found is None:
                    yield _Mark(said, span, None, "")
                    continue
                mentions = seen.facts[number].mentions
                kin = _kin(mentions, found)
                owner = (kin, KIN) if kin else whose.settled(number, found)
                yield _Mark(said, span, owner, mentions[found].gender, _near(seen, whose, number, found))


def _kin(mentions: Sequence[Mention], place: int) -> str | None:
    """'My mother', where an I tells of her and she is who acted last: she may have no name in the whole book."""
    one = mentions[place]
    for other in reversed(mentions[: place + 1]):
        if other.paragraph != one.paragraph or other.spoken or one.kind not in ("role", "pronoun"):
            return None
        if other.subject and other.gender == one.gender and other.kind != "pronoun":
            return other.form if other.kind == "role" and other.form.startswith("my ") else None
    return None


def _near(seen: Seen, whose: Whose, number: int, place: int) -> frozenset[str]:
    paragraph = seen.facts[number].mentions[place].paragraph
    return frozenset(
        owner[0]
        for one, owner in zip(seen.facts[number].mentions, whose.owners(number), strict=True)
        if owner and one.kind in ("name", "role") and paragraph - BACK <= one.paragraph <= paragraph
    )


def _mention(seen: Seen, whose: Whose, span: Span, said: Sided) -> int | None:
    """Who has it: by 'his' right before, else who does or is something in the sentence, else in the one before."""
    text, mentions = seen.texts[span.scene][span.paragraph], seen.facts[span.scene].mentions
    here = [n for n, one in enumerate(mentions) if one.paragraph == span.paragraph]
    owner = [n for n in here if mentions[n].end <= said.at and _BETWEEN.fullmatch(text[mentions[n].end : said.at])]
    if owner and (mentions[owner[-1]].form in ("his", "her", "my") or "’s" in text or "'s" in text):
        known = whose.owners(span.scene)[owner[-1]]
        if known or not mentions[owner[-1]].spoken:
            return owner[-1]
    within = [n for n in here if span.start <= mentions[n].start < span.end and not _is_looking(text, mentions[n])]
    acting = [n for n in within if mentions[n].subject]
    owners = whose.owners(span.scene)
    before = [n for n in acting if mentions[n].start < said.at and (owners[n] or mentions[n].kind != "name")]
    owned = [n for n in within if mentions[n].end <= said.at and owners[n]]
    if before or owned or acting:
        return (before or owned[-1:] or acting[:1])[-1]
    return within[0] if within else max((n for n in here if mentions[n].start < span.start), default=None)


def _is_looking(text: str, one: Mention) -> bool:
    """'She saw the short finger': not hers."""
    return one.subject and bool(_SEES.match(text, one.end))


def _owned(seen: Seen, marks: Sequence[_Mark]) -> Iterator[tuple[_Mark, Owner]]:
    """Those whose owner is sure; and 'he' who has what one man of the book alone is told to have, who may not have been
    named yet."""
    sure = {one.said.kind: set[str]() for one in marks}
    for one in marks:
        if one.owner and one.owner[1] >= SURE:
            sure[one.said.kind].add(one.owner[0])
    known = genders(seen.book.cast.people)
    for one in marks:
        if one.owner and one.owner[1] >= SURE:
            yield one, one.owner
        elif one.said.kind in RARE and len(sure[one.said.kind]) == 1 and one.gender:
            (only,) = sure[one.said.kind]
            doubted = one.owner is None or one.owner[0] == only or (one.owner[1] < DOUBTED and only in one.near)
            if known.get(only) == one.gender and doubted:
                yield one, (only, ALONE)


def _differ(kind: str, one: _Mark, other: _Mark) -> bool:
    """Whether both cannot be so; 'good' of two hands in turn can."""
    if one.said.side == other.said.side or one.span == other.span:
        return False
    if one.said.good and other.said.good and kind not in PLAIN_GOOD:
        return False
    return kind not in PASSING or abs(one.span.scene - other.span.scene) <= HEALS


def _is_told_by_traits(seen: Seen, person: str, kind: str) -> bool:
    """Whether the check of looks asks about it."""
    trait = next((trait for begins, trait in _TRAITS.items() if kind.startswith(begins)), None)
    said = [one for one in seen.traits if (one.person, one.trait) == (person, trait) and one.sure >= SURE]
    return any(not can_both_be(one.trait, one.value, other.value) for one, other in combinations(said, 2))


def _finding(seen: Seen, person: str, kind: str, marks: Sequence[tuple[_Mark, float]]) -> Finding:
    """The passages of the side told less often, and as many of the other."""
    sides = {side: [one for one in marks if one[0].said.side == side] for side in ("left", "right")}
    few, many = sorted(sides.values(), key=len)
    few = few[: MOST // 2]
    shown = sorted([*few, *many[: MOST - len(few)]], key=lambda one: one[0].span)
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


def _name(seen: Seen, person: str) -> str:
    return f"the narrator’s {person.removeprefix('my ')}" if person.startswith("my ") else seen.name(person)


CHECK = Check(
    id="side",
    name="A mark that changes sides",
    family="continuity",
    looks_at="What somebody has on one side for good, and which is on the left in one place and on the right in "
    "another: a deaf ear, a blind eye, a hand short of fingers, a lost arm, a wooden or a lame leg, a bad knee, a "
    "signet ring, an earring, a tattoo, a scar or a mole, a leg in a cast. Within ten scenes also an arm in a cast "
    "and a bandaged hand.",
    method="Words for the mark, and the nearest ‘left hand’, ‘the left’ or ‘the other’ of the same sentence, or of "
    "the one before where it goes on with ‘it’ or ‘the other’; of a good ear, eye or hand, the other one is meant. "
    "It is given to whoever is named or most likely meant by ‘his’ or ‘her’, surer than three in four, or, of a "
    "‘he’ who is not known, to the one man of the book who is told to have such a mark; ‘my mother’ is one person "
    "in a book told by an I. The rules are our own.",
    blind="Marks told over sentences that do not lean on each other, and what is only acted (‘he turned his right "
    "ear to her’). Who has two moles or two tattoos is asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=3,
)
