"""Words that tell of somebody that they died, or left for good, before and behind the word that means them."""

import re

_CALM = r"(?:(?:now|also|already|at\slast|suddenly|instantly|quietly|been|since|long)\s)*"
_DIES = re.compile(
    rf"\s(?:(?:(?:was|lay|is|were|had\sbeen|has\sbeen)\s{_CALM}(?:killed|drowned|buried|murdered|hanged|executed|beheaded|guillotined|dead"
    r"|(?:found|shot|struck|stone)\sdead|stabbed\sto\sdeath|burned\sto\sdeath|lost\sat\ssea))"
    rf"|(?:(?:had|has|was|lay|is)\s)?{_CALM}(?:died|expired|perished|(?:met|found)\s(?:his|her)\s(?:death|end)|breathed\s(?:his|her)\slast|fell\sdead|dropped\sdead|(?:got|was)\sdrowned"
    r"|passed\saway|in\s(?:his|her)\sgrave|took\s(?:his|her)\sown\slife|taken\s(?:his|her)\sown\slife"
    r"|was\sno\smore(?=[,.;!]|$)))\b(?!\s(?:of|with|for|to)\s(?:laughing|laughter|shame|love|curiosity|the\sworld|fright)"
    r"|\s(?:asleep|tired|drunk|set|certain|beat|against|sure|in\slove|himself|herself|silent|calm|by\sinches|a\b|an\b"
    r"|the\b(?!\s(?:next|same|following|day|night|week|year|other))|his\b|her\b|him\b|it\b|two\b(?!\s(?:hours|days|nights|weeks|months|years)\b)|time\b|them\b|for\b|away\b|in\sthe\ssofa))"
)
_LEAVES = re.compile(
    r"\s(?:had\s)?(?:sailed|left|went|gone|emigrated|departed|rode|drove|embarked)\b[^.;!?]*"
    r"\bnever\s(?:\w+\s){0,4}(?:again|back|return\w*)\b"
)
_TAKEN = re.compile(
    r"\b(?:(?:they|we|people|men|and)\s(?:had\s)?buried|(?:the|a)\s(?:\w+\s)?(?:fever|plague|cholera|consumption|sea|illness|sickness)"
    r"\s(?:had\s)?(?:took|taken|carried\soff|killed)|(?:funeral|burial|grave)\sof)\s(?:poor\s|old\s)*$",
    re.IGNORECASE,
)
_END, _END_HOW = (
    re.compile(r"\bend\sof\s(?:poor\s|old\s)*$"),
    re.compile(r"[,;:—]\s(?:and\s)?(?:the|his|her)\sfuneral\swas\b"),
)
_FOUND = re.compile(r"\bfound\s(?:poor\s|old\s)*$")
_FOUND_HOW = re.compile(r"[^.;!?]*?\b(?:dead|drowned|hanged|murdered|lifeless)\b(?!\s(?:tired|drunk|asleep))")
_LAST = re.compile(r"\b(?:never|nobody|last\stime)\b[^.;!?]*\b(?:saw|seen|see)\s(?:poor\s|old\s)*$", re.IGNORECASE)
_LAST_HOW = re.compile(r"\salive\b")
_UNSURE = re.compile(
    r"\b(?:(?:if|though|think|thinks|thought|believe|believed|suppose|supposed|fear|feared|wish|wished|hope|hoped|until|till"
    r"|unless|would|might|may|should|could|dream|dreamed|dreamt|perhaps|whether|nearly|almost|as\sif|fancied"
    r"|imagined|pretend|pretended|rumou?r|told|said|heard|not|or)\b[^.;!?]*"
    r"|(?:when|before|after|never|since|once|as)\s(?!(?:morning|dawn|noon|night|evening|long|then|that)\s)"
    r"(?:\w+\s){0,2})$",
    re.IGNORECASE,
)


def is_gone(before: str, behind: str) -> bool:
    """Whether a sentence, split where it means somebody, tells for certain that they are dead or have left for good.

    >>> is_gone("By then poor ", " had died of it."), is_gone("They buried ", " on the Friday.")
    (True, True)
    >>> is_gone("She thought that ", " was dead."), is_gone("", " was dead tired.")
    (False, False)
    """
    if behind.startswith(("’", "'")):
        return False  # 'Ada’s father was dead'
    if "?" in behind or _UNSURE.search(before):
        return bool(_LAST.search(before) and _LAST_HOW.match(behind))
    return bool(
        _DIES.match(behind)
        or _LEAVES.match(behind)
        or _TAKEN.search(before)
        or (_END.search(before) and _END_HOW.match(behind))
        or (_FOUND.search(before) and _FOUND_HOW.match(behind))
        or (_LAST.search(before) and _LAST_HOW.match(behind))
    )
