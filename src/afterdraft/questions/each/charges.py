"""A thing that is to be given on or opened later, and of which nothing more is heard."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.things import THINGS, Thing, things, told_before

SEALED = frozenset({"parcel", "packet", "envelope", "letter"})  # what is kept shut goes before all else near
NEAR_SEALED = 6  # paragraphs, likewise
NEAR = 2  # paragraphs before the charge in which the thing is named; chosen by hand
SCENES = 2  # scenes behind it, in which it is still the same matter, likewise
LATE = 0.75  # share of the book's words from which nothing needs to come back, likewise
MANY = 4  # times that letters are spoken of later, from which this may be one of them, likewise
KNOWN_BY = 12  # times that a word stands at most by which a thing is known again, likewise
_CHARGE = re.compile(
    r"\byou(?:[’']ll|\swill|\sare|[’']re|\sshall|\smust)\s(?:not\s)?(?:to\s)?(?:give|put|hand|take|deliver|open|unpick"
    r"|unseal|unwrap|keep|bring|carry|read)\s(?:it|this|them|that)\b(?!\s(?:to|for)\s(?:your|our|my|him|her)sel(?:f|ves)\b|\sin\smind\b)"
    r"|\b(?:give|deliver|hand|take|carry)\s(?:it|this|them)\s(?:to|into|over\sto)\s(?!me\b|us\b|him\b|her\b)"
    r"[\w’' ]{2,30}?(?:when|before|if|after|as\ssoon|on\s(?:the\sday|\w+day|his|her)\b|with\syour\sown)"
    r"|\byou(?:[’']ve|\shave)\sto\s(?:open|read|unwrap|unseal|give|hand|deliver)\s(?:it|this|them|that)\b"
    r"|\bopen\s(?:it|this|them|that)\s(?:on|when|together|after|only|with\sme)\b"
    r"|\bput\s(?:that|this)\sby\b|\binto\s(?:his|her)\sown\shand\b|\bask\syou\swhat\swas\sin\sit\b"
    r"|(?:\bwould|[’']d|\bmeant\sto|\bgoing\sto)\s(?:\w+\s)?(?:know|learn|find\sout|see)\swhat\s(?:was\sin|was\sinside)\sit\b"
    r"|\b(?:not\sto|never|don[’']t|(?:was|were)n[’']t\sto|mustn[’']t)\s(?:be\s)?(?:open|opened|unpick|unwrap|read|unseal)\b(?!\s(?:his|her|my|their|your)\b)[^.!?;]{0,40}?\b(?:till|until"
    r"|before)\b"
    r"|\bkeep\s(?:it|this)\s(?:safe|by\syou|hidden|for\sme)\b"
    r"|\b(?:see|find\sout)\swhat\s(?:it|that)\s(?:opens|fits)\b",
    re.IGNORECASE,
)
_WORD = re.compile(r"[A-Za-z][a-z-]{3,}|\d+")
_NO_THING = re.compile(r"\b(?:to|would|will|could|can|must)\s$")  # to stick it out
_A_THING = re.compile(r"\b(?:an?|the|this|that|his|her|my|your|our|their|last|old|new|and)\s$|[’']s\s$")
_SAYS_WHAT = re.compile(rf"\s(?:\w+\s)?(?:{'|'.join(sorted(THINGS))})\b")
_DOING = frozenset({"will", "watch", "ring", "stamp", "seal", "document", "note", "lamp", "pill", "button", "stick"})


def find(seen: Seen) -> Iterator[Finding]:
    counted = Counter(word.lower() for scene in seen.texts for text in scene for word in _WORD.findall(text))
    before, whole = told_before(seen.texts)
    named = _named(seen)
    asked: set[Span] = set()
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene if before[number] < LATE * whole else ()):
            for match in _CHARGE.finditer(text):
                thing, span = _meant(seen, named, number, place, match.start()) or (None, None)
                if _SAYS_WHAT.match(text, match.end()):
                    continue  # 'you shall carry that parcel' is of what it says
                charge = seen.span(number, place, *match.span())
                if thing and span and span not in asked and not _comes_back(seen, thing, span, charge, counted):
                    asked.add(span)
                    yield _finding(seen, thing, span, charge)


def _named(seen: Seen) -> Mapping[tuple[int, int], Sequence[tuple[Thing, Span]]]:
    """By scene and paragraph the things that are named there, in order."""
    found: defaultdict[tuple[int, int], list[tuple[Thing, Span]]] = defaultdict(list)
    for thing in things(seen.texts):
        for span in thing.spans:
            before = seen.texts[span.scene][span.paragraph][: span.start]
            doing = thing.name in _DOING and not _A_THING.search(before)  # 'they will have'
            if not doing and not _NO_THING.search(before):
                found[span.scene, span.paragraph].append((thing, span))
    return {place: sorted(some, key=lambda one: one[1].start) for place, some in found.items()}


def _meant(
    seen: Seen, named: Mapping[tuple[int, int], Sequence[tuple[Thing, Span]]], number: int, place: int, at: int
) -> tuple[Thing, Span] | None:
    """The thing that the charge is about: the first of the last sentence before it that names any."""
    for far, known in ((NEAR_SEALED, SEALED), (NEAR, THINGS)):
        for near in range(place, place - far - 1, -1):
            here = [one for one in named.get((number, near), ()) if near < place or one[1].start < at]
            if some := [one for one in here if one[0].name in known]:
                return next(one for one in some if seen.sentence(one[1]) == seen.sentence(some[-1][1]))
    return None


def _comes_back(seen: Seen, thing: Thing, span: Span, charge: Span, counted: Counter[str]) -> bool:
    """Whether the thing is named again, beyond the next scenes, beside a word that is told of it here."""
    often = thing.name == "letter"  # so many are written that one is known again by all that is told beside it
    texts = [seen.texts[one.scene][one.paragraph] if often else seen.sentence(one).quote for one in (span, charge)]
    words = {word.lower() for text in texts for word in _WORD.findall(text)}
    known = {word for word in words if counted[word] <= KNOWN_BY} - {thing.name, f"{thing.name}s"}
    later = [one for one in thing.spans if one.scene > span.scene + SCENES]
    if often and len(later) >= MANY:
        return True
    return any(known & set(_WORD.findall(seen.texts[one.scene][one.paragraph].lower())) for one in later)


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
    method="‘You’re not to open it till …’, ‘you will put it into her hand’, ‘see what that opens’, and the thing that "
    "is named right before (a list by hand). It counts as coming back where it is named again beyond the next two "
    "scenes beside a word that is told of it here. Not in the last quarter of the book. The rule is our own.",
    blind="Charges in other words; things that are not on the list, or that come back under another word.",
    reads=("words",),
    find=find,
    recipe=6,
)
