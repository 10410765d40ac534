"""Parts of a body that a passage tells of, and on which side each is."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.sided.kind_words import NEVER, Kind
from afterdraft.questions.sided.said import OTHER

_STANDS = r"[,;:.)—]| (?:was|is|were|had|being|hung|lay|did|lacked|wanted|would|could)\b"  # behind 'the left' alone
_BODY = "(?:hand|arm|leg|foot|ear|eye|knee|hip|wrist|ankle|shoulder|cheek|side|boot|shoe|sleeve|wing|bank)"
_SPARED = "(?<!spare )(?<!sparing )(?<!ease )(?<!easing )"  # 'to spare his knee', by what is told of the leg
_OF_WHICH = r"\b(?:to|on|at|from|by|than) $"
_ON_IT = re.compile(
    r"\bfingers? (?:of|on|from) $|\b(?:fingers?|thumb)(?: (?:that|which) (?:\w+ ){1,3}?(?:left|spared)(?: (?:him|her"
    r"|me))?)? on $"
)
_IN_WHICH = re.compile(  # 'deaf in the left'
    r"\b(?:deaf|blind|lame|hearing|limp,?|hear[ds]? (?:nothing|badly|a thing|a word|much|anything)) (?:in|on|of) $"
)


@dataclass(frozen=True, slots=True)
class Referent:
    """On which side it is; "" where none is told, so that what stands by it says nothing."""

    side: str
    part: str  # "" of 'the left' alone
    at: int
    end: int


def referents(said: str, kind: Kind) -> Iterator[Referent]:
    """'Left hand', 'left wooden leg'; 'the left' where the passage has such a part; 'the other' of one before; and
    'his hand', which no side tells of, or the side of another part."""
    within = f"(?:(?:{kind.worse}) )?" if kind.worse else ""
    found = [
        Referent(one["side"], one["part"], one.start(), one.end())
        for one in re.finditer(rf"\b(?P<side>left|right)(?:-hand)? {within}(?P<part>{kind.parts}|{kind.also})\b", said)
    ]
    found += _alone(said, kind)
    found += _others(said, kind, found)
    yield from found
    whose = rf"{_SPARED}(?:his|her|my|[A-Z]\w+[’']s) (?:{kind.parts}|{_BODY})\b(?!, (?:the|his|her|my) (?:left|right))"
    for match in re.finditer(rf"\b(?:{whose}|(?:left|right) {_BODY}\b)", said):
        yield Referent("", match.group(), match.start(), match.end())


def _alone(said: str, kind: Kind) -> Iterator[Referent]:
    """'The left', 'his sound left held'."""
    part = re.search(rf"\b(?:{kind.parts})s?\b", said.replace(" one", "    "))
    good = rf"(?P<good>(?:{kind.good}) )?" if kind.good else "(?P<good>(?!))?"
    alone = rf"\b(?:his|her|my|the|that the) {good}(?P<side>left|right)(?: one)?"
    does = r"(?(good) (?:\w+(?:ing|ed)|held|took|kept|went|came|lay)\b|(?!))"
    for match in re.finditer(rf"{alone}(?={_STANDS}| (?:{kind.bare})|{does})", said, re.I):
        before = said[: match.start()]
        meant = (part or kind.bare != NEVER) and (_ON_IT.search(before) or not re.search(_OF_WHICH, before))
        if meant or _IN_WHICH.search(before):
            yield Referent(match["side"].lower(), "", match.start("side"), match.end())


def _others(said: str, kind: Kind, told: list[Referent]) -> Iterator[Referent]:
    behind = rf"(?: (?:{kind.parts})\b|(?! \w+\w)|(?= (?:\w+ed|was|had|in|with|lay)\b))"
    other = rf"\b(?<!than )(?:the|my|his|her) other{behind}"
    for match in re.finditer(other, said, re.I):
        if before := [one for one in told if one.end <= match.start()]:
            nearest = max(before, key=lambda one: one.end)
            yield Referent(OTHER[nearest.side], "", match.start(), match.end())
