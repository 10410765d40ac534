"""Hurts that heal, and on which side they are: the cut palm, the wrist in plaster, the sprained ankle."""

import re
from collections.abc import Iterator

from afterdraft.questions.sided.hurt_words import BORNE, CAME, HURTS, PARTS, WELL, both
from afterdraft.questions.sided.said import OTHER, Sided

_ALL = tuple(
    (re.compile(one), fresh, good)
    for several, fresh, good in ((CAME, True, False), (BORNE, False, False), (WELL, False, True))
    for one in several
)
_PART = re.compile(rf"\b(?:{PARTS})s?\b|(?<=-)hand(?=ed\b)")
_AT = re.compile(r"\b(?i:under|beneath|over|on|in|at|beside|behind|into|onto|by) (?:his |her |my |the )?$")
_SET = re.compile(r"\b(?:plaster|slings?|cast|splint\w*|broken|broke)\b")  # of a hand, its arm has it too


def hurts(said: str) -> Iterator[Sided]:
    """What a passage tells of them; a wrist is of the hand and of the arm.

    >>> [(one.kind, one.side, one.fresh) for one in hurts("He had cut his left palm on a nail.")]
    [('injured hand', 'left', True)]
    """
    for pattern, fresh, good in _ALL:
        for match in pattern.finditer(said):
            told = match.groupdict()
            group = "side" if told.get("side") else "alone"
            side, at = told[group], match.start(group)
            if _is_of_a_thing(said, match, at):
                continue
            for kind in _kinds(told.get("part") or _part_before(said[: match.start()]), match.group()):
                yield Sided(kind, OTHER[side] if good else side, good, at, match.start(), match.end(), fresh)


def on_both(kind: str, text: str) -> bool:
    """Whether somebody's hands or feet are told to be hurt, not one of them.

    >>> [on_both("injured hand", f"She held up her bandaged {hand}.") for hand in ("hands", "hand", "feet")]
    [True, False, False]
    """
    return bool(re.search(both(kind), text))


def _is_of_a_thing(said: str, match: re.Match[str], at: int) -> bool:
    """'Under his left arm, done up in paper': what is told behind the arm is not told of it."""
    return match.start() == at and bool(_AT.search(said[:at]))


def _part_before(before: str) -> str:
    """Of 'the right one', what was told of last."""
    parts = _PART.findall(before)
    return parts[-1].removesuffix("s") if parts else ""


def _kinds(part: str, words: str) -> Iterator[str]:
    of_hand = False
    for kind, parts in HURTS.items():
        if part and re.fullmatch(parts, part):
            of_hand = of_hand or kind == "injured hand"
            yield kind
        elif kind == "injured arm" and of_hand and _SET.search(words):
            yield kind
