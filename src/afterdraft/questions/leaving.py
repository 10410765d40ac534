"""Words by which somebody who is named leaves a scene, and those that say that they are there again."""

import re

_FIRST = (
    r"(?:(?:got\sup|rose|stood\sup|turned|nodded|bowed|paused|waved|picked\sup[^.;!?]{1,40}"
    r"|took\s(?:his|her)\s(?:hat|coat|bag|gloves))(?:,?\s(?:and|then))+\s)?"
)
_GO = (
    r"(?:went|walked|ran|strode|stalked|rode|drove|hurried|rushed|swept|slipped|marched|stormed|limped|cycled|stamped)"
)
_AWAY = (
    r"(?:out(?=[,.;!]|\sand\s(?!did\b|sang\b|played\b|danced\b|bowed\b|performed\b|took\sa\sbow)|\sof\sthe\s(?:room|house|kitchen|shop|office|hall|church|bar|door|gate)|\swithout)"
    r"|(?:away|off)(?=[,.;!]|\sand\s|\swithout)|home(?=[,.;!]))"
)
_LEAVES = re.compile(
    rf"(?:\s(?:then|now|just|only|at\slast|\w+ly))*\s{_FIRST}(?:{_GO}\s(?:straight\s|right\s|quickly\s|slowly\s)?{_AWAY}"
    r"|left\s(?:the\s(?:room|house|kitchen|shop|office|table|hall|building|library|study|deck|cabin|tent|hut|church|bar)"
    r"|them\salone|us\salone|without\sa)|took\s(?:his|her)\sleave|(?:shut|closed|slammed)\sthe\sdoor\s(?:behind|after)"
    r"\s(?:him|her)|was\sgone(?=[,.;!])|hung\sup|rang\soff"
    r"|had\s(?:already\s|just\s)?gone\s(?:up|out|home|away|off|to\sbed|upstairs|ahead)\b(?!\s(?:along|on|onto|over|across|through|into|under)\b)"
    r"|had\sleft\s(?:early|for\s(?:home|the\s(?:day|night))))\b"
)
_SEES = re.compile(r"\b(?:watched|saw|heard)\s$")
_SEEN = re.compile(
    r"\s(?:[^.;!?]{0,80}?(?:,|\band)\s(?:and\s)?)?(?:go|walk|run|drive|ride|stride|hurry|limp|cycle|march)"
    r"\s(?:out|away|off|home|upstairs|downstairs|(?:down|up)\sthe\s\w+)\b"
)  # 'she watched her go down the street'
_HEARD = re.compile(
    r"\bheard\s(?:the|his|her|a|an)\s(?:[\w-]+\s){0,2}(?:car|van|truck|engine|motor|motorbike|taxi|cab|cart|carriage|door|gate"
    r"|latch|footsteps|steps|hooves|wheels|boat)\s(?:go\s(?:down|up|out|off|away)|start|drive\s(?:away|off|down)|pull\s(?:out|away"
    r"|off)|slam|shut|close|bang|click|fade|recede|die\saway|pass\sout)\b"
    r"|\b(?:door|gate)\s(?:closed|slammed|shut|banged|clicked|swung\sto)\s(?:behind|after|on)\s(?:him|her)\b"
)  # after what somebody does, by which they go
_KIN = r"(?:sister|mother|brother|father|daughter|son|aunt|uncle|cousin|friend|parents)"
_DUE = (
    r"(?:(?:would|wouldn[’']t|[’']d|was|wasn[’']t)\s)?(?:not\s)?(?:be|come|expected|due)\s"
    r"(?:back|home)\s(?:[^.;!?]{0,24}\b)?(?:till|until|before|for\s(?:a|the|some)\s\w+|on\sthe\s\w+|(?:much\s)?before|by\sthe)\b"
)
_ABSENT = re.compile(
    rf"(?:\s(?:alone|only|still|himself|herself|had|was))*\s(?:"
    r"sent\s(?:word|a\snote|a\scard|a\smessage|his|her)\b[^.;!?]{0,50}?\b(?:stay\w*|at\shome|in\sbed|not\scome|excuse\w*"
    r"|apolog\w+|regrets)|(?:missing|absent|laid\sup|away)(?=[,.;])|(?:desired|begged|asked)\sto\sbe\s(?:forgiven|excused)"
    rf"|gone\s(?:up\s|over\s|down\s|back\s|home\s)?to\s(?:his|her)\s{_KIN}[’']s\b"
    r"|took\sthe\s(?:[\w-]+\s)?(?:van|car|train|bus|boat|launch|cart|ferry)\s(?:in\s)?(?:in)?to\s[A-Z]\w+"
    r"|went\saway\sthis\s\w+|[^.;!?]{3,80},?\sand\swent(?=\.))"
    rf"|^(?:\s|(?=[’']d)){_DUE}"
)  # where somebody is not there, told at the head of a scene or within it
_LONG_AGO = re.compile(
    r"\b(?:ago|once|years?|used\sto|always|every|often|last\s\w+|when|if|whenever|never|1\d\d\d|20\d\d|as\sa\s(?:boy|girl|child))\b"
)
_UNSURE = re.compile(
    r"\b(?:if|would|when|until|till|before|after|as|while|once|never|not|always|every)\b", re.IGNORECASE
)
_CLAUSE = re.compile(r"[,;:—]")
_BACK = re.compile(
    r"\b(?:back|return\w*|re-?appear\w*|re-?enter\w*|again|came|come|coming|enter(?:ed|ing)|appear\w*|(?:re-?)?join\w*"
    r"|follow\w*|caught|overt(?:ook|aken)|door|telephone|phone|letter|wrote|through|from\sthe|would|had|turned|stopped"
    r"|halted|paused|ran|walked|strode|rode|drove|marched|arriv\w*|reached|called|shouted|cried)\b",
    re.IGNORECASE,
)
_ELSEWHERE = re.compile(
    r"\b(?:hours?|days?|weeks?|months?|morning|ago|later|presently|telephone|phone|followed|caught\sup|overtook"
    r"|they\swent|walked\s(?:up|down|along|on)|outside|without\b(?=[,.;])|met|meeting|encountered|rejoined|standing\son"
    r"|(?:in|on|into|across|along|down|up)\sthe\s(?:street|garden|yard|stairs|landing|terrace|lawn|road|lane|path|passage))\b",
    re.IGNORECASE,
)


def leaves(before: str, behind: str, *, named: bool) -> int:
    """How far behind the word that means somebody, in a sentence split there, it is told that they leave; 0 where it is
    not. Somebody who is not `named` has to be seen or heard to go.

    >>> leaves("Then ", " went out, and the bell rang.", named=True) > 0
    True
    >>> leaves("I watched ", " cross the street and drive away.", named=False) > 0
    True
    >>> leaves("When ", " went out, it rained.", named=True), leaves("", " went out to her car.", named=True)
    (0, 0)
    """
    if re.search(r"\band\s$", before):
        return 0  # 'she and Ada went out': the telling goes with them
    if _UNSURE.search(_CLAUSE.split(before)[-1]) or _UNSURE.search(behind[:12]) or "?" in behind:
        return 0
    match = _SEEN.match(behind) if _SEES.search(before) else _LEAVES.match(behind) if named else None
    return match.end() if match else 0


def is_absent(behind: str) -> int:
    """How far behind the word that means somebody, in a sentence split there, it is told that they are away for now; 0
    where it is not.

    >>> is_absent(" had sent word that he was staying at home.") > 0
    True
    >>> is_absent(" had gone to her aunt’s as a girl.")
    0
    """
    match = None if _LONG_AGO.search(behind) or "?" in behind else _ABSENT.match(behind)
    return match.end() if match else 0


def is_heard_to_go(text: str) -> int:
    """How far into a paragraph, its speech silenced, somebody is heard to go; 0 where nobody is.

    >>> is_heard_to_go("Ada took her bag. They heard the car go down the drive.") > 0
    True
    >>> is_heard_to_go("They heard the car stop.")
    0
    """
    match = _HEARD.search(text)
    return match.end() if match else 0


def is_back(sentence: str) -> bool:
    """Whether a sentence about somebody who has left may say that they are there again, or speak from elsewhere.

    >>> is_back("Ada came in with the tray."), is_back("Ada was much liked.")
    (True, False)
    """
    return bool(_BACK.search(sentence))


def is_elsewhere(told: str) -> bool:
    """Whether the telling has moved, in time or to another place.

    >>> is_elsewhere("An hour later it rained."), is_elsewhere("It rained.")
    (True, False)
    """
    return bool(_ELSEWHERE.search(told))
