"""Who has each mark of a body that a book tells of, as far as that is known."""

import re
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.sided.hurt_words import HURTS
from afterdraft.questions.sided.reading import acted_in, sided
from afterdraft.questions.sided.said import Sided
from afterdraft.questions.whose import Whose
from afterdraft.reading.facts import Mention
from afterdraft.whole.book import genders
from afterdraft.whole.pronoun_cautions import Owner

SURE = 0.75  # of whose it is, as of traits
KIN = 0.85  # the same, of 'my mother' who acted last; chosen by hand
ALONE = 0.75  # of a 'he' who is not known, where one man of the book alone has such a mark; chosen by hand
RARE = frozenset(("deaf ear", "blind eye", "maimed hand", "lost arm", "false leg"))  # one in a book, mostly
DOUBTED = 0.6  # below it, who is meant may well be another who is near; chosen by hand
BACK = 2  # paragraphs before, in which such a one is named
_BETWEEN = re.compile(r"[’']?s? ?(?:\w+,? ){0,2}$")  # of an owner and 'left'
_SEES = re.compile(
    r"\W*(?:had |could |would )?(?:(?:saw|see|watched|noticed|looked at|knew|remembered|heard|nodded at|pointed (?:at"
    r"|to)|stared at|glanced at|(?:went|came|moved) (?:\w+ )?(?:round )?to|(?:bent|leaned|leant) (?:\w+ )?to"
    r"|(?:said|spoke|shouted|whispered|bawled|murmured|hissed)\W[^.]{0,30}\binto|(?:unwound|dressed|bandaged|examined"
    r"|inspected))\b|(?:took|held|touched)(?= (?:his|her|him|[A-Z]\w+[’']s|the \w+[’']s)\b))"
)


Have = Mapping[tuple[str, str], int]  # by kind and person


@dataclass(frozen=True, slots=True)
class Mark:
    said: Sided
    span: Span  # its sentence
    owner: Owner | None
    gender: str  # of the words for whose it is
    near: frozenset[str] = frozenset()  # people who are named there or right before
    nearest: str = ""  # who of them was named last, of that gender


def owned_marks(seen: Seen) -> Iterator[tuple[Mark, Owner]]:
    """Those whose owner is sure; and 'he' who has what one man of the book alone is told to have, who may not have been
    named yet, or was named right before."""
    marks, known = list(_marks(seen)), genders(seen.book.cast.people)
    have = _having(marks)
    for one in marks:
        if _is_nearest(one, have):
            yield one, (one.nearest, ALONE)
        elif one.owner and one.owner[1] >= SURE:
            yield one, one.owner
        elif (only := _only(one, have)) and known.get(only) == one.gender:
            yield one, (only, ALONE)


def _having(marks: Sequence[Mark]) -> Have:
    """How often each person is told to have each kind; of a kind of which only 'the good one' is told, by that."""
    sure = [(one.said, one.owner[0]) for one in marks if one.owner and one.owner[1] >= SURE and not one.said.weak]
    outright = {said.kind for said, _ in sure if not said.good}
    return Counter((said.kind, person) for said, person in sure if not said.good or said.kind not in outright)


def _only(one: Mark, have: Have) -> str:
    """Who alone is told to have it, where that may be the one meant."""
    others = {person for kind, person in have if kind == one.said.kind}
    if one.said.weak or len(others) != 1 or one.said.kind not in RARE | HURTS.keys():
        return ""
    (only,) = others
    doubted = one.owner is None or one.owner[0] == only or (one.owner[1] < DOUBTED and only in one.near)
    return only if doubted else ""


def _is_nearest(one: Mark, have: Have) -> bool:
    """Whether 'he' is rather the one named right before, who is told elsewhere to have it, than who is told nowhere
    else to."""
    kind, person = one.said.kind, one.owner[0] if one.owner else ""
    if kind not in RARE or not one.nearest or one.nearest == person or one.said.good or one.said.weak:
        return False
    return have.get((kind, one.nearest), 0) > 0 and have.get((kind, person), 0) <= 1


def _marks(seen: Seen) -> Iterator[Mark]:
    whose = Whose(seen)
    for number in seen.scenes:
        for place, text in enumerate(seen.texts[number]):
            for said in (*sided(text), *acted_in(text)):
                span = seen.span(number, place, *sentence(text, said.start, said.end))
                found = _mention(seen, whose, span, said)
                if found is None:
                    yield Mark(said, span, None, "")
                    continue
                mentions = seen.facts[number].mentions
                kin = _kin(mentions, found)
                owner = (kin, KIN) if kin else _settled(seen, whose, span, found)
                near = _near(seen, whose, number, found)
                nearest = _nearest(seen, number, found)
                yield Mark(said, span, owner, mentions[found].gender, near, nearest)


def _settled(seen: Seen, whose: Whose, span: Span, found: int) -> Owner | None:
    """As sure as of who does or is something in the same sentence, where 'his' means the same one: 'Tom came in, with
    his left arm'."""
    owner, mentions = whose.settled(span.scene, found), seen.facts[span.scene].mentions
    if owner is None or owner[1] >= SURE or mentions[found].kind != "pronoun":
        return owner
    acting = [
        one
        for mention, one in zip(mentions[:found], whose.owners(span.scene), strict=False)
        if mention.paragraph == span.paragraph and mention.start >= span.start and mention.subject
    ]
    return (
        max(owner, acting[-1], key=lambda one: one[1]) if acting and acting[-1] and acting[-1][0] == owner[0] else owner
    )


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


def _nearest(seen: Seen, number: int, place: int) -> str:
    """Who of the gender of 'his' is named last before it, also in speech; "" where it is no pronoun."""
    one, known = seen.facts[number].mentions[place], genders(seen.book.cast.people)
    if one.kind != "pronoun" or one.spoken:
        return ""
    for other, owner in zip(
        reversed(seen.facts[number].mentions[:place]), reversed(seen.owners(number)[:place]), strict=True
    ):
        if other.paragraph < one.paragraph - BACK:
            return ""
        if owner and other.kind == "name" and known.get(owner[0]) == one.gender:
            return owner[0]
    return ""


def _mention(seen: Seen, whose: Whose, span: Span, said: Sided) -> int | None:
    """Who has it: whom a hurt befalls within the words; by 'his' right before; else who does or is something in the
    sentence, else in the one before."""
    text, mentions = seen.texts[span.scene][span.paragraph], seen.facts[span.scene].mentions
    here = [n for n, one in enumerate(mentions) if one.paragraph == span.paragraph]
    befallen = [n for n in here if said.fresh and said.start <= mentions[n].start and mentions[n].end <= said.at]
    owner = [n for n in here if mentions[n].end <= said.at and _BETWEEN.fullmatch(text[mentions[n].end : said.at])]
    if befallen:
        return befallen[-1]
    inside = [n for n in here if said.start <= mentions[n].start < said.at and mentions[n].form in ("his", "her", "my")]
    owner = owner or inside
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
