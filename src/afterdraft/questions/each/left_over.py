"""A name that stands once, where somebody we know should stand: perhaps from before a renaming."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence

from rapidfuzz.distance import OSA

from afterdraft.questions.check import Check
from afterdraft.questions.drifting import drifts
from afterdraft.questions.names_written import Names
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.reading import lexicon
from afterdraft.reading.facts import Mention

EARLY = 0.1  # share of the book in which people are still brought in; chosen by hand
OFTEN = 5  # times that a name stands at least, of which another may be a misspelling
STRENGTH = 0.5  # of 35 such questions read against the text none was good (decision 16, and the tuning novellas)
KNOWN = 2  # others of the cast who are in the scene at least
_WORD = re.compile(r"[^\W\d_]+")
_INTRODUCED = re.compile(
    r"(?i:\b(?:an?|one|certain|named|called|old|young|little|poor|another|the|this|that|some|name was|like|of|and|or"
    r"|between|from|by|to|with|for|than|as|saint|st)[\s,]+)$|[,;]\s$|\b(?i:an?)\s\w+\s$"
)
_EXPLAINED = re.compile(
    r"[’']s?\b|\s*(?:,|\(|—)\s*(?:the|an?|who|whose|my|our|one|another|and|or|of|from)\b"
    r"|\s(?:and|or|of|who|from|&)\b|\s[A-Z]|,\s[A-Z]|-"
)


def find(seen: Seen) -> Iterator[Finding]:
    """What may be meant for a name that looks like it is asked about as that."""
    if found := list(_left(seen)):
        drifted = {span.quote for one in drifts(Names(seen)) for span in one.other}
        yield from (one for one in found if one.words["name"] not in drifted)


def _left(seen: Seen) -> Iterator[Finding]:
    counted = Counter(word for scene in seen.texts for text in scene for word in _WORD.findall(text))
    whole = sum(len(text) for scene in seen.texts for text in scene)
    hers = {word for one in seen.given.people for form in one.forms for word in form.split()}
    often = [word for word, times in counted.items() if times >= OFTEN and word[0].isupper()]
    known = Counter(one.scene for one in seen.book.appearances if one.presence != "mentioned" and one.mentions > 0)
    before = 0
    for number, scene in enumerate(seen.facts):
        if before >= EARLY * whole and known[number] >= KNOWN:
            tags = {quote.tag for quote in scene.quotes if quote.plain}
            alone = [
                (place, one) for place, one in enumerate(scene.mentions) if _stands_alone(seen, number, one, counted)
            ]
            for place, one in alone:
                if place in tags and one.form.split()[-1] not in hers and not _is_misspelt(seen, number, one, often):
                    yield _finding(seen, number, one)
        before += sum(len(text) for text in seen.texts[number])


def _stands_alone(seen: Seen, number: int, one: Mention, counted: Counter[str]) -> bool:
    if one.kind != "name" or one.apposed or one.joined or one.spoken:
        return False
    text = seen.texts[number][one.paragraph]
    written = text[one.start : one.end]
    words = [word for word in _WORD.findall(written) if word.lower() not in lexicon.TITLES]
    if len(words) != 1 or counted[words[0]] != 1 or counted[words[0].lower()] or words[0].isupper():
        return False
    if words[0].lower() in lexicon.ROLES:
        return False
    return not _INTRODUCED.search(text[: one.start]) and not _EXPLAINED.match(text, one.end)


def _is_misspelt(seen: Seen, number: int, one: Mention, often: Sequence[str]) -> bool:
    """Whether it is a letter away from a name that stands often: that is asked about as a spelling."""
    written = seen.texts[number][one.paragraph][one.start : one.end].split()[-1]
    return any(OSA.distance(written, word, score_cutoff=1) <= 1 for word in often)


def _finding(seen: Seen, number: int, one: Mention) -> Finding:
    here = seen.span(number, one.paragraph, one.start, one.end)
    name = here.quote
    return Finding(
        evidence=(seen.sentence(here),),
        strength=STRENGTH,
        subject=name,
        words={"name": name},
    )


CHECK = Check(
    id="left over",
    name="A name left over",
    family="cast",
    looks_at="A name that stands once in the whole book, of somebody who speaks among people we know, and is not "
    "introduced.",
    method="Names that are counted once and are beside words of speech as their speaker's, and that nothing beside "
    "them explains (‘a man called’, ‘the miller’). Not in the first tenth of the book, and no name that is somebody's "
    "in your list of people. The rule is our own.",
    blind="Somebody who speaks once and is never named again on purpose. A name left over that stands several times, "
    "or does not speak: novels name so many people in passing that words alone cannot tell. Write the earlier name "
    "among a person's earlier names, and every place where it still stands is asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=7,
)
