"""Where a thought is what somebody tells aloud, in words of the telling: 'He remembered nothing of it, he said.'"""

import re
from collections.abc import Sequence, Set

from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention

_WHO = r"(?P<who>(?!No(?:body|thing|ne)?\b|I\b)[A-Z]\w+|[Hh]e|[Ss]he|[Tt]hey|(?:[Tt]he|[Hh]is|[Hh]er|[Mm]y)\s\w+)"
_ALSO = r"(?:\s(?:had|has|then|now|also|would|only|once|\w+ly)){0,2}"
_SAYS = (
    r"(?:said|says|explained|explains|reported|reports|added|adds|went\son|goes\son|continued|admitted|admits|confessed"
    r"|confesses|answered|replied|remarked|insisted|maintained|swore|claimed|declared|announced|mentioned|confided|wrote|writes"
    r"|(?:told|tells|assured|informed|reminded)\s(?:him|her|them|me|us|(?!I\b)[A-Z]\w+|(?:the|his|her|my)\s"
    r"(?:others|men|women|boys|girls|children|company|court|doctor|inspector|police\w*|sergeant|priest|nurse|mother|father"
    r"|brother|sister|wife|husband|aunt|uncle|friend)))(?!sel)"
)
_AS = r"(?:\s(?:to\s)?(?:him|her|them|me|us|[A-Z]\w+)(?!sel))?(?:\s(?:again|once|\w+ly|at\slast))?"
_TAG = re.compile(
    rf"(?:^|[,;:—]\s)(?:{_WHO}{_ALSO}\s{_SAYS}{_AS}|(?:said|explained|added|admitted)\s(?P<inverted>[A-Z]\w+|the\s\w+))"
    r"(?=\s*[,.;:—])"
)  # 'he said' that is no tag of speech in marks
_TELLS = re.compile(
    rf"\b{_WHO}{_ALSO}\s(?:{_SAYS}\s(?:that|how|what|why|who|about|of|he|she|it|they|there|everything|all|(?:the|his|her)\s"
    r"\w+)\b|(?:described|recounted|related|told\s(?:the|his|her|a)\s(?:story|tale)|(?:spoke|talked|told|wrote)\s"
    r"(?:\w+\s){0,3}?(?:of|about))\b|(?:talked|was\stalking|was\stelling|(?:began|started|went\son)\sto\s(?:talk|tell|explain"
    r"|speak|describe|say|recall|relate)|(?:began|went\son)\s(?:telling|describing))\b)"
)
_STORY = re.compile(
    r"(?:\b(?:[Hh]is|[Hh]er)|[’']s)\s(?:story|account|version|tale|confession|testimony|statement|evidence)\b"
    r"|\b(?:[Tt]he\s(?:whole\s)?story|[Ii]t\sall|[Ii]t)\s(?:came|spilled|poured)\sout\b|\basked\s(?!noth)(?:him|her|[A-Z]\w+)(?!sel)\b"
    r"|\b(?:was|were)\sasked\b|\blistened\b|\b(?:let|heard)\s(?:him|her)\s(?:talk|tell|out)\b"
)  # a report, or a question that what follows answers
_HEARD = re.compile(
    r"\b(?:it\s(?:turned\sout|emerged|transpired|came\sout|appeared)|by\s(?:his|her|all)\s(?:own\s)?accounts?"
    r"|according\sto|as\s(?:he|she|[A-Z]\w+)\stold\s|the\sway\s(?:he|she|[A-Z]\w+)\s(?:told|tells)|or\sso\s(?:he|she|[A-Z]\w+)"
    r"|to\shear\s(?:him|her|[A-Z]\w+)|(?:he|she|they|I|we|[A-Z]\w+)\s(?:learn(?:ed|t)|gathered|heard|(?:was|were|had\sbeen)"
    r"\stold|had\sit\sfrom)"
    r"|in\s(?:his|her)\s(?:letters?|diary|note|message|report|speech)|(?:on|over|down|by)\sthe\s(?:tele)?phone"
    r"|(?:thought|wondered|remembered|wished|hoped)\s(?:\w+\s)?(?:aloud|out\sloud))\b",
    re.IGNORECASE,
)
_ANSWERS = re.compile(r"^\W*(?:Yes|No|Oh|Well|Certainly|Of\scourse)[,.;]\s")
_ASIDE = r"(?:,[^,]{1,20},)?"
_SAID_SO = re.compile(
    rf"\b(?:[Tt]hat|[Tt]his|[Ii]t){_ASIDE}\s(?:was|is){_ASIDE}\s(?:\w+\s)?(?:what|how|all|as\smuch\sas)\s(?:\w+\s){{0,2}}?"
    r"(?:said|told|says|tells)\b"
    r"|\b(?<!never )(?:said|told\s(?:him|her|them|me|us)|says)\s(?:so|this|as\smuch|it\sall|all\sthis)\b"
)
_TO_ME = re.compile(
    r"(?<!never )(?<!not )(?<!n[’']t )\b(?:told|tell|tells|telling)\s(?:me|us)\b"
    r"|\bas\sI\s(?:now\s)?(?:know|learn|heard|found)"
    r"|\bI(?:\s(?:had|now|only|\w+ly))*\s(?:learn(?:ed|t)|heard|found\sout|like\sto\s(?:think|imagine)|imagine|suppose"
    r"|believe|gather|gathered|understand|guess|fancy|picture)\b"
)  # how an I has it


def is_reported(texts: Sequence[str], mention: Mention, names: Set[str]) -> bool:
    """Whether somebody says it, in its sentence or behind; whether the sentence before tells of a report; or whether
    that person told something earlier in the paragraph, or in the one before where nobody speaks. `names` are the
    person's, and the 'he' or 'she' that goes with them; of the scene's paragraphs what is spoken is silenced."""
    text = texts[mention.paragraph]
    start, end = sentence(text, mention.start, mention.end)
    said, behind = text[start:end], _behind(text, end)
    if (
        _tags(said)
        or _HEARD.search(said)
        or _ANSWERS.match(said)
        or _SAID_SO.search(behind)
        or _of(_tags(behind), names)
    ):
        return True
    earlier = [text[:start]]
    if mention.paragraph and ",," not in texts[mention.paragraph - 1]:
        earlier.insert(0, texts[mention.paragraph - 1])
    before = _last(" ".join(filter(str.strip, earlier)))
    if _is_told(before) or _ANSWERS.match(before):
        return True
    return any(_of([*_tells(one), *_tags(one)], names) for one in earlier)


def is_told_me(text: str) -> bool:
    """Whether a paragraph of an I says how it has what it tells of others: 'as I learned', 'I like to think'."""
    return bool(_TO_ME.search(text))


def _tags(text: str) -> list[str]:
    """Who says something, without marks: of each 'he said' that stands beside no speech."""
    return [one["who"] or one["inverted"] for one in _TAG.finditer(text) if not _is_beside_speech(text, one)]


def _tells(text: str) -> list[str]:
    """Who tells of something."""
    return [one["who"] for one in _TELLS.finditer(text) if not _is_beside_speech(text, one)]


def _is_told(text: str) -> bool:
    return any(not _is_beside_speech(text, one) for one in _STORY.finditer(text))


def _is_beside_speech(text: str, found: re.Match[str]) -> bool:
    return ",," in text[max(0, found.start() - 10) : found.start() + 1] or ",," in text[found.end() : found.end() + 4]


def _of(told: Sequence[str], names: Set[str]) -> bool:
    return any(one in names or one.lower() in names for one in told)


def _behind(text: str, end: int) -> str:
    """The sentence behind."""
    return text[slice(*sentence(text, end + 1, end + 1))] if end + 1 < len(text) else ""


def _last(text: str) -> str:
    """The last sentence of what stands before."""
    told = text.rstrip()
    return told[slice(*sentence(told, len(told) - 1, len(told) - 1))] if told else ""
