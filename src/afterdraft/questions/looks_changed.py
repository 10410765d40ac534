"""Where the text accounts for hair or eyes of two colours: dyed, grown out, astonished at; or for a side: a mirror."""

import re
from collections.abc import Iterator, Sequence

from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, sentences
from afterdraft.whole.traits import PersonTrait

NEAR = 4  # paragraphs on either side of a place in which somebody may be astonished at it
_HAIR = re.compile(
    r"\b(?:hair\w*|heads?|roots|beards?|moustaches?|curls?|plaits?|braids?|fringe|bob|locks|blonde?|brunette|redhead)\b",
    re.IGNORECASE,
)
_STRONG = re.compile(r"\b(?:dye(?:s|d|ing)?|bleach(?:ed|ing)|henna\w*|peroxided?|wigs?|hairpiece)\b", re.IGNORECASE)
_DYED = re.compile(
    rf"{_STRONG.pattern}|\b(?:rinse[sd]?|highlights|streak(?:s|ed)|hairdressers?|salon|colou?red\s(?:it|her|his|my)"
    r"|(?:tint(?:ed|ing)|colou?ring)\s(?:it|her|his|my)|gr(?:ow|ew|owing|own)\s(?:it\s)?(?:out|back)"
    r"|(?:dark|fair|red|black|grey|gray|white)\sroots|roots\s(?:show\w*|gr[eo]w\w*)|at\sthe\sroots|walnut\sjuice"
    r"|(?:boot|shoe)\spolish|natural\scolou?r|(?:new|another|different|own|real|true)\scolou?r"
    r"|chang(?:e|ed|ing)\s(?:the\scolou?r|(?:her|his|my)\shair)|went\s(?:blonde?|red|dark|black|fair|ginger))\b",
    re.IGNORECASE,
)
_ON_IT = re.compile(r"\b(?:lampblack|coal[\s-]dust|soot|flour|plaster|whitewash|washed\sit)\b", re.IGNORECASE)
_PLAINLY = re.compile(
    r"\b(?:dyed|bleached|hennaed|peroxided?)\b[^.;]{0,30}\b(?:hair|head|beard|curls|plait|blonde?)\b"
    r"|\b(?:hair|head|beard|curls|plait)\b[^.;]{0,30}\b(?:dye(?:d|ing)?|bleached|hennaed|wig)\b|\bhair\sdye\b"
    r"|\bgrow(?:n|ing)?\sout\b[^.;]{0,40}\broots\b|\broots\b[^.;]{0,40}\bgrow(?:n|ing)?\sout\b",
    re.IGNORECASE,
)
_ASTONISHED = re.compile(
    r"\b(?:what\s(?:in\s[\w’']+\sname|on\searth|the\s\w+|ever|in\sthe\sworld)?\s?(?:have|has|did)\s(?:you|he|she|they)\s"
    r"(?:gone\sand\s)?(?:done|do)\b|what(?:[’']s|\shas|\s(?:on\searth|the\s\w+))?\s?happened\sto\s(?:your|his|her)\s(?:hair|head"
    r"|beard)|(?:your|her|his)\snew\s(?:hair|beard|look)|(?:an?|the|your|her|his|my)\s(?:\w+\s)?disguise|(?:something|what)\s(?:\w+\s){0,3}(?:done\s)?to\s(?:your|her|his|my)\s"
    r"(?:hair|head|beard)|it[’'\s](?:ll|will)\s(?:grow|wash)\s(?:out|back)|lost\sa\sbet"
    r"|(?:lik(?:e|ed)|hat(?:e|ed)|suit(?:s|ed)|notic(?:e|ed)|star(?:ed|ing)\sat)\s(?:\w+\s)?(?:your|her|his|my)\shair)\b"
    r"|[“‘\"']\s*your\shair\b[!?.…,—]",
    re.IGNORECASE,
)
_LENSES = re.compile(r"\b(?:contact\slens(?:es)?|(?:tinted|colou?red)\slens(?:es)?|glass\seye)\b", re.IGNORECASE)
_MIRROR = re.compile(r"\b(?:mirror\w*|reflect(?:ion|ed)|looking[- ]glass)\b", re.IGNORECASE)
_WET = re.compile(r"\b(?:wet|soaked|sodden|drenched|damp|dripping|rain|soot|sooty|oiled|greased)\b")


def is_accounted_for(seen: Seen, first: PersonTrait, other: PersonTrait) -> bool:
    """Whether the text from the one place to the other, or near either, tells why they differ."""
    if first.trait in ("scar", "limp", "hand"):
        return any(_MIRROR.search(_sentence(seen, one)) for one in (first, other))
    if first.trait == "eyes":
        return any(map(_LENSES.search, _between(seen, first, other)))
    if first.trait not in ("hair", "beard"):
        return False
    if any(_WET.search(_sentence(seen, one)) for one in (first, other) if one.value in ("dark", "black")):
        return True
    near = [text for one in (first, other) for text in _near(seen, one)]
    if any(_ASTONISHED.search(text) or _STRONG.search(text) or _is_dyed(text) for text in near):
        return True
    if any(_HAIR.search(text) and _ON_IT.search(text) for text in near):
        return True
    name = seen.name(first.person).split()
    return any(_is_dyed(text, name) for text in _between(seen, first, other))


def _is_dyed(text: str, name: Sequence[str] = ()) -> bool:
    """Whether a sentence, of somebody of this name where there is one, tells of hair that is dyed, or growing out."""
    told = (text[slice(*one)] for one in sentences(text))
    about = (one for one in told if not name or any(word in one for word in name))
    return any(_PLAINLY.search(one) or (_HAIR.search(one) and _DYED.search(one)) for one in about)


def _between(seen: Seen, first: PersonTrait, other: PersonTrait) -> Iterator[str]:
    """The paragraphs from a little before the one to a little behind the other."""
    (begins, start), (ends, end) = sorted((one.scene, one.paragraph) for one in (first, other))
    for scene in range(begins, ends + 1):
        for place, text in enumerate(seen.texts[scene]):
            if (scene > begins or place >= start - NEAR) and (scene < ends or place <= end + NEAR):
                yield text


def _near(seen: Seen, one: PersonTrait) -> tuple[str, ...]:
    return seen.texts[one.scene][max(0, one.paragraph - NEAR) : one.paragraph + NEAR + 1]


def _sentence(seen: Seen, one: PersonTrait) -> str:
    text = seen.texts[one.scene][one.paragraph]
    return text[slice(*sentence(text, one.start, one.end))]
