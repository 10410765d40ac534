"""Marks of a body by kind, the deaf ear and the maimed hand, told near the words 'left' and 'right'."""

import re
from collections.abc import Iterator

from afterdraft.questions.sided.kind_words import KINDS, NEVER, WORKS, Kind
from afterdraft.questions.sided.referents import Referent, referents
from afterdraft.questions.sided.said import ITS, OTHER, Sided

FAR = 60  # characters between the side and what is told of it
NEAR = 14  # the same, of what tells that it is the good one
_WITH = re.compile(r"\b(?:with|in|by) (?:his|her|my|the) $", re.I)
_CLOSER = r"(?:(?:, |[ ]?[—–][ ]?)(?:\w+ ){0,3}?| (?:which |that )?(?:was|is|being) )"  # 'the lame leg, his left'
_ACTS = re.compile(r" (?:he|she|I|they)\b")
_TIED = re.compile(r"(?: one)?\W*(?:(?:which |that |and )?(?:was|is|being|had been) )?(?:the |his |her |my )?\W*", re.I)
_NOT = re.compile(r"\b(?:not|never|isn[’']t|wasn[’']t|hardly)\W+(?:\w+\W+)?$")
_DEAF_ON = re.compile(
    r"\b[Oo]n (?:the|his|her|my) (?P<side>left|right)(?: side)?,? (?:he|she|I) (?:was|is|am) (?:\w+ )?deaf\b"
)
_LIES = re.compile(
    rf"\b(?:lying|lay|lain|lies|lie|leaning|turned|rolled) (?:\w+ )?(?:on|over on|onto|over onto|to) (?:his|her|my) "
    rf"(?P<side>left|right)"
    rf" side,? (?:with |and )?(?:his|her|my|the) (?P<ear>{KINDS['deaf ear'].good}|deaf|bad|dead) ear (?:\w+ ){{0,2}}?"
    r"(?:in|into|on|against|to|down|under)\b"
)


def by_kind(said: str) -> Iterator[Sided]:
    yield from _lying(said)
    for name, kind in KINDS.items():
        parts = list(referents(said, kind))
        if not any(one.side for one in parts):
            continue
        for one in parts:
            if one.side and one.part != "side":
                yield from _right_beside(said, one, name, kind)
        yield from _behind_comma(said, name, kind)
        for pattern, good in ((_marked_one(kind), False), (_whole(kind), True)):
            for match in re.finditer(rf"\b(?:{pattern})\b", said, re.IGNORECASE):
                near = min(parts, key=lambda one: _between(one, match))
                far = NEAR if good else FAR
                if near.side and _between(near, match) <= far and not _is_of_another(said, near, match, kind):
                    start, end = min(near.at, match.start()), max(near.end, match.end())
                    yield Sided(name, OTHER[near.side] if good else near.side, good, near.at, start, end)


def _is_of_another(said: str, one: Referent, match: re.Match[str], kind: Kind) -> bool:
    """'Not lame'; 'the maimed one' that no word ties to 'his right hand'; 'with his right hand he felt for the gap'."""
    before, between = said[: match.start()], said[min(one.end, match.end()) : max(one.at, match.start())]
    acts = one.end <= match.start() and _WITH.search(said[: one.at]) and _ACTS.match(between)
    if acts or _NOT.search(before):
        return True
    named = re.compile(rf" (?:one|{kind.parts})\b").match(said, match.end()) and re.search(rf"\b{ITS} $", before)
    named = named or re.fullmatch(rf"the (?:\w+ )?(?:one|{kind.parts})", match.group(), re.I)
    return bool(named) and not _TIED.fullmatch(between)


def _lying(said: str) -> Iterator[Sided]:
    """'On my left side, with my good ear in the pillow'; 'on the left he was deaf'."""
    for match in _DEAF_ON.finditer(said):
        yield Sided("deaf ear", match["side"], False, match.start("side"), match.start(), match.end())
    for match in _LIES.finditer(said):
        side, good = match["side"], match["ear"] not in ("deaf", "bad", "dead")
        yield Sided("deaf ear", OTHER[side] if good else side, good, match.start("side"), match.start(), match.end())


def _marked_one(kind: Kind) -> str:
    """'The tin one, which was the left', 'the left was a false one', and all that tells of it otherwise."""
    return rf"{kind.bad}|the (?:{kind.worse}) one|(?:was|is|being) an? (?:{kind.worse}) one" if kind.worse else kind.bad


def _whole(kind: Kind) -> str:
    """'The whole one', behind its side; 'the good leg, the right', before it."""
    if not kind.good:
        return NEVER
    parts, side = f"(?:{kind.parts})", r"(?:, |[ ]?[—–][ ]?)(?:the|his|her|my) (?:left|right)\b"
    one = rf"had (?:only |but )?one {parts}(?=,? and that|, the (?:left|right)[.;])|(?:his|her|my) one {parts}(?=, the)"
    return rf"(?:the|his|her|my)(?: one| only)? (?:{kind.good}) (?:one|{parts}(?={side}))|{WORKS}|{one}"


def _right_beside(said: str, one: Referent, name: str, kind: Kind) -> Iterator[Sided]:
    """'His good left ear', 'his left glass eye', 'her left ear, the bad one'."""
    for words, good in ((kind.good, True), (kind.worse, False)):
        if not words:
            continue
        before = re.search(rf"\b(?:{words}),? (?:\w+ )?$", said[: one.at])
        told = rf"(?:the|his|her|my) (?:{words}) (?:one|{kind.parts})"
        behind = re.match(rf",? (?:which was |that was |was |being )?{told}\b", said[one.end :])
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
    for match in re.finditer(rf"{told}{_CLOSER}{ITS} (?P<side>left|right)(?: one)?(?=[,;:.)—])", said):
        if re.fullmatch(kind.parts, match["one"] or match["other"]):
            yield Sided(name, match["side"], False, match.start("side"), match.start(), match.end())


def _between(one: Referent, match: re.Match[str]) -> int:
    """Characters from one to the other; none where they overlap."""
    return max(0, match.start() - one.end, one.at - match.end())
