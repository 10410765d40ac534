"""Two drafts as two columns of scenes, or chapters, joined by ribbons: where everything lies in the drawing.

Down is pixels, from the top; across is hundredths of the room between the names, which is as wide as the window has it.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from collections.abc import Set as AbstractSet
from dataclasses import dataclass

from afterdraft.comparison.comparison import Became, Fate, Link

TALL = 26.0  # of a scene of middling length, in a book of few
WHOLE = 1600.0  # of many scenes together; those of a long book are lower
LEAST = 3.0  # the thinnest that can still be seen and pointed at
GAP = 1.5  # between neighbours
HEAD = 22.0  # above a group's first, for its name
NAMED = 11.0  # from this height on there is room for a name beside it
THIN = 1.5  # of a ribbon that carries hardly any words
OLD, NEW, BROAD = 8.0, 86.0, 6.0  # where the columns begin, and how broad a scene is
OUT = 8.0  # how far what was cut stands out on the left, and what is new on the right
BEND = 50.0  # where ribbons bend


@dataclass(frozen=True, slots=True)
class Column:
    """A draft: words of each scene, and the name of the group that begins at a scene."""

    words: Sequence[int]
    heads: Mapping[int, str]


@dataclass(frozen=True, slots=True)
class Bar:
    """A scene of either draft."""

    index: int
    x: float
    y: float
    height: float

    @property
    def named(self) -> bool:
        return self.height >= NAMED

    @property
    def middle(self) -> float:
        return round(self.y + self.height / 2, 1)


@dataclass(frozen=True, slots=True)
class Drawn:
    """What became of some scenes."""

    became: Became
    moved: bool
    olds: tuple[Bar, ...]
    news: tuple[Bar, ...]
    ribbons: tuple[str, ...]  # outlines, as SVG paths


@dataclass(frozen=True, slots=True)
class Head:
    y: float  # of its words' foot
    name: str


@dataclass(frozen=True, slots=True)
class Picture:
    height: float
    drawn: tuple[Drawn, ...]  # as the fates are
    old_heads: tuple[Head, ...]
    new_heads: tuple[Head, ...]


def picture(old: Column, new: Column, fates: Sequence[Fate], links: Iterable[Link]) -> Picture:
    """Heights by words, ribbons as broad as the words they carry. What crosses has moved."""
    scale = _scale(old.words, new.words)
    gone = {n for fate in fates if fate.became == "cut" for n in fate.old}
    come = {n for fate in fates if not fate.old for n in fate.new}
    olds = _bars(old, scale, OLD, OLD - OUT, gone)
    news = _bars(new, scale, NEW, NEW + OUT, come)
    ribbons = _ribbons(olds, news, (old.words, new.words), sorted(links, key=lambda link: (link.old, link.new)))
    drawn = [
        Drawn(
            fate.became,
            fate.moved,
            tuple(olds[n] for n in fate.old),
            tuple(news[n] for n in fate.new),
            tuple(ribbons[o, n] for o in fate.old for n in fate.new if (o, n) in ribbons),
        )
        for fate in fates
    ]
    foot = max((bar.y + bar.height for bar in (*olds, *news)), default=0.0)
    return Picture(round(foot + GAP, 1), tuple(drawn), _heads(old, olds), _heads(new, news))


def _scale(old: Sequence[int], new: Sequence[int]) -> float:
    """Pixels a word."""
    most = max(len(old), len(new), 1)
    return min(TALL, WHOLE / most) * most / max(sum(old), sum(new), 1)


def _bars(column: Column, scale: float, x: float, outside: float, alone: AbstractSet[int]) -> list[Bar]:
    bars, y = [], 0.0
    for n, words in enumerate(column.words):
        y += HEAD if n in column.heads else GAP
        height = max(LEAST, words * scale)
        bars.append(Bar(n, outside if n in alone else x, round(y, 1), round(height, 1)))
        y += height
    return bars


def _heads(column: Column, bars: Sequence[Bar]) -> tuple[Head, ...]:
    return tuple(Head(round(bars[n].y - HEAD / 4, 1), name) for n, name in column.heads.items())


def _ribbons(
    olds: Sequence[Bar], news: Sequence[Bar], words: tuple[Sequence[int], Sequence[int]], links: Sequence[Link]
) -> dict[tuple[int, int], str]:
    """By old and new scene."""
    left = _ends(olds, words[0], [(link.old, link.new, link.kept) for link in links])
    right = _ends(news, words[1], [(link.new, link.old, link.kept) for link in links])
    return {(link.old, link.new): _outline(left[link.old, link.new], right[link.new, link.old]) for link in links}


def _ends(
    bars: Sequence[Bar], words: Sequence[int], links: Sequence[tuple[int, int, int]]
) -> dict[tuple[int, int], tuple[float, float]]:
    """Where ribbons begin and end on their scenes, in the middle of each and one below the other. `links`: the scene,
    the one on the other side, words."""
    own: defaultdict[int, list[tuple[int, int]]] = defaultdict(list)
    for one, other, kept in links:
        own[one].append((other, kept))
    ends = {}
    for one, others in own.items():
        bar, whole = bars[one], max(words[one], 1)
        breadths = [min(bar.height, max(THIN, bar.height * kept / whole)) for _, kept in sorted(others)]
        shrunk = min(1.0, bar.height / sum(breadths))
        y = bar.y + (bar.height - shrunk * sum(breadths)) / 2
        for (other, _), breadth in zip(sorted(others), breadths, strict=True):
            ends[one, other] = (y, y + shrunk * breadth)
            y += shrunk * breadth
    return ends


def _outline(left: tuple[float, float], right: tuple[float, float]) -> str:
    (a, b), (c, d) = left, right
    start, end = OLD + BROAD, NEW
    return (
        f"M{start:g} {a:.1f}C{BEND:g} {a:.1f} {BEND:g} {c:.1f} {end:g} {c:.1f}"
        f"V{d:.1f}C{BEND:g} {d:.1f} {BEND:g} {b:.1f} {start:g} {b:.1f}Z"
    )
