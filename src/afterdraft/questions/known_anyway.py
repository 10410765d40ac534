"""Thoughts that others may know without a look inside: of long ago, shared, said out of politeness, or a beast's."""

import re

from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.thinking import behind
from afterdraft.reading.facts import Mention

_FELT = r"(?:hoped|wished|dreaded|feared|longed|wondered|regretted|remembered|despised|envied|wanted)"
_OF_OLD = re.compile(rf"(?:\shad|[’']d)\s(?:(?!been\b)\w+\s){{0,2}}{_FELT}\b")
_LATER = re.compile(
    r"\b(?:years\s(?:later|after\w*)|in\s(?:after|later)\s(?:years|life)|(?:for|all)\s(?:the\srest\sof\s)?(?:his|her)\slife"
    r"|(?:his|her)\sdying\sday|ever\safter\w*|to\sthis\sday|to\sthe\send\sof\s(?:his|her)\s(?:life|days))\b"
)
_SHARED = re.compile(
    r"\b(?:(?:as|so)\s(?:did|was|had|were)\s(?:she|he|I|they|we|[A-Z]\w+)|as\s(?:she|he|I|they|we)\s(?:did|had|all\sdid)"
    rf"|they\s(?:both|all)\s{_FELT}|both\sof\sthem|like\s(?:her|him|me|the\srest\sof\sthem|everybody|everyone)(?=[,.;]))\b"
)
_BOTH = re.compile(r"(?:^|[.!?…;,:—]\s|\b(?:but|for)\s)(?:[Tt]he\s\w+|(?!I\b)[A-Z]\w+|[Ss]?[Hh]e|I)\sand\s(?:the\s)?$")
_POLITE = re.compile(
    r"\s(?:\w+ly\s)?(?:hoped|trusted|feared|regretted|wished)\s(?:that\s)?(?:s?he|they|it|there|[A-Z]\w+(?:\s[A-Z]\w+)?"
    r"|(?:the|his|her)\s\w+)\s(?:would|might|could|must|had|was|were)\s(?:not\s|all\s)*(?:be\s|been\s|have\s)?"
    r"(?:come|excused?|forgiven?|join|stay|understand|enjoy|mind|find|taken?|accept|pardon|call|dine|go(?:ing)?|leave|well"
    r"|comfortable|too\slate|nothing|able)\b"
)
_RECOGNISED = re.compile(
    r"\s(?:had\s|\w+ly\s)?remember(?:ed|s)\s(?:\w+\s){0,2}\w+(?:\sat\sonce|\swell|\snow|\sthen)?[.;]"
)
_BEASTS = (
    r"(?:dog|cat|mule|horse|mare|gelding|pony|hound|bitch|puppy|pup|kitten|goat|cow|bull|ox|hen|cockerel|parrot|donkey|ass"
    r"|pig|sow|spaniel|terrier|collie|sheepdog|lurcher|retriever|labrador|whippet|rabbit|hawk|raven|jackdaw|tortoise)"
)
_SOME = 2  # times that a name stands so, from which it is a beast's


def is_known_anyway(text: str, mention: Mention) -> bool:
    """Whether those around may know it: what somebody had always hoped, or hopes as all do, or hopes aloud."""
    said = text[slice(*sentence(text, mention.start, mention.end))]
    end = behind(text, mention)
    ways = (_OF_OLD, _POLITE, _RECOGNISED)
    return bool(
        _BOTH.search(text[: mention.start])
        or any(one.match(text, end) for one in ways)
        or _LATER.search(said)
        or _SHARED.search(said)
    )


def is_beast(seen: Seen, name: str) -> bool:
    """Whether the book has the name beside what beasts are called, or do."""
    if not name:
        return False
    called = re.escape(name)
    beside = re.compile(
        rf"\b{_BEASTS},?\s(?:\w+\s)?{called}\b|\b{called},?\s(?:(?:was|is)\s)?(?:the|a|an|her|his|my|our)\s(?:\w+\s){{0,2}}"
        rf"{_BEASTS}\b|\b{called}(?:[’']s)?\s(?:\w+\s){{0,2}}(?:barked|barks|whined|whines|purred|purrs|growled|miaowed"
        r"|mewed|neighed|whinnied|brayed|tails?|paws?|muzzle|hooves|hoofs|mane|fur|collar\sjingled)\b"
    )
    return sum(len(beside.findall(text)) for scene in seen.texts for text in scene) >= _SOME
