"""What somebody cannot do at all, or never does, and does elsewhere, with nothing between that teaches it."""

import re
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.questions.skill_words import SKILLS
from afterdraft.questions.skills import Told, claims, deeds, teaches
from afterdraft.questions.whose import Whose
from afterdraft.reading.facts import Mention
from afterdraft.whole.book import genders

SURE = 0.75  # of who does it, and of whom it is claimed
SAYS = 0.5  # of who says 'I cannot', where it is something that few do
RIGHT_BEFORE = 120  # characters between who does it and the words, at most
BESIDE = 120  # characters round it in which it may be called a surprise
AFTER = 3  # paragraphs behind, in which it may be told how it came
_ALONE = re.compile(r"[’' ]*(?:(?:\w+ly|then|also|just|always|often|both|only|himself|herself|slowly) ?)*")
_GOES_ON = re.compile(r".*(?:,|;|\band|\bthen|\bbut|\bor)(?: then| so| now)? ?(?:\w+ly )?", re.DOTALL)
_OTHERS = re.compile(r"\b(?:who|whom|which|that|those|whose|as if|as though|than|where)\b")
_WHO = re.compile(r"^, who\b")
_RIGHT_BEHIND = re.compile(r"(?:, who)?(?: had| has| was| is)? ")
_KNOWN = re.compile(
    r"\b(?:first time|surpris\w+|astonish\w+|amaze\w+|lied|to lie|lesson\w*|taught|since when|had (?:learned|learnt)"
    r"|(?:knew|known|thought|said) (?:that )?(?:he|she|you|I) (?:could(?:n[’']t)?|did(?:n[’']t)?|never))\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class _Said:
    person: str
    sure: float
    skill: str
    words: str
    span: Span  # its sentence
    spoken: bool


def find(seen: Seen) -> Iterator[Finding]:
    if not seen.is_read:
        return
    whose = Whose(seen)
    by: defaultdict[tuple[str, str], list[_Said]] = defaultdict(list)
    for one in _claims(seen, whose):
        by[one.person, one.skill].append(one)
    done: defaultdict[tuple[str, str], list[_Said]] = defaultdict(list)
    for one in _deeds(seen, whose, {skill for _, skill in by}) if by else ():
        done[one.person, one.skill].append(one)
    for key, said in by.items():
        pairs = ((claim, deed) for claim in said for deed in done[key] if _disagree(seen, whose, claim, deed))
        if pair := next(pairs, None):
            yield _finding(seen, *pair)


def _claims(seen: Seen, whose: Whose) -> Iterator[_Said]:
    for number in seen.scenes:
        for place, text in enumerate(seen.texts[number]):
            for start, end in sentences(text):
                for told in claims(text[start:end]):
                    one = _said(seen, whose, seen.span(number, place, start, end), told)
                    least = SURE if SKILLS[told.skill].often else SAYS
                    if one and one.sure >= least:
                        yield one


def _said(seen: Seen, whose: Whose, span: Span, told: Told) -> _Said | None:
    """Whom it is claimed of: who is meant within its words, else who does them."""
    at, end = span.start + told.start, span.start + told.end
    text, mentions = seen.texts[span.scene][span.paragraph], seen.facts[span.scene].mentions
    spoken = _is_spoken(seen, span, at)
    here = [n for n, one in enumerate(mentions) if one.paragraph == span.paragraph and one.spoken == spoken]
    within = [n for n in here if at < mentions[n].start < end and _is_taught(mentions[n])]
    before = [n for n in here if span.start <= mentions[n].start < at and _acts(mentions[n], text, at)]
    earlier = [n for n in here if mentions[n].subject and mentions[n].start < at]
    chosen = within[-1:] or before[-1:] or (earlier[-1:] if text[at].isupper() else [])
    if not chosen or _OTHERS.search(_WHO.sub("", text[mentions[chosen[0]].end : at])):
        return None
    owner = whose.settled(span.scene, chosen[0])
    if owner is None or _is_called(seen, span, owner[0]):
        return None
    return _Said(*owner, told.skill, span.quote[told.start : told.end], span, spoken)


def _acts(one: Mention, text: str, at: int) -> bool:
    """Whether it does something, by grammar or by standing right before the words."""
    return one.subject or (one.kind == "name" and _RIGHT_BEHIND.fullmatch(text[one.end : at]) is not None)


def _is_taught(one: Mention) -> bool:
    """'Nobody had taught him to.'"""
    return one.kind == "name" or one.form in ("him", "her", "me")


def _deeds(seen: Seen, whose: Whose, skills: set[str]) -> Iterator[_Said]:
    for number in seen.scenes:
        for place, text in enumerate(seen.texts[number]):
            for start, end in sentences(text):
                for told in (one for skill in skills for one in deeds(text[start:end], skill)):
                    span = seen.span(number, place, start, end)
                    if one := _done(seen, whose, span, told):
                        yield one


def _done(seen: Seen, whose: Whose, span: Span, told: Told) -> _Said | None:
    """Whose deed it is: who stands right before it, or does what it goes on from."""
    at, mentions = span.start + told.start, seen.facts[span.scene].mentions
    text = seen.texts[span.scene][span.paragraph]
    if _is_spoken(seen, span, at):
        return None
    before = [
        n
        for n, one in enumerate(mentions)
        if one.paragraph == span.paragraph and not one.spoken and span.start <= one.start < at and _acts(one, text, at)
    ]
    between = text[mentions[before[-1]].end : at] if before else ""
    near = _ALONE.fullmatch(_WHO.sub("", between)) or (len(between) <= RIGHT_BEFORE and _GOES_ON.fullmatch(between))
    if not before or not near or _OTHERS.search(_WHO.sub("", between)):
        return None
    owner = whose.settled(span.scene, before[-1])
    words = span.quote[told.start : told.end]
    if owner is None or owner[1] < SURE or _is_of_another(seen, owner[0], told, words):
        return None
    return _Said(*owner, told.skill, words, span, spoken=False)


def _is_of_another(seen: Seen, person: str, told: Told, words: str) -> bool:
    """'He lit her cigarette': not his."""
    gender = genders(seen.book.cast.people).get(person, "")
    others = {"m": r"\bher\b", "f": r"\bhis\b"}.get(gender)
    return not SKILLS[told.skill].able and others is not None and re.search(others, words) is not None


def _is_spoken(seen: Seen, span: Span, at: int) -> bool:
    quotes = seen.facts[span.scene].quotes
    return any(one.paragraph == span.paragraph and one.start <= at < one.end for one in quotes)


def _is_called(seen: Seen, span: Span, person: str) -> bool:
    """Whether who is taken to say it acts by name behind its tag: ‘I don’t drive,’ she said, when Ada looked for it."""
    scene = seen.facts[span.scene]
    tags = {one.tag for one in scene.quotes if one.paragraph == span.paragraph and one.tag is not None}
    for tag in tags:
        mention = scene.mentions[tag]
        behind = [one for one in scene.mentions[tag + 1 :] if one.paragraph == mention.paragraph and not one.spoken]
        named = {seen.book.cast.by_form.get(one.form) for one in behind if one.kind == "name" and one.subject}
        if mention.kind == "pronoun" and person in named:
            return True
    return False


def _disagree(seen: Seen, whose: Whose, claim: _Said, deed: _Said) -> bool:
    """Whether they stand in two scenes, and nothing between or beside the deed tells how it came."""
    if claim.span.scene == deed.span.scene:
        return False
    if deed.span < claim.span:
        if claim.spoken and claim.span.quote.partition(claim.words)[2].startswith("!"):
            return False  # a protest
        return not SKILLS[claim.skill].can_be_given_up and not _tells_how(seen, deed)
    return not _tells_how(seen, deed) and not _is_taught_between(seen, whose, claim, deed)


def _tells_how(seen: Seen, deed: _Said) -> bool:
    """Whether words round it call it a surprise, or paragraphs near it tell that it was learned."""
    span, paragraphs = deed.span, seen.texts[deed.span.scene]
    beside = paragraphs[span.paragraph][max(0, span.start - BESIDE) : span.end + BESIDE]
    near = paragraphs[max(0, span.paragraph - 1) : span.paragraph + AFTER]
    return _KNOWN.search(beside) is not None or any(teaches(text, deed.skill) for text in near)


def _is_taught_between(seen: Seen, whose: Whose, claim: _Said, deed: _Said) -> bool:
    """Whether a paragraph that means this person, or stands beside one that does, tells that it is taught."""
    return any(
        teaches(text, claim.skill) and _is_near(seen, whose, claim.person, number, place)
        for number in range(claim.span.scene, deed.span.scene + 1)
        for place, text in enumerate(seen.texts[number])
        if (claim.span.scene, claim.span.paragraph) < (number, place) < (deed.span.scene, deed.span.paragraph)
    )


def _is_near(seen: Seen, whose: Whose, person: str, number: int, place: int) -> bool:
    return any(
        owner is not None and owner[0] == person and abs(mention.paragraph - place) <= 1
        for owner, mention in zip(whose.owners(number), seen.facts[number].mentions, strict=True)
    )


def _finding(seen: Seen, claim: _Said, deed: _Said) -> Finding:
    name, sure = seen.name(claim.person), min(claim.sure, deed.sure)
    return Finding(
        evidence=tuple(sorted((claim.span, deed.span))),
        strength=round(0.25 + 0.6 * sure, 3),
        subject=f"{claim.skill}: {name.lower()}",
        words={
            "name": name,
            "skill": claim.skill,
            "claim": claim.words,
            "deed": re.sub(r"^[’'](?:d|ve) ", "", deed.words),
        },
        numbers={"claim": float(claim.span.scene), "deed": float(deed.span.scene), "sure": sure},
        people=(claim.person,),
    )


CHECK = Check(
    id="ability",
    name="Cannot, and does",
    family="continuity",
    looks_at="Somebody who is said to be unable to do something at all, never to have learned it, or never to do it "
    "(to swim, drive, ride, cook, type, read, knit, skate, shoot, speak a language, play an instrument; to drink, "
    "smoke, eat meat, take coffee, tea or sugar, wear a watch or glasses), and who does it in another scene.",
    method="‘Cannot swim’, ‘never learned to drive’, ‘doesn’t drink’, said by the person or of the person, against "
    "what the narration tells that the same person does; both of whoever is named or most likely meant. It is let be "
    "where words between tell that it is taught or learned, or words beside it that it is a surprise. The lists of "
    "words are by hand, and the rules our own.",
    blind="What is only said to be done, or told in other words. Lies and jokes about what one can do are asked about, "
    "and so is who is driven in ‘she drove home’.",
    reads=("words", "cast"),
    find=find,
    recipe=4,
)
