"""Somebody's surname with another given name than theirs."""

import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import same_given

USUAL = 3  # times that the usual name stands in full at least; chosen on the tuning half
KNOWN = 5  # times that its given name stands at least, likewise
RARE = 2  # times that the other does at most, alone or in full, likewise
_NAME = re.compile(r"(?<![\w’'-])(?P<given>[A-Z][a-zé]+) (?P<surname>[A-Z][a-zé’]+[a-z])\b(?!-)")
_WORD = re.compile(r"[^\W\d_]+")
_EXPLAINED = re.compile(
    r"\b(?:late|old|young|little|son|sons|daughter|brother|sister|father|mother|uncle|aunt|cousin|nephew|niece|wife"
    r"|husband|widow|parents|another|named|called|certain|and|or|Mrs|Lady|Sir|of|née|both|family)\b"
)
ROUND = 40  # characters on either side in which another of the family is explained; chosen by hand


def find(seen: Seen) -> Iterator[Finding]:
    counted = Counter(word for scene in seen.texts for text in scene for word in _WORD.findall(text))
    for surname, by_given in _full(seen).items():
        usual = {given: spans for given, spans in by_given.items() if len(spans) > RARE}
        if counted[surname.lower()] or len(by_given) != 2 or len(usual) != 1:
            continue  # a family
        ((known, spans),) = usual.items()
        other = next(given for given in by_given if given != known)
        if len(spans) < USUAL or counted[known] < KNOWN or counted[other] > RARE or not _alike(known, other):
            continue
        if _is_met(seen, f"{known} {surname}") and not any(_is_explained(seen, span) for span in by_given[other]):
            yield _finding(seen, surname, (known, spans), (other, by_given[other]), counted)


def _full(seen: Seen) -> Mapping[str, Mapping[str, list[Span]]]:
    """By surname and given name, where the two stand together."""
    found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in _NAME.finditer(text):
                if match["given"].lower() in FEMALE | MALE:
                    found[match["surname"]][match["given"]].append(Span(number, place, *match.span(), match.group()))
    return found


def _is_met(seen: Seen, name: str) -> bool:
    """Whether it is somebody of the book's own, and not of history."""
    person = seen.book.cast.by_form.get(name.lower())
    return any(one.person == person and one.presence != "mentioned" for one in seen.book.appearances)


def _alike(known: str, other: str) -> bool:
    """Whether they may be one person's: of one gender, and no short form of each other."""
    one, two = known.lower(), other.lower()
    return (one in FEMALE) == (two in FEMALE) and not same_given(one, [two])


def _is_explained(seen: Seen, one: Span) -> bool:
    text = seen.texts[one.scene][one.paragraph]
    round_ = text[max(0, one.start - ROUND) : one.start] + " " + text[one.end : one.end + ROUND]
    return _EXPLAINED.search(round_) is not None


def _finding(
    seen: Seen,
    surname: str,
    usual: tuple[str, Sequence[Span]],
    other: tuple[str, Sequence[Span]],
    counted: Counter[str],
) -> Finding:
    first = other[1][0]
    near = min(usual[1], key=lambda one: (abs(one.scene - first.scene), abs(one.paragraph - first.paragraph)))
    return Finding(
        evidence=(_sentence(seen, first), _sentence(seen, near)),
        strength=0.75,
        subject=f"{usual[0]} or {other[0]} {surname}",
        words={"surname": surname, "usual": usual[0], "rare": other[0]},
        numbers={"usual": counted[usual[0]], "rare": counted[other[0]]},
    )


def _sentence(seen: Seen, one: Span) -> Span:
    return seen.span(one.scene, one.paragraph, *sentence(seen.texts[one.scene][one.paragraph], one.start, one.end))


CHECK = Check(
    id="given name",
    name="Another given name",
    family="cast",
    looks_at="A surname that stands once or twice with another given name than its usual one, where no family is "
    "spoken of.",
    method="Counts given names that many know before surnames, in the whole book. Short forms are let be, and surnames "
    "of three or more people, and names beside which kinship stands. The rule is our own.",
    blind="Given names of your own invention. A namesake who comes once without a word about it is asked about.",
    reads=("words", "cast"),
    find=find,
)
