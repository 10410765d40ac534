"""By which words a sentence outside speech tells what somebody thinks or feels."""

import re

from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention
from afterdraft.reading.lexicon import words_of

HELPS = (
    r"(?:(?:had|could|would|did|never|not|was|were|is|are|has|\w+ly|still|only|also|been|even|now|always|just|long|again"
    r"|then|(?:had|could|did|was)n[’']t)\s+)"
)
BEGINS = r"(?:[’']d)?\s+"  # 'She'd thought'
_DEEP = words_of(
    """
    wondered wondering wished wishing remembered remember dreaded longed longing regretted hoped hoping feared knew
    suspected despised envied
    """
)  # nobody sees these done
_THINKS = _DEEP | words_of(
    """
    thought thinking believed believe think know supposed realised realized decided guessed imagined recalled understood
    reflected doubted
    """
)
_DEEP_NOW = words_of("wonders wishes remembers dreads longs regrets hopes doubts fears suspects despises envies knows")
_THINKS_NOW = _DEEP_NOW | words_of("thinks believes supposes realises realizes decides guesses imagines understands")
_VERB = re.compile(rf"{BEGINS}{HELPS}{{0,3}}(\w+)")
_OF = (
    r"(?:again\s|suddenly\s|then\s|at\sonce\s|only\s|mostly\s)?(?:(?:of|about)\s(?!(?:that|this|it|nothing|no|everything"
    r"|anything|something)\b)|back\sto\b|how\b|what\b)"
)
_FELT = re.compile(
    r"(?:[’']d)?\s+(?:had\s|\w+ly\s|never\s)?(?:felt|feels)\s(?:a|an|no|nothing|that|himself|herself|suddenly|very|so|sorry"
    r"|sure|ashamed|proud|guilty|angry|happy|sad|tired|uneasy|relieved|sick|how)\b"
)
_ASIDE = re.compile(r",\s(?!and\b|or\b|but\b)[^,.;:“”‘]{3,70},(?=\s)")  # 'Marta, wiping the bench, thought'
_TO_ONESELF = re.compile(
    rf"{BEGINS}{HELPS}{{0,2}}(?:(?:suddenly\s)?reminded\sof|(?:told|asked|promised)\s(?:him|her)self\b|thinking(?:\s{_OF}|,)"
    rf"|thinks?\s{_OF}|thought\s{_OF}|help\s(?:thinking|wondering|wishing)"
    r"|found\s(?:him|her)self\s(?:thinking|wondering|wishing|remembering)|been\smeaning\sto"
    r"|have\s(?:liked\sto|given\s(?:anything|a\sgreat\sdeal|a\sgood\sdeal|much)|wept|kicked\s(?:him|her)self)\b)"
)
DECIDES = re.compile(
    rf"{BEGINS}{HELPS}{{0,2}}(?:ma(?:de|kes)\sup\s(?:his|her)\smind|resolve[ds])\b"
)  # as is seen, unless it is said that nobody is told
_THEN = re.compile(
    r"(?:[’']d)?\s(?:(?!\b(?:he|she|I|they|we|you|it|who|which|that|said|asked)\b)[^,.;:“”‘—]){3,70},?\s(?:and|but)\s"
    rf"(?:then\s|\w+ly\s)?(?:wondered|wonders|wished\sthat|remembered|hoped\sthat|dreaded|longed|thought\s{_OF})"
)  # 'Marta wiped the bench and wondered'
_OWN = re.compile(
    r"(?:[’']s?)?\s(?:own\s)?(?:mind|thoughts|heart|memory|conscience)\s(?:\w+ly\s|had\s)?(?:went|gone|ran|turned"
    r"|leapt|leaped|sank|sunk|misgave|jumped|wandered|strayed|flew|smote|pricked)\b"
)  # 'Marta's mind went back to'
_INVERTED = re.compile(r",\s(?:thought|wondered|thinks|wonders)\s$")  # 'it was late, thought Marta'
_INWARD = re.compile(
    r"\b(?:inwardly|(?:secretly|privately)(?=\s(?!\w+ing\b)\w)|in (?:his|her) (?:own )?(?:heart|soul|mind)|at heart"
    r"|(?:hoped|wished|prayed|longed|dreaded) with all (?:his|her) (?:heart|soul))\b",
    re.IGNORECASE,
)
_SEEMED = re.compile(r"\b(?:seem(?:ed|s)|appear(?:ed|s))\sto\s$")
_COMES = re.compile(
    r"\b[Ii]t\s(?:had\s|then\s|just\s|\w+ly\s){0,2}"
    r"(?:(?:occur(?:red|s)|c[ao]mes?(?:\sback)?)\sto|dawned\s(?:up)?on|str(?:uck|ikes))\s$"
)
_STRUCK = re.compile(r"\bstr(?:uck|ikes)\s$")
_THAT = re.compile(r"\s(?:then\s|now\s|\w+ly\s)?(?:that|how)\b")
_SECRET = re.compile(
    r"\b(?:never|not|nor|n[’']t)\s(?:\w+\s){0,3}?(?:told|tell|said\sso|say\sso"
    r"|(?:spoken|spoke|speak)\s(?:of|to|about)|mention(?:ed)?|breathed?)\b"
    r"|\bsaid\snothing\s(?:of|about)\b|\bto\s(?:him|her)self\b(?=[.,;])|\b(?:to|told)\s(?:a\s(?:living\s)?soul|nobody|no\sone)\b",
    re.IGNORECASE,
)  # that nobody is told of it
_MORE = re.compile(r"\band\s(?:was\s)?(?:wondered|remembered|reminded\sof|wished|longed|dreaded|regretted)\b")
_OF_SOMEBODY = re.compile(
    r"\s(?:\w+ly\s)?(?:thought|thinks)\s(?:that\s)?s?he(?:[’']d|[’']s|\s(?:had|was|is|has|did|looked|\w+ed)\b)"
)
_BEHIND = 2  # sentences behind it that may say so


def inside(text: str, one: Mention) -> tuple[bool, bool]:
    """Whether words of the paragraph tell what the one mentioned thinks or feels, and whether nobody could see it."""
    if seems_to(text, one) or (_INVERTED.search(text[: one.start]) and one.kind == "name"):
        return True, True
    end = behind(text, one)
    if _OWN.match(text, one.end):
        return True, True
    match = _VERB.match(text, end) if one.subject else None
    if match is None:
        return False, False
    verb = match[1]
    ways = _FELT.match(text, end) or _TO_ONESELF.match(text, end) or _THEN.match(text, end)
    deep = verb in _DEEP | _DEEP_NOW or bool(ways) or is_inward(text, one)
    return deep or verb in _THINKS | _THINKS_NOW or bool(DECIDES.match(text, end)), deep


def comes_to(text: str, one: Mention) -> bool:
    """'It occurred to Marta', 'it struck her that'."""
    before = text[: one.start]
    return bool(_COMES.search(before)) and (not _STRUCK.search(before) or bool(_THAT.match(text, one.end)))


def seems_to(text: str, one: Mention) -> bool:
    """'It seemed to Marta', and all that comes to her."""
    return bool(_SEEMED.search(text[: one.start])) or comes_to(text, one)


def is_inverted(before: str) -> bool:
    """'It was late, thought' before the name."""
    return bool(_INVERTED.search(before))


def is_thought_now(text: str, one: Mention) -> bool:
    """Whether the thought is told in the present: 'Ilse knows'."""
    match = _VERB.match(text, behind(text, one))
    return match is not None and match[1] in _THINKS_NOW


def behind(text: str, one: Mention) -> int:
    """Where what is told of the one mentioned goes on, behind what stands between commas."""
    aside = _ASIDE.match(text, one.end)
    return aside.end() if aside else one.end


def is_inward(text: str, one: Mention) -> bool:
    """'In her heart she', 'he secretly': of nobody else, and in the same clause."""
    start, end = sentence(text, one.start, one.end)
    for match in _INWARD.finditer(text, start, end):
        between = text[min(match.end(), one.end) : max(match.start(), one.start)]
        whose = {"his": "m", "her": "f"}.get(match.group().lower().split()[1] if " " in match.group() else "", "")
        parts = r"[;:—“”]|, (?:and|but)\b" if match.start() < one.start else r"[,;:—“”]"
        if not re.search(parts, between) and whose in ("", one.gender or whose):
            return True
    return False


def is_secret(text: str, one: Mention) -> bool:
    """Whether the sentence, or one right behind it, says that nobody is told."""
    start, end = sentence(text, one.start, one.end)
    for _ in range(_BEHIND):
        if end + 1 < len(text):
            end = sentence(text, end + 1, end + 1)[1]
    return bool(_SECRET.search(text, start, end))


def is_more(text: str, one: Mention) -> bool:
    """Whether its sentence goes on with what nobody sees: 'thought that it was late, and wondered'."""
    return bool(
        _MORE.search(text, one.end, sentence(text, one.start, one.end)[1])
        or _OF_SOMEBODY.match(text, behind(text, one))
    )
