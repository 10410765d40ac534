"""Words by which a thing is laid by for later, and which things stand there as given, and not as a word in front of
another ('a ring road') or a letter of the alphabet.

By hand. What may be meant of anything, as 'you are not to take it personally', is left out: 'it' is a thing only where
it is opened, laid into a hand, given on under a condition, or kept for somebody.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass

_KEPT = """
parcel packet envelope letter telegram note document paper deed diary notebook ledger manuscript map key box trunk
casket bag satchel purse wallet pocket-book tin jar bottle flask basket bundle ring locket brooch necklace bracelet
pendant watch coin medal jewel diamond pearl pistol gun revolver dagger photograph picture miniature compass violin
doll whistle handkerchief badge snuffbox cigarette-case
"""
KEPT = frozenset(_KEPT.split())  # what one gives another to keep

_IT = r"(?:it|this|them|that|these|those)"
_LATER = (
    r"(?:(?:(?:when|whenever|after|once|if|as\ssoon\sas)\s(?:I|we|s?he|they|(?:my|his|her|your|our|their)\s\w+)|till|until"
    r"|the\s(?:day|hour|morning|night)\s(?:I|s?he|they|that|after|of)|on\s(?:the\s|(?:my|his|her|your|our|their)\s\w*\s?)?(?:\w*day|eve)"
    r"|if\sanything|should\s(?:I|anything)|one\sday|some\sday|with\syour\sown)\b)"
)  # not 'before five' or 'when you like', by which errands are run
_WILL = (
    r"\byou(?:[’']ll|\swill|[’']re\sto|\sare\sto|\sshall|\smust|[’']ve\s(?:got\s)?to|\shave\s(?:got\s)?to)"
    r"\s(?:just\s|please\s)?"
)
_BEGINS = r"(?:(?<!\w)(?<!\w\s)|(?<=\band\s)|(?<=\bbut\s)|(?<=\bthen\s)|(?<=\bplease\s)|(?<=\bto\s)|(?<=\bmust\s))"
_OPEN = r"open|unpick|unseal|unwrap|untie"
_NOT = (
    r"(?:\b(?:you(?:[’']re|\sare)\s)?not\sto|\bnever\sto|(?<!\bI\s)(?<!you\s)(?<!\bwe\s)(?<!they\s)\bdo(?:n[’']t|\snot)(?:\syou)?"
    r"|\b(?:was|were)n[’']t\sto|\bmustn[’']t|\bmust\snot)\s"
)
_TO_ANOTHER = (
    r"\s(?:to|into)\s(?!me\b|us\b)(?:(?-i:[A-Z])|(?:my|his|her|our|their|your)\s(?!heart|room|feet|bed)"
    r"|the\s(?:one|man|woman|boy|girl|child|lad|lawyer|police|doctor|priest)\b)[\w’'. -]{0,40}?"
)
_EVERYWHERE = (
    rf"{_NOT}(?:(?:{_OPEN}|read)\s{_IT}|be\s(?:opened|unpicked|unsealed|unwrapped|read))\b(?=[^.!?;]{{0,40}}?\b(?:till|until|before)\b)",
    r"\bdo(?:\snot|n[’']t)\sopen\s(?:till|until|before)\b",
    r"(?:\bwould|[’']d|\bmeant\sto|\bgoing\sto)\s(?:\w+\s)?(?:know|learn|find\sout)\swhat\swas\s(?:in|inside)\sit\b",
    r"\bask\syou\swhat\swas\sin\sit\b",
)
_IN_SPEECH = (
    rf"{_WILL}(?:put|give|deliver)\s{_IT}\sin(?:to)?\s(?!your\b|my\b|our\b)[\w’'. -]{{2,30}}?\bhands?\b",
    rf"(?:{_WILL}|{_BEGINS})(?:give|hand|deliver|take|carry|bring)\s{_IT}{_TO_ANOTHER}(?=\s(?!on\s(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day){_LATER})",
    rf"{_WILL}(?:keep|carry|take|hold|mind)\s{_IT}\s(?:safe\s)?for\s(?:me|him|her|us|them)\b(?!\sin\smind)(?=[^.!?\n]*\b{_LATER})",
    rf"(?:{_WILL}|{_BEGINS})(?:{_OPEN})\s{_IT}\s(?:together|only\s(?:when|if|after|on|with)|with\sme|{_LATER})(?!\w)",
    rf"{_BEGINS}put\s(?:that|this)\sby\b(?!\s(?:to|for\sthe|the|my|your|his|her|our|a)\b)",
    r"\binto\s(?:his|her)\sown\shand\b",
    r"\bkeep\s(?:it|this)\s(?:safe|by\syou|hidden|for\sme)\b(?!\s(?:a\s(?:min|mom|sec)|while\b|from\b))",
)
_EITHER = re.compile("|".join(_EVERYWHERE), re.IGNORECASE)
_SPOKEN = re.compile("|".join(_IN_SPEECH), re.IGNORECASE)
_OF_KEYS = re.compile(
    r"(?:[’']ll|[’']d|\b(?:would|will|shall|must|let[’']s|going\sto|meant\sto))\s(?:\w+\s){0,5}?"
    r"(?P<said>(?:see|find\sout)\swhat\s(?:it|that|this)\s(?:opens|fits|opened|fitted)\b)",
    re.IGNORECASE,
)

_ALPHABET = frozenset("ABCDEFGHJKLMNOPQRSTUVWXYZ")  # but I
_GO_ON = """
in on of from with for to at by under over into onto upon beside beneath behind between against among inside out about
across before after until till when while where who whom which that and or but nor than as if so because then there
is was were are had has have did does would will could should must might may came went lay stood said not be he she i
you we they it his her my your their the a an now again too also yet still only himself herself down up away off back
together alone done sewn bound shut kept made cut torn left sent given held put written hung stuck full
"""  # what may follow a thing that does not stand in front of another
_FOLLOWS = re.compile(r"\s+([A-Za-z][\w-]*)")
_GOES_ON = re.compile(rf"(?:{'|'.join(_GO_ON.split())}|\w+(?:ed|ing|ly))", re.IGNORECASE)
_NAMED = re.compile(
    r"\b(?:an?|the|this|that|these|those|his|her|my|your|our|their|its|another|one|two|three|some|\w+[’']s)"
    r"\s(?:[\w’'-]+,?\s){0,3}$",
    re.IGNORECASE,
)
_NONE = re.compile(
    r"\b(?:like|as|such|than)\s(?:an?|the)\s(?:\w+\s)?$|\bto\sthe\s$|\bon\s(?:that|this|a)\s(?:\w+\s)?$"
    r"|\b(?:letter|post|call|pillar|signal|sentry|witness|telephone|window|key)\s$"
)
_GIVEN = re.compile(
    r"\b(?:g[ai]ves?|given|giving|hand(?:ed|ing|s)|h[eo]ld(?:s|ing)?|carr(?:y|ied|ies|ying)|puts?|putting|took|takes?|taken|taking"
    r"|brings?|brought|bringing|draws?|drew|pull(?:ed|s)|produced?|push(?:ed|es)|slid|slides?|pass(?:ed|es)|lays?|laid|lying|left"
    r"|leaves?|press(?:ed|es)|slip(?:ped|s)|finds?|found|fetch(?:ed|es)|lifted|entrusted|sent|tucked|hid(?:den)?"
    r"|ha[ds]\s(?:an?|the|his|her|another|in\s(?:his|her)\shand)|(?:there|it|this|here)(?:\swas|\sis|[’']s)|was\snot\sto\sbe)\b",
    re.IGNORECASE,
)  # a thing that is there, or changes hands

_OPENED = re.compile(
    r"(?<!\bnot\s)(?<!n[’']t\s)(?<!\bnever\s)\b(?:opened|slit|tore|ripped|broke|cut|unwrapped|unsealed|unfolded|untied|unpicked|read|delivered|burn(?:ed|t))"
    r"\s(?:open\s)?(?:it|them|the\s(?:seal|string|flap|wrapping|paper|wax|knot)s?|(?:the|his|her|my|that)\s(?:\w+\s)?(?P<thing>\w+))\b"
    r"|\b(?:gave|handed)\s(?:it|them)\s(?:to|over)\b"
)


@dataclass(frozen=True, slots=True)
class Charge:
    start: int
    end: int
    said: bool  # whether it is one only where somebody says it
    of_key: bool


def charges(text: str) -> Iterator[Charge]:
    """Where a sentence lays a thing by for later."""
    for pattern, said, of_key in ((_EITHER, False, False), (_SPOKEN, True, False), (_OF_KEYS, False, True)):
        yield from (Charge(*match.span("said" if of_key else 0), said, of_key) for match in pattern.finditer(text))


def is_given(sentence: str, start: int, end: int) -> bool:
    """Whether the word that stands there is a thing, and the sentence has it there or gives it.

    >>> is_given("He gave her a ring.", 14, 18), is_given("It had a ring road.", 9, 13)
    (True, False)
    """
    before, after = sentence[:start], _FOLLOWS.match(sentence, end)
    if not _NAMED.search(before) or _NONE.search(before) or not _GIVEN.search(sentence):
        return False
    if sentence[start:end] == "note" and after and after[1] == "of":
        return False  # 'a note of hope'
    return not after or (after[1] not in _ALPHABET and bool(_GOES_ON.fullmatch(after[1])))


def is_done(text: str, thing: str, *, near: bool) -> bool:
    """Whether something is opened, read or given on there that is the thing; near the charge 'it' will be."""
    return any(match["thing"] == thing or (near and not match["thing"]) for match in _OPENED.finditer(text))
