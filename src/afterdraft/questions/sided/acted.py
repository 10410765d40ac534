"""What a body does that only tells a side of somebody who is known to have a mark: a knee that aches, an ear turned."""

import re
from collections.abc import Iterator

from afterdraft.questions.sided.said import OTHER, OWNER, Sided

_SIDE = r"(?P<side>left|right)"
_HURTS = "ached|aches|hurt|throbbed|smarted|itched|twinged|complained|protested|grumbled|stiffened|was stiff|pained"
_RUBBED = "rubbed|rubbing|kneaded|kneading|massaged|massaging|flexed|flexing|eased|easing|straightened|straightening"
_TOLD = "bandages?|dressing|stitches|scab|seam|burn|plaster|splint|blister|graze|cut|gash"
_HEARS = "could|can|would|might|was able to"
_PARTS = {  # by kind
    "bad knee": "knee|leg",
    "lame leg": "leg|foot",
    "bad hip": "hip",
    "bad shoulder": "shoulder",
}
_BAD = [
    (kind, re.compile(one))
    for kind, parts in _PARTS.items()
    for one in (
        rf"\b{_SIDE} (?:{parts}) (?:\w+ )?(?:{_HURTS})\b",
        rf"\b(?:{_RUBBED}) (?:out )?(?:the fingers of )?{OWNER} {_SIDE} (?:{parts})\b",
        rf"\b(?:pain|twinge|ache|throb|throbbing) (?:\w+ ){{0,3}}?(?:in|through|down|up|of) {OWNER} {_SIDE} "
        rf"(?:{parts})\b",
    )
]
_BAD += [
    (
        "injured hand",
        re.compile(
            rf"\b(?:clenched|opened|closed|held up|looked at|turned over|held out) {OWNER} {_SIDE} (?:hand|palm)"
            rf"\b[^.;]{{0,40}}\b(?:{_TOLD})\b"
        ),
    ),
    ("maimed hand", re.compile(rf"\b(?:crooked|curled|clawed) {_SIDE} hand\b")),
]
_GOOD = [
    (
        "deaf ear",
        re.compile(
            rf"\b(?:turned|cocked|inclined|brought|presented|tilted|bent|put|laid|pressed) (?:round )?(?:his|her"
            rf"|my) {_SIDE} ear"
            r"(?: round| up)? (?:to|toward|towards|closer|nearer|against)\b"
        ),
    ),
    ("deaf ear", re.compile(rf"\bhand (?:to|behind|round|cupped to|cupped behind) (?:his|her|my) {_SIDE} ear\b")),
    (
        "deaf ear",
        re.compile(
            rf"\b(?:on|to) (?:his|her|my) {_SIDE}(?: side)?,? (?:where|so that|so|because|since) (?:he|she|I) "
            rf"(?:{_HEARS}) (?:\w+ )?hear\b"
        ),
    ),
    ("blind eye", re.compile(rf"\b(?:his|her|my) {_SIDE} eye (?:\w+ )?(?:followed|narrowed|found|read|watched)\b")),
]


def acted(said: str) -> Iterator[Sided]:
    """What a passage tells of what is done, or felt.

    >>> [(one.kind, one.side, one.weak) for one in acted("He rubbed his left hip.")]
    [('bad hip', 'left', True)]
    """
    for good, several in ((False, _BAD), (True, _GOOD)):
        for kind, pattern in several:
            for match in pattern.finditer(said):
                side = OTHER[match["side"]] if good else match["side"]
                yield Sided(kind, side, good, match.start("side"), match.start(), match.end(), weak=True)
