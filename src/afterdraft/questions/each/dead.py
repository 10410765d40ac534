"""Somebody who is dead, and later speaks or acts."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.reading.facts import Mention
from afterdraft.whole.turns import meant

_DIES = re.compile(
    r"\s(?:(?:had|has|was|lay|is|were)\s)?(?:(?:now|also|already|at\slast|suddenly|instantly)\s)?"
    r"(?:died|dead|killed|drowned|buried|murdered|hanged|breathed\s(?:his|her)\slast|fell\sdead|dropped\sdead"
    r"|was\sno\smore)\b(?!\s(?:of|with|for|to)\s(?:laughing|laughter|shame|love|curiosity|the\sworld|fright)"
    r"|\s(?:asleep|tired|drunk|set|certain|beat|against|sure|in\slove|himself|herself|silent|calm|by\sinches|a\b|an\b"
    r"|the\b|his\b|her\b|him\b|it\b|two\b|time\b|them\b|for\b|away\b|in\sthe\ssofa))"
)
_SELF = re.compile(r"^\s(?:killed|drowned|buried|murdered|hanged)\b")  # whom somebody killed, not who died
_UNSURE = re.compile(
    r"\b(?:if|though|think|thinks|thought|believe|believed|suppose|supposed|fear|feared|wish|wished|hope|hoped|until|till"
    r"|unless|would|might|may|should|could|dream|dreamed|dreamt|perhaps|whether|before|nearly|almost|as\sif|fancied"
    r"|imagined|pretend|pretended|rumou?r|told|said|heard|when|after|never|not|or)\b[^.;!?]*$",
    re.IGNORECASE,
)
_BACK = re.compile(
    r"\b(?:had|would|used\sto|once|years?\s(?:ago|before)|remember\w*|dream\w*|ghost|as\sif|like)\b", re.I
)


@dataclass(frozen=True, slots=True)
class _Death:
    scene: int
    span: Span


def find(seen: Seen) -> Iterator[Finding]:
    for person, death in _deaths(seen).items():
        if later := _acts(seen, person, death.scene):
            name = seen.name(person)
            yield Finding(
                evidence=(death.span, later),
                strength=0.85,
                subject=f"death of {name.lower()}",
                words={"name": name},
                people=(person,),
            )


def _deaths(seen: Seen) -> dict[str, _Death]:
    """Of people who are told to be dead, outside speech and for certain: where that is told first."""
    found: dict[str, _Death] = {}
    for number, scene in enumerate(seen.facts):
        for one, person in zip(scene.mentions, meant(scene, seen.book.cast), strict=True):
            if not person or one.kind != "name" or one.spoken or person in found:
                continue
            text = seen.texts[number][one.paragraph]
            begins, ends = sentence(text, one.start, one.end)
            if _dies(text, one) and not _UNSURE.search(text[begins : one.start]) and "?" not in text[one.end : ends]:
                found[person] = _Death(number, seen.span(number, one.paragraph, begins, ends))
    return found


def _dies(text: str, one: Mention) -> bool:
    behind = text[one.end : one.end + 60]
    return bool(_DIES.match(behind)) and not _SELF.match(behind)


def _acts(seen: Seen, person: str, after: int) -> Span | None:
    """Where they speak in a scene after, that does not go back, in words that do not."""
    for number in range(after + 1, len(seen.facts)):
        scene = seen.facts[number]
        if seen.story.scenes[number].flashback:
            continue
        people = meant(scene, seen.book.cast)
        for quote in scene.quotes:
            if quote.tag is None or not quote.plain or people[quote.tag] != person:
                continue
            tag = scene.mentions[quote.tag]
            text = seen.texts[number][tag.paragraph]
            begins, ends = sentence(text, tag.start, tag.end)
            if tag.kind == "name" and not tag.spoken and not _BACK.search(text[begins:ends]):
                return seen.span(number, tag.paragraph, begins, ends)
    return None


CHECK = Check(
    id="dead",
    name="Somebody dead who speaks",
    family="continuity",
    looks_at="Somebody who is told to be dead, and who speaks in a later scene that does not go back in time.",
    method="Looks outside speech for a name with ‘died’, ‘was dead’, ‘was killed’ and the like, said for certain, "
    "and for the same person beside words of speech later on. Scenes that story time puts earlier, and "
    "sentences that look back, are let be. The rule is our own.",
    blind="A death that is told of ‘he’ or ‘she’, or only shown. Somebody who was wrongly held for dead is asked "
    "about; so are two people of one name. Flashbacks whose time nothing says.",
    reads=("words", "cast", "time"),
    find=find,
)
