"""What runs through the book, as screens show it: lettered marks by scene, and the lists that forms offer."""

from collections.abc import Mapping
from dataclasses import dataclass

from afterdraft.desk.cast import Known
from afterdraft.desk.lines import Does, Line, LineKind, Point, Strand
from afterdraft.work.ports import Book

PATTERNS = 8  # line patterns that can be told apart at the size of a word; the letter tells the rest apart
READER = "The reader"
DOES_WORDS: Mapping[Does, str] = {
    "opens": "opens",
    "carries": "carries on",
    "closes": "closes",
    "setup": "setup",
    "return": "return",
    "payoff": "payoff",
    "learns": "learns it",
}


@dataclass(frozen=True, slots=True)
class Mark:
    """One lettered mark. Threads are told apart by line pattern and letter, what is done by shape; never by hue."""

    kind: LineKind
    letter: str
    does: Does
    name: str
    pattern: int  # of a thread: 0 to PATTERNS - 1
    who: str = ""  # of a reveal: who learns it

    @property
    def words(self) -> str:
        """What the sign says."""
        return f"{self.name}: {self.said}"

    @property
    def said(self) -> str:
        """What is done, where the name stands beside it: "opens", "Ottla learns it"."""
        return f"{self.who} learns it" if self.kind == "reveal" else DOES_WORDS[self.does]

    @property
    def shape(self) -> str:
        """The sign's name; a person's learning is hollow where the reader's is full."""
        return "learns-person" if self.does == "learns" and self.who != READER else self.does


@dataclass(frozen=True, slots=True)
class Lists:
    """What can be chosen in forms that mark."""

    threads: tuple[Line, ...]
    setups: tuple[Line, ...]
    reveals: tuple[Line, ...]
    strands: tuple[Strand, ...]
    people: tuple[Known, ...]
    places: tuple[Known, ...]

    def of(self, kind: LineKind) -> tuple[Line, ...]:
        return {"thread": self.threads, "setup": self.setups, "reveal": self.reveals}[kind]

    @property
    def lines(self) -> tuple[Line, ...]:
        return (*self.threads, *self.setups, *self.reveals)


def lists(book: Book, draft: str) -> Lists:
    """Everything there is, in the writer's order."""
    by_kind: dict[LineKind, list[Line]] = {"thread": [], "setup": [], "reveal": []}
    for line in book.lines(draft):
        by_kind[line.kind].append(line)
    return Lists(
        threads=tuple(by_kind["thread"]),
        setups=tuple(by_kind["setup"]),
        reveals=tuple(by_kind["reveal"]),
        strands=book.strands(draft),
        people=book.known("person"),
        places=book.known("place"),
    )


def marks(book: Book, draft: str) -> dict[str, tuple[Mark, ...]]:
    """The marks of each scene that has any, by scene id: threads, then setups, then reveals, in the writer's order.

    A planned card without a scene has its marks by its own id.
    """
    return marks_of(lists(book, draft))


def marks_of(known: Lists) -> dict[str, tuple[Mark, ...]]:
    found: dict[str, dict[Mark, None]] = {}
    for line in known.lines:
        for point in line.points:
            if place := point.scene or point.laid:
                found.setdefault(place, {})[mark(known, line, point)] = None  # the same one is shown once
    return {scene: tuple(several) for scene, several in found.items()}


def mark(known: Lists, line: Line, point: Point) -> Mark:
    """How a point is shown."""
    who = "" if line.kind != "reveal" else READER
    if point.person:
        who = next((one.name for one in known.people if one.id == point.person), READER)
    return Mark(line.kind, line.letter, point.does, line.name, pattern(known, line), who)


def pattern(known: Lists, line: Line) -> int:
    """By a thread's place in its list; other lines have none."""
    return known.threads.index(line) % PATTERNS if line.kind == "thread" else 0
