"""Marks of a body that are on one side of it, as words tell them: the deaf ear, the hand short of two fingers."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.sentences import sentences
from afterdraft.questions.sided_words import ITS, KINDS, NEVER, WORKS, Kind

FAR = 60  # characters between the side and what is told of it
NEAR = 14  # the same, of what tells that it is the good one
ROUND = 25  # characters behind the words, in which doubt is cast on them
AHEAD = 40  # the same, before them
MOST = 3  # sentences read as one, where each leans on the one before
OTHER = {"left": "right", "right": "left"}
_LEANS = re.compile(  # how a sentence begins or what it has, that says more of what the one before told of
    r"[“‘\"'(—]*(?:It(?: was|[’']s| had)|That(?: one| was|[’']s)|The other|(?:The|His|Her|My) (?:left|right)(?: one)?"
    r"(?=[,;:.]| (?:was|is|had|hung|lay)\b))|[^.]{0,30}\b(?:on|in|of|with) (?:the other|it|that (?:side|one))[.,]"
)
_STANDS = r"[,;:.)—]| (?:was|is|were|had|being|hung|lay|did|lacked|wanted)\b"  # behind 'the left' alone
_BODY = "(?:hand|arm|leg|foot|ear|eye|knee|hip|wrist|ankle|shoulder|cheek|side|boot|shoe|sleeve|wing|bank)"
_OF_WHICH = r"\b(?:to|on|at|from|by|than) $"
PASSING = frozenset(("arm in a cast", "bandaged hand"))  # who breaks a leg does not break the other in the same book
PLAIN_GOOD = frozenset(("deaf ear", "blind eye"))  # two good ones of these disagree; a hand is good in its turn
_MARKS = (
    r"tattoo(?:ed)?|birth-?mark|mole|wart|dimple|port-wine (?:mark|stain)|strawberry mark|scar(?:red)?|burn(?:s|ed|t)?"
    "|puckered|seamed|(?:sabre|sword|knife)[- ]cut|weal"
)
_PLACES = (
    "cheek|temple|brow|eyebrow|jaw|forehead|hand|wrist|arm|forearm|shoulder|shoulder-blade|thigh|calf|ankle|breast|hip"
    "|knee|palm|thumb|ear|eye|(?:side|half) of (?:his|her|my|the) face"
)
_AT = "(?:on|upon|inside|across|covered|covering|along|down|over|under|below|beneath|above|beside|by|near)"
_WHOSE = r"(?:his|her|my|the|[A-Z]\w+[’']s)"
_MARKED = (
    re.compile(
        rf"\b(?P<mark>{_MARKS})(?: [\w’'-]+){{0,6}}? (?:{_AT}|the length of) (?:the (?:back|inside|side) of )?{_WHOSE} "
        rf"(?P<side>left|right) (?P<part>{_PLACES})\b"
    ),
    re.compile(
        rf"\b(?P<side>left|right) (?P<part>{_PLACES})(?: (?:was|were|there was|bore|had|with|showed))"
        rf" (?:\w+,? ){{0,4}}?(?P<mark>{_MARKS})\b"
    ),
    re.compile(rf"\b(?P<mark>{_MARKS}) {_AT} one (?P<part>{_PLACES})\b[^.;]{{0,20}}, {ITS} (?P<side>left|right)\b"),
    re.compile(rf"\b(?P<mark>dimple|mole) in one (?P<part>cheek)(?: only)?, {ITS} (?P<side>left|right)\b"),
    re.compile(
        r"\b(?:an?|one|single) (?:[\w-]+ )?(?P<mark>ring|earring|hoop|stud),? (?:in|through) (?:his|her|my|the) "
        r"(?P<side>left|right) (?P<part>ear)\b"
    ),
)
_DOUBTFUL = re.compile(
    r"\b(?:mirror|(?:faced|in|into) the glass|reflect\w*|looking-glass|photograph|portrait|as if|as though"
    r"|pretend\w*|no longer|either|both|neither"
    r"|(?:he|she|I|they) (?:faced|looked at)|facing|used to|if|or (?:the |his |her |my )?(?:left|right)"
    r"|not (?:the |his |her |my )?(?:left|right)|dreamt|dream)\b"
)
_NOT = re.compile(r"\b(?:not|never|isn[’']t|wasn[’']t|hardly)\W+(?:\w+\W+)?$")


@dataclass(frozen=True, slots=True)
class Sided:
    """Code points of a paragraph: `at` begins the words 'left' or 'right', `start` to `end` hold those that tell it."""

    kind: str  # 'deaf ear', 'mole on the cheek'
    side: str  # of the mark: where 'good' tells of the other, that one
    good: bool
    at: int
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class _Referent:
    """A part of the body in a passage: on which side; "" where none is told, so that what stands by it says nothing."""

    side: str
    part: str  # "" of 'the left' alone
    at: int
    end: int


def sided(text: str) -> Iterator[Sided]:
    """What a paragraph tells of marks and sides, in the order of its sentences.

    >>> [(one.kind, one.side, one.good) for one in sided("He was deaf in the left ear. She took his good left knee.")]
    [('deaf ear', 'left', False), ('bad knee', 'right', True)]
    """
    for start, end in _passages(text) if "left" in text or "right" in text else ():
        said = text[start:end]
        if not re.search(r"\b(?:left|right)\b", said):
            continue
        for one in (*_by_kind(said), *_marked(said)):
            if not _DOUBTFUL.search(said[max(0, one.start - AHEAD) : one.end + ROUND]):
                yield Sided(one.kind, one.side, one.good, one.at + start, one.start + start, one.end + start)


def _passages(text: str) -> Iterator[tuple[int, int]]:
    """Sentences, and several as one where they lean on each other: 'He gave her his left hand. It had no thumb.'"""
    held: list[tuple[int, int]] = []
    for start, end in sentences(text):
        if held and (len(held) == MOST or not _LEANS.match(text, start)):
            yield held[0][0], held[-1][1]
            held = []
        held.append((start, end))
    if held:
        yield held[0][0], held[-1][1]


def _by_kind(said: str) -> Iterator[Sided]:
    for name, kind in KINDS.items():
        referents = list(_referents(said, kind))
        if not any(one.side for one in referents):
            continue
        for one in referents:
            if one.part and one.part != "side" and one.side:
                yield from _right_beside(said, one, name, kind)
        yield from _behind_comma(said, name, kind)
        for pattern, good in ((_marked_one(kind), False), (_whole(kind), True)):
            for match in re.finditer(rf"\b(?:{pattern})\b", said, re.IGNORECASE):
                near = min(referents, key=lambda one: _between(one, match))
                far = NEAR if good else FAR
                if near.side and _between(near, match) <= far and not _NOT.search(said[: match.start()]):
                    start, end = min(near.at, match.start()), max(near.end, match.end())
                    yield Sided(name, OTHER[near.side] if good else near.side, good, near.at, start, end)


def _marked_one(kind: Kind) -> str:
    """'The tin one, which was the left', 'the left was a false one', and all that tells of it otherwise."""
    return rf"{kind.bad}|the (?:{kind.worse}) one|(?:was|is|being) an? (?:{kind.worse}) one" if kind.worse else kind.bad


def _whole(kind: Kind) -> str:
    """'The whole one', behind its side; 'the good leg, the right', before it."""
    if not kind.good:
        return NEVER
    parts, side = f"(?:{kind.parts})", r"(?:the|his|her|my) (?:left|right)\b"
    one = rf"had (?:only |but )?one {parts}(?=,? and that)|(?:his|her|my) one {parts}(?=, the)"
    return rf"(?:the|his|her|my)(?: one| only)? (?:{kind.good}) (?:one|{parts}(?=, {side}))|{WORKS}|{one}"


def _referents(said: str, kind: Kind) -> Iterator[_Referent]:
    """'Left hand', 'left wooden leg'; 'the left' where the passage has such a part; 'the other' of one before; and
    'his hand', which no side tells of, or the side of another part."""
    within = f"(?:(?:{kind.worse}) )?" if kind.worse else ""
    found = [
        _Referent(one["side"], one["part"], one.start(), one.end())
        for one in re.finditer(rf"\b(?P<side>left|right)(?:-hand)? {within}(?P<part>{kind.parts})\b", said)
    ]
    part = re.search(rf"\b(?:{kind.parts})s?\b", said.replace(" one", "    "))
    for match in re.finditer(
        rf"\b(?:his|her|my|the|that the) (?P<side>left|right)(?: one)?(?={_STANDS}| (?:{kind.bare}))", said, re.I
    ):
        before = said[: match.start()]
        alone = (part or kind.bare != NEVER) and not re.search(_OF_WHICH, before)
        if alone or re.search(r"\b(?:deaf|blind|lame|hear[ds]? (?:nothing|badly)) (?:in|on|of) $", before):
            found.append(_Referent(match["side"].lower(), "", match.start("side"), match.end()))
    for match in re.finditer(
        rf"\b(?<!than )(?:the|my|his|her) other(?: (?:{kind.parts})\b|(?! \w+\w)|(?= (?:\w+ed|was|had|in|with|lay)\b))",
        said,
        re.I,
    ):
        if before_it := [one for one in found if one.end <= match.start()]:
            nearest = max(before_it, key=lambda one: one.end)
            found.append(_Referent(OTHER[nearest.side], "", match.start(), match.end()))
    yield from found
    whose = rf"(?:his|her|my|[A-Z]\w+[’']s) (?:{kind.parts}|{_BODY})\b(?!, (?:the|his|her|my) (?:left|right))"
    for match in re.finditer(rf"\b(?:{whose}|(?:left|right) {_BODY}\b)", said):
        yield _Referent("", match.group(), match.start(), match.end())


def _right_beside(said: str, one: _Referent, name: str, kind: Kind) -> Iterator[Sided]:
    """'His good left ear', 'his left glass eye', 'her left ear, the bad one'."""
    for words, good in ((kind.good, True), (kind.worse, False)):
        if not words:
            continue
        before = re.search(rf"\b(?:{words}),? (?:\w+ )?$", said[: one.at])
        behind = re.match(rf",? (?:which was |that was |was )?the (?:{words}) one\b", said[one.end :])
        if before or behind or re.search(rf"\b(?:{words})\b", said[one.at : one.end]):
            side = OTHER[one.side] if good else one.side
            yield Sided(name, side, good, one.at, before.start() if before else one.at, one.end)
            return
    bare = re.search(r"\bbare $", said[: one.at]) and re.match(
        r",? and (?:the|her|his|my) (?:\w+ )?(?:boot|cast|plaster)\b", said[one.end :]
    )
    if bare and name == "leg in a cast":
        yield Sided(name, OTHER[one.side], True, one.at, one.at, one.end)


def _behind_comma(said: str, name: str, kind: Kind) -> Iterator[Sided]:
    """'The wooden leg, his left,' 'blind in one eye, the left'."""
    if not kind.worse:
        return
    told = rf"\b(?:(?:{kind.worse}) (?P<one>{kind.parts})|(?:deaf|blind|lame) (?:in|of) one (?P<other>\w+))"
    for match in re.finditer(rf"{told},? (?:\w+ ){{0,3}}?{ITS} (?P<side>left|right)(?: one)?(?=[,;:.)—])", said):
        if re.fullmatch(kind.parts, match["one"] or match["other"]):
            yield Sided(name, match["side"], False, match.start("side"), match.start(), match.end())


def _between(one: _Referent, match: re.Match[str]) -> int:
    """Characters from one to the other; none where they overlap."""
    return max(0, match.start() - one.end, one.at - match.end())


def _marked(said: str) -> Iterator[Sided]:
    for pattern in _MARKED:
        for match in pattern.finditer(said):
            yield Sided(_place(match), match["side"], False, match.start("side"), match.start(), match.end())


def _place(match: re.Match[str]) -> str:
    """'Tattoo on the hand'; burns and scars of a cheek or a side of the face are one."""
    mark, part = match["mark"].replace("birth-", "birth"), match["part"]
    if mark in ("ring", "hoop", "stud", "earring"):
        return "earring"
    mark = (
        "tattoo"
        if mark.startswith("tattoo")
        else "scar"
        if re.match("scar|burn|pucker|seam|weal|.*cut", mark)
        else mark
    )
    return f"{mark} on the {'cheek' if part.startswith(('side', 'half')) else part}"
