"""Ages that are told of people of the cast, surely enough, and whether of the time that is told."""

import re

from afterdraft.questions.ages_beside import ages_beside, names_them
from afterdraft.questions.ages_next import ages_next
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, sentences
from afterdraft.reading.tense_forms import form
from afterdraft.whole.traits import PersonTrait

SURE = 0.7  # of whose age it is
_THEN = re.compile(
    r"\b(?:when|since|until|till|at|by|before|after|had been|would be|will be|shall be|like|as if|as though|look\w*"
    r"|seem\w*|appear\w*|might|may|must|not|wasn[’']t|isn[’']t|nearly|almost|over|under|about|some|than|if|for|once|ago"
    r"|(?:spring|summer|autumn|fall|winter|year|month|week|Christmas|Easter) (?:that )?(?=I\b|he\b|she\b|[A-Z]\w+)"
    r"|passed for|taken for|(?:told|claim\w*|pretend\w*|lied|swore|said)\b[^.;]*\b(?:I|he|she)\s(?:was|am|is))"
    r"\b[^.;]*$",
    re.IGNORECASE,
)
_LATER = re.compile(
    r"^\W*(?:Then|Later|And\sthen|In\sthe\syear)\b|\bthen\s(?:he|she|I)\swas\s$"
)  # 'Then he was eighteen, and'
_TELLER = re.compile(r"^[^“\"‘]*\bI(?:[’']m|\sam)\s(?:now\s)?$")
_AT = re.compile(r"\bat\s$", re.IGNORECASE)
_HAD = re.compile(
    r"^,?(?:\s\w+\.?){0,5}\shad\b(?!\s(?:(?:long|already|quite|almost|only)\s)?(?:given\sup|learn(?:ed|t)|ceased|come\sto|grown|begun|lost"
    r"|never|no|not|nothing|little|a|an|the|his|her|still|always)\b)"
)  # but not 'had given up', 'had no money': that is so at the age
_WHO = re.compile(
    r"^.*,\swho(?=\s(?:had\s(?:\w+\s)?turned|has|is|(?:was|had)\s(?:now|already|just|only))\b)", re.DOTALL
)
_SPOKEN = re.compile(r"^.*[”\"»]", re.DOTALL)  # up to where speech ends before it
_WAS = re.compile(r"\b(?:was|were)\s(?:\w+\s){0,2}$")
_HAD_DONE = re.compile(
    r"^\W*\w+(?:\s\w+)?(?:\shad|[’']d)\s(?:\w+ly\s|not\s|never\s|just\s|already\s|only\s)?(?P<done>\w+)"
)
_FULL = re.compile(r"\b[A-Z][a-z]+\s[A-Z][a-z]+\b(?![’'])")
BEHIND = 12  # characters between a full name and the age of who bears it
_ROUGHLY = re.compile(
    r"\b(?:like|as if|as though|look\w*|seem\w*|appear\w*|might|may|must|not|wasn[’']t|isn[’']t|nearly|almost|over"
    r"|under|about|some|than|if|would|will|shall|barely|hardly|passed for|taken for)\b[^.;,]*$",
    re.IGNORECASE,
)


def ages_told(seen: Seen) -> list[PersonTrait]:
    """Those whose owner is sure enough, in the order of the text."""
    read = [one for one in seen.traits if one.trait == "age" and one.sure >= SURE and one.value.isdecimal()]
    read = [one for one in read if not _is_of_another(seen, one)]
    places = {(one.scene, one.paragraph, one.value) for one in read}
    also = (*ages_beside(seen), *ages_next(seen))
    more = [one for one in also if (one.scene, one.paragraph, one.value) not in places]
    return sorted((*read, *more), key=lambda one: (one.scene, one.paragraph, one.start))


def _is_of_another(seen: Seen, one: PersonTrait) -> bool:
    """Whether a full name stands right before it that shares no more than the surname."""
    text = seen.texts[one.scene][one.paragraph]
    return any(
        not names_them(seen.book.cast, one.person, match.group())
        for match in _FULL.finditer(text, *sentence(text, one.start, one.end))
        if match.end() <= one.start <= match.end() + BEHIND
    )


def is_now(seen: Seen, one: PersonTrait) -> bool:
    """Whether it is said of the time that is told, and for certain, and not by a paper or of the time of telling."""
    if (one.scene, one.paragraph) in seen.set_in:
        return False
    text = seen.texts[one.scene][one.paragraph]
    begins, ends = sentence(text, one.start, one.end)
    before, behind = _SPOKEN.sub("", text[begins : one.start]), text[one.end : ends]
    then = _AT.search(before) if _AT.search(before) and not _HAD.search(behind) else None
    before = _WHO.sub("", before[: then.start()] if then else before)  # 'When Ilse, who had turned forty, came in'
    if _THEN.search(before) or _LATER.search(before) or _TELLER.search(before):
        return False
    return not (_WAS.search(before) and (_is_spoken(seen, one) or _goes_back(text, begins)))


def _is_spoken(seen: Seen, one: PersonTrait) -> bool:
    """Whoever says 'I was nine' is so no longer."""
    quotes = seen.facts[one.scene].quotes
    return any(it.paragraph == one.paragraph and it.start <= one.start < it.end for it in quotes)


def _goes_back(text: str, begins: int) -> bool:
    """Whether the paragraph begins with what had been, and still tells of it right before."""
    before = [text[slice(*it)] for it in sentences(text) if it[1] <= begins]
    return bool(before) and all(_is_of_before(it) for it in (before[0], before[-1]))


def _is_of_before(said: str) -> bool:
    match = _HAD_DONE.match(said)
    return match is not None and form(match["done"]) in ("part", "both")


def is_certain(seen: Seen, one: PersonTrait) -> bool:
    """Whether it is no guess and no round number, of whatever time."""
    text = seen.texts[one.scene][one.paragraph]
    begins = sentence(text, one.start, one.end)[0]
    return not _ROUGHLY.search(_SPOKEN.sub("", text[begins : one.start]))
