"""What a number counts or measures, and whether it is told as the whole: 'all eighteen beds', '£212', 'two hundred and
twelve acres'. Guesses, ranges, parts, rates and what may be are told apart as unsure."""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Literal

from afterdraft.questions.numbers_written import NUMBER_WORDS, Number, numbers
from afterdraft.questions.plurals import singular
from afterdraft.questions.sentences import sentence
from afterdraft.reading.lexicon import words_of

Frame = Literal["all", "there", "had", "the", ""]
# all eighteen beds, eighteen beds in all · there are twenty beds · had twenty beds · the twenty beds · none of these

_MONEY: Mapping[str, str] = {"£": "pound", "$": "dollar", "€": "euro"}
_UNITS = words_of("acre mile foot metre meter yard kilometre kilometer ton tonne pound dollar fathom inch gallon litre")
_TIME = words_of(
    """
    year minute hour day week month second time winter summer night moment degree century decade fortnight morning
    evening afternoon spring autumn season generation percent
    """
)  # asked about elsewhere
_ENDS = words_of(
    """
    and or to in at on for the that who which were are had have with by from but when a an than then up down out off
    if i he she they it we you not no per each apiece short more less over left too other others further extra first
    last next best such missing spare remaining different odd half
    """
)  # behind a number: nothing is counted, or some out of more
_WHOSE = r"(?:the|these|those|his|her|my|our|their)"
_NOUN = re.compile(rf"(?P<of>\sof\s{_WHOSE}\b)?(?P<words>(?:\s[A-Za-z][\w’'-]*){{1,3}})")
_WITH_HYPHEN = re.compile(rf"-({'|'.join(sorted(_UNITS))})s?\b")
_OF_THEM = re.compile(r"\sof\sthem\b(?=[,.;:—–]|\sin\sall\b)")
_OPENS = re.compile(r"\W*(?:[Tt]here\s(?:are|were)\s)?$")
_SUBJECT = re.compile(rf"\W*{_WHOSE}\s((?:[a-z]+\s){{1,3}})(?!and\b)", re.IGNORECASE)
_ALL = re.compile(rf"\ball\s(?:(?:of\s)?{_WHOSE}\s)?$", re.IGNORECASE)
_IN_ALL = re.compile(r",?\s(?:in\sall|all\stold|all\sin|altogether|in\stotal)\b(?!\sa\b)")
_EXACTLY = r"(?:just\s|exactly\s|only\s)?$"
_THERE = re.compile(
    rf"\b(?:there(?:\s(?:are|were|had\sbeen|have\sbeen)|[’']s|[’']d\sbeen)|count(?:s|ed))\s{_EXACTLY}", re.IGNORECASE
)
_HAD = re.compile(
    rf"(?:\b(?:had|has|have|held|holds|contain(?:s|ed))|[’']ve)\s(?:got\s)?{_EXACTLY}"
    rf"|\b(?:an?|this|that|our|their|the)\s(?:\w+\s)?\w+\s(?:of|with)\s{_EXACTLY}",
    re.IGNORECASE,
)  # 'a farm of two hundred acres'
_THE = re.compile(r"\b(?:the|these|those)\s$", re.IGNORECASE)
_VAGUE = re.compile(
    r"\b(?:about|some|nearly|almost|over|under|perhaps|maybe|around|roughly|than|least|most|another|every|each|per|first"
    r"|last|next|other|any|within|say|near|towards?|upwards\sof|well|hardly|scarcely|barely|extra|further|and\sa|like"
    r"|close\son|up\sto|between|few|several|many|couple\sof|odd|as\s(?:many|much)\sas|quite)\s(?:an?\s)?$|[–—-]$"
    rf"|(?:\d|\b(?:{NUMBER_WORDS}))\s(?:or|to)\s$",
    re.IGNORECASE,
)
_RANGE = re.compile(rf"\s(?:or|to)\s(?:so\b|more\b|less\b|\d|(?:{NUMBER_WORDS})\b)|\s?[–—-]\s?\d", re.IGNORECASE)
_PART = re.compile(
    r"\s(?:short|less|more|over|left|too\s(?:many|much|few)|apiece|each|per|out\sof|at\s(?:most|least)"
    r"|or\sso|and\sthe\s(?:one|other)s?|an?\s(?:week|month|year|day|night|head|piece|ton|bag|loom|time|yard|acre|foot"
    r"|mile|pound|hundredweight))\b"
)
_OF_NOTHING = re.compile(
    r"\sof\s(?:clear\s|empty\s|open\s|cold\s)?(?:air|space|nothing|sky|dark(?:ness)?|water|silence|night)\b"
)
_MAY_BE = re.compile(
    r"\b(?:if|would|could|should|might|must|suppos\w+|imagin\w+|wish\w*|pretend\w*|never|not|may|perhaps|maybe|guess\w*"
    r"|reckon\w*|used\sto)\b|n[’']t\b|[’']d\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Amount:
    value: int
    noun: str  # one of what is counted: "acre"; "" where the number stands alone
    frame: Frame
    sure: bool  # said as it is, and of the whole
    start: int
    end: int


def amounts(text: str) -> Iterator[Amount]:
    """Of a paragraph, in order.

    >>> [(one.value, one.noun, one.frame) for one in amounts("All eighteen beds were made, for £2 a night.")]
    [(18, 'bed', 'all'), (2, 'pound', '')]
    >>> [(one.value, one.noun, one.frame) for one in amounts("The judges come at ten. Five of them, and Ada.")]
    [(5, 'judge', 'there')]
    """
    for number in numbers(text):
        if noun := _meant_by_them(text, number):
            yield Amount(number.value, noun, "there", True, number.start, number.end + len(" of them"))
            continue
        noun, end, part = _counted(text, number)
        if noun in _TIME or (not noun and (number.in_figures or number.value < 1000)):
            continue
        frame = _frame(text[: number.start], text[end:])
        sure = _is_sure(text, number, end) and (not part or frame == "all")
        yield Amount(number.value, noun, frame, sure, number.start, end)


def _counted(text: str, number: Number) -> tuple[str, int, bool]:
    """The noun, where it ends, and whether the number is of some out of more."""
    if number.sign:
        return _MONEY[number.sign], number.end, False
    if match := _WITH_HYPHEN.match(text, number.end):
        return match[1], match.end(), False
    match = _NOUN.match(text, number.end)
    end = match.start("words") if match else number.end
    for word in match["words"].split() if match else ():
        end += len(word) + 1
        small = word.lower()
        if small in _ENDS:
            break
        if noun := singular(small) or (small if small in _UNITS else ""):
            return noun, end, bool(match and match["of"])
    return "", number.end, False


def _meant_by_them(text: str, number: Number) -> str:
    """Of 'Five of them.', which is all that is said, what the sentence before is about."""
    begins = sentence(text, number.start, number.end)[0]
    opens = _OF_THEM.match(text, number.end) and _OPENS.fullmatch(text, begins, number.start)
    if not opens or begins < 2:
        return ""
    about = _SUBJECT.match(text, sentence(text, begins - 2, begins - 2)[0])
    return next(filter(None, map(singular, about[1].lower().split())), "") if about else ""


def _frame(before: str, behind: str) -> Frame:
    if _ALL.search(before) or _IN_ALL.match(behind):
        return "all"
    if _THERE.search(before):
        return "there"
    if _HAD.search(before):
        return "had"
    return "the" if _THE.search(before) else ""


def _is_sure(text: str, number: Number, end: int) -> bool:
    begins, ends = sentence(text, number.start, end)
    before, behind = text[begins : number.start], text[end:ends]
    if _VAGUE.search(before) and not _ALL.search(before):
        return False
    if _RANGE.match(text, number.end) or _RANGE.match(text, end) or _PART.match(behind):
        return False
    return not (_MAY_BE.search(before) or _OF_NOTHING.match(behind) or behind.rstrip("”’\"' ").endswith("?"))
