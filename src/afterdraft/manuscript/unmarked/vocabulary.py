"""Words that say when and where a scene opens, and words that say nothing of either.

Lists of everyday English, written down by hand (common practice); nothing is learned here.
"""

import re

_NUMBER = r"(?:a|an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|some|several|many|a few|\d+)"
_UNIT = r"(?:moment|minute|hour|day|night|week|fortnight|month|year|morning|afternoon|evening|season)s?"
_PART = r"(?:morning|forenoon|noon|afternoon|evening|night|midnight|dawn|dusk|daybreak|sunrise|sunset|twilight)"
_MONTH = r"(?:January|February|March|April|May|June|July|August|September|October|November|December)"
_WEEKDAY = r"(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day"
_SEASON = r"(?:spring|summer|autumn|winter|Christmas|Easter|Michaelmas|harvest)"

ENTRY = re.compile(
    rf"\W*(?:(?:The )?[Ss]ame (?:day|night|evening)|Later|Midnight|Noon|Morning|Evening|Night|\d{{1,2}}(?::\d\d)? "
    rf"[ap]\.?m\b|{_WEEKDAY}|(?:On )?\d{{1,2}} {_MONTH}|{_MONTH} \d)[^.]{{0,30}}\.? ?[—–:]"
)
"""The paragraph begins as an entry of a diary or a log does: "Later.—", "10 p.m.—"."""

LEAP = re.compile(
    rf"\W*(?:(?:On |In |At |By |It was |During |Early |Late |Towards? |All )*(?:the )?"
    rf"(?:next|following|same|previous|second|third|fourth|fifth|last) (?:\w+ )?{_UNIT}\b"
    rf"|(?:About |Some |Not |Only |Nearly |Almost |For |In |It was |Within |After )*{_NUMBER} (?:or \w+ )?(?:\w+ )?"
    rf"{_UNIT} (?:later|after|afterwards?|passed|before|had|went|ago|elapsed)\b"
    rf"|(?:One|Some) (?:\w+ )?(?:{_UNIT}|{_PART})\b|That (?:same )?(?:\w+ )?(?:{_UNIT}|{_PART})\b"
    rf"|(?:By|At|Towards?|About|Before|After|Since|Until|It was (?:past|nearly|about|almost)?) ?(?:\w+ )?"
    rf"(?:{_PART}|\w+ o’clock|half[- ]past)\b"
    rf"|(?:In|On|During|Late in|Early in|Through|All) (?:the |that |a )?(?:\w+ )?"
    rf"(?:{_PART}|{_SEASON}|{_MONTH}|{_WEEKDAY}|weeks?|days?)\b"
    rf"|(?:It was|There was|There came) (?:a|an|the|one|in|on)? ?(?:\w+ )?(?:{_PART}|{_SEASON}|{_MONTH}|day|week)\b"
    rf"|(?:Tomorrow|To-morrow|Tonight|To-night|Meanwhile|Meantime|Later|Afterwards?|Soon after|Next day)\b"
    rf"|{_PART} (?:came|fell|had|was|found|broke)\b|(?:Days|Weeks|Months|Years|Hours) "
    rf"|A (?:few |\w+ )?(?:{_UNIT}) (?:later|after|afterwards?|passed)\b)",
    re.IGNORECASE,
)
"""The paragraph begins by saying how much later it is, or what time of what day."""

WHEN = re.compile(r"\W*(?:When|As soon as|While|After|Before|Since|Until|During|Once|At last|At length)\b")
"""The paragraph begins with a clause of time."""

SITE = re.compile(
    r"\b(?:in|at|on|into|to|from|through|along|near|outside|behind|across|towards?|over) (?:the|a|an|his|her|their|my|"
    r"our|its)? ?(?:\w+ )?(?:house|room|street|road|garden|hall|church|station|office|hotel|inn|shop|town|village|"
    r"city|country|door|window|library|drawing-room|dining-room|bedroom|kitchen|parlou?r|stairs|staircase|terrace|"
    r"park|square|train|ship|boat|deck|carriage|cab|car|fields?|farm|barn|wood|hill|moor|lane|path|river|sea|beach|"
    r"shore|harbou?r|bridge|school|hospital|theatre|club|flat|apartment|studio|court|prison|castle|cabin|camp|yard|"
    r"gate|porch|lawn|corridor|attic|cellar|restaurant|bar|café|table|fire|bed)\b"
)
"""A place where people can be, after a preposition."""

_COMMON = """
about above after again against all almost alone along already also although always am among an and another any
anything are around as asked at away back be because been before began behind being better between both but by
came can come could day did do does done don’t door down each enough even ever every everything eyes face far
felt few find first for found from gave get give go going good got great had half hand hands has have having he
head hear heard her here herself him himself his house how however if in into is it its itself just knew know
last left less let like little long look looked made make man many may me men might mind mine moment more most
mr mrs miss much must my myself never new next no nor not nothing now of off often oh old on once one only or
other others our out over own part people perhaps place put quite rather room round said same saw say see seem
seemed seen she should side since so some something soon still such take taken tell than that the their them
themselves then there these they thing things think this those though thought through thus till time to together
told too took towards turned two under until up upon us very voice want was way we well went were what when
where which while white who whole whom whose why will with without woman word words work would yes yet you young
your i’m i’ll it’s didn’t couldn’t wouldn’t won’t can’t
"""
STOP = frozenset(_COMMON.split())
"""Words left out when vocabularies are compared: the commonest of English and of telling."""

_ANYBODY = """
i i’m i’ll i’ve i’d mr mrs miss ms dr sir lady lord madam god heaven english french monday tuesday wednesday
thursday friday saturday sunday january february march april may june july august september october november
december christmas easter oh o
"""
NO_NAMES = frozenset(_ANYBODY.split())
"""Words with a capital that name nobody in particular."""

_TITLES = "Mr Mrs Miss Ms Dr Sir Lady Lord Captain Colonel Major Madame Monsieur Professor Inspector"
TITLED = frozenset(_TITLES.split())
"""Titles that people are named with."""
