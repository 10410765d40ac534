"""Marks that lie on a part of the body: a mole, a tattoo, a scar, an earring."""

import re
from collections.abc import Iterator

from afterdraft.questions.sided.said import ITS, Sided

_MARKS = (
    r"tattoo(?:ed)?|birth-?mark|mole|wart|dimple|port-wine (?:mark|stain)|strawberry mark|freckle|beauty spot|scar"
    r"(?:red)?"
    "|(?:old|healed|shiny) burns?|burn[- ](?:scars?|marks?)|nick|puckered|seamed|(?:sabre|sword|knife)[- ]cut|weal"
)
_PLACES = (
    "cheek|temple|brow|eyebrow|jaw|forehead|hand|wrist|arm|forearm|shoulder|shoulder-blade|thigh|calf|ankle|breast|hip"
    "|knee|palm|thumb|ear|eye|(?:side|half) of (?:his|her|my|the) face|nostril|ankle|shin|buttock|collar-?bone|eyelid"
    "|earlobe|(?:side|corner) of (?:his|her|my|the) (?:neck|mouth|nose|chin|jaw|throat)"
)
_AT = "(?:on|upon|inside|across|covered|covering|along|down|over|under|below|beneath|above|beside|by|near|through)"
_WHOSE = r"(?:his|her|my|the|[A-Z]\w+[’']s)"
_OF = "(?:the (?:back|inside|side|corner|top|edge|palm|heel|inner side|bridge|lobe) of )?"
_MARKED = (
    re.compile(
        rf"\b(?P<mark>{_MARKS})(?:,? [\w’'-]+){{0,6}}?,? (?:{_AT}|the length of) (?:the (?:back|inside"
        rf"|side) of )?{_WHOSE} (?P<side>left|right) (?P<part>{_PLACES})\b"
    ),
    re.compile(
        rf"\b(?P<side>left|right) (?P<part>{_PLACES})(?:, [^,;.]{{0,40}},)?(?: (?:was|were|there was|bore|had|with"
        rf"|showed)) (?:\w+,? ){{0,4}}?(?P<mark>{_MARKS})\b"
    ),
    re.compile(
        rf"\b(?P<mark>scar|seam|dimple|(?:white|gr[ae]y|silver) (?:streak|lock)|streak of (?:white|gr[ae]y|silver)"
        rf"|tremor)(?: [\w’'-]+){{0,6}}? (?:{_AT}|from|at|in) {_OF}{_WHOSE} (?P<side>left|right) (?P<part>{_PLACES})\b"
    ),
    re.compile(
        r"\b(?P<mark>(?:gold|missing|false|broken|chipped|dead|gr[ae]y|black) (?:eye-?)?(?P<part>tooth|canine|incisor"
        r"|molar))\b[^.;]{0,20}? (?:on|at|to) (?:the|his|her) (?:upper |lower |top )?(?P<side>left|right)\b"
    ),
    re.compile(
        r"\b(?P<side>left|right) (?P<part>eye)\b,? (?:was|is|being) (?:\w+ )?(?P<mark>blue|brown|green|gr[ae]y|hazel"
        r"|amber)\b"
    ),
    re.compile(
        rf"\b(?P<mark>scar)\b[^.;,]{{0,40}}? (?:divided|crossed|split|bisected|seamed|cut|slanted across|puckered"
        rf"|pulled at"
        rf"|notched|ran down|ran along|interrupted|parted) {_OF}{_WHOSE} (?P<side>left|right) (?P<part>{_PLACES})\b"
    ),
    re.compile(rf"\b(?P<mark>{_MARKS}) {_AT} one (?P<part>{_PLACES})\b[^.;]{{0,20}}, {ITS} (?P<side>left|right)\b"),
    re.compile(rf"\b(?P<mark>dimple|mole) in one (?P<part>cheek)(?: only)?, {ITS} (?P<side>left|right)\b"),
    re.compile(
        r"\b(?:[Aa]n?|[Oo]ne|single|(?:the|his)(?=[^.;]{0,30} his)) (?:[\w-]+ )?(?P<mark>ring|earring|hoop|stud|pearl"
        r"|diamond|sleeper),? (?:\w+ )?"
        r"(?:in|through|from) (?:his|her|my|the) (?P<side>left|right) (?P<part>ear|earlobe|lobe|nostril|eyebrow)\b"
    ),
    re.compile(
        rf"\b(?:wore|wears|wearing|had|has|with|strapped|kept) (?:[\w’'-]+ ){{0,3}}(?P<mark>(?:wrist-?)?watch) "
        rf"(?:\w+ )?(?:on|to) {_WHOSE} (?P<side>left|right) (?P<part>wrist)\b"
    ),
    re.compile(
        rf"\b(?P<mark>monocle|eyeglass) (?:\w+ )?(?:in|into|to|from|out of) {_WHOSE} (?P<side>left|right) "
        rf"(?P<part>eye)\b"
    ),
    re.compile(
        r"\b(?P<part>hair)\b[^.;]{0,20} (?P<mark>part(?:ed|ing)) (?:\w+ )?(?:on|at|to) the (?P<side>left|right)"
        r"(?=[,;:.]| side| and)"
    ),
)
_TEETH = ("tooth", "canine", "incisor", "molar")
_EYES = ("blue", "brown", "green", "grey", "gray", "hazel", "amber")
_WORN = {
    "watch": "watch",
    "wristwatch": "watch",
    "wrist-watch": "watch",
    "monocle": "monocle",
    "eyeglass": "monocle",
    "parted": "parting",
    "parting": "parting",
}


def marked(said: str) -> Iterator[Sided]:
    for pattern in _MARKED:
        for match in pattern.finditer(said):
            yield Sided(_place(match), match["side"], False, match.start("side"), match.start(), match.end())


def _place(match: re.Match[str]) -> str:
    """'Tattoo on the hand'; burns and scars of a cheek or a side of the face are one."""
    mark, part = match["mark"].replace("birth-", "birth"), match["part"]
    if mark in ("ring", "hoop", "stud", "earring", "pearl", "diamond", "sleeper"):
        return "earring" if part in ("ear", "earlobe", "lobe") else f"stud in the {part}"
    if part in _TEETH:
        return mark
    if mark in _EYES:
        return f"{mark} eye"
    if mark.endswith(("streak", "lock")) or mark.startswith("streak"):
        return f"pale streak at the {part}"
    if mark in _WORN:
        return _WORN[mark]
    mark = (
        "tattoo"
        if mark.startswith("tattoo")
        else "scar"
        if re.match("scar|.*burn|pucker|seam|weal|.*cut", mark)
        else mark
    )
    part = re.sub(r"^(?:side|half|corner) of \w+ ", "", part)
    return f"{mark} on the {'cheek' if part == 'face' else part}"
