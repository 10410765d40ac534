"""Days named with their weekdays, and which of them are told of what happens then."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.questions.days_apart import either_way
from afterdraft.questions.named_days import NamedDay, named_days
from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.reading.quotations import quotations

ROUND = 40  # characters behind a day in which 'had' says that the telling looks back; chosen on the demonstration book
_BACK = re.compile(r"\b(?:had|[Hh]e[’']d|[Ss]he[’']d|[Tt]hey[’']d)\s")
_SHOWN = re.compile(
    r"\b(?:says?|said|reads?|dated|(?:post)?marked|stamped|headed|headline|entry|entries|caption|voicemail|recording"
    r"|tape|inscription|photographs?|snapshot|cutting|clipping|receipt|stub"
    r"|page for|diary for)\b(?:[^.;!?]|\b[A-Z]\.)*$",
    re.IGNORECASE,
)  # what somebody looks at is of any year


@dataclass(frozen=True, slots=True)
class Placed:
    scene: int
    day: NamedDay
    heading: str = ""  # the line that names it, where that is no part of the text

    def words(self, seen: Seen) -> str:
        """The paragraph that names it."""
        return self.heading or seen.texts[self.scene][self.day.paragraph]

    def around(self, seen: Seen) -> tuple[str, str]:
        """What stands before it and behind in that paragraph."""
        words = self.words(seen)
        return words[: self.day.start], words[self.day.end :]

    def said(self, seen: Seen) -> str:
        return " ".join(self.words(seen)[self.day.start : self.day.end].split())

    def span(self, seen: Seen) -> Span:
        """Of a heading the sentence right below it."""
        if self.heading:
            return seen.sentence(seen.span(self.scene, 0, 0, 0))
        return seen.span(self.scene, self.day.paragraph, self.day.start, self.day.end)


def placed(seen: Seen) -> list[Placed]:
    """All of them, in the order of the text."""
    found = []
    for number, scene in enumerate(seen.texts):
        if seen.heads and scene:
            found += [Placed(number, one, line) for line in seen.heads[number] for one in named_days([line])]
        found += [Placed(number, one) for one in named_days(scene)]
    return found


def is_shown(seen: Seen, one: Placed) -> bool:
    """Whether it stands on something that somebody reads or hears."""
    return bool(_SHOWN.search(one.words(seen)[: one.day.start]))


def looks_back(seen: Seen, one: Placed) -> bool:
    return bool(_BACK.search(one.words(seen), one.day.end, one.day.end + ROUND))


def is_spoken(seen: Seen, one: Placed) -> bool:
    here = (quote for quote in quotations(seen.texts[one.scene]) if quote.paragraph == one.day.paragraph)
    return any(quote.start <= one.day.start < quote.end for quote in here)


def running(seen: Seen, found: Sequence[Placed]) -> Iterator[Placed]:
    """Those that are told, not talked of or looked back on, and in a scene not before the first that it tells."""
    first: dict[int, NamedDay] = {}
    for one in found:
        if looks_back(seen, one) or is_spoken(seen, one) or is_shown(seen, one):
            continue
        begins = first.setdefault(one.scene, one.day)
        if begins.month and one.day.month and min(either_way(begins, one.day), key=abs) < 0:
            continue
        yield one
