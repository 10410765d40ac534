"""How a sentence outside speech tells what somebody thinks or feels: as known, or as shown, heard, guessed, usual."""

import re

from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention
from afterdraft.reading.lexicon import words_of

SHORT, SHORTEST = 8, 4  # words of a sentence below which it is a pause in talk: 'She thought.'; and of a deep one
_DEEP = words_of(
    """
    wondered wondering wished wishing remembered dreaded longed longing regretted hoped hoping doubted feared knew
    suspected despised envied
    """
)  # nobody sees these done
_THINKS = _DEEP | words_of(
    """
    thought thinking believed believe think know supposed realised realized decided guessed imagined recalled understood
    """
)
_DEEP_NOW = words_of("wonders wishes remembers dreads longs regrets hopes doubts fears suspects despises envies knows")
_THINKS_NOW = _DEEP_NOW | words_of("thinks believes supposes realises realizes decides guesses imagines understands")
_HELPS = (
    r"(?:(?:had|could|would|did|never|not|was|were|\w+ly|still|only|also|been|even|now|always|just|long|again|then)\s+)"
)
_VERB = re.compile(rf"\s+{_HELPS}{{0,3}}(\w+)")
_FELT = re.compile(
    r"\s+(?:had\s|\w+ly\s|never\s)?(?:felt|feels)\s(?:a|an|no|nothing|that|himself|herself|suddenly|very|so|sorry|sure|ashamed"
    r"|proud|guilty|angry|happy|sad|tired|uneasy|relieved|sick|how)\b"
)
_ASIDE = re.compile(r",\s(?!and\b|or\b|but\b)[^,.;:“”‘]{3,70},(?=\s)")  # 'Marta, wiping the bench, thought'
_TO_ONESELF = re.compile(
    rf"\s+{_HELPS}{{0,2}}(?:(?:suddenly\s)?reminded\sof|(?:told|asked)\s(?:him|her)self\b|thinking\sof|help\s(?:thinking"
    r"|wondering|wishing)|found\s(?:him|her)self\s(?:thinking|wondering|wishing|remembering))"
)
_INVERTED = re.compile(r",\s(?:thought|wondered|thinks|wonders)\s$")  # 'it was late, thought Marta'
_INWARD = re.compile(
    r"\b(?:inwardly|(?:secretly|privately)(?=\s(?!\w+ing\b)\w)|in (?:his|her) (?:own )?(?:heart|soul|mind)|at heart)\b",
    re.IGNORECASE,
)
_SEEMED = re.compile(r"\b(?:seem(?:ed|s)|appear(?:ed|s)|occur(?:red|s))\sto\s$")

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
    rf"\s+{_HELPS}{{0,2}}(?:(?:did|could|had|was|were|do)\s(?:not|n[’']t)|(?:didn|couldn|hadn|wasn)[’']t|never|little"
    r"|hardly|scarcely|nor)\s(?:\w+ly\s|even\s|yet\s|have\s)?(?:know|knew|known|reali[sz]ed?|guess(?:ed)?|suspect(?:ed)?"
    r"|imagined?|dream(?:ed|t)?|understand|understood|thought|think)\b"
)  # what nobody thinks is no thought
_PASSIVE = re.compile(
    r"\s+(?:\w+\s){0,2}?(?:was|were|been)\s(?:\w+ly\s|also\s|still\s|not\s)?"
    r"(?:known|recalled|remembered|supposed|thought|believed|feared|envied|suspected|despised|understood|decided|remembered|wished|guessed)\b"
)
_MIGHT = re.compile(r"\s+(?:would|should|might|must|may|will|could\snot(?!\shelp)|couldn[’']t(?!\shelp)|cannot)\b")
_SEEN = re.compile(
    rf"\s+{_HELPS}{{0,3}}(?:(?:wished|hoped|decided)\sto\b|wished\s(?:him|them|her|me|us|you|everybody)\b"
    r"|thought\s(?:for\s(?:a|some|one)\s(?:\w+\s)?\w+(?=\s*[.;]|\sand\b)|a\s(?:while|moment|little|bit)|it\sover"
    r"|about\sit|it\s(?:best|well|better|fit|proper|necessary|right|wise|prudent)|better|fit|it\s[^.;,]{1,40}\sto)\b"
    r"|decided\b|remembered\s(?:himself|herself|to)\b|(?:believed|think|thought)\sin\b)"
)  # what is said or done shows it
_OPINION = re.compile(
    rf"\s+{_HELPS}{{0,3}}(?:thought|thinks)\s(?:the|a|an|his|her|their|it|him|them|this|young|old)\b"
    r"(?:(?!\b(?:was|were|had|would|could|might|should|must|did)\b)[^,.;:])*[,.;:]"
)  # 'thought the country damp': what she thinks of things, whoever knows her knows
_KNEW = re.compile(rf"\s+{_HELPS}{{0,3}}(?:knew|known|know|understood)\b")
_KNEW_THAT = re.compile(
    rf"\s+{_HELPS}{{0,3}}(?:knew|known|understood)(?:\s*,|\s(?:\w+ly\s|now\s|then\s|at\sonce\s|well\s|very\s|too\s|only\s)*"
    r"(?:that|he|she|it|they|there|this|nothing\sbut)\b)"
)  # what somebody knows of the moment; 'knew the way' is no thought

_SHOWN = re.compile(
    r"\b(?:as\sif|as\sthough|(?:it|there)\sseemed(?!\sto)|seemingly|evident\w*|apparent\w*|appeared\sto\sbe|look(?:ed|s)"
    r"|perhaps|probably|must\sbe|as\s(?:s?he|they)\s(?:said|put|told)|must\shave|no\sdoubt|doubtless|plainly|clearly|obviously|of\scourse)\b",
    re.IGNORECASE,
)
_USUAL = re.compile(
    r"\b(?:used\sto|always|often|sometimes|usually|every|each|whenever|times\swhen|in\sthose\sdays|as\sa\srule)\b",
    re.IGNORECASE,
)
_REPORT = re.compile(
    r"(?<!had )\b(?:said|told|explained|asked|replied|answered|averred|declared)\b[^“”‘]*\b(?:that|if|whether)\b"
)
_GUESSED = re.compile(
    rf"\s+{_HELPS}{{0,3}}(?:(?:despised|envied|hoped|realised|realized|supposed|decided|guessed|believed|understood)\b"
    r"|thought\s(?:that\s)?(?:he|she|it|they)\b)"
)  # by an I, of others: one sees as much, or is told
_TELLER = re.compile(r"\b(?:I|me|my|we|us|our)\b")


def inside(text: str, one: Mention) -> tuple[bool, bool]:
    """Whether words of the paragraph tell what the one mentioned thinks or feels, and whether nobody could see it."""
    if _SEEMED.search(text[: one.start]):
        return True, True
    if _INVERTED.search(text[: one.start]) and one.kind == "name":
        return True, True
    end = _behind(text, one)
    match = _VERB.match(text, end) if one.subject else None
    if match is None:
        return False, False
    verb = match[1]
    deep = (
        verb in _DEEP | _DEEP_NOW
        or bool(_FELT.match(text, end) or _TO_ONESELF.match(text, end))
        or _is_inward(text, one)
    )
    return deep or verb in _THINKS | _THINKS_NOW, deep


def is_thought_now(text: str, one: Mention) -> bool:
    """Whether the thought is told in the present: 'Ilse knows'."""
    match = _VERB.match(text, _behind(text, one))
    return match is not None and match[1] in _THINKS_NOW


def _behind(text: str, one: Mention) -> int:
    """Where what is told of the one mentioned goes on, behind what stands between commas."""
    aside = _ASIDE.match(text, one.end)
    return aside.end() if aside else one.end


def _is_inward(text: str, one: Mention) -> bool:
    """'In her heart she', 'he secretly': of nobody else, and in the same clause."""
    start, end = sentence(text, one.start, one.end)
    for match in _INWARD.finditer(text, start, end):
        between = text[min(match.end(), one.end) : max(match.start(), one.start)]
        whose = {"his": "m", "her": "f"}.get(match.group().lower().split()[1] if " " in match.group() else "", "")
        if not re.search(r"[;:—“”]", between) and whose in ("", one.gender or whose):
            return True
    return False


def is_known(text: str, one: Mention, *, deep: bool, told_by_i: bool) -> bool:
    """Whether the thought is told as known, of that moment, in a clause of its own, and not as shown, guessed, heard or
    usual. Of an I that tells, what it knows of others is left out: a sentence with the I in it is the I's own."""
    start, end = sentence(text, one.start, one.end)
    said, before = text[start:end], text[start : one.start]
    short = len(said.split()) < (SHORTEST if deep else SHORT)
    if short or said.startswith(("“", "‘", '"', "If ")) or said.endswith(("?", "!", "”", "…")):
        return False
    if _WITHIN.search(before) or _REPORT.search(_before(text, start)):
        return False
    if _SHOWN.search(said) or _USUAL.search(said) or (told_by_i and _of_an_i(text, one, said)):
        return False
    return bool(_SEEMED.search(before) or _INVERTED.search(before)) or _is_own_clause(text, one, before)


def _before(text: str, start: int) -> str:
    """The sentence before the one that begins there."""
    return text[slice(*sentence(text, start - 2, start - 2))] if start > 1 else ""


def _of_an_i(text: str, one: Mention, said: str) -> bool:
    """Whether the I that tells may see or guess it."""
    return bool(_TELLER.search(said) or (_GUESSED.match(text, one.end) and not _is_inward(text, one)))


def _is_own_clause(text: str, one: Mention, before: str) -> bool:
    """Whether a clause of its own says that somebody thinks so, and what: no 'words she knew', no 'was feared'."""
    if _WHEN.search(before) or not _LEADS.search(before):
        return False
    end = _behind(text, one)
    if any(pattern.match(text, end) for pattern in (_NOT, _PASSIVE, _MIGHT, _SEEN, _OPINION)):
        return False
    return not _KNEW.match(text, end) or bool(_KNEW_THAT.match(text, end))
