"""Words that tell how long somebody is dead or something is past, how old the dead died, and would be."""

import re

from afterdraft.reading.trait_words import number

Years = tuple[float, float]  # fewest, most

_NUMBER = r"(?:\d{1,3}|(?:[A-Za-z]+ty-)?[A-Za-z]+)"
_VAGUE = (
    r"(?P<vague>(?:about|some|nearly|almost|over|more\sthan|a\sgood|good|at\sleast|well\sover|hardly|barely|not\syet|close\son"
    r"|getting\son\sfor|going\son|less\sthan|under|upwards\sof|roughly|maybe|perhaps)\s)?"
)
_HOW_LONG = rf"{_VAGUE}(?P<count>{_NUMBER})\s(?P<unit>years?|winters?|summers?|months?|weeks?)"
AGO = re.compile(
    rf"\b{_HOW_LONG}(?P<odd>\sor\s(?:so|more)|\sodd)?\s(?:(?:ago|back|earlier)\b|(?:before|since|past|gone)\b(?=[,.;:!?—]|$|\sand\b|\sin\b|\sof\b))"
)
_HERE = r"(?:now|already|these|this|for|the|last|past|there|been|all|as\sof|come)"
DEAD = re.compile(
    rf"(?:\b(?:dead|buried|drowned|in\s(?:his|her|the)\s(?:grave|ground|churchyard|cemetery)|under\s(?:the\s)?(?:ground|grass|sod|earth)"
    rf"|lain|lying|lay)\b(?:\s{_HERE})*\s{_HOW_LONG}(?P<odd>\sor\s(?:so|more))?\b(?!\s(?:before|after|later|when))"
    rf"|\b{_HOW_LONG.replace('P<', 'P<x')}\s(?:dead|buried|drowned|in\s(?:his|her|the)\s(?:grave|ground|churchyard))\b)"
)
SEASON = re.compile(
    r"\b(?P<which>this|last)\s(?:very\s|same\s|past\s)?(?P<season>spring|summer|autumn|fall|winter|year|month|week|night"
    r"|January|February|March|April|May|June|July|August|September|October|November|December|Christmas|Easter)\b"
)
_NAMED = r"(?P<name>[A-Z]\w+(?:\s[A-Z]\w+)?|(?:[Mm]y|[Hh]is|[Hh]er|[A-Z]\w+[’']s)\s[a-z]+)"
_DIED = (
    r"(?:[’']s\s(?:death|funeral)|\s(?:(?:had\s)?(?:died|drowned|passed\saway)|was\s(?:killed|drowned|buried)"
    r"|(?:went|passed|had\sgone)(?=[,.;!?—]|$|\sand\b)))"
)
_SINCE = r"(?:\snow)?(?:,?\sever)?(?:\s(?:had|have)\s(?:passed|gone(?:\sby)?|elapsed))?\s(?:ago\s)?(?:since|that)"
_BEEN = r"(?:\s(?:has|had|have)|[’'](?:s|d|ve))\sbeen\s"
SINCE = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b{_HOW_LONG}{_SINCE}\s{_NAMED}{_DIED}\b",
        rf"\b{_HOW_LONG}{_SINCE}\s(?:we|they|I|he|she)(?:\shad|[’']d)?\s(?:buried|lost)\s(?:poor\s|old\s)?{_NAMED}\b(?![’'])",
        rf"\bsince\s{_NAMED}{_DIED},?\s{_HOW_LONG}\s(?:ago|back|before|earlier)\b",
        rf"\b{_NAMED}[’']s\s(?:death|funeral),?(?:\s(?:was|is|had\sbeen|came))?,?\s{_HOW_LONG}\s(?:ago|back|earlier)\b",
        rf"\b{_HOW_LONG}\s{_NAMED}{_BEEN}(?:dead|in\s(?:his|her)\sgrave)\b",
    )
)
GONE = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b(?P<name>[A-Z]\w+(?:\s[A-Z]\w+)?|[Hh]e|[Ss]he|(?:[Mm]y|[Hh]is|[Hh]er)\s[a-z]+){_BEEN}(?:gone|away)\s(?:for\s|now\s|these\s)*{_HOW_LONG}\b"
        r"(?!\s(?:before|when|after))",
        rf"\b{_HOW_LONG}\s(?:that\s)?{_NAMED}{_BEEN}(?:gone|away)\b",
    )
)  # by death, or else
WIDOW = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b(?P<wed>widow(?:er)?)(?:\s(?:for|these|now|already))*\s{_HOW_LONG}\b(?!\s(?:before|later|when|after|old|of\sage))",
        rf"\b{_HOW_LONG}\s(?:I[’']ve\sbeen\s)?a\s(?P<wed>widow(?:er)?)\b",
        rf"\b(?P<wed>widowed)\s(?:for\s)?{_HOW_LONG}\b(?!\s(?:after|later|when))",
    )
)
_AGE = rf"(?P<age>{_NUMBER})"
DIED_AT = re.compile(
    r"\b(?:died|dead|killed|drowned|dies)\b[^.;!?]*?"
    rf"(?:,\saged\s|\sat\s(?:the\sage\sof\s)?|\bwhen\s(?:he|she)\swas\s(?:only\s)?){_AGE}"
    r"(?=[,.;!?—]|:(?!\d)|$|\s(?:of|in|and|with|when)\b)"
)
WAS_WHEN = re.compile(
    rf"\bwas\s(?:only\s|just\s)?{_AGE}\s(?:years\sold\s)?when\s(?:he|she)\s(?:died|was\s(?:killed|drowned))\b"
)
WOULD = re.compile(
    rf"\b(?P<who>[A-Z]\w+|[Hh]e|[Ss]he)(?:\swould|[’']d)(?:\s(?:now|only|just))*\s(?:have\sbeen|be|have\sturned)\s(?:only\s|just\s)?{_AGE}"
    r"(?:\syears\sold)?\s?(?P<when>now\b|today\b|this\s\w+|last\s\w+|in\s[A-Z]\w+|next\s\w+|on\s\w+|had\s(?:he|she)\slived|if\s(?:he|she)(?:[’']d|\shad)?\s"
    r"(?:lived|not\sdied|were)|(?=[,.;!?]|$))"
)
ELSEWHEN = re.compile(
    r"\b(?:by\sthen|by\sthe\stime|at\sthat\stime|until|till|if|could|will|shall|whether|after\swhich|next|dream\w*|pretend\w*"
    r"|as\sif|as\sthough|might|may|perhaps|supposed|thought|believed|said\sto)\b",
    re.IGNORECASE,
)
CLAUSE = re.compile(r"[;:—–]|,\s(?:and|but)\b|\s(?:and|but)\s(?=(?:he|she|they|it|I|we|[A-Z]\w+)\b)")
_SEASONS = {"year": (0.0, 1.0), "month": (0.0, 0.1), "week": (0.0, 0.05), "night": (0.0, 0.02)}
ROUND = 10  # years from which tens and fives are round numbers
LOST = re.compile(r"\b(?:lost|buried)\s(?:poor\s|old\s|dear\s)*$")
HOURS = 12  # 'at ten' is an hour
DIES = re.compile(r"\b(?:[Hh]e|[Ss]he)\s(?:had\s)?(?:died|was\skilled|fell|drowned)\b")
WAS = re.compile(rf"\b(?P<name>[A-Z][a-z]+\s[A-Z][a-z]+)(?:\swas|,)\s(?:only\s)?{_AGE}(?:\syears\sold)?(?=[,.;])")


_EVENTS = (
    "fire|flood|storm|wreck|shipwreck|accident|crash|war|trial|murder|explosion|strike|wedding|divorce|quarrel|disappearance"
    "|shooting|robbery|scandal|funeral|drowning|collapse|earthquake|burglary|eviction|siege|revolution|rebellion|inquest"
)
EVENT = tuple(
    re.compile(pattern)
    for pattern in (
        rf"\b{_HOW_LONG}{_SINCE}\sthe\s(?P<event>{_EVENTS})\b(?!\s(?:of|in|at)\b)",
        rf"\b(?:[Tt]he|that)\s(?P<event>{_EVENTS})\b(?!\s(?:of|in)\b)(?:[\s,]+(?!and\b|but\b)[\w’']+){{0,4}}[\s,]+{_HOW_LONG}\s(?:ago|back)\b",
        rf"\b{_HOW_LONG}\s(?:ago|back)(?:,?\s(?!and\b|but\b)\w+){{0,3}},?\s(?:in|at|after|before)\sthe\s(?P<event>{_EVENTS})\b(?!\s(?:of|in)\b)",
    )
)
SIGN = re.compile(
    r"\b(?:died|dead|death|killed|drowned|buried|grave|lain|lay|would|passed\saway|lost|widow\w*|years|winters|summers)\b"
    r"|[’']d\b"
)


def years_of(count: str, unit: str, vague: str | None) -> Years | None:
    many = 1 if count in ("a", "an") else number(count.lower().replace(" ", "-"))
    if not many:
        return None
    if unit.startswith("week"):
        return 0.0, many / 26
    if unit.startswith("month"):
        return many / 18, many / 8
    if vague:
        return many * 0.75, many * 1.35 + 0.5
    if many >= ROUND and many % 5 == 0:
        return many * 0.9 - 0.5, many * 1.1 + 0.9
    if unit.startswith(("winter", "summer")):
        return many - 0.6, many + 0.7
    return many - 0.5, many + 0.9


def season_of(match: re.Match[str]) -> Years:
    low, high = _SEASONS.get(match["season"], (0.0, 0.8))
    return (low, high) if match["which"] == "this" else (low, high + 1 if high >= 0.8 else 2 * high)
