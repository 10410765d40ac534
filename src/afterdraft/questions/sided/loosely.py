"""Sides told near words that may tell of a mark: of somebody who is told elsewhere to have it, they do."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.sided.said import OTHER, Sided

FAR = 100  # characters between the side and the word


@dataclass(frozen=True, slots=True)
class _Loose:
    parts: str
    bad: str
    good: str = "(?!)"


_LOST = (
    r"missing|gone|lost|lack\w*|short|without|not there|taken|took|off|light|cost|spared|ended|stopped|end|kept|got"
    r"|had had|ate|eaten|where|remained|remaining|surviving|left him|left her|should have been|only"
)
_ILL = (
    r"limp\w*|stiff\w*|bad|ach\w+|pain\w*|clicked|irons|plate in|pins? in|polio|calliper|gave|dragg\w+|swung|stuck out"
    r"|straight out|hurt|sore|swollen|twinge\w*|rheumat\w+|arthrit\w+|no longer (?:bend|bent)|(?:not|n[’']t|never) "
    r"(?:\w+ )?(?:bend|bent|take|hold|mend\w*|heal\w*|straighten)|since|old|weather|rain|damp|trouble\w*|brace|stick"
)
_BOUND = (
    r"bandag\w+|stitch\w*|plaster\w*|dressing|sling|splint\w*|strapp\w+|lint|gauze|poultice|taped|cast|out of action"
)
_LOOSE = {
    "maimed hand": _Loose(
        "hand|glove|fist|paw|thumb|(?:\\w+ )?finger|forefinger",
        rf"stumps?|stub|claw|hook|gap|knob|ruin\w*|mangled|maimed|(?:{_LOST})\b[^.;]{{0,30}}\b(?:fingers?|thumb"
        rf"|joints?|forefinger)|(?:fingers?|thumb|joints?|forefinger)\b[^.;]{{0,30}}\b(?:{_LOST})",
        r"good|whole|sound|all (?:its|his|her|five) fingers",
    ),
    "deaf ear": _Loose(
        "ear|side",
        r"deaf\w*|ruined|useless|dead|(?:not|never|n[’']t|no longer) (?:\w+ )?work\w*|burst|perforated|hearing[- ]aid"
        r"|no good|no use",
        r"good|(?:could|can|might|would|still|that) (?:\w+ )?(?:hear\w*|work\w*)",
    ),
    "blind eye": _Loose(
        "eye|socket|eyelid",
        r"blind\w*|glass|patch|gone|milk\w*|film\w*|cloud\w+|sightless|done for|lost|empty|sewn|stitched shut|useless"
        r"|dead|saw nothing",
        r"good|seeing|only|one",
    ),
    "bad knee": _Loose("knee|leg", _ILL, "good|sound"),
    "lame leg": _Loose("leg|foot|knee", _ILL, "good|sound"),
    "bad hip": _Loose("hip", _ILL, "good|sound"),
    "false leg": _Loose(
        "leg|foot|shin|knee", r"wooden|wood|tin|peg|stump|strap\w*|straps|socket|artificial|false|prosthe\w+|cork"
    ),
    "lost arm": _Loose(
        "arm|sleeve|shoulder", r"empty|pinned|stump|hook|missing|lost|gone|no longer there|ended|stopped"
    ),
    "injured hand": _Loose("hand|palm|wrist|thumb|(?:\\w+ )?finger|fingers|fist|knuckles", _BOUND, "good|sound"),
    "injured arm": _Loose("arm|forearm|elbow|wrist|shoulder", _BOUND, "good|sound"),
    "injured leg": _Loose("leg|ankle|foot|shin|calf|thigh|knee", _BOUND, "good|sound"),
    "leg in a cast": _Loose("leg|ankle|foot|shin", _BOUND, "good|sound"),
    "injured eye": _Loose("eye|eyebrow|brow|eyelid", rf"{_BOUND}|black|shiner|purple|yellow|shut", "good"),
    "injured cheek": _Loose("cheek|cheekbone|side of (?:his|her) face", rf"{_BOUND}|black|purple|yellow"),
}
_TOLD = re.compile(r"\b(?:left|right)(?:-hand)? (?:\w+ )?[a-z]+|\b(?:his|her|my|the) (?:left|right)\b")
_TOOL = re.compile(
    r"\b(?i:with|in|by|between|into|using) (?:his|her|my|the)? ?(?:\w+ )?$"
)  # what the hand does is not told of it
_LEFT_BY = re.compile(  # what is taken, or used
    r"\b(?:took|held|gripped|caught|offered|gave|seized|used|raised|lifted|over) (?:him |her |me )?(?:his|her|my"
    r"|the)? ?$"
)
_STANDS = re.compile(
    r"$|[,.;:)—]| (?:was|were|is|had|has|being|hung|lay|rested|with|in|on|from|at|where|which|that|because|since|for)\b"
)


def loosely(said: str) -> Iterator[Sided]:
    """Only where one side alone is told, and no two people's hands.

    >>> [(one.kind, one.side) for one in loosely("The ring finger of his left hand was not there.")]
    [('maimed hand', 'left')]
    """
    sides = {side for told in _TOLD.findall(said) for side in OTHER if side in told}
    if len(sides) != 1 or re.search(r"\b(?:the|his|her|my) other\b|\bother (?:one|hand|side)\b", said):
        return
    if re.search(r"\b[Hh]is\b", said) and re.search(r"\b[Hh]er\b", said):
        return
    (side,) = sides
    for kind, loose in _LOOSE.items():
        for match in re.finditer(
            rf"\b{side}(?:-hand)? (?:{loose.parts})\b|\b(?:his|her|my|the) {side}(?: one)?(?=[,.;:)—])", said
        ):
            yield from _near(said, kind, loose, side, match)


def _near(said: str, kind: str, loose: _Loose, side: str, match: re.Match[str]) -> Iterator[Sided]:
    before, behind = said[: match.start()], said[match.end() :]
    taken = _TOOL.search(before) or _LEFT_BY.search(before) or not _STANDS.match(behind)
    another = re.search(rf"\b(?:deaf|blind|bad|maimed) (?:{loose.parts})\b", behind)
    if taken or another or not re.search(rf"\b(?:{loose.parts})s?\b", said):
        return
    start, end = max(0, match.start() - FAR), match.end() + FAR
    near = said[start : match.start()].rpartition(";")[2] + said[match.start() : end].partition(";")[0]
    bad, good = (bool(re.search(rf"\b(?:{words})\b", near)) for words in (loose.bad, loose.good))
    if bad != good:
        where = OTHER[side] if good else side
        yield Sided(kind, where, good, match.start(), match.start(), match.end(), weak=True)
