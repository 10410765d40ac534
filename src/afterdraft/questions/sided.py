"""Marks of a body that are on one side of it, as words tell them: the deaf ear, the hand short of two fingers."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from afterdraft.questions.sentences import sentences

_NEVER = "(?!)"  # a pattern that nothing has
FAR = 60  # characters between the side and what is told of it
ROUND = 25  # characters round the words, in which doubt is cast on them
OTHER = {"left": "right", "right": "left"}
GOOD = "good|sound|better|hale|unhurt"
_ITS = "(?:his|her|my|the|its|an?)"
_SIDE = rf"{_ITS} (?=left|right)"
_FEW = rf"(?:one|two|three|half|both|some|{_ITS})"
_PART_OF = r"(?:(?:last|top|tips?|ends?|little|ring|middle|index|fore|third|fourth|first|joints?|of) )*"
_FINGERS = rf"(?:fingers?|forefinger|finger-?tips?|thumbs?)(?: (?:on|of) {_ITS} (?:left|right)(?: hand)?)?"
_GONE = (
    r"(?:missing|cut (?:short|off)|lost|lopped|docked|amputated|severed|sliced|shot (?:off|away)|off at|short|taken off"
    r"|gone(?! (?:\w+ly )?(?:numb|white|cold|dead|blue|stiff|slack|limp|to|through|into)))"
)
_LESS = "|".join(
    (
        "maimed|mangled|mutilated|crippled|withered|deformed|fingerless|(?:two|three|four)-fingered",
        rf"hook (?:for|where|instead|in place)|stump of {_SIDE}|was a stump",
        rf"(?:short|shy|lacking|wanting|missing|minus|bereft) (?:of )?(?:{_FEW} )?{_PART_OF}(?:\w+ )?{_FINGERS}",
        rf"(?:lacks|lacked|wants|wanted|missed) {_FEW} {_PART_OF}(?:\w+ )?{_FINGERS}",
        r"(?:lost|losing|cost (?:him|her|me)|took|taken|chopped|sliced|severed|shot|crushed) (?:off )?(?:(?:one|two"
        rf"|three|half|both|part|{_ITS} (?:\w+ )?(?:last|top|tips?|ends?|joints?)) (?:\w+ ){{0,4}}|a |an )?{_FINGERS}",
        rf"{_FINGERS}(?: and \w+ \w+)?,?(?: (?:that|which))?(?: (?:was|were|is|are|had been))?(?: \w+ly)? {_GONE}",
        rf"(?:short|missing|shortened|docked|cropped) (?:\w+ )?{_FINGERS}|the (?:short|bad|maimed) (?:one|hand)",
        "(?:only|but) (?:one|two|three|four) fingers|(?:three|four|no) fingers (?:on|left)|what fingers there were",
        r"fingers of the (?:left|right)(?: hand)?,? which was all",
    )
)
_CAST = (
    rf"in {_ITS} (?:[\w-]+ ){{0,3}}(?:cast|sling|splints?|plaster|brace)"
    rf"|(?:cast|sling|splints?|plaster|brace) on {_SIDE}|in plaster|splinted"
    rf"|(?:broke|broken|busted|sprained) {_SIDE}|(?:was|is|had been) (?:broken|splinted)"
)
_LIMPS = r"lame|limp(?:s|ed|ing)?|favou?r(?:ed|ing|s)|would(?: not|n[’']t) bend"


@dataclass(frozen=True, slots=True)
class _Kind:
    parts: str  # what has the side
    bad: str  # what tells that it is the one
    worse: str = ""  # the same, where it stands right before the side or the part: 'his bad left knee'
    good: bool = True  # whether 'good' says that it is the other
    bare: str = _NEVER  # before 'his left' alone, or behind it


_KINDS: Mapping[str, _Kind] = {
    "deaf ear": _Kind(
        "ear|side(?! of)",
        r"deaf(?! (?:man|woman|old|boy|girl|people|mute|and dumb))|hard of hearing|hearing[- ]aid"
        r"|lost (?:the|his|her|my) hearing|ear (?:was|is|had been|has been) (?:no (?:use|good)|useless|gone)"
        r"|(?:side|ear)\W(?:\W?\w+ ){0,3}(?:never|could not|couldn[’']t|cannot|can[’']t|did not|didn[’']t) hear[ds]?"
        rf"|hear[ds]? (?:nothing|little|badly) (?:on|with|in|through) {_SIDE}",
        "deaf|bad|dead|cloth",
    ),
    "blind eye": _Kind(
        "eye|eye-socket|socket|side(?! of)",
        r"blind(?! (?:man|woman|beggar|boy|girl|alley|with|to))|sightless|eye-?patch|(?:was|is|being|of) glass|patch "
        rf"(?:over|on|across) {_SIDE}|(?:lost|losing|put out) (?:the (?:sight|use) (?:of|in) )?{_SIDE}"
        r"|empty socket|eye(?: that| which)? (?:he|she|I|they) (?:had |[’']d )?lost"
        r"|(?:could not|couldn[’']t|cannot|can[’']t) see (?:with|out of|from)|the (?:glass|blind|bad) one",
        "blind|bad|dead|glass|false|artificial|china|milky|missing",
    ),
    "maimed hand": _Kind("hand|paw|fist|one|glove", _LESS, "bad|maimed|crippled", bare="lack|was short|had only|want"),
    "lost arm": _Kind(
        "arm|sleeve",
        r"sleeve(?:, which)? (?:was |had been )?(?:pinned|sewn|folded|tucked|hung|hanging|swung|flapped|empty|dangl\w+)"
        rf"|pinned (?:up|across)|stump of {_SIDE}|(?:lost|losing) {_SIDE}|amputated|hook (?:for|where|instead|in place)"
        r"|was gone(?! \w*(?:numb|dead|cold|stiff|to))",
        "empty|withered|artificial|false|missing|prosthetic|wooden|tin",
    ),
    "false leg": _Kind(
        "leg|foot",
        rf"(?:lost|losing) {_SIDE}|amputated|stump of {_SIDE}|(?:of|was|is|being) (?:wood|cork|tin|metal|wooden|false)",
        "wooden|false|artificial|cork|tin|metal|prosthetic|peg|missing",
    ),
    "lame leg": _Kind(
        "leg|foot",
        rf"{_LIMPS}|dragg(?:ed|ing)|drags|shorter than|crippled|the (?:bad|stiff|lame|game) (?:one|leg)",
        "bad|stiff|game|gammy|gimpy|withered|club|dud|short|crippled|lame",
    ),
    "bad knee": _Kind(
        "knee",
        rf"{_LIMPS}|the (?:bad|stiff|trick) (?:one|knee)|arthritic|(?:was|had been) (?:bad|stiff)",
        "bad|stiff|game|gammy|gimpy|dud|trick|weak|rheumatic|dicky",
    ),
    "bad hip": _Kind("hip", r"arthritic|the (?:bad|stiff) (?:one|hip)|replaced", "bad|stiff|dud|rheumatic|artificial"),
    "arm in a cast": _Kind("arm|wrist|hand|elbow|forearm", _CAST, "broken|splinted|plastered"),
    "leg in a cast": _Kind("leg|ankle|foot|shin", _CAST, "broken|splinted|plastered"),
    "signet ring": _Kind("hand|finger|little finger|third finger|ring finger|one", "signet", good=False),
}
PASSING = frozenset(("arm in a cast", "leg in a cast"))
PLAIN_GOOD = frozenset(("deaf ear", "blind eye"))  # two good ones of these disagree; a hand is good in its turn
_MARKS = r"tattoo|birth-?mark|mole|wart|dimple|port-wine (?:mark|stain)|strawberry mark|scar"
_PLACES = (
    "cheek|temple|brow|eyebrow|jaw|forehead|hand|wrist|arm|forearm|shoulder|shoulder-blade|thigh|calf|ankle|breast|hip"
    "|knee|palm|thumb"
)
_AT = "(?:on|upon|across|along|down|over|under|below|beneath|above|beside|by|near)"
_WHOSE = "(?:his|her|my|the|[A-Z]\\w+[’']s)"
_MARKED = (
    re.compile(
        rf"\b(?P<mark>{_MARKS})(?:ed)?(?: [\w’'-]+){{0,6}}? {_AT} {_WHOSE} (?P<side>left|right) (?P<part>{_PLACES})\b"
    ),
    re.compile(
        rf"\b(?P<side>left|right) (?P<part>{_PLACES})(?: (?:was|were|there was|bore|had|with|showed))"
        rf" (?:\w+,? ){{0,4}}?(?P<mark>{_MARKS})\b"
    ),
)
_DOUBTFUL = re.compile(
    r"\b(?:mirror|reflect\w*|looking-glass|photograph|portrait|as if|as though|pretend\w*|no longer|either|both|neither"
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


def sided(text: str) -> Iterator[Sided]:
    """What a paragraph tells of marks and sides, in the order of its sentences.

    >>> [(one.kind, one.side, one.good) for one in sided("He was deaf in the left ear. She took his good left knee.")]
    [('deaf ear', 'left', False), ('bad knee', 'right', True)]
    """
    for start, end in sentences(text) if "left" in text or "right" in text else ():
        said = text[start:end]
        for one in (*_by_kind(said), *_marked(said)):
            if not _DOUBTFUL.search(said[max(0, one.start - ROUND) : one.end + ROUND]):
                yield Sided(one.kind, one.side, one.good, one.at + start, one.start + start, one.end + start)


def _by_kind(said: str) -> Iterator[Sided]:
    if not re.search(r"\b(?:left|right)\b", said):
        return
    for name, kind in _KINDS.items():
        yield from _behind_comma(said, name, kind)
        parts = list(_sides(said, kind))
        for part in parts:
            if part["part"] and part["part"] != "side":
                yield from _right_beside(said, part, name, kind)
        for match in re.finditer(rf"\b(?:{kind.bad})\b", said, re.IGNORECASE) if parts else ():
            near = min(parts, key=lambda part: _between(part, match))
            if _between(near, match) <= FAR and not _NOT.search(said[: match.start()]):
                start, end = min(near.start("side"), match.start()), max(near.end(), match.end())
                yield Sided(name, near["side"], False, near.start("side"), start, end)


def _sides(said: str, kind: _Kind) -> Iterator[re.Match[str]]:
    """'Left hand', 'left wooden leg'; 'his left' alone, of a hand; 'deaf on the left'."""
    within = f"(?:(?:{kind.worse}) )?" if kind.worse else ""
    yield from re.finditer(rf"\b(?P<side>left|right)(?:-hand)? {within}(?P<part>{kind.parts})\b", said)
    for match in re.finditer(
        rf"\b(?:his|her|my|the) (?P<side>left|right)(?P<part>)(?=[,;:.)—]| (?:{kind.bare}|being))", said
    ):
        before = said[: match.start()]
        alone = kind.bare != _NEVER and not re.search(r"\b(?:to|on|at|from|by) $", before)
        if alone or re.search(r"\b(?:deaf|blind|lame|hear[ds]? (?:nothing|badly)) (?:in|on|of) $", before):
            yield match


def _right_beside(said: str, part: re.Match[str], name: str, kind: _Kind) -> Iterator[Sided]:
    """'His good left ear', 'his left glass eye', 'her left ear, the good one'."""
    for words, good in ((GOOD if kind.good else "", True), (kind.worse, False)):
        if not words:
            continue
        before = re.search(rf"\b(?:{words}),? (?:\w+ )?$", said[: part.start("side")])
        behind = re.match(rf",? (?:which was |that was |was )?the (?:{words}|whole) one\b", said[part.end() :])
        if before or behind or re.search(rf"\b(?:{words})\b", part.group()):
            side = OTHER[part["side"]] if good else part["side"]
            at = part.start("side")
            yield Sided(name, side, good, at, before.start() if before else at, part.end())
            return


def _behind_comma(said: str, name: str, kind: _Kind) -> Iterator[Sided]:
    """'The wooden leg, his left,' 'blind in one eye, the left'."""
    if not kind.worse:
        return
    told = rf"\b(?:(?:{kind.worse}) (?P<one>{kind.parts})|(?:deaf|blind|lame) (?:in|of) one (?P<other>\w+))"
    for match in re.finditer(rf"{told},? (?:\w+ ){{0,3}}?{_ITS} (?P<side>left|right)(?: one)?(?=[,;:.)—])", said):
        if re.fullmatch(kind.parts, match["one"] or match["other"]):
            yield Sided(name, match["side"], False, match.start("side"), match.start(), match.end())


def _between(part: re.Match[str], match: re.Match[str]) -> int:
    """Characters from one to the other; none where they overlap."""
    return max(0, match.start() - part.end(), part.start("side") - match.end())


def _marked(said: str) -> Iterator[Sided]:
    for pattern in _MARKED:
        for match in pattern.finditer(said):
            kind = f"{match['mark'].replace('birth-', 'birth')} on the {match['part']}"
            yield Sided(kind, match["side"], False, match.start("side"), match.start(), match.end())
