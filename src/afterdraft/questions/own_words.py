"""Where an 'I' outside quotation marks is somebody's own words all the same: thought, said, written, or a teller's."""

import re
from collections.abc import Sequence

from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.reading.tense_forms import form

AROUND = 5  # paragraphs on either side in which a letter or a report that is set in begins and ends
_TELLER = re.compile(
    r"\bI\s(?:\w+ly\s)?(?:know|think|have|am|suppose|believe|say|confess|remember|shall|will|must|may|cannot|do|fear"
    r"|trust|hope|mean|can|dare|need|should|would|fancy|imagine|presume|venture|admit|grant|own|call|wish|find|see|feel"
    r"|write|take)\b|\bme\ssay\b|\b(?:is|seems|appears)\sto\sme\b"
    r"|\bmy\s(?:reader|readers|story|tale|hero|heroine)\b"
)
_THOUGHT = re.compile(r"[*_“”‘\"]|\b(?:thought|wondered|said|asked|wrote|read)\b|^[^\w]*[A-Z]\w*(?:\s\w+){0,2}:|\?|!")
_OTHERS_THINK = re.compile(
    r"\b(?:he|she|they|it|(?!I\b)[A-Z]\w+|(?:the|his|her)\s\w+)\s(?:\w+ly\s|had\s)?(?:thought|thinks|wondered|wonders|said|says|asked|asks|wrote|writes"
    r"|told|tells|cried|cries|mused|reflected|prayed|prays|muttered|whispered|whispers|replied|answered"
    r"|reasoned|repeated|added|adds|insisted|sang|sings|shouted)(?=[\s,.;:—])"
    r"|\b(?:seem(?:ed|s)|was|were)\s(?:to\s(?:say|ask|cry|tell)|saying|telling|asking|beginning)\b"
    r"|\b(?:thought|thinks|said|says|cried|mused|muttered|whispered|prayed)\s(?!I\b)(?:he|she|it|the|[A-Z]\w+)\b"
)  # beside it: what they think or say may go on
_SAID_SO = re.compile(r"[:—]\s*$")
_NOW = re.compile(
    r"\bI(?:[’'](?:m|ll|ve)|\s(?:\w+ly\s|never\s|still\s|just\s)?(?:am|have|do|can|shall|will|must|may|don[’']t|can[’']t"
    r"|won[’']t|haven[’']t|cannot))(?!\w)"
)
_DOES = re.compile(r"\bI\s(?:\w+ly\s|never\s|then\s|also\s|only\s|still\s)?([a-z]+)\b")
_HEAD = re.compile(
    r"^\W*(?:(?:My\s)?[Dd]ear(?:est)?\b.{0,40}|(?:[A-Z][\w’'.]*[\s,.—-]*){1,6}|\d{1,2}(?:st|nd|rd|th)?\s[A-Z]\w+.{0,20}"
    r"|[A-Z]\w+\s\d{1,2}.{0,20})\W*$"
)  # over a letter or under it: whom it is to, from, of when


def is_thought(text: str, own: Sequence[tuple[int, int]]) -> bool:
    """Whether those who are told of think or say it: of sentences of a paragraph with an 'I' in them, where it is said
    of others right beside them that they do so, or where what that I does stands more in the present."""
    found = sentences(text)
    places = {at for at, one in enumerate(found) if one in own}
    near = {one for at in places for one in (at - 1, at, at + 1) if 0 <= one < len(found)}
    if any(_OTHERS_THINK.search(text, *found[at]) for at in near):
        return True
    said = " ".join(text[slice(*one)] for one in own)
    done = sum(form(verb) in ("past", "both") for verb in _DOES.findall(said))
    return len(_NOW.findall(said)) > done


def is_aside(said: str) -> bool:
    """Whether a sentence is thought, or said by a teller of the time of telling: 'I fancy'."""
    return bool(_THOUGHT.search(said) or _TELLER.search(said))


def acts(said: str) -> bool:
    """Whether an I did something; most forms of the past are participles too."""
    return any(form(verb) in ("past", "both") for verb in _DOES.findall(said))


def is_set_in(seen: Seen, number: int, place: int) -> bool:
    """Whether the paragraph belongs to a letter or a report: a line that is none of the telling stands over it, as a
    name, a date or a colon, and nobody speaks between."""
    texts, talked = seen.texts[number], {quote.paragraph for quote in seen.facts[number].quotes}
    for step in (-1, 1):
        for at in range(place + step, place + step * (AROUND + 1), step):
            if not 0 <= at < len(texts) or at in talked:
                break
            if _HEAD.match(texts[at]) or (step < 0 and _SAID_SO.search(texts[at])):
                return True
    return False
