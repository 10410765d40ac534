"""Where a thought is what somebody else sees or guesses of the one who thinks: 'He did not believe her, she saw.'"""

import re
from collections.abc import Sequence, Set

from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention

_WHO = r"(?P<who>[A-Z]\w+|[Hh]e|[Ss]he|I|[Tt]hey|[Ww]e)"
_SEES = (
    r"(?:(?:could|can)\s(?:see|tell|feel|hear|read)|saw|sees|thought|thinks|knew|knows|felt|guessed|guesses|supposed"
    r"|suspected|noticed|judged|gathered|understood|believed|sensed|reali[sz]ed|decided|fancied|imagined|considered)"
)
_ASIDE = re.compile(rf"[,;—]\s{_WHO}\s(?:\w+ly\s|had\s)?{_SEES}(?=\s*[,.;—])")
_LOOKS = re.compile(
    rf"\b{_WHO}\s(?:\w+ly\s|had\s|had\salways\s|always\s)?(?:(?:could|can)\s(?:\w+\s)?(?:see|tell|read|guess)\b"
    r"|(?:knew|knows|saw|sees|guessed|recogni[sz]ed|understood)\s(?:(?:that|what|how|why|it|this|him|her)\b|(?:the|his|her)\s"
    r"(?:look|face|eyes|silence|expression|sign))|(?:watched|watches|studied|studies|imagined|pictured|dreamed\sof|dreamt\sof)\s(?:him|her|[A-Z]\w+|(?:his|her)\sface)\b)"
)
_SHOWS = re.compile(
    r"\b(?:face|eyes|look|expression|silence)\s(?:said|told|showed|gave)\b|\b(?:[Ii]t|[Tt]hat)\s(?:was|is)\s(?:\w+\s)?"
    r"(?:plain|clear|obvious|evident|written|in\s(?:his|her)\s(?:face|eyes|voice)|all\sover\s(?:him|her))\b|\b[Ii]t\sshowed\b"
    r"|\b(?:could|can)\s(?:see|tell|read)\s(?:it|that|as\smuch)\b|\b(?:saw|knew)\s(?:it|as\smuch)\b"
)


def is_from_outside(text: str, mention: Mention, names: Set[str]) -> bool:
    """Whether somebody else sees it, in its sentence, looks and knows in the one before, or it shows in that or the one
    behind. `names` are the thinker's, and the 'he' or 'she' that goes with them."""
    start, end = sentence(text, mention.start, mention.end)
    behind = text[slice(*sentence(text, end + 1, end + 1))] if end + 1 < len(text) else ""
    before = text[slice(*sentence(text, start - 2, start - 2))] if start > 1 else ""
    if any(one.start("who") != mention.start for one in _ASIDE.finditer(text, start, end)):
        return True
    others = _others([one["who"] for one in _LOOKS.finditer(before)], names)
    return bool(others or _SHOWS.search(before) or _SHOWS.search(behind))


def _others(who: Sequence[str], names: Set[str]) -> list[str]:
    return [one for one in who if one not in names and one.lower() not in names]
