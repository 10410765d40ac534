"""From what each decider found to a division: every paragraph in exactly one unit, with its role."""

from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.manuscript.division import Chapter, ChapterKind, Division, Matter, Part, Role, Scene
from afterdraft.manuscript.structure.breaks import Break, Passage, find_breaks, is_mark
from afterdraft.manuscript.structure.lines import Line
from afterdraft.manuscript.structure.matter import Piece
from afterdraft.manuscript.structure.sureness import OPENING
from afterdraft.manuscript.structure.titles import Titled


@dataclass(frozen=True, slots=True)
class Found:
    """Everything decided about a file."""

    lines: Sequence[Line]
    headings: Sequence[Titled]  # in order
    front: Sequence[Piece]
    back: Sequence[Piece]

    @property
    def start(self) -> int:
        """First line that is not front matter."""
        return self.front[-1].end if self.front else 0

    @property
    def end(self) -> int:
        """First line of the back matter."""
        return self.back[0].at if self.back else len(self.lines)


def build(found: Found) -> Division:
    """The division, with provisional ids ("scene-0", …)."""
    if not found.lines:
        return Division()
    parts = tuple(_parts(found))
    openings = _openings(found)
    passages = _passages(found, openings)
    breaks = find_breaks(found.lines, passages)
    return Division(
        parts=parts,
        chapters=tuple(
            _chapter(found, number, at, heading, parts) for number, (at, heading) in enumerate(openings.items())
        ),
        scenes=tuple(_scenes(found, openings, passages, breaks)),
        matter=tuple(_matter(found)),
        roles=_roles(found, passages),
    )


def _parts(found: Found) -> Iterator[Part]:
    for number, heading in enumerate(one for one in found.headings if one.rank == "part"):
        yield Part(f"part-{number}", heading.at, printed(found.lines, heading))


def printed(lines: Sequence[Line], heading: Titled) -> str:
    """The heading's own lines as one: "PART TWO: The Crossing"."""
    first = lines[heading.at]
    texts = [
        first.label,
        *(row.strip(" *_") for line in lines[heading.at : heading.end] for row in line.text.split("\n")),
    ]
    title = ""
    for text in filter(None, texts):
        title += (" " if title.endswith((".", ":", "—", "–", "-", "?", "!")) else ": ") * bool(title) + text
    return title


def _headed(found: Found) -> bool:
    return any(one.rank != "section" for one in found.headings)


def _openings(found: Found) -> dict[int, Titled | None]:
    """Where chapters begin: at their headings, and where text is told that no heading stands over."""
    openings: dict[int, Titled | None] = {}
    upper = [one for one in found.headings if one.rank != "section"]
    if not upper:  # where nothing is headed, each of several files is a chapter
        starts = [line.index for line in found.lines[found.start + 1 : found.end] if line.file]
        return dict.fromkeys([found.start, *starts])
    if not upper or upper[0].at > found.start:
        openings[found.start] = None
    for number, heading in enumerate(upper):
        limit = upper[number + 1].at if number + 1 < len(upper) else found.end
        if heading.rank == "chapter":
            openings[heading.at] = heading
        elif heading.told < limit:
            openings[heading.told] = None
    return openings


def _chapter(found: Found, number: int, at: int, heading: Titled | None, parts: Sequence[Part]) -> Chapter:
    place = bisect_right(parts, at, key=lambda part: part.at)
    part = parts[place - 1].id if place else None
    if heading is None:
        return Chapter(f"chapter-{number}", at, part, "other" if _headed(found) else "chapter", None, "")
    name = found.lines[at].name
    head = tuple(line.text for line in found.lines[heading.end : heading.told])
    if name.kind == "part":  # a part that holds no chapters but text
        return Chapter(f"chapter-{number}", at, part, "other", None, printed(found.lines, heading), head)
    kind: ChapterKind = "chapter" if name.kind == "none" else name.kind
    return Chapter(f"chapter-{number}", at, part, kind, name.number, heading.title, head)


def _passages(found: Found, openings: dict[int, Titled | None]) -> list[Passage]:
    limits = [*(heading.at for heading in found.headings if heading.rank != "section"), *openings, found.end]
    limits.sort()
    sections = [one for one in found.headings if one.rank == "section"]
    passages: list[Passage] = []
    for at, heading in openings.items():
        end = limits[bisect_right(limits, at)]
        inside = sections[_first(sections, at) : _first(sections, end)]
        passages.append(Passage(heading.told if heading else at, end, {one.at: one for one in inside}))
    return passages


def _first(headings: Sequence[Titled], at: int) -> int:
    return bisect_left(headings, at, key=lambda heading: heading.at)


def _scenes(
    found: Found, openings: dict[int, Titled | None], passages: Sequence[Passage], breaks: Sequence[Break]
) -> Iterator[Scene]:
    firsts = {passage.start: at for at, passage in zip(openings, passages, strict=True)}
    for number, one in enumerate(breaks):
        at = firsts.get(one.at, one.at)
        heading = openings.get(at)
        if heading:
            yield Scene(f"scene-{number}", at, began="heading", sure=heading.sure, title=one.title)
        else:
            began = "page" if one.began == "none" and found.lines[at].turn and at else one.began
            yield Scene(
                f"scene-{number}",
                at,
                began=began,
                sure=OPENING if at in openings and _headed(found) else one.sure,
                title=one.title,
            )


def _matter(found: Found) -> Iterator[Matter]:
    for number, piece in enumerate(found.front):
        yield Matter(f"matter-{number}", piece.at, "front", piece.kind)
    for number, piece in enumerate(found.back, start=len(found.front)):
        yield Matter(f"matter-{number}", piece.at, "back", piece.kind)


def _roles(found: Found, passages: Sequence[Passage]) -> tuple[Role, ...]:
    roles: list[Role] = ["story"] * len(found.lines)
    for passage in passages:
        for line in found.lines[passage.start : passage.end]:
            if is_mark(line):
                roles[line.index] = "mark"
    for heading in found.headings:
        roles[heading.at : heading.end] = ["heading"] * (heading.end - heading.at)
        roles[heading.end : heading.told] = ["head"] * (heading.told - heading.end)
    for piece in (*found.front, *found.back):
        roles[piece.at : piece.end] = ["matter"] * (piece.end - piece.at)
    return tuple(roles)
