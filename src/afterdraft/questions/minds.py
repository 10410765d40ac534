"""Where the telling, outside speech, says what somebody thinks, feels or perceives, and whose that is."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from afterdraft.questions.from_outside import is_from_outside
from afterdraft.questions.known_anyway import is_known_anyway
from afterdraft.questions.reported import is_reported
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, silenced
from afterdraft.questions.telling import is_known
from afterdraft.questions.thinking import comes_to, inside, is_more, is_secret, is_thought_now
from afterdraft.reading.facts import Gender, Mention
from afterdraft.reading.lexicon import ROLES, TITLES
from afterdraft.whole.book import genders
from afterdraft.whole.evidence import told_by_i
from afterdraft.whole.pronoun_cautions import Owner
from afterdraft.whole.turns import meant

Whose = Literal["own", "other", "unsure"]
SURE = 0.8  # of who thinks; lower, the wrong 'he' is most of what is asked on the tuning half
STRANGER = "name:"  # how a person begins who is not of the cast
_HE = re.compile(r"\b(?:he|him|his|she|her|hers)\b")
_CLAUSE = re.compile(r"\b(?:that|which|who|whom|whose|when|while|as|if|what|how|than|because)\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Thought:
    """Also of an I, and of a 'he' of whom nobody knows who it is: then `person` is ""."""

    person: str
    mention: Mention
    gender: Gender  # of whoever it is
    inward: bool  # thought or felt, and not only seen or heard
    deep: bool  # by words for what nobody sees
    secret: bool  # it is said beside it that nobody is told
    known: bool  # told as known, and not as shown, guessed or heard
    sure: float  # of who, from 0 to 1
    by_others: bool  # though told as known, somebody tells it aloud, or sees it from outside
    plain: bool  # the paragraph says who: by name, or by a name behind which 'he' can be nobody else

    @property
    def is_bare(self) -> bool:
        """Whether the telling alone has it: nobody says it, or sees it."""
        return self.known and not self.by_others


@dataclass(frozen=True, slots=True)
class _Named:
    """By name or by what they are, outside speech."""

    mention: Mention
    person: str | None
    gender: Gender


def thoughts(seen: Seen, number: int) -> tuple[Thought, ...]:
    """Of a scene, in order."""
    scene, cast = seen.facts[number], seen.book.told[number]
    people, known = meant(scene, cast), genders(cast.people)
    named = [
        _Named(one, person, known.get(person or "", "") or one.gender)
        for one, person in zip(scene.mentions, people, strict=True)
        if not one.spoken and one.kind in ("name", "role")
    ]
    by_i = told_by_i(scene)
    past = by_i or not sum(it.present for it in scene.counted) > sum(it.past for it in scene.counted)
    found = []
    for one, person, owner in zip(scene.mentions, people, seen.owners(number), strict=True):
        if one.spoken or one.kind == "role" or (number, one.paragraph) in seen.set_in:
            continue
        if seen.is_in_italics(number, one.paragraph, one.start, one.end):
            continue
        text = seen.texts[number][one.paragraph]
        inward = inside(text, one)[0]
        if past and inward and is_thought_now(text, one):
            continue  # in a scene told in the past, or by an I: 'the poet thinks'
        if inward or one.feels:
            plainly = _plainly(silenced(text, scene.quotes, one.paragraph), one, named, owner)
            whose = person or _stranger(one) or plainly
            thought = _thought(text, one, whose, owner, known, told_by_i=by_i)
            found.append(replace(thought, by_others=thought.known and _is_by_others(seen, number, thought)))
    return tuple(found)


def _thought(
    text: str, one: Mention, plainly: str | None, owner: Owner | None, known: Mapping[str, Gender], *, told_by_i: bool
) -> Thought:
    who, sure = (plainly, 1.0) if plainly else owner or ("", 0.0)
    inward, deep = inside(text, one)
    return Thought(
        person=who,
        mention=one,
        gender=(known.get(who) or _gender_behind(text, one)) if one.kind == "name" else one.gender,
        inward=inward,
        deep=deep or (inward and is_more(text, one)),
        secret=inward and is_secret(text, one),
        known=inward and is_known(text, one, deep=deep, told_by_i=told_by_i),
        sure=sure,
        by_others=False,
        plain=bool(plainly),
    )


def _stranger(one: Mention) -> str | None:
    """Somebody by name, of whom so little is told that the cast has no such person."""
    titled = one.form.split(" ", 1)[0] in TITLES | ROLES
    return f"{STRANGER}{one.form}" if one.kind == "name" and (one.entity == "person" or titled) else None


def _gender_behind(text: str, one: Mention) -> Gender:
    """By the first 'he' or 'her' behind a name in its sentence."""
    match = _HE.search(text, one.end, sentence(text, one.start, one.end)[1])
    return "" if match is None else "m" if match.group() in ("he", "him", "his") else "f"


def _is_by_others(seen: Seen, number: int, thought: Thought) -> bool:
    """Whether somebody tells it aloud, or sees it from outside, or it is known anyway."""
    mention, quotes = thought.mention, seen.facts[number].quotes
    at = mention.paragraph
    texts = [silenced(seen.texts[number][one], quotes, one) if at - 1 <= one <= at else "" for one in range(at + 1)]
    names = {*seen.name(thought.person).split(), "he" if thought.gender == "m" else "she"}
    known = is_known_anyway(texts[at], mention) and not thought.secret
    return known or is_reported(texts, mention, names) or is_from_outside(texts[at], mention, names)


def teller(seen: Seen, number: int) -> str | None:
    """Who says I, where an I tells the scene."""
    narrator = seen.book.told[number].narrator
    return narrator.id if narrator and told_by_i(seen.facts[number]) else None


def whose(one: Thought, viewpoint: str, gender: Gender, *, tells: bool) -> Whose:
    """Whether it is that of the viewpoint, who is of this gender and perhaps the I that tells, or surely another's."""
    if one.mention.kind == "self" or one.plain:
        return "own" if one.person == viewpoint else "other"
    if tells or (gender and one.gender and gender != one.gender):
        return "other"
    return "unsure" if one.person not in ("", viewpoint) and one.sure >= SURE else "own"


def _plainly(text: str, he: Mention, named: Sequence[_Named], owner: Owner | None) -> str | None:
    """Who a 'he' that does something is: the one person of that gender whom its sentence and the one before it name, as
    saying or doing something, and not again behind it; or all the paragraph before it, where that is the likeliest."""
    if not (he.subject or comes_to(text, he)) or he.form not in ("he", "she", "him", "her"):
        return None
    here = [one for one in named if one.mention.paragraph == he.paragraph and one.gender in ("", he.gender)]
    start, end = _with_the_one_before(text, he) if here else (0, 0)
    who = _the_one(text, he, [one for one in here if start <= one.mention.start < end])
    if who or not owner:
        return who
    all_before = _the_one(text, he, [one for one in here if one.mention.start < end])
    return all_before if all_before == owner[0] else None


def _the_one(text: str, he: Mention, like: Sequence[_Named]) -> str | None:
    """The one of these before him, who begins a sentence there and is not named again behind."""
    before = [one for one in like if one.mention.start < he.start]
    who = before[0].person if len({one.person for one in before}) == 1 else None
    again = any(one.person == who for one in like if one.mention.start > he.start)
    return who if not again and any(_begins(text, one.mention) for one in before) else None


def _with_the_one_before(text: str, one: Mention) -> tuple[int, int]:
    start, end = sentence(text, one.start, one.end)
    return (sentence(text, start - 2, start - 2)[0] if start > 1 else start), end


def _begins(text: str, one: Mention) -> bool:
    """Whether it is who says or does something in the main clause of its sentence."""
    begins = sentence(text, one.start, one.end)[0]
    return (one.subject or one.speaks) and not _CLAUSE.search(text, begins, one.start)
