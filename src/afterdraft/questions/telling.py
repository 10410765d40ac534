"""How a sentence outside speech tells what somebody thinks or feels: as known, or as shown, heard, guessed, usual."""

import re

from afterdraft.questions.sentences import sentence
from afterdraft.questions.thinking import BEGINS, DECIDES, HELPS, behind, is_inverted, is_inward, is_secret, seems_to
from afterdraft.reading.facts import Mention

SHORT, SHORTEST = 8, 4  # words of a sentence below which it is a pause in talk: 'She thought.'; and of a deep one
# What stands before the thought in its sentence
_WITHIN = re.compile(
    r"(?i:\b(?:that|whether|if|who|whom|whose|which|what|how|why|because|than|wherever|said|says|told|asked|replied"
    r"|answered|explained|admitted|confessed|remarked|declared|averred)\b)"
    r"|\b(?:understood|saw|knew|perceived|guessed|felt)\b[^—:;]{0,20}[—:;]\s*$"
    r"|^(?:Did|Does|Do|Had|Has|Was|Were|Would|Could)\b"
)  # it lies within another's thought, a question, a report, or what somebody does about it
_LEADS = re.compile(
    r"(?:^|[,;:—(“”‘’…]|\b(?:and|but|for|yet|so|then|or|nor|still|now|once|again|here|only|\w+ly))\s*$"
    r"|(?:^|[,;:—]\s*|\b(?:and|but|for)\s)(?:In|At|For|By|With|After|Upon|On|This|As|All|in|at|for|by|with|after)"
    r"(?:\s\w+){1,4}\s*$"
)  # a clause begins with it: 'the words she knew' is none
_WHEN = re.compile(r"\b(?:when|while|until|till|before|after|since|though|although|lest|as|unless)\s(?:\w+ly\s)?$")

# What stands behind it
_NOT = re.compile(
    rf"{BEGINS}{HELPS}{{0,2}}(?:(?:did|could|had|was|were|do)\s(?:not|n[’']t)|(?:didn|couldn|hadn|wasn)[’']t|never|little"
    r"|hardly|scarcely|nor)\s(?:\w+ly\s|even\s|yet\s|have\s)?(?:know|knew|known|reali[sz]ed?|guess(?:ed)?|suspect(?:ed)?"
    r"|imagined?|dream(?:ed|t)?|understand|understood|thought|think)\b"
)  # what nobody thinks is no thought
_PASSIVE = re.compile(
    r"\s+(?:\w+\s){0,2}?(?:was|were|been)\s(?:\w+ly\s|also\s|still\s|not\s)?"
    r"(?:known|recalled|remembered|supposed|thought|believed|feared|envied|suspected|despised|understood|decided|remembered|wished|guessed)\b"
)
_MIGHT = re.compile(
    r"\s+(?:would(?!\shave\s(?:liked\sto|given|wept))|should|might|must|may|will|(?:could\snot|couldn[’']t)(?!\s(?:help|remember))|cannot)\b"
)
_SEEN = re.compile(
    rf"{BEGINS}{HELPS}{{0,3}}(?:(?:wished|hoped|decided)\sto\b|wished\s(?:him|them|her|me|us|you|everybody)\b"
    r"|think\sof\b|(?:reflected|wondered)\sfor\b|thought\s(?:for\s(?:a|some|one|quite\sa|several|two|three)\s(?:\w+\s)?\w+"
    r"(?=\s*[.;]|,(?![^.;]*\bthat\b)|\s(?:and|before|with|while|as|over)\b)|a\s(?:while|moment|little|bit)|it\sover"
    r"|about\sit|it\s(?:best|well|better|fit|proper|necessary|right|wise|prudent)|better|fit|it\s[^.;,]{1,40}\sto)\b"
    r"|decided\b|remembered\s(?:himself|herself|to)\b|(?:believed|think|thought)\sin\b)"
)  # what is said or done shows it
_OPINION = re.compile(
    rf"{BEGINS}{HELPS}{{0,3}}(?:thought|thinks)\s(?:the|a|an|his|her|their|it|him|them|this|young|old)\b"
    r"(?:(?!\b(?:was|were|had|would|could|might|should|must|did)\b)[^,.;:])*[,.;:]"
)  # 'thought the country damp': what she thinks of things, whoever knows her knows
_KNEW = re.compile(rf"{BEGINS}{HELPS}{{0,3}}(?:knew|known|know|understood)\b")
_KNEW_THAT = re.compile(
    rf"{BEGINS}{HELPS}{{0,3}}(?:knew|known|understood)(?:\s*,|\s(?:\w+ly\s|now\s|then\s|at\sonce\s|well\s|very\s|too\s|only\s)*"
    r"(?:that|he|she|it|they|there|this|nothing\sbut)\b)"
)  # what somebody knows of the moment; 'knew the way' is no thought

_SHOWN = re.compile(
    r"\b(?:as\sif|as\sthough|(?:it|there)\sseemed(?!\sto)|seemingly|evident\w*|apparent\w*|appeared\sto\sbe|look(?:ed|s)\s(?:as|like)\b"
    r"|perhaps|probably|must\sbe|as\s(?:s?he|they)\s(?:said|put|told)|must\shave|no\sdoubt|doubtless|plainly|clearly|obviously|of\scourse)\b",
    re.IGNORECASE,
)
_LOOKED = re.compile(rf"{BEGINS}{HELPS}{{0,2}}look(?:ed|s)\b")
_USUAL = re.compile(
    r"\b(?:used\sto|always|often|sometimes|usually|every|each|whenever|times\swhen|in\sthose\sdays|as\sa\srule)\b",
    re.IGNORECASE,
)
_REPORT = re.compile(
    r"(?<!had )\b(?:said|told|explained|asked|replied|answered|averred|declared)\b[^“”‘]*\b(?:that|if|whether)\b"
)
_GUESSED = re.compile(
    rf"{BEGINS}{HELPS}{{0,3}}(?:(?:despised|envied|hoped|realised|realized|supposed|decided|guessed|believed|understood)\b"
    r"|thought\s(?:that\s)?(?:he|she|it|they)\b)"
)  # by an I, of others: one sees as much, or is told
_STRONG = re.compile(r"[;:—]")
_TELLER = re.compile(r"\b(?:I|me|my|we|us|our)\b")


def is_known(text: str, one: Mention, *, deep: bool, told_by_i: bool) -> bool:
    """Whether the thought is told as known, of that moment, in a clause of its own, and not as shown, guessed, heard or
    usual. Of an I that tells, what it knows of others is left out: a sentence with the I in it is the I's own."""
    start, end = sentence(text, one.start, one.end)
    said, before = text[start:end], text[start : one.start]
    short = len(said.split()) < (SHORTEST if deep and (one.kind == "name" or not told_by_i) else SHORT)
    if short or said.startswith(("“", "‘", '"', "If ")) or said.endswith(("?", "!", "”", "…")):
        return False
    if _WITHIN.search(before) or _REPORT.search(_before(text, start)):
        return False
    if (
        _SHOWN.search(said)
        or _LOOKED.match(text, one.end)
        or _USUAL.search(_part(text, one, start, end))
        or (told_by_i and _of_an_i(text, one, said))
    ):
        return False
    return seems_to(text, one) or is_inverted(text[: one.start]) or _is_own_clause(text, one, before)


def _before(text: str, start: int) -> str:
    """The sentence before the one that begins there."""
    return text[slice(*sentence(text, start - 2, start - 2))] if start > 1 else ""


def _part(text: str, one: Mention, start: int, end: int) -> str:
    """What stands round it between strong points: 'every day it got heavier' behind one says nothing of the thought."""
    before = max((match.end() for match in _STRONG.finditer(text, start, one.start)), default=start)
    after = _STRONG.search(text, one.end, end)
    return text[before : after.start() if after else end]


def _of_an_i(text: str, one: Mention, said: str) -> bool:
    """Whether the I that tells may see or guess it."""
    return bool(_TELLER.search(said) or (_GUESSED.match(text, one.end) and not is_inward(text, one)))


def _is_own_clause(text: str, one: Mention, before: str) -> bool:
    """Whether a clause of its own says that somebody thinks so, and what: no 'words she knew', no 'was feared'."""
    if _WHEN.search(before) or not _LEADS.search(before):
        return False
    end = behind(text, one)
    if any(pattern.match(text, end) for pattern in (_NOT, _PASSIVE, _MIGHT, _SEEN, _OPINION)):
        return False
    if DECIDES.match(text, end) and not is_secret(text, one):
        return False
    return not _KNEW.match(text, end) or bool(_KNEW_THAT.match(text, end))
