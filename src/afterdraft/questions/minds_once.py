"""Thoughts that need no others of the viewpoint's round them to be a stray: those that no I can know, and those of
somebody with whom the book does not go."""

import re
from collections.abc import Sequence, Set

from afterdraft.questions.minds import SURE, Thought, teller
from afterdraft.questions.minds_book import LIKELY, Minds, goes_with, known_in, knows_all, leads
from afterdraft.questions.reported import is_told_me
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.telling import SHORT
from afterdraft.reading.facts import Mention
from afterdraft.whole.book import genders

FEW, SHARE = 2, 0.1  # scenes with such thoughts, and their share, above which they are the manner
LEAST = 2  # scenes of a book, below which nothing is rare
ELSEWHERE = 1  # other scenes that somebody may lead of whom this is the only thought told as known
NEAR = 3  # paragraphs on either side of a thought in which the I that tells is there
_OPINION = re.compile(
    r"\s(?:\w+ly\s|had\s|always\s)?(?:(?:thought|believed|supposed|considered|knew)[,.;]"
    r"|(?:thought|believed|supposed)\s(?:that\s)?(?:she|he|it|I|they)\s(?:was|were)\b)"
)  # whom he takes her for is seen from outside
_INVERTED = re.compile(r"\b(?:thought|wondered)\s$")
_TOLD_SINCE = re.compile(
    r"[’']d\b|\s(?:had|knew)\b|\s\w+[,.;]"
)  # of a 'he' that is no name, what an I was told, or sees


def of_no_i(seen: Seen, minds: Minds) -> dict[int, list[Thought]]:
    """By scene that an I tells: thoughts of others, told as known. None where that is the book's manner."""
    told = {number: who for number in minds if (who := teller(seen, number))}
    if len(seen.texts) < LEAST:
        return {}
    found = {
        number: [one for one in minds[number] if _is_anothers(seen, number, one) and one.person != who]
        for number, who in told.items()
    }
    return _rare({number: some for number, some in found.items() if some}, len(told))


def _is_anothers(seen: Seen, number: int, one: Thought) -> bool:
    """Whether a name thinks, or a 'he' who surely is somebody, where the I is near and does not say how it knows."""
    if not _is_near(seen, number, one) or is_told_me(seen.texts[number][one.mention.paragraph]):
        return False
    if one.mention.kind == "name":
        return _is_plain(one)
    text = seen.texts[number][one.mention.paragraph]
    if one.mention.form not in ("he", "she") or _TOLD_SINCE.match(text, one.mention.end):
        return False
    return _is_plain(one) or (one.is_bare and one.deep and one.sure >= SURE)


def _is_near(seen: Seen, number: int, stray: Thought) -> bool:
    """Whether the I tells of itself a few paragraphs off: else it tells a tale that it was not in."""
    at = stray.mention.paragraph
    selves = [one.paragraph for one in seen.facts[number].mentions if one.kind == "self" and not one.spoken]
    return any(abs(one - at) <= NEAR for one in selves)


def entered_once(seen: Seen, minds: Minds) -> dict[int, list[Thought]]:
    """By scene that no I tells: thoughts of somebody whose thoughts are told in that scene alone of the book, between
    places where somebody is with whom it goes. None where that is its manner, or scenes have several minds."""
    if len(seen.texts) < LEAST or knows_all(seen, minds):
        return {}
    own = {number: here for number, here in minds.items() if not teller(seen, number)}
    goes, known, led = goes_with(own), known_in(own), leads(own)
    found = {
        number: [
            one
            for one in here
            if _is_told(seen, number, one, goes)
            and known[one.person] == {number}
            and sum(at != number and who == one.person for at, who in led.items()) <= ELSEWHERE
            and not _is_at_home(here, one)
            and _is_between(seen, number, one, goes - {one.person})
        ]
        for number, here in own.items()
    }
    found = {number: some for number, some in found.items() if some}
    return _rare(found, sum(any(one.known for one in here) for here in own.values()))


def _is_told(seen: Seen, number: int, one: Thought, goes: Set[str]) -> bool:
    """Whether the telling knows what nobody sees or is told, and whose it is."""
    whose = _is_plain(one) or _is_the_only(seen, number, one, goes)
    return whose and (one.deep or one.secret) and not _is_opinion(seen, number, one)


def _is_plain(one: Thought) -> bool:
    """Whether it is told as known, of somebody who can be nobody else."""
    return bool(one.person) and one.is_bare and one.plain and one.mention.kind != "self"


def _is_the_only(seen: Seen, number: int, one: Thought, goes: Set[str]) -> bool:
    """Whether a 'she' is likely somebody, and nobody else of her gender is there with whom the book goes."""
    told = one.deep and one.is_bare and one.mention.form in ("he", "she")
    if not told or not one.person or one.sure < LIKELY or len(_sentence(seen, number, one).split()) < SHORT:
        return False
    like = {who for who, gender in genders(seen.book.cast.people).items() if gender in ("", one.gender)}
    here = {owner[0] for owner in seen.owners(number) if owner and owner[0] != one.person}
    return not here & like & goes


def _sentence(seen: Seen, number: int, one: Thought) -> str:
    text = seen.texts[number][one.mention.paragraph]
    return text[slice(*sentence(text, one.mention.start, one.mention.end))]


def _is_opinion(seen: Seen, number: int, one: Thought) -> bool:
    """'It was late, Marta thought', 'thought Marta': what she may have said as well."""
    text = seen.texts[number][one.mention.paragraph]
    return bool(_OPINION.match(text, one.mention.end) or _INVERTED.search(text[: one.mention.start]))


def _is_at_home(here: Sequence[Thought], stray: Thought) -> bool:
    """Whether the scene's other paragraphs tell what this one thinks and perceives, and not less than anybody else."""
    rest = [
        one.person
        for one in here
        if one.mention.paragraph != stray.mention.paragraph and one.person and one.sure >= LIKELY
    ]
    return rest.count(stray.person) >= max(1, len(rest) - rest.count(stray.person))


def _is_between(seen: Seen, number: int, stray: Thought, people: Set[str]) -> bool:
    """Whether one of these people is there before the sentence of the thought, and behind it too, or else nobody is
    told of it: with what is seen of the other a scene may close."""
    mind = stray.mention
    start, end = sentence(seen.texts[number][mind.paragraph], mind.start, mind.end)
    places = [
        (one.paragraph, one.start)
        for one, owner in zip(seen.facts[number].mentions, seen.owners(number), strict=True)
        if not one.spoken and _is_one_of(one, owner, stray, people)
    ]
    before = any(at < (mind.paragraph, start) for at in places)
    return before and (stray.secret or any(at >= (mind.paragraph, end) for at in places))


def _is_one_of(one: Mention, owner: tuple[str, float] | None, stray: Thought, people: Set[str]) -> bool:
    """By name or as a 'she' who likely is; or as a 'she' who is never named, where the other is a 'he'."""
    if owner and owner[0] in people and owner[1] >= LIKELY:
        return True
    other = one.kind == "pronoun" and bool(one.gender and stray.gender) and one.gender != stray.gender
    return other and (owner is None or owner[0] == stray.person)


def _rare(found: dict[int, list[Thought]], of: int) -> dict[int, list[Thought]]:
    return found if len(found) <= max(FEW, SHARE * of) else {}
