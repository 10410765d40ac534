"""Words that tell of somebody that they died, or left for good, before and behind the word that means them."""

import re

_CALM = r"(?:(?:now|also|already|at\slast|suddenly|instantly|quietly|been|since|long|then)\s)*"
_GUESS = (
    r"doubtless|undoubtedly|no\sdoubt|without\s(?:a\s)?doubt|(?:most|very)\slikely|likely\senough|probabl[ye]|presumably"
    r"|(?:in\s)?all\s(?:likelihood|probability)|apparently|evidently|surely|certainly|possibly|maybe|as\sgood\sas"
)  # what is said to be sure is a guess
_APART = (
    r"(?:\s(?:himself|herself)|\sand\s(?:(?:the|his|her)\s)?\w+"
    r"|,\s(?![^,]*\b(?:seem|appear|th[io]|said|say|hear|believ|fear|suppos|perhaps|if|would|might))"
    rf"(?![^,]*\b(?:{_GUESS})\b)[^,.;:!?“”]{{1,60}},)?"
)  # what may stand between the word and its verb
_KILLED = (
    r"killed|drowned|buried|murdered|hanged|executed|beheaded|guillotined|strangled|dead|(?:shot|struck|stone)\sdead"
    r"|found\s(?:dead|drowned|hanged|murdered|lifeless)|(?:stabbed|burned)\sto\sdeath|shot\sthrough\sthe\s(?:head|heart|lungs?)"
    r"|lost\s(?:at\ssea|with\s(?:the|his|her|all)\s(?:ship|boat|brig|schooner|steamer|crew|hands))"
    r"|laid\s(?:to\srest|in\s(?:the|his|her)\s(?:grave|churchyard|vault|tomb|earth))"
)
_DIED = (
    r"died|expired|perished|(?:met|found)\s(?:his|her)\s(?:death|end)|breathed\s(?:his|her)\slast|fell\sdead|dropped\sdead"
    r"|(?:got|was)\sdrowned|passed\saway|in\s(?:his|her)\sgrave|(?:took|taken)\s(?:his|her)\sown\slife|was\sno\smore(?=[,.;!]|$)"
    r"|(?:drowned|hanged|shot|killed|poisoned)\s(?:himself|herself)|drowned\s(?:in|off|at|near)\s(?:the|a)"
    r"|(?:bled|starved|froze|frozen|choked|burned)\sto\sdeath|put\sa\sbullet\s(?:through|in|into)\s(?:his|her)\s(?:head|brain|heart)"
    r"|cut\s(?:his|her)\sown\sthroat|ceased\sto\s(?:breathe|live)|did\snot\slive\sto|never\s(?:recovered|regained)\sconsciousness"
    r"|succumbed\sto\s(?:the|his|her)\s(?:fever|wounds?|illness|disease|injuries|consumption|pneumonia)"
)
_DIES = re.compile(
    rf"{_APART}\s(?:(?:was|lay|is|were|had\sbeen|has\sbeen)\s{_CALM}(?:{_KILLED})|(?:(?:had|has|was|lay|is)\s)?{_CALM}(?:{_DIED}))\b"
    r"(?!\s(?:of|with|for|to)\s(?:laughing|laughter|shame|love|curiosity|the\sworld|fright|envy)"
    r"|\s(?:asleep|tired|drunk|set|certain|beat|against|sure|in\slove|himself|herself|silent|calm|by\sinches|a\b|an\b"
    r"|the\b(?!\s(?:next|same|following|day|night|week|year|other))|his\b|her\b|him\b|it\b"
    r"|two\b(?!\s(?:hours|days|nights|weeks|months|years)\b)|time\b|them\b|for\b|away\b|in\sthe\ssofa))"
)
_NOT_WOKEN = re.compile(r"[^.;!?“”]*\b(?:did\snot\swake|never\swoke)\sagain\b")
_OF_WHOM = re.compile(r"[’']s\s(?:funeral\s(?:was|took\splace)|(?:dead\s)?body\swas\s(?:found|washed|buried))\b")
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
_LAID = re.compile(r"\b(?:they|we|and)\s(?:had\s)?laid\s(?:poor\s|old\s)*$", re.IGNORECASE)
_LAID_WHERE = re.compile(r"[^.;!?]*?\sin\s(?:the|his|her)\s(?:grave|churchyard|vault|tomb|earth)\b")
_SO, _SO_ENDS = re.compile(r"\bSo\sdied\s(?:poor\s|old\s)*$"), re.compile(r"[,.;!]|$")
_FOUND = re.compile(r"\bfound\s(?:poor\s|old\s)*$")
_FOUND_HOW = re.compile(r"[^.;!?]*?\b(?:dead|drowned|hanged|murdered|lifeless)\b(?!\s(?:tired|drunk|asleep))")
_LAST = re.compile(r"\b(?:never|nobody|last\stime)\b[^.;!?]*\b(?:saw|seen|see)\s(?:poor\s|old\s)*$", re.IGNORECASE)
_LAST_HOW = re.compile(r"\salive\b")
_UNSURE = re.compile(
    r"\b(?:(?:if|though|think|thinks|thought|believe|believed|suppose|supposed|fear|feared|wish|wished|hope|hoped|until|till"
    r"|unless|would|might|may|should|could|dream|dreamed|dreamt|perhaps|whether|nearly|almost|as\sif|fancied"
    r"|imagined|pretend|pretended|rumou?r|told|said|heard|conjectured|guessed|supposing|not|or"
    rf"|{_GUESS})\b[^.;!?]*"
    r"|(?:when|before|after|never|since|once|as)\s(?!(?:morning|dawn|noon|night|evening|long|then|that)\s)"
    r"(?:\w+\s){0,2}|had\s)$",
    re.IGNORECASE,
)


_NOT_ITSELF = re.compile(r"\b(?:for|of|with|to|from|against|towards?|about|on|by|in)\s(?:poor\s|old\s)*$")


def is_gone(before: str, behind: str) -> bool:
    """Whether a sentence, split where it means somebody, tells for certain that they are dead or have left for good.

    >>> is_gone("By then poor ", " had died of it."), is_gone("They buried ", " on the Friday.")
    (True, True)
    >>> is_gone("She thought that ", " was dead."), is_gone("", " was dead tired.")
    (False, False)
    >>> is_gone("His love for ", " was dead.")
    False
    """
    if behind.startswith(("’", "'")):
        return bool(_OF_WHOM.match(behind)) and "?" not in behind and not _UNSURE.search(before)  # not 'Ada’s father'
    if "?" in behind or _UNSURE.search(before):
        return bool(_LAST.search(before) and _LAST_HOW.match(behind))
    pairs = ((_END, _END_HOW), (_LAID, _LAID_WHERE), (_SO, _SO_ENDS), (_FOUND, _FOUND_HOW), (_LAST, _LAST_HOW))
    itself = not _NOT_ITSELF.search(before)  # 'his love for Ada is dead'
    return bool(
        (itself and any(one.match(behind) for one in (_DIES, _LEAVES, _NOT_WOKEN)))
        or _TAKEN.search(before)
        or any(one.search(before) and other.match(behind) for one, other in pairs)
    )
