"""What one person is to another, told in two ways: his brother here, his cousin there."""

import re
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.questions.whose import NAMED, Whose
from afterdraft.reading.lexicon import TITLES
from afterdraft.whole.pronoun_cautions import Owner

SAYS, SURE = 0.6, 0.85  # of who says 'my', and of whom 'his' means
ALONE = 0.4  # of whom 'his' means, where the sentence names nobody else before it
_KIN = {
    **dict.fromkeys(("father", "mother"), ("parent", "child")),
    **dict.fromkeys(("son", "daughter"), ("child", "parent")),
    **dict.fromkeys(("brother", "sister"), ("sibling", "sibling")),
    **dict.fromkeys(("half-brother", "half-sister"), ("half-sibling", "half-sibling")),
    "cousin": ("cousin", "cousin"),
    **dict.fromkeys(("uncle", "aunt"), ("uncle", "nephew")),
    **dict.fromkeys(("nephew", "niece"), ("nephew", "uncle")),
    **dict.fromkeys(("husband", "wife"), ("spouse", "spouse")),
    **dict.fromkeys(("grandfather", "grandmother"), ("grandparent", "grandchild")),
    **dict.fromkeys(("grandson", "granddaughter"), ("grandchild", "grandparent")),
    **dict.fromkeys(("great-uncle", "great-aunt"), ("great-uncle", "great-nephew")),
    **dict.fromkeys(("great-nephew", "great-niece"), ("great-nephew", "great-uncle")),
    **dict.fromkeys(("brother-in-law", "sister-in-law"), ("brother-in-law", "brother-in-law")),
    **dict.fromkeys(("son-in-law", "daughter-in-law"), ("son-in-law", "father-in-law")),
    **dict.fromkeys(("father-in-law", "mother-in-law"), ("father-in-law", "son-in-law")),
    **dict.fromkeys(("godfather", "godmother"), ("godfather", "godson")),
    **dict.fromkeys(("godson", "goddaughter"), ("godson", "godfather")),
}  # what somebody is, and what the other is then
_BOTH = (
    {"godfather", "uncle"},
    {"godson", "nephew"},
    {"cousin", "spouse"},
    {"half-sibling", "sibling"},
    {"great-uncle", "uncle"},
    {"great-nephew", "nephew"},
)  # somebody can be both, or is called so
_WORD = (
    r"(?:(?:own|elder|older|eldest|oldest|younger|youngest|big|little|baby|kid|twin|late|dead|only|poor|dear|old|first"
    r"|second|favou?rite|widowed|married) )*"
    rf"(?P<kin>{'|'.join(sorted(_KIN, key=len, reverse=True))})"
)
_NAME = r"(?P<name>(?:[A-Z][\w-]+\.? )*[A-Z][\w-]+)"
_OWN = r"(?P<own>\b[Hh]is|\b[Hh]er|\b[Mm]y|(?:[A-Z][\w.]+ )*[A-Z][\w-]+(?=[’']s? ))(?:[’']s?)?"
_ALIKE = "brother|sister|cousin|half-brother|half-sister"
_SIDE = r"(?P<side>father|mother)[’']s (?:(?:elder|older|younger|only|eldest|youngest|twin) )?(?P<kin>sister|brother)"
_PATTERNS = tuple(
    re.compile(pattern)
    for pattern in (
        rf"{_OWN} {_WORD} {_NAME}",
        rf"{_OWN} {_WORD}, {_NAME}(?=[,.;])",
        rf"{_OWN} {_SIDE} {_NAME}",
        rf"{_NAME},? (?:(?:was|is|had been) )?{_OWN} {_SIDE}(?=[,.;]| and | by )",
        rf"{_NAME}, {_OWN} {_WORD}(?=[,.;])",
        rf"{_NAME} (?:was|is|had been) {_OWN} {_WORD}(?=[,.;]| and | by )",
        rf"{_NAME},? (?:(?:was|is) )?(?:an?|the) {_WORD} (?:of|to) (?P<own>(?:[A-Z][\w.]+ )*[A-Z][\w-]+)(?=[,.;])",
        rf"{_NAME} and (?P<own>(?:[A-Z][\w.]+ )*[A-Z][\w-]+) (?:were|are|had been) (?P<kin>{_ALIKE})s\b(?!-)",
    )
)
_UNREAL = re.compile(
    r"\b(?:if|not|never|like|as (?:an?|though)|wish\w*|(?:would|might)(?: have)? be\w*"
    r"|pretend\w*|lie[ds]?|lying|pass(?:ed)? (?:off|for)"
    r"|call(?:ed|s|ing)?|so-called|taken for|took|mistook|thought(?! of)|supposed|adopted|foster|almost)\b|n[’']t\b|\?",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class _Told:
    relation: str  # what the second of the pair is to the first
    kin: str  # the word
    name: str  # of whom the word is said
    owner: str
    span: Span  # its sentence


def find(seen: Seen) -> Iterator[Finding]:
    by: defaultdict[tuple[str, str], list[_Told]] = defaultdict(list)
    for owner, person, told in _told(seen) if seen.is_read else ():
        by[min(owner, person), max(owner, person)].append(told)
    for pair, some in by.items():
        if two := next(((some[0], one) for one in some[1:] if _apart(some[0], one)), None):
            yield _finding(seen, pair, *two)


def _told(seen: Seen) -> Iterator[tuple[str, str, _Told]]:
    whose = Whose(seen)
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in (match for pattern in _PATTERNS for match in pattern.finditer(text)):
                span = seen.span(number, place, *sentence(text, *match.span()))
                owner, person = (_known(seen, whose, span, match, group) for group in ("own", "name"))
                if owner and person and owner != person and not _UNREAL.search(span.quote):
                    names = seen.name(person), seen.name(owner)
                    yield owner, person, _Told(*_relation(match, owner > person), *names, span)


def _relation(match: re.Match[str], turned: bool) -> tuple[str, str]:
    """What the second is to the first, with the word that is said of the second or, `turned`, of the first."""
    side, kin = match.groupdict().get("side"), match["kin"]
    if side:
        return f"{side}’s {'nephew' if turned else 'uncle'}", f"{side}’s {kin}"
    return _KIN[kin][turned], kin


def _known(seen: Seen, whose: Whose, span: Span, match: re.Match[str], group: str) -> str:
    """Who is meant there, by given name or pronoun; "" where that is not known well enough."""
    said = match[group]
    owner: Owner | None = whose.last(span.scene, span.paragraph, *match.span(group))
    if said.lower() in ("his", "her", "my"):
        alone = said.lower() != "my" and _alone(seen, whose, span, match, owner)
        least = ALONE if alone else SAYS if said.lower() == "my" else SURE
        owner = owner or whose.teller(span.scene, span.paragraph, match.start(group))
        return owner[0] if owner and owner[1] >= least else ""
    person = owner[0] if owner and owner[1] >= NAMED else seen.book.cast.by_form.get(said.lower(), "")
    return person if person and _goes_by(seen, person) in said.lower().split() else ""


def _alone(seen: Seen, whose: Whose, span: Span, match: re.Match[str], owner: Owner | None) -> bool:
    """Whether who is meant is the only one whom the sentence names before it: 'Ada thought of her cousin'."""
    at = match.start("own")
    before = {
        other[0] if other else ""
        for one, other in zip(seen.facts[span.scene].mentions, whose.owners(span.scene), strict=True)
        if one.paragraph == span.paragraph and span.start <= one.start < at and one.kind in ("name", "role")
    }
    return owner is not None and before == {owner[0]}


def _goes_by(seen: Seen, person: str) -> str:
    """The first word of the name that is no title; "" where it is a surname that others have too."""
    words = [word for word in seen.name(person).lower().split() if word.rstrip(".") not in TITLES]
    titled = len(words) < len(seen.name(person).split())
    if not words or (titled and len(words) == 1 and len(_bearers(seen, words[0])) > 1):
        return ""
    return words[0]


def _bearers(seen: Seen, word: str) -> set[str]:
    return {one.id for one in seen.book.cast.people for form in one.aliases if word in form.split()}


def _apart(one: _Told, other: _Told) -> bool:
    two = {one.relation, other.relation}
    plain = {relation.rpartition("’s ")[2] for relation in two}
    sides = {relation.partition("’s ")[0] for relation in two if "’s " in relation}
    return len(sides) == 2 or (len(plain) == 2 and plain not in _BOTH)


def _finding(seen: Seen, pair: tuple[str, str], one: _Told, other: _Told) -> Finding:
    first, second = (seen.name(person) for person in pair)
    return Finding(
        evidence=tuple(sorted((one.span, other.span))),
        strength=0.75,
        subject=f"kinship of {first.lower()} and {second.lower()}",
        words={
            "first": f"{one.name} is the {one.kin} of {one.owner}",
            "other": f"{other.name} the {other.kin} of {other.owner}",
        },
        numbers={"first": float(one.span.scene), "other": float(other.span.scene)},
        people=pair,
    )


CHECK = Check(
    id="kinship",
    name="Kin in two ways",
    family="continuity",
    looks_at="One person who is another's brother here and the cousin there, the son and the nephew, the aunt on the "
    "father's side and the aunt on the mother's.",
    method="‘Ada’s brother Tom’, ‘Tom, her brother’, ‘Tom was my father’s brother’, ‘Tom, a nephew of Ada’, where both "
    "are named, or it is known well who says ‘my’ and who is meant by ‘her’; turned about where it is said of the "
    "other. Two words that can be said of one pair are let be: cousins marry, an uncle is a godfather. The rule is "
    "our own.",
    blind="Kin that is told without a given name (‘her brother’), or by what follows from it: who is the son of a "
    "sister. Who pretends to be kin, without a word of it there, is asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=3,
)
