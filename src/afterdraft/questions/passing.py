"""Whether the telling passes time between two places: then a day told behind it is not reckoned from the one before."""

import re
from collections.abc import Iterator

from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, silenced
from afterdraft.reading.time_words import DAYS, MONTHS
from afterdraft.whole.story_points import Said

_MONTH = "|".join(MONTHS)
_PASSES = re.compile(
    r"\b(?:next|following)\s(?:\w+\s)?(?:day|morning|afternoon|evening|night|week|month|spring|summer|autumn|winter)\b"
    r"|\b(?:days|weeks?|fortnight|months?|years?)\s(?:later|after\w*|passed|went|ago)\b"
    r"|\b(?:for|in|during|after|some|several|few|many|two|three|four|five|six|seven|eight|nine|ten|\d+)"
    r"\s(?:days|weeks|months|years)\b"
    r"|\b(?:mornings?|dawn|daybreak|sunrise|a?woke|slept|asleep)\b|\bnight\s(?:passed|went)\b|\bwent\sto\sbed\b"
    rf"|\b(?:{'|'.join(DAYS)})\b|\b(?:{_MONTH})\s\d|\d(?:st|nd|rd|th)?\s(?:of\s)?(?:{_MONTH})\b"
    r"|\bthe\s\d+(?:st|nd|rd|th)\b",
    re.IGNORECASE,
)


def passes_time(seen: Seen, first: Said, second: Said) -> bool:
    """Whether words outside speech do, behind the sentence of the first place and before that of the second."""
    return any(_PASSES.search(text) for text in _between(seen, first, second))


def _between(seen: Seen, first: Said, second: Said) -> Iterator[str]:
    begins, ends = (first.scene, first.paragraph), (second.scene, second.paragraph)
    for number in range(first.scene, second.scene + 1):
        for place, text in enumerate(seen.texts[number]):
            at = number, place
            if begins <= at <= ends:
                start = sentence(text, first.start, first.end)[1] if at == begins else 0
                end = sentence(text, second.start, second.end)[0] if at == ends else len(text)
                yield silenced(text, seen.facts[number].quotes, place)[start:end]
