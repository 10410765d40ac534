"""A rank or title that somebody has once, and not before or after."""

import re
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen

USUAL = 6  # times that the usual title stands at least; chosen on the tuning half
RARE = 2  # times that the other does at most, likewise
_FORMS = {
    "Lieutenant": "Lieutenant Lieut", "Captain": "Captain Capt", "Major": "Major Maj", "Colonel": "Colonel Col",
    "General": "General Gen", "Sergeant": "Sergeant Sergt Sgt", "Corporal": "Corporal", "Commander": "Commander",
    "Admiral": "Admiral", "Inspector": "Inspector", "Superintendent": "Superintendent", "Constable": "Constable",
    "Doctor": "Doctor Dr", "Professor": "Professor Prof", "Judge": "Judge", "Bishop": "Bishop", "Canon": "Canon",
    "Dean": "Dean", "Father": "Father",
}  # fmt: skip
RANKS: Mapping[str, str] = {form: rank for rank, forms in _FORMS.items() for form in forms.split()}
_TITLED = re.compile(rf"\b({'|'.join(RANKS)})\.? ((?:[A-Z][’'])?[A-Z][a-zé]+)\b(?!-[a-z]* [A-Z])")
_TOGETHER = (  # that one person has at once
    {"Doctor", "Professor"}, {"Doctor", "Bishop"}, {"Doctor", "Canon"}, {"Doctor", "Dean"}, {"Lieutenant", "Colonel"},
    {"Lieutenant", "General"}, {"Major", "General"}, {"Canon", "Father"}, {"Lieutenant", "Commander"},
)  # fmt: skip
_EXPLAINED = re.compile(
    r"\b(?:promot\w+|commission\w*|gazetted|raised to|made (?:him|her|me|a)|brevet|became|become|formerly)\b"
)
_ANOTHER = re.compile(
    r"\b(?:young|old|late|another|other|brother|father|son|uncle|cousin|nephew|then|now|former|once),? $",
    re.IGNORECASE,
)

_EARLIER = re.compile(r"^[,;)]?\s\W?(?:\w+\s){0,2}(?:then|at\sthat\stime|at\sthe\stime|in\sthose\sdays)\b")
BESIDE = 30  # characters behind


def find(seen: Seen) -> Iterator[Finding]:
    for surname, by_rank in _titled(seen).items():
        often = [rank for rank, spans in by_rank.items() if len(spans) > RARE]
        if len(often) != 1 or len(by_rank[often[0]]) < USUAL:
            continue
        usual = often[0]
        for other, spans in by_rank.items():
            if other != usual and {usual, other} not in _TOGETHER and _is_alone(seen, spans, by_rank[usual]):
                yield _finding(seen, surname, (usual, by_rank[usual]), (other, spans))


def _titled(seen: Seen) -> Mapping[str, Mapping[str, list[Span]]]:
    """By surname and rank, in telling order."""
    found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in _TITLED.finditer(text):
                found[match[2]][RANKS[match[1]]].append(Span(number, place, *match.span(), match.group()))
    return found


def _is_alone(seen: Seen, spans: Sequence[Span], usual: Sequence[Span]) -> bool:
    """Whether the usual title comes before it and after, and nothing explains the other."""
    within = usual[0] < spans[0] and spans[-1] < usual[-1]
    return within and not any(_is_explained(seen, one) for one in spans)


def _is_explained(seen: Seen, one: Span) -> bool:
    """Whether it is told how he came by it, or that somebody else of the name has it."""
    before, whole = seen.texts[one.scene][one.paragraph][: one.start], seen.sentence(one).quote
    together = len({rank for rank, name in _TITLED.findall(whole) if one.quote.endswith(name)}) > 1
    earlier = _EARLIER.search(seen.texts[one.scene][one.paragraph][one.end : one.end + BESIDE])
    return together or bool(_EXPLAINED.search(whole) or _ANOTHER.search(before) or earlier)


def _finding(seen: Seen, surname: str, usual: tuple[str, Sequence[Span]], other: tuple[str, Sequence[Span]]) -> Finding:
    first = other[1][0]
    near = min(usual[1], key=lambda one: (abs(one.scene - first.scene), abs(one.paragraph - first.paragraph)))
    return Finding(
        evidence=(seen.sentence(first), seen.sentence(near)),
        strength=0.75,
        subject=f"{usual[0]} or {other[0]} {surname}",
        words={"surname": surname, "usual": usual[0], "rare": other[0]},
        numbers={"usual": len(usual[1]), "rare": len(other[1])},
    )


CHECK = Check(
    id="rank",
    name="A rank that changes once",
    family="continuity",
    looks_at="A surname that stands once or twice behind another rank or title than its usual one, with the usual one "
    "before and after.",
    method="Counts ranks and titles before surnames (Captain, Inspector, Doctor and the like; not Mr, Mrs, Miss). "
    "Titles that "
    "one person may have at once, and sentences that speak of promotion or of kin, are let be. The rule is our own.",
    blind="A promotion that stays. Two people of one surname who both have a rank.",
    reads=("words",),
    find=find,
    recipe=4,
)
