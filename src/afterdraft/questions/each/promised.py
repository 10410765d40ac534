"""Somebody who has something still to tell, and does not come again."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence

SURE = 0.7  # of who speaks; below, nothing is asked
LAST = 0.1  # share of the book's scenes at its end in which a thing may be left open
_PROMISE = re.compile(
    r"\bI(?:[’']ll| will| shall) (?:tell|show|explain (?:it )?to) (?:you|thee|yer)\b"
    r"(?:(?! (?:this|that|frankly|why|what it is|plainly|honestly|candidly|how it is))[^.!?;,]){0,30}?"
    r"\b(?:then|later|one day|some day|someday|another (?:day|time)|to-?morrow|to-?night|when I|when we"
    r"|when you|on \w+day|next week|by and by|some other time)\b"
    r"|\b(?:I[’']ve|I have|there[’']s|there is) something (?:to|I must|I ought to|I want to|I have to) (?:tell|show)"
    r" you"
    r"(?=[^.!?]*\b(?:later|then|to-?morrow|to-?night|not (?:here|now)|when|alone)\b)"
    r"|\b(?:can|could|may|might) I (?:have|speak) a (?:quiet )?word\b(?=[^.!?]*\b(?:later|alone|somewhere|quiet)\b)",
    re.IGNORECASE,
)


def find(seen: Seen) -> Iterator[Finding]:
    last = _last_on_page(seen)
    for number, scene in enumerate(seen.facts):
        if number >= (1 - LAST) * len(seen.facts):
            return
        for said in seen.book.spoken[number]:
            quote = scene.quotes[said.quote]
            text = seen.texts[number][quote.paragraph]
            match = _PROMISE.search(text, quote.start, quote.end)
            person = said.speaker if said.sure >= SURE else None
            if match and person and last.get(person) == number and not _narrates(seen, person):
                name = seen.name(person)
                yield Finding(
                    evidence=(_sentence(seen, number, quote.paragraph, match),),
                    strength=0.7,
                    subject=f"promise of {name.lower()}",
                    words={"name": name, "said": " ".join(match.group().split())},
                    people=(person,),
                )


def _last_on_page(seen: Seen) -> dict[str, int]:
    return {one.person: one.scene for one in seen.book.appearances if one.presence != "mentioned"}


def _narrates(seen: Seen, person: str) -> bool:
    narrator = seen.book.cast.narrator
    return narrator is not None and narrator.id == person


def _sentence(seen: Seen, number: int, paragraph: int, match: re.Match[str]) -> Span:
    return seen.span(number, paragraph, *sentence(match.string, *match.span()))


CHECK = Check(
    id="promised",
    name="Something still to tell",
    family="cast",
    looks_at="Somebody who says that they will tell or show something later, and who is not met again.",
    method="Looks in speech for ‘I’ll tell you then’ and its like, where it is known who speaks, and for the last "
    "scene in which that person speaks or acts. The last tenth of the book is let be. The rule is our own.",
    blind="Promises in other words; what is told in a letter, or by somebody else. Somebody who comes again and "
    "never tells is not asked about.",
    reads=("words", "cast"),
    find=find,
)
