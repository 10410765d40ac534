"""Somebody who has left the scene and goes on in it."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.leaving import is_absent, is_back, is_elsewhere, is_heard_to_go, leaves
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, silenced
from afterdraft.questions.whose import Whose
from afterdraft.reading.facts import Mention

SURE = 0.8  # of who leaves
FAR = 45  # paragraphs behind the leaving, up to which it is still the same hour; chosen by hand
_DOES = re.compile(
    r"\s(?:\w+ly\s)?(?:rose|stood|nodded|smiled|laughed|looked|shook|put|took|leaned|leant|sat|turned|reached|lifted"
    r"|raised|shrugged|frowned|grinned|tapped|pushed|pulled|picked|held|laid|sighed|coughed|poured|drank)\b"
)


@dataclass(frozen=True, slots=True)
class _Left:
    """Where somebody leaves: the sentence, and where in its paragraph it is told."""

    span: Span
    at: int
    away: bool = False  # told as one who is not there, not seen to go


def find(seen: Seen) -> Iterator[Finding]:
    whose = Whose(seen)
    for number in seen.scenes:
        yield from _in_scene(seen, number, whose)


def _in_scene(seen: Seen, number: int, whose: Whose) -> Iterator[Finding]:
    views = {one.person for one in seen.book.appearances if one.scene == number and one.presence == "point of view"}
    tags = {one.tag for one in seen.facts[number].quotes}
    left: dict[str, _Left] = {}
    for place, (one, owner) in enumerate(zip(seen.facts[number].mentions, whose.owners(number), strict=True)):
        if not owner or one.spoken or owner[1] < SURE or owner[0] in views:
            continue
        person, text = owner[0], seen.texts[number][one.paragraph]
        begins, ends = sentence(text, one.start, one.end)
        gone = left.get(person)
        if gone and (one.paragraph, one.start) > (gone.span.paragraph, gone.span.end):
            del left[person]
            acts = one.speaks or place in tags or (one.subject and _DOES.match(text, one.end))
            if gone.away and one.paragraph == gone.span.paragraph:
                left[person] = gone  # what is told of why
            elif one.kind == "name" and acts and _goes_on(seen, number, gone, one):
                yield _finding(seen, person, gone, seen.span(number, one.paragraph, begins, ends))
            elif not one.subject and not is_back(text[begins:ends]):
                left[person] = gone  # only spoken of
        if far := leaves(text[begins : one.start], text[one.end : ends], named=one.kind == "name" and one.subject):
            at = one.end + far if one.kind == "name" and one.subject else ends  # the telling may go with whoever goes
            left[person] = _Left(seen.span(number, one.paragraph, begins, ends), at)
        elif one.subject and (far := is_absent(text[one.end : ends])):
            left[person] = _Left(seen.span(number, one.paragraph, begins, ends), ends, away=True)
        elif heard := _is_heard(seen, number, whose, place):
            left[person] = _Left(seen.span(number, one.paragraph, begins, sentence(text, heard - 1, heard)[1]), heard)


def _is_heard(seen: Seen, number: int, whose: Whose, place: int) -> int:
    """How far into the paragraph somebody is heard to go who is the only one who is named there as doing anything."""
    facts = seen.facts[number]
    one = facts.mentions[place]
    far = is_heard_to_go(silenced(seen.texts[number][one.paragraph], facts.quotes, one.paragraph))
    tags = {quote.tag for quote in facts.quotes}
    acting = {
        owner[0]
        for at, (other, owner) in enumerate(zip(facts.mentions, whose.owners(number), strict=True))
        if owner and other.paragraph == one.paragraph and other.kind == "name" and not other.spoken
        if other.subject or at in tags
    }
    return far if one.kind == "name" and one.end < far and len(acting) == 1 else 0


def _goes_on(seen: Seen, number: int, gone: _Left, one: Mention) -> bool:
    """Whether the scene has gone on in its place and hour between the leaving and the words of one who is there."""
    first, last = gone.span.paragraph, one.paragraph
    if not 0 < last - first <= FAR:
        return False
    facts, texts = seen.facts[number], seen.texts[number]
    told = [silenced(texts[place], facts.quotes, place) for place in range(first, last + 1)]
    told[0] = told[0][gone.at :]
    here = sentence(texts[last], one.start, one.end)
    return not any("\n" in text or is_elsewhere(text) for text in told) and not is_back(told[-1][slice(*here)])


def _finding(seen: Seen, person: str, gone: _Left, later: Span) -> Finding:
    name = seen.name(person)
    return Finding(
        evidence=(gone.span, later),
        strength=0.7,
        subject=f"still there: {name.lower()}",
        words={"name": name, "away": "away" if gone.away else ""},
        people=(person,),
    )


CHECK = Check(
    id="still there",
    name="Somebody who has left is still there",
    family="continuity",
    looks_at="Somebody who is named as leaving the room, or as being away (‘had sent word that she was staying at "
    "home’), and who speaks or does something there later in the scene.",
    method="Words of leaving (‘went out’, ‘I watched her drive away’, ‘they heard the car start’, ‘had gone up’) or of "
    "being away (‘was missing’, ‘had gone to his sister’s’) of somebody who is not the one with whom the scene is; "
    "then the next thing that is told of the same person, by name, with nothing before it that says they have come "
    "back, that time has passed, or that the telling has followed them. The rule is our own; that readers notice it is "
    "common practice.",
    blind="Leaving that is told in other words, or of a ‘he’. Whoever comes back without a word of it is asked about.",
    reads=("words", "facts", "cast"),
    find=find,
    recipe=4,
)
