"""Thoughts that need no others of the viewpoint's round them to be a stray: those that no I can know, and those of
somebody whose mind the book enters nowhere else."""

import re
from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence

from afterdraft.questions.minds import SURE, Thought, teller
from afterdraft.questions.seen import Seen
from afterdraft.whole.turns import meant

FEW, SHARE = 2, 0.1  # scenes with such thoughts, and their share, above which they are the manner
SEVERAL = 0.05  # share of the scenes with anybody's mind that have two, above which the telling knows everybody's
LEAST = 2  # scenes of a book, below which nothing is rare
TWICE = 2  # scenes from which a mind is one of those with which the book goes
_OPINION = re.compile(r"\s(?:\w+ly\s|had\s|always\s)?(?:thought|believed|supposed|considered|knew)[,.;]")
_INVERTED = re.compile(r"\b(?:thought|wondered)\s$")

Minds = Mapping[int, Sequence[Thought]]  # by scene


def of_no_i(seen: Seen, minds: Minds) -> dict[int, list[Thought]]:
    """By scene that an I tells: thoughts of others, told as known. None where that is the book's manner."""
    told = {number: who for number in minds if (who := teller(seen, number))}
    if len(seen.texts) < LEAST:
        return {}
    found = {
        number: [one for one in minds[number] if _is_plain(one) and one.person != who] for number, who in told.items()
    }
    return _rare({number: some for number, some in found.items() if some}, len(told))


def entered_once(seen: Seen, minds: Minds) -> dict[int, list[Thought]]:
    """By scene that no I tells: thoughts of somebody who thinks in that scene alone of the book, between places where
    somebody is whose mind it enters more often. None where that is the book's manner, or scenes have several minds."""
    scenes: defaultdict[str, set[int]] = defaultdict(set)
    for number, here in minds.items():
        for one in here:
            if one.person and (one.plain or one.sure >= SURE):
                scenes[one.person].add(number)
    often = {person for person, some in scenes.items() if len(some) >= TWICE}
    found = {
        number: [
            one
            for one in here
            if _is_plain(one) and scenes[one.person] == {number} and not _is_opinion(seen, number, one)
            if _is_between(seen, number, one, often)
        ]
        for number, here in minds.items()
        if not teller(seen, number)
    }
    found = {number: some for number, some in found.items() if some}
    if _knows_all(seen, minds):
        return {}
    return _rare(found, sum(any(one.known for one in here) for here in minds.values()))


def _knows_all(seen: Seen, minds: Minds) -> bool:
    """Whether the telling goes from mind to mind within scenes."""
    known = [
        {one.person for one in here if one.known and one.person and (one.plain or one.sure >= SURE)}
        for number, here in minds.items()
        if not teller(seen, number)
    ]
    return sum(len(one) > 1 for one in known) > SEVERAL * sum(bool(one) for one in known)


def _is_plain(one: Thought) -> bool:
    """Whether it is told as known, of somebody who can be nobody else."""
    return bool(one.person) and one.known and one.plain and one.mention.kind != "self"


def _is_opinion(seen: Seen, number: int, one: Thought) -> bool:
    """'It was late, Marta thought', 'thought Marta': what she may have said as well."""
    text = seen.texts[number][one.mention.paragraph]
    return bool(_OPINION.match(text, one.mention.end) or _INVERTED.search(text[: one.mention.start]))


def _is_between(seen: Seen, number: int, stray: Thought, often: Iterable[str]) -> bool:
    scene, known = seen.facts[number], set(often)
    people = meant(scene, seen.book.told[number])
    here = [one.paragraph for one, who in zip(scene.mentions, people, strict=True) if who in known and not one.spoken]
    return bool(here) and min(here) <= stray.mention.paragraph <= max(here)


def _rare(found: dict[int, list[Thought]], of: int) -> dict[int, list[Thought]]:
    return found if len(found) <= max(FEW, SHARE * of) else {}
