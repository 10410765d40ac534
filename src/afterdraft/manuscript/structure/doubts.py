"""What the program was unsure of: a handful of questions with the other reading, the gravest first.

Doubts that say the same in the same words are one question, about as many places: it can be answered for all at once.
"""

from collections.abc import Iterator, Sequence, Set
from itertools import pairwise

from afterdraft.manuscript.asked import questions
from afterdraft.manuscript.division import Chapter, Division, Doubt, Reading, Scene
from afterdraft.manuscript.structure.build import Found
from afterdraft.manuscript.structure.lines import Line, is_speech
from afterdraft.manuscript.structure.rank import LONGEST_CHAPTER, titular
from afterdraft.manuscript.structure.sureness import ALIKE, LONE_TITLE
from afterdraft.manuscript.structure.unlikely import (
    beginnings,
    between,
    lines_over_passages,
    long_sections,
    missing_numbers,
    nameless_parts,
    short_ends,
    spaced_names,
    uneven,
)

MOST = 8  # more than a handful would not be read (common practice)
OF_A_KIND = 3
MARKS = 3  # typed breaks from which extra space may be an accident
LOUD = 1.0  # look from which a line that was left in the text deserves a question: one sign of a heading
GAPS = 6  # gaps without a scene that are asked about; more would be the file's layout
BLIND = 2  # breaks by space from which a file without headings is asked whether they are chapters
LONG = 150  # words of unheaded front matter that may be told


def doubts(found: Found, division: Division) -> tuple[Doubt, ...]:
    """At most `MOST` questions, one for a place, in order of their paragraphs: first `OF_A_KIND` of each kind, the
    gravest kinds before others; then, where there is room, more of the kinds that were cut short."""
    kinds = [
        questions(kind)
        for kind in (
            beginnings(found, division),
            missing_numbers(division),
            _numbers(found, division),
            _opening(found, division),
            short_ends(found, division),
            uneven(found, division),
            _levels(found, division),
            nameless_parts(found, division),
            long_sections(found, division),
            spaced_names(found),
            _unnumbered(found, division),
            _matter(found),
            _missed(found, division),
            _scenes(found, division),
            _gaps(found, division),
            lines_over_passages(found, division),
        )
    ]
    chosen = [asked for kind in kinds for asked in kind[:OF_A_KIND]]
    chosen += [asked for kind in kinds for asked in kind[OF_A_KIND:]]
    by_place: dict[int, Doubt] = {}
    count = 0
    for asked in chosen:
        fresh = {doubt.paragraph: doubt for doubt in asked if doubt.paragraph not in by_place}
        if fresh and count < MOST:
            by_place |= fresh
            count += 1
    return tuple(by_place[paragraph] for paragraph in sorted(by_place))


def _numbers(found: Found, division: Division) -> Iterator[Doubt]:
    """A number that comes twice, or leaves others out for which there is no place."""
    numbered = [chapter for chapter in division.chapters if chapter.number is not None]
    for before, after in pairwise(numbered):
        first, second = before.number or 0, after.number or 0
        asked = between(division.scenes, before, after)
        if before.kind == after.kind and second not in (first + 1, 1) and not asked:
            came = "comes twice" if first == second else f"follows chapter {first}"
            yield Doubt(
                f"Chapter {second} {came}. The number may be mistyped, or this line may be no heading.",
                after.at,
                "chapter",
                "text",
            )


def _opening(found: Found, division: Division) -> Iterator[Doubt]:
    """Text without a heading before the first chapter, in a book whose chapters have headings."""
    first = division.chapters[0] if division.chapters else None
    if first and found.headings and _heading_of(found, first) is None:
        what = "The text before the first heading has none of its own; it was taken for story."
        yield Doubt(what, first.at, "chapter", "front matter")


def _levels(found: Found, division: Division) -> Iterator[Doubt]:
    """Only blank lines divide the text: they may begin chapters as well as scenes."""
    spaced = [scene for scene in division.scenes if scene.began == "space"]
    if len(spaced) < BLIND:
        return
    shown = sum(_shows(found.lines[one.at]) for one in found.headings)
    if shown * 2 <= len(found.headings) and shown < BLIND:
        what = (
            "Nothing but blank lines divides the text; they were taken for scene breaks, and some may begin chapters."
        )
        yield Doubt(what, spaced[0].at, "scene", "chapter")
    elif sum(line.words for line in found.lines) > LONGEST_CHAPTER * len(division.chapters):
        what = "For so long a text there are few headings; some of the blank lines in it may begin chapters."
        yield Doubt(what, spaced[0].at, "scene", "chapter")


def _shows(line: Line) -> bool:
    """Something but its place says that the line is a heading."""
    return line.weight > 0 or line.turn or line.name.number is not None


def _gaps(found: Found, division: Division) -> Sequence[Doubt]:
    """Extra space at which no scene was begun, in a text where it is seldom; none where there is much of it."""
    starts = {scene.at for scene in division.scenes}
    gaps = [
        line
        for line in found.lines
        if line.wide
        and line.index not in starts
        and division.roles[line.index] == "story"
        and _told_above(found, division, line)
    ]
    if len(gaps) > GAPS:
        return ()
    return [
        Doubt("There is extra space above; no scene was begun there.", line.index, "text", "scene") for line in gaps
    ]


def _told_above(found: Found, division: Division, line: Line) -> bool:
    """A paragraph of text stands above; space under a heading or a mark says nothing."""
    return line.index > found.start and division.roles[line.index - 1] == "story"


def _unnumbered(found: Found, division: Division) -> Iterator[Doubt]:
    """Headings by their look alone, among others that have a number."""
    if not any(chapter.number is not None for chapter in division.chapters):
        return
    sure = {heading.at: heading.sure for heading in found.headings}
    for chapter in division.chapters:
        if chapter.number is None and chapter.kind == "chapter" and sure.get(chapter.at, 1.0) <= ALIKE:
            what = "Without a number; taken for a chapter's heading by its look."
            yield Doubt(what, chapter.at, "chapter", "text")


def _matter(found: Found) -> Iterator[Doubt]:
    """Longer pieces before or after the story that no heading names."""
    for piece in (*found.front, *found.back):
        words = sum(line.words for line in found.lines[piece.at : piece.end])
        if not piece.headed and piece.kind == "other" and words >= LONG:
            where: Reading = "front matter" if piece in found.front else "back matter"
            what = f"The pages that begin so were taken for {where}; they may be story."
            yield Doubt(what, piece.at, where, "chapter")


def _missed(found: Found, division: Division) -> Iterator[Doubt]:
    """Lines in the text that look like headings."""
    starts = {scene.at for scene in division.scenes}
    loud = [
        line for line in found.lines if division.roles[line.index] == "story" and _is_loud(found.lines, line, starts)
    ]
    least = min((found.lines[one.at].weight for one in found.headings if one.rank == "chapter"), default=0.0)
    for line in sorted(loud, key=lambda line: -line.weight)[:OF_A_KIND]:
        what = "Perhaps a heading; it was left in the text."
        yield Doubt(what, line.index, "text", "chapter" if line.weight >= least else "scene")


def _is_loud(lines: Sequence[Line], line: Line, starts: Set[int]) -> bool:
    if not titular(line) or is_speech(line.text) or line.index in starts:
        return False
    return (line.weight >= LOUD or (line.weight >= 1 and line.turn)) and lines[line.index - 1].plain


def _scenes(found: Found, division: Division) -> Iterator[Doubt]:
    """Breaks by space or a new page in a book that types its breaks, and lone section headings."""
    marked = sum(scene.began == "mark" for scene in division.scenes)
    chapters = {chapter.at for chapter in division.chapters}
    for scene in division.scenes:
        if scene.began in ("space", "page") and marked >= MARKS and scene.sure < 1:
            yield Doubt(_because(scene), scene.at, "scene", "text")
        elif scene.began == "heading" and scene.sure <= LONE_TITLE and scene.at not in chapters:
            yield Doubt("Taken for the heading of a section.", scene.at, "scene", "text")


def _because(scene: Scene) -> str:
    sign = "a new page" if scene.began == "page" else "extra space"
    return f"A scene was begun here because of {sign}; elsewhere the breaks are typed."


def _heading_of(found: Found, chapter: Chapter) -> int | None:
    return next((heading.at for heading in found.headings if heading.at == chapter.at), None)
