"""Streets that are another kind of street for a while: 'Sprat Lane', and 'Sprat Street' once."""

import re
from collections import defaultdict
from collections.abc import Iterator

from afterdraft.questions.drifting import Drift
from afterdraft.questions.names_written import APART
from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.reading.lexicon import words_of

RARE = 2  # times that the other stands at most; chosen by hand
_KINDS = "Street|Road|Lane|Row|Place|Square|Terrace|Avenue|Close|Court|Crescent|Gardens|Alley|Mews|Grove|Buildings"
_STREET = re.compile(rf"(?<![\w’'-])(?P<name>[A-Z][a-zé]+(?:[’']s)?) (?P<kind>{_KINDS})\b(?! [A-Z]|-)")
_LONGER = re.compile(r"[A-Z][\w’'.]* $")
_EVERYWHERE = words_of(
    """
    church chapel park mill station market castle bridge high king king's king’s queen queen's queen’s queens victoria
    albert george london new old north south east west upper lower great little the this that
    """
)  # of which a town has several streets


def streets(seen: Seen) -> Iterator[Drift]:
    """Of a name with two kinds of street, where one of them hardly stands."""
    found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in _STREET.finditer(text):
                if match["name"].lower() not in _EVERYWHERE and not _LONGER.search(text[: match.start()]):
                    found[match["name"]][match["kind"]].append(seen.span(number, place, *match.span()))
    for by_kind in found.values():
        usual, other = sorted(by_kind.values(), key=len, reverse=True) if len(by_kind) == 2 else ([], [])
        if len(usual) > len(other) <= RARE and other and not _are_beside(usual, other):
            near = max((one for one in usual if one < other[0]), default=usual[0])
            yield Drift(near, tuple(other), (len(usual), len(other)), tied=True)


def _are_beside(usual: list[Span], other: list[Span]) -> bool:
    return any(one.scene == two.scene and abs(one.paragraph - two.paragraph) < APART for one in usual for two in other)
