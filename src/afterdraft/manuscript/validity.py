"""What makes a division sound: every paragraph in exactly one unit, every scene in a chapter."""

from collections.abc import Iterator, Sequence
from itertools import pairwise

from afterdraft.manuscript.division import Chapter, Division, Matter, Part, Scene
from afterdraft.manuscript.outline import Leaf, leaves

Unit = Part | Chapter | Scene | Matter
HEADING_ROLES = ("heading", "head")


def problems(division: Division, paragraphs: int) -> tuple[str, ...]:
    """What is unsound about `division` over so many paragraphs, one sentence each; none when it is sound."""
    if len(division.roles) != paragraphs:
        return (f"There are {len(division.roles)} roles for {paragraphs} paragraphs.",)
    if not paragraphs:
        return () if division == Division() else ("There are units without paragraphs.",)
    order = tuple(_order(division, paragraphs))
    return order or (*_chapters(division), *_roles(division))


def _order(division: Division, paragraphs: int) -> Iterator[str]:
    kinds: tuple[Sequence[Unit], ...] = (division.parts, division.chapters, division.scenes, division.matter)
    for units in kinds:
        places = [one.at for one in units]
        if any(after <= before for before, after in pairwise(places)):
            yield "Units are out of order, or two begin at one paragraph."
        if places and not 0 <= places[0] <= places[-1] < paragraphs:
            yield "A unit begins outside the text."
    own = [at for _, at, _ in leaves(division)]
    if len(set(own)) < len(own):
        yield "Two units begin at one paragraph."
    if min(own, default=-1) != 0:
        yield "The first paragraphs are in no unit."
    ids = [unit.id for units in kinds for unit in units]
    if len(set(ids)) < len(ids):
        yield "Two units have one id."


def _chapters(division: Division) -> Iterator[str]:
    starts = {scene.at for scene in division.scenes}
    for chapter in division.chapters:
        if chapter.at not in starts:
            yield f"No scene begins with chapter {chapter.id}."
        if chapter.part != part_at(division, chapter.at):
            yield f"Chapter {chapter.id} names another part than the one it stands in."
    chapter_starts = {chapter.at for chapter in division.chapters}
    inside = False
    for unit, at, _ in leaves(division):
        inside = (inside and not isinstance(unit, Part)) or at in chapter_starts
        if isinstance(unit, Scene) and not inside:
            yield f"Scene {unit.id} is in no chapter."


def _roles(division: Division) -> Iterator[str]:
    chapter_starts = {chapter.at for chapter in division.chapters}
    for unit, start, end in leaves(division):
        roles = division.roles[start:end]
        if isinstance(unit, Matter):
            sound = all(role == "matter" for role in roles)
        elif isinstance(unit, Part):
            sound = roles[0] == "heading" and all(role in HEADING_ROLES for role in roles)
        else:
            told = roles.index("story") if "story" in roles else len(roles)
            sound = "matter" not in roles and not any(role in HEADING_ROLES for role in roles[told:])
            if "heading" in roles and unit.began != "heading" and start not in chapter_starts:
                sound = False
        if not sound:
            yield f"Roles do not fit {unit.id}."


def part_at(division: Division, paragraph: int) -> str | None:
    """Id of the part that `paragraph` stands in: the last that began at or before it."""
    before: Part | None = None
    for part in division.parts:
        if part.at <= paragraph:
            before = part
    return before.id if before else None


def chapter_at(division: Division, paragraph: int) -> Chapter | None:
    """The chapter that begins exactly at `paragraph`."""
    return next((chapter for chapter in division.chapters if chapter.at == paragraph), None)


def leaf_at(division: Division, paragraph: int) -> tuple[Leaf, int, int] | None:
    """The part lines, scene or matter that hold `paragraph`, with their range."""
    return next((leaf for leaf in leaves(division) if leaf[1] <= paragraph < leaf[2]), None)
