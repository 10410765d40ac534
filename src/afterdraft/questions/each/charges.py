"""A thing that is to be given on or opened later, and of which nothing more is heard."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence

from afterdraft.questions.charge_words import KEPT, Charge, charges, is_done, is_given
from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.speech import speech
from afterdraft.questions.things import THINGS, Thing, things, told_before

SEALED = frozenset({"parcel", "packet", "envelope", "letter"})  # what is kept shut goes before all else near
NEAR_SEALED = 6  # paragraphs, likewise
NEAR = 2  # paragraphs before the charge in which the thing is named; chosen by hand
SCENES = 2  # scenes behind it, in which it is still the same matter, likewise
LATE = 0.75  # share of the book's words from which nothing needs to come back, likewise
MANY = 4  # times that such a thing is named later, from which it may be this one, likewise
KNOWN_BY = 12  # times that a word stands at most by which a thing is known again, likewise
_WORD = re.compile(r"[A-Za-z][a-z-]{3,}|\d+")
Named = Mapping[tuple[int, int], Sequence[tuple[Thing, Span]]]
_SAYS_WHAT = re.compile(rf"\s(?:\w+\s)?(?:{'|'.join(sorted(THINGS))})\b")


def find(seen: Seen) -> Iterator[Finding]:
    counted = Counter(word.lower() for scene in seen.texts for text in scene for word in _WORD.findall(text))
    before, whole = told_before(seen.texts)
    named = _named(seen)
    asked: set[Span] = set()
    for number, scene in enumerate(seen.texts):
        if before[number] >= LATE * whole:
            break
        spoken = speech(scene)
        for place, text in enumerate(scene):
            for one in charges(text):
                if (one.said and not spoken(place, one.start)) or _SAYS_WHAT.match(text, one.end):
                    continue  # 'you shall carry that parcel' is of what it says
                thing, span = _meant(seen, named, Span(number, place, one.start, one.end, ""), one) or (None, None)
                charge = seen.span(number, place, one.start, one.end)
                if thing and span and span not in asked and not _comes_back(seen, thing, span, charge, counted):
                    asked.add(span)
                    yield _finding(seen, thing, span, charge)


def _named(seen: Seen) -> Named:
    """By scene and paragraph the things that are there or change hands, in order."""
    found: defaultdict[tuple[int, int], list[tuple[Thing, Span]]] = defaultdict(list)
    for thing in things(seen.texts):
        for span in thing.spans if thing.name in KEPT else ():
            text = seen.texts[span.scene][span.paragraph]
            begins, ends = sentence(text, span.start, span.end)
            if is_given(text[begins:ends], span.start - begins, span.end - begins):
                found[span.scene, span.paragraph].append((thing, span))
    return {place: sorted(some, key=lambda one: one[1].start) for place, some in found.items()}


def _meant(seen: Seen, named: Named, at: Span, charge: Charge) -> tuple[Thing, Span] | None:
    """The thing that the charge is about: the first of the last sentence before it that has any there."""
    keys = frozenset({"key"})
    for far, known in ((NEAR, keys),) if charge.of_key else ((NEAR_SEALED, SEALED), (NEAR, KEPT)):
        for near in range(at.paragraph, at.paragraph - far - 1, -1):
            here = [one for one in named.get((at.scene, near), ()) if near < at.paragraph or one[1].start < at.start]
            if some := [one for one in here if one[0].name in known]:
                return next(one for one in some if seen.sentence(one[1]) == seen.sentence(some[-1][1]))
    return None


def _comes_back(seen: Seen, thing: Thing, span: Span, charge: Span, counted: Counter[str]) -> bool:
    """Whether the thing is named again, beyond the next scenes, beside a word that is told of it here,
    or is opened or given on within them."""
    often = thing.name == "letter"  # so many are written that one is known again by all that is told beside it
    texts = [seen.texts[one.scene][one.paragraph] if often else seen.sentence(one).quote for one in (span, charge)]
    words = {word.lower() for text in texts for word in _WORD.findall(text)}
    known = {word for word in words if counted[word] <= KNOWN_BY} - {thing.name, f"{thing.name}s"}
    later = [one for one in thing.spans if one.scene > span.scene + SCENES]
    if any(is_done(text, thing.name, near=place < NEAR_SEALED) for place, text in enumerate(_behind(seen, charge))):
        return True
    if thing.name != "key" and len(later) >= MANY:  # other keys turn in other locks
        return True
    return any(known & set(_WORD.findall(seen.texts[one.scene][one.paragraph].lower())) for one in later)


def _behind(seen: Seen, charge: Span) -> Iterator[str]:
    """Paragraphs behind it, as far as it is still the same matter."""
    yield from seen.texts[charge.scene][charge.paragraph + 1 :]
    for scene in seen.texts[charge.scene + 1 : charge.scene + 1 + SCENES]:
        yield from scene


def _finding(seen: Seen, thing: Thing, span: Span, charge: Span) -> Finding:
    return Finding(
        evidence=tuple(dict.fromkeys(map(seen.sentence, (span, charge)))),
        strength=0.65,
        subject=f"charge: {thing.name}",
        words={"thing": thing.name, "charge": charge.quote},
    )


CHECK = Check(
    id="charge",
    name="A thing for later",
    family="setups and reveals",
    looks_at="A thing that somebody is to give to another, or not to open before a day, and that does not come back.",
    method="A thing of a list by hand that is there or changes hands, and words that lay it by: ‘You’re not to open "
    "it till …’, ‘you will put it into her hand’, ‘give it to her when …’, ‘put that by’ said aloud, ‘see what that "
    "opens’ of a key. It counts as coming back where it is opened, read or given on within two scenes, and where it is "
    "named again beyond them beside a word that is told of it here. Not in the last quarter of the book. The rule is "
    "our own.",
    blind="Charges in other words, and errands: ‘take it to the post before five’. Things that are not on the list, or "
    "that come back under another word.",
    reads=("words",),
    find=find,
    recipe=7,
)
