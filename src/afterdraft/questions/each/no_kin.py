"""Somebody who is said to have no brothers, no wife, no children, and who has one."""

import re
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.kin_denied import CHILDREN, FAMILY, KIN, SIBLINGS, SPOUSE, denials, is_called_in_question
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.whose import Whose
from afterdraft.reading.facts import Mention
from afterdraft.whole.pronoun_cautions import Owner

SAYS, SURE, POSSESSED = 0.6, 0.8, 0.75  # of who says it, of whom it is said, and of whom 'his' means
BEFORE = 60  # characters before the words in which who says it may say 'I'
_WORDS = "|".join(sorted(set().union(*KIN.values()), key=len, reverse=True))
_OLD = (
    r"(?:(?:own|elder|older|eldest|oldest|younger|youngest|big|little|baby|kid|twin|late|dead|only|poor|first|former"
    r"|grown|married|favou?rite|other|two|three|four) )*"
)
_HIS = re.compile(rf"(?:[’']s?)? {_OLD}(?P<kin>{_WORDS})\b(?!-| in law| officer| monks?| superior|s?[’'] )")
_HAS = re.compile(
    rf"(?: had| has| have|[’']ve|[’']d)(?: got| once had)? (?:an?|one|two|three|four|five|six|some) "
    rf"{_OLD}(?P<kin>{_WORDS})\b(?!-| in law)"
)
_ONE_OF = re.compile(
    r"(?: was| is| am|[’']m|[’']s|,)(?: been)? (?:the (?:eldest|oldest|youngest|second|third|middle)(?: \w+)?|one) of "
    r"(?:two|three|four|five|six|seven|eight|nine|ten) (?P<kin>children|brothers|sisters|sons|daughters)\b"
)
_UNREAL = re.compile(
    r"\b(?:if|wish\w*|would|might|could|pretend\w*|lie[ds]?|lying"
    r"|like (?:an?|his|her|my|their|\w+[’']s)|as (?:an?|though)|imagin\w+|imaginary|dream\w*"
    r"|no|never|not|without|half|step\w*|foster\w*|adopt\w+|long-lost|born|unborn|future|suppos\w+|whether|perhaps|or"
    r"|law|soul|spirit|arms|christ|god|church|true)\b|n[’']t\b|\?|\bhalf-",
    re.IGNORECASE,
)
_GROWN = re.compile(r"\b(?:eldest|grown|married)\b")
_PAST = re.compile(r"\b(?:late|dead|first|former|died|widow\w*|divorced)\b")
_BETWEEN = {
    SPOUSE: re.compile(r"\b(?:marr\w+|wed|wedding|bride\w*|engaged|honeymoon|banns|proposed)\b", re.IGNORECASE),
    CHILDREN: re.compile(
        r"\b(?:born|births?|pregnan\w+|baby|expecting|adopt\w+|confinement|cradle)\b|with child", re.IGNORECASE
    ),
}  # what tells how it came
_I = re.compile(r"\b(?:I|me|my)\b")
_OTHERS = re.compile(r"\b(?:you|she|he|they|her|his|we|[A-Z]\w+ (?:is|was|has|had))\b")


@dataclass(frozen=True, slots=True)
class _Said:
    person: str
    sure: float
    kind: str
    words: frozenset[str]
    span: Span  # its sentence


def find(seen: Seen) -> Iterator[Finding]:
    if not seen.is_read:
        return
    whose = Whose(seen)
    claims = list(_claims(seen, whose))
    denied = {one.person for one in claims}
    had: defaultdict[str, list[_Said]] = defaultdict(list)
    for one in _had(seen, whose) if denied else ():
        if one.person in denied:
            had[one.person].append(one)
    asked: set[tuple[str, str]] = set()
    for claim in claims:
        pair = next((one for one in had[claim.person] if _disagree(seen, whose, claim, one)), None)
        if pair and (claim.person, claim.kind) not in asked:
            asked.add((claim.person, claim.kind))
            yield _finding(seen, claim, pair)


def _claims(seen: Seen, whose: Whose) -> Iterator[_Said]:
    for number in seen.scenes:
        for place, text in enumerate(seen.texts[number]):
            for one in denials(text):
                owner = _of_whom(seen, whose, number, place, one.start)
                if owner:
                    span = seen.span(number, place, *sentence(text, one.start, one.end))
                    yield _Said(*owner, one.kind, one.words, span)


def _of_whom(seen: Seen, whose: Whose, number: int, place: int, at: int) -> Owner | None:
    """Who says 'I' right before it, or is the last before it to be named or to do something in the sentence."""
    text, scene = seen.texts[number][place], seen.facts[number]
    begins, _ = sentence(text, at, at + 1)
    quote = next((n for n, q in enumerate(scene.quotes) if q.paragraph == place and q.start <= at < q.end), None)
    said = next((one for one in seen.book.spoken[number] if one.quote == quote), None)
    if quote is not None and said:
        near = text[max(scene.quotes[quote].start, begins - BEFORE) : at + 2]
        if _I.search(near) and not _OTHERS.search(near):
            return (said.speaker, said.sure) if said.speaker and said.sure >= SAYS else None
    here = [
        n
        for n, one in enumerate(scene.mentions)
        if one.paragraph == place and begins <= one.start < at and one.spoken == (quote is not None)
        if one.subject or (one.kind == "name" and one.end >= at - 1)
    ]
    owner = _owner(seen, whose, number, here[-1]) if here else None
    return owner if owner and owner[1] >= SURE else None


def _owner(seen: Seen, whose: Whose, number: int, mention: int) -> Owner | None:
    one = seen.facts[number].mentions[mention]
    if one.kind == "self" and not one.spoken:
        return whose.teller(number, one.paragraph, one.start)
    return whose.settled(number, mention)


def _had(seen: Seen, whose: Whose) -> Iterator[_Said]:
    for number in seen.scenes:
        for place, one in enumerate(seen.facts[number].mentions):
            text = seen.texts[number][one.paragraph]
            match = _kin(text, one)
            if match is None or not (owner := _owner(seen, whose, number, place)):
                continue
            span = seen.span(number, one.paragraph, *sentence(text, one.start, match.end()))
            least = POSSESSED if one.kind == "pronoun" else SAYS if one.kind == "self" else SURE
            if owner[1] >= least and not (one.kind == "pronoun" and one.spoken) and not _UNREAL.search(span.quote):
                word = "sibling" if match.re is _ONE_OF else match["kin"]
                yield _Said(*owner, "", frozenset({word}), span)


def _kin(text: str, one: Mention) -> re.Match[str] | None:
    """'Ada’s brother', 'his wife', 'she had a sister', 'I’m one of five children'."""
    owns = one.form in ("his", "her") or text[one.start : one.end].lower() == "my"
    if owns or (one.kind == "name" and re.match(r"[’']s? ", text[one.end :])):
        return _HIS.match(text, one.end)
    if one.subject:
        return _HAS.match(text, one.end) or _ONE_OF.match(text, one.end)
    return None


def _disagree(seen: Seen, whose: Whose, claim: _Said, one: _Said) -> bool:
    """Whether it cannot be so, nothing between tells how it came, and nobody there calls it in question."""
    if not one.words & claim.words or claim.span == one.span:
        return False
    past = (_GROWN if claim.kind == CHILDREN else _PAST).search(one.span.quote) is not None
    if past and claim.kind in (SIBLINGS, FAMILY) and "never" not in claim.span.quote and "only" not in claim.span.quote:
        return False  # 'she has no brothers', when he is dead
    came = _BETWEEN.get(claim.kind)
    if came and claim.span < one.span and not past and any(came.search(text) for text in _texts(seen, claim, one)):
        return False
    return not any(
        is_called_in_question(text, claim.kind) and _is_met(seen, whose, claim.person, number, place)
        for number, scene in enumerate(seen.texts)
        for place, text in enumerate(scene)
    )


def _is_met(seen: Seen, whose: Whose, person: str, number: int, place: int) -> bool:
    """Whether this person is meant in the paragraph, or right before or behind it."""
    return any(
        owner is not None and owner[0] == person and abs(mention.paragraph - place) <= 1
        for owner, mention in zip(whose.owners(number), seen.facts[number].mentions, strict=True)
    )


def _texts(seen: Seen, first: _Said, last: _Said) -> Iterator[str]:
    """Paragraphs behind the first, up to the last."""
    for number in range(first.span.scene, last.span.scene + 1):
        for place, text in enumerate(seen.texts[number]):
            if (first.span.scene, first.span.paragraph) < (number, place) <= (last.span.scene, last.span.paragraph):
                yield text


def _finding(seen: Seen, claim: _Said, one: _Said) -> Finding:
    name = seen.name(claim.person)
    return Finding(
        evidence=tuple(sorted((claim.span, one.span))),
        strength=round(0.25 + 0.6 * min(claim.sure, one.sure), 3),
        subject=f"no {claim.kind}: {name.lower()}",
        words={"name": name, "none": claim.kind, "one": min(one.words)},
        numbers={"claim": float(claim.span.scene), "other": float(one.span.scene)},
        people=(claim.person,),
    )


CHECK = Check(
    id="no kin",
    name="Has none, and has one",
    family="continuity",
    looks_at="Somebody who is said to have no brothers or sisters, to be an only child, never to have married, to have "
    "no children or no family, and of whom a brother, a sister, a wife, a husband, a child or other kin is told.",
    method="‘An only child’, ‘no brothers or sisters’, ‘had never married’, ‘has no children’ and the like, said by "
    "the person or of the person, against ‘Ada’s brother’, ‘his wife’, ‘she had a sister’, of whoever is named or most "
    "likely meant. A wife or a child of whom is told later is let be where words between tell of a marriage or a "
    "birth; and so is what somebody in the book calls in question. The lists of words are by hand, and the "
    "rules our own.",
    blind="Kin that is only named (‘Uncle Ben’), and what is told in other words. Lies about one’s family that nobody "
    "calls in question are asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=3,
)
