"""What times look like in print: one pattern a way of saying it, in the order in which they claim their words."""

import re
from collections.abc import Iterable, Mapping
from functools import cache

from afterdraft.reading.time_words import DAYS, FEASTS, FIRSTS, MONTHS, MOVABLE, ONES, PARTS, SEASONS, TENS, UNITS


@cache
def compiled(pattern: str) -> re.Pattern[str]:
    """When it is first looked for: all of them take a tenth of a second, and the program starts without."""
    return re.compile(pattern)


def _any(words: Iterable[str]) -> str:
    """Any of the words, longest first, however large its letters."""
    return f"(?i:{'|'.join(sorted(words, key=len, reverse=True))})"


def _capital(words: Iterable[str]) -> str:
    return (
        "(?:" + "|".join(sorted((f"{word[0].upper()}(?i:{word[1:]})" for word in words), key=len, reverse=True)) + ")"
    )


_tens, _ones = _any(TENS), _any(ONES)
_number = rf"(?:{_tens}(?:[\s-]{_ones})?|{_ones}|\d{{1,3}})"
_ordinal = rf"(?:{_tens}[\s-]{_any(list(FIRSTS)[:9])}|{_any(FIRSTS)}|(?:[12]?\d|3[01])(?:st|nd|rd|th))"
_day = rf"(?:{_ordinal}|[12]\d|3[01]|0?[1-9])"
_hundreds = (
    rf"(?i:fifteen|sixteen|seventeen|eighteen|nineteen|twenty)(?:[\s-]hundred(?:(?:\sand)?\s{_number})?"
    rf"|[\s-](?:{_tens}(?:-{_ones})?|ten|eleven|twelve|\w+teen))"
)
_year = rf"(?:1\d{{3}}|20\d\d|(?i:{_hundreds})|[‘’'](?:{_tens}(?:-{_ones})?|\d\d))"
_month = rf"(?:{_capital(MONTHS)}|(?:Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sept?|Oct|Nov|Dec)\b\.?)"
_unit = rf"(?:{_any(UNITS)}s?|twelvemonth)"
_count = (
    rf"(?i:half\sa|half\san|an?\s(?:few|couple\sof|good\smany)|a|an|some"
    rf"|several|few|many|{_number}(?:\sor\s{_number})?)"
)
_part = _any([*PARTS, "day"])
_half = r"(?:\s?(?P<half>[apAP]\.?\s?[mM]\b\.?|(?i:(?:o[’']clock\s)?in\sthe\s(?:morning|afternoon|evening)|at\snight)))"
_hour = rf"(?P<hour>(?:1[0-2]|[1-9])\b|{_any([w for w, n in ONES.items() if n <= 12])}\b)"
_stop = r"(?=\s*(?:[,.;:!?—…”’)]|$|--|(?:in|and|or|to-?night|to-?morrow|that|this|on|precisely|sharp|exactly|the)\b))"
_since = (
    r"(?i:in|was|is|since|of|year|by|until|till|from|before|after|to|between|during|about|and|early|late|summer"
    r"|winter|spring|autumn|fall),?\s"
)
_feast = "|".join(word.replace("’", "[’']") for word in sorted([*FEASTS, *MOVABLE], key=len, reverse=True))
_months_said = (
    r"(?:(?i:in|of|last|next|this|early|late|since|until|till|by|during|through|from"
    r"|between|mid|before|after|to|for|and|or|about|every),?\s|mid-|[(—])"
)
_sure_months = _capital(["january", "february", "july", "september", "october", "november", "december"])

PATTERNS: tuple[tuple[str, str], ...] = (
    ("iso", r"\b(?P<year>\d{4})-(?P<month>0[1-9]|1[0-2])-(?P<day>0[1-9]|[12]\d|3[01])\b"),
    ("year month day", rf"\b(?P<year>1\d{{3}}|20\d\d)\.?[—,]\s?(?P<month>{_month})\s(?P<day>{_day})\b"),
    (
        "day month",
        rf"\b(?:(?P<day>{_day})\s?[–—-]\s?)?(?P<last>{_day})(?:\sday)?(?:\sof)?\s(?P<month>{_month})(?!\w)"
        rf"(?:,?\s(?:of\s|in\s)?(?:the\syear\s)?\(?(?P<year>{_year})\b)?",
    ),
    (
        "month day",
        rf"\b(?P<month>{_month})(?:\sthe)?\s(?P<day>{_day})\b(?![:’']\w)(?:\s?[–—-]\s?(?P<last>{_day})\b)?"
        rf"(?:,?\s\(?(?P<year>{_year})\b)?",
    ),
    ("feast", rf"\b(?P<feast>(?i:{_feast}))(?!\w)(?:,?\s(?:of\s)?(?P<year>{_year})\b)?"),
    ("month year", rf"\b(?P<month>{_month}),?\s(?:of\s|in\s)?(?:the\syear\s)?(?P<year>{_year})\b"),
    (
        "clock",
        rf"\b(?:(?P<past>(?i:half|(?:a\s)?quarter)|{_number}(?:\sminutes?)?)[\s-](?P<way>past|after|to|before)\s{_hour}"
        rf"(?:\so[’']clock)?{_half}?"
        rf"|(?P<digits>\d{{1,2}}):(?P<minutes>[0-5]\d)(?!\d){_half.replace('half', 'half2')}?"
        rf"|(?P<digits2>\d{{1,2}})(?:\.(?P<minutes2>[0-5]\d))?\s?(?P<half3>[ap]\.\s?m\.|[ap]m\b|[AP]\.?M\b\.?)"
        rf"|(?i:{_hour.replace('hour', 'hour2')}\so[’']clock){_half.replace('half', 'half4')}?"
        rf"|(?<![Aa]t\s)(?P<name>(?i:midnight|midday|noonday|noon))\b)",
    ),
    (
        "clock said",
        rf"\b(?i:at|till|until|by|about|before|after|past)\s(?:(?i:about|nearly|exactly|just|half-past|almost)\s)?"
        rf"(?:(?P<name>midnight|midday|noon)\b|(?P<hour>{_any([w for w, n in ONES.items() if 2 <= n <= 12])})"
        rf"(?:[\s-](?P<minutes>fifteen|thirty|forty-five|twenty|ten))?{_half}?{_stop})",
    ),
    (
        "age",
        rf"\b(?:(?P<years>{_number})[\s-]years?[\s-](?:old\b|of\sage\b)|(?i:aged|the\sage\sof)\s(?P<years2>{_number})\b"
        rf"|(?i:(?:he|she|i)(?:\swas|\sam|\sis|’m|’s))(?:\s(?i:only|just|about|nearly|barely|not\syet|still|now|then))?"
        rf"\s(?P<years3>{_tens}(?:-{_ones})?|(?i:twelve|\w+teen|\d\d))(?=\s*(?:[,.;!?—]|when|and|then|now)))",
    ),
    (
        "interval",
        rf"\b(?:(?P<after>(?i:after)\s)?(?P<count>{_count})\s(?:(?:whole|full|long|more|short|other)\s)?(?P<unit>{_unit})"
        rf"(?:\s(?P<later>(?i:later|after(?:wards?)?|hence|before|ago|earlier|previously|since|back)))?\b"
        rf"|(?i:within|in)\s(?:the|an)\s(?P<within>hour|week|month|year|fortnight)\b)",
    ),
    (
        "next",
        rf"\b(?:(?:(?i:the)\s)?(?P<way>(?i:next|following|previous|preceding|last))\s(?P<of>{_part}|week|fortnight|month|year)\b"
        rf"|(?i:the)\s(?P<of2>{_part}|week|month|year)\s(?P<way2>(?i:after|before|following))\b(?!\slast)"
        rf"|(?P<day>(?i:yesterday|to-?morrow|to-?day|to-?night|the\sday\sbefore\syesterday|the\sday\safter\sto-?morrow))"
        rf"(?:\s{_part})?\b|(?P<same>(?i:that\ssame|the\ssame|same|that|this))\s(?:very\s)?(?P<of3>{_part})\b)",
    ),
    (
        "day only",
        rf"\b(?i:the\s|on\sthe\s)(?P<day>{_ordinal})"
        rf"(?:\s(?i:of\s(?:the|this|that)\s(?:same\s)?month|inst\b|instant|ult\b))?{_stop}"
        rf"(?!(?:,\s(?:the\s)?{_ordinal})*,?\s(?:and|or|to)\s(?:the\s)?{_ordinal})",  # 'the 19th and 20th of May'
    ),
    ("weekday", rf"\b(?P<weekday>{_capital(DAYS)})s?(?:\s(?P<part>(?i:morning|afternoon|evening|night)))?\b"),
    (
        "month",
        rf"(?:(?<=\W)|^){_months_said}(?:the\s)?(?P<month>{_capital(MONTHS)})\b|\b(?P<month2>{_sure_months})\b",
    ),
    (
        "season",
        rf"\b(?i:the|that|this|last|next|early|late|in|of)\s(?:(?:early|late|following|same|next)\s)?"
        rf"(?P<season>{_any(SEASONS)})\b(?!\s(?:of\s(?:a|his|her|the)|to|into|from|upon|on|back|in\shis|out))"
        rf"(?:,?\s(?:of\s)?(?P<year>{_year})\b)?",
    ),
    (
        "year",
        rf"\b(?:{_since}(?:the\s(?:year\s)?)?(?P<year>1[0-9]{{3}}|20\d\d)|(?P<year2>(?i:{_hundreds}))"
        rf"|(?<![\d£$.,#:/-])(?P<year3>1[5-9]\d\d|20[0-2]\d)(?=[.,;:)—?!]|$|\s(?:and|when|was|to|or|that|he|she|it)\b))"
        rf"\b(?![-:,]\d|\s?(?:men|pounds|miles))",
    ),
    ("part", rf"\b(?<![Gg]ood\s)(?<![Gg]ood-)(?P<part>{_any(PARTS)})\b(?![-’]|\s(?:gown|dress|room|cap))"),
)

DATELINE = (
    rf"^[\W_]*(?:[^.—\n]{{0,40}}?[.,]\s)?(?:{_capital(DAYS)},?\s(?:the\s)?)?"
    rf"(?P<day>{_ordinal})(?=[,.*_—:\s]*(?:[—\n]|\s*$|[.]))"
)  # an entry headed by its day alone: '19th.—', 'Saturday, 13th.—'
HEADS = (
    rf"^[\W_]*(?:(?:Written|Telegram,)\s|[^.—:;!?\n]{{0,40}}?[.,*_]+\s*)?"
    rf"(?:{_capital(DAYS)},?\s(?:the\s)?)?(?:1\d{{3}}\.?—)?$"
)  # what may stand before the date that heads a paragraph: a place, a weekday
HEADED = r"[*_]*(?:\s*(?:[.,:;—\n)”]|--|$)|\s\d{1,2}\s?[ap]\.?m)"  # and what behind
# likewise, of a letter that is read out: “May the third, sir.” is talk
HEADED_SPEECH = rf"(?!,?\s(?!(?:later|close|{_any(PARTS)}|noon|midnight)\b)[a-z]|[.,]?[”\"’']\s\S|,\s[A-Z])"
_name = rf"(?!{_any(DAYS)}\b)[A-Z\d][\w’'-]*"
PLACED = (
    rf"^[\W_]*(?:(?!(?i:yes|no|oh|ah|well|why|and|but|so|then|perhaps)\b)"
    rf"(?P<place>{_name}(?:,?\s(?:{_name}|of|on|the|in|near)){{0,6}}),[*_]*\s)?"
    rf"(?:{_capital(DAYS)},?\s(?:the\s)?)?(?:1\d{{3}}\.?—)?$"
)  # before it a place or a weekday, and no sentence, as is said
IN_FIGURES = r"(?<!\d)\d{1,2}(?!\d)"
# behind it what nobody says: emphasis, a point with a dash, nothing while the speech goes on, '18—'
SET_OFF = r"(?:,\s[\w:’'. ]{1,16}?)?(?:[.,]?[*_]|\.\s?(?:—|--)|[.,:]?\s*(?:\n|$))|,\s1\d{1,2}—"
LOOKED_TO = (
    r"(?i)\b(?:since|until|till|before|by|from|to|between|after|about|around|for|or|than|near|towards?|every|each|last"
    r"|next|like)\s(?:the\s)?$"
)  # right before a date that is not the day of what is told
OWN_FEAST = r"(?i)\b(?:his|her|their|my|your|our|family|merry|happy)\s$"  # 'a merry Christmas'
BESIDE_FEAST = (
    r"(?i)[ -](?:weeks?|seasons?|holidays?|presents?|gifts?|chapter|dinners?|party|pudding|trees?|cards?|carols?"
    r"|shopping|term|vacation|box|numbers?|stor(?:y|ies)|eggs?|bonnets?)\b"
)
ARGUMENT = r"^(?:[^.!?\n]*—){3}"  # 'A storm—The 3rd of May—Ashore': what a chapter tells, at its head
SENTENCE_ENDS = r"[.!?]\W*\s"
PART = rf"\b{_any(PARTS)}\Z"

_stems = tuple(word[:3].capitalize() for word in MONTHS)
_tens_said = (*TENS, "teen", "twelve")
HINTS: Mapping[str, tuple[str, ...]] = {
    "iso": ("-0", "-1"),
    "year month day": _stems,
    "day month": _stems,
    "month day": _stems,
    "month year": _stems,
    "month": _stems,
    "feast": tuple({word.split()[0].split("’")[0].capitalize() for word in (*FEASTS, *MOVABLE)}),
    "clock": (
        "past",
        "clock",
        "quarter",
        "noon",
        "midday",
        "midnight",
        ":",
        "m.",
        " am",
        " pm",
        "AM",
        "PM",
        "minutes",
        "half",
        *(f"{word} to" for word in ("one", "five", "ten", "twenty")),
    ),
    "age": ("years", "year-", "aged", "age of", *_tens_said),
    "interval": tuple(UNITS),
    "next": (*PARTS, *UNITS, "to-morrow", "tomorrow", "to-day", "today"),
    "year": ("1", "20", "hundred", "nineteen", "eighteen"),
    "season": tuple(SEASONS),
    "part": tuple(PARTS),
}  # what a pattern cannot match without: most paragraphs have none of it, and looking for it costs little
