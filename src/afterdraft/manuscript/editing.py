"""Mending a division by hand: join, split, make and unmake chapters, set front and back matter apart.

Each act takes a sound division and gives a new sound one (`validity.problems`); where it makes no
sense it raises `NotPossible` or `Missing` and nothing is changed. Ids never move to another unit:
a split's first half and a join's first scene keep theirs. Ids of new units are given by the caller.
"""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import TypeVar

from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import (
    Began,
    Chapter,
    ChapterKind,
    Division,
    Matter,
    MatterKind,
    Part,
    Role,
    Scene,
    Where,
)
from afterdraft.manuscript.outline import leaves
from afterdraft.manuscript.structure.wording import name
from afterdraft.manuscript.validity import HEADING_ROLES, chapter_at, leaf_at, part_at, problems

__all__ = [
    "join_scene",
    "make_chapter",
    "mark_mark",
    "mark_matter",
    "part_to_chapter",
    "problems",
    "retitle_chapter",
    "retitle_part",
    "retitle_scene",
    "split_scene",
    "unmake_chapter",
    "unmake_part",
    "unmark_mark",
    "unmark_matter",
]

Unit = TypeVar("Unit", Part, Chapter, Scene, Matter)
Titled = TypeVar("Titled", Part, Chapter, Scene)


def join_scene(division: Division, scene_id: str) -> Division:
    """Joins a scene to the one before, which keeps id, code and title; headings between become text.

    The first scene of a chapter takes its chapter with it: the chapter before runs on.
    """
    scene = _find(division.scenes, scene_id, "This scene")
    before = leaf_at(division, scene.at - 1)
    if before is None or not isinstance(before[0], Scene):
        raise NotPossible("There is no scene directly before this one to join it to.")
    end = _end(division, scene.at)
    return replace(
        division,
        chapters=tuple(chapter for chapter in division.chapters if chapter.at != scene.at),
        scenes=_without(division.scenes, scene_id),
        roles=_told(division.roles, scene.at, end),
    )


def split_scene(division: Division, paragraph: int, new_id: str) -> Division:
    """Begins scene `new_id` at `paragraph`; break marks just above it go with it."""
    _, start = _scene_holding(division, paragraph)
    at = _with_marks(division.roles, paragraph, start)
    if "story" not in division.roles[start:at]:
        raise NotPossible("There is no text above this line that could be a scene of its own.")
    began: Began = "mark" if division.roles[at] == "mark" else "none"
    return replace(division, scenes=_in_order([*division.scenes, Scene(id=new_id, at=at, began=began)]))


def make_chapter(division: Division, paragraph: int, text: str, new_id: str, scene_id: str) -> Division:
    """Makes the line at `paragraph`, which reads `text`, the heading of chapter `new_id`.

    Where no scene begins there yet, scene `scene_id` does. In front or back matter the rest of that
    matter becomes the chapter.
    """
    leaf = leaf_at(division, paragraph)
    if leaf is None:
        raise Missing("This line")
    unit, start, end = leaf
    if isinstance(unit, Part):
        raise NotPossible("This line is the heading of a part.")
    if isinstance(unit, Matter):
        division = _matter_to_scene(division, unit, paragraph, end, scene_id)
        at = paragraph
    else:
        at = _opening(division, paragraph, start)
        if at == start and chapter_at(division, start):
            return _headed(division, start, paragraph, text)
        if at > start:
            division = split_scene(division, paragraph, scene_id)
    named = _named(Chapter(id=new_id, at=at, part=part_at(division, at), kind="chapter", number=None, title=""), text)
    return replace(
        division,
        chapters=_in_order([*division.chapters, named]),
        scenes=tuple(replace(one, began="heading", title="") if one.at == at else one for one in division.scenes),
        roles=_with_roles(division.roles, paragraph, paragraph + 1, "heading"),
    )


def unmake_chapter(division: Division, chapter_id: str) -> Division:
    """The chapter's scenes go to the chapter before; its heading stays as the heading of its first scene."""
    chapter = _find(division.chapters, chapter_id, "This chapter")
    place = division.chapters.index(chapter)
    if place == 0 or division.chapters[place - 1].part != chapter.part:
        raise NotPossible("A book, and each of its parts, begins with a chapter.")
    return replace(
        division,
        chapters=_without(division.chapters, chapter_id),
        scenes=tuple(
            replace(scene, title=scene.title or chapter.title) if scene.at == chapter.at else scene
            for scene in division.scenes
        ),
    )


def unmake_part(division: Division, part_id: str) -> Division:
    """The part's lines become text of what stands before them, and its chapters go to the part before."""
    part = _find(division.parts, part_id, "This part")
    before = leaf_at(division, part.at - 1)
    if before is None:
        raise NotPossible("There is nothing before this part that could take its heading.")
    end = _end(division, part.at)
    roles = _with_roles(division.roles, part.at, end, _taken_by(before[0]))
    return _reparted(replace(division, parts=_without(division.parts, part_id), roles=roles))


def part_to_chapter(division: Division, part_id: str, new_id: str) -> Division:
    """The part is chapter `new_id`, and the scenes of its chapters are the chapter's, with the chapters' titles."""
    part = _find(division.parts, part_id, "This part")
    own = [chapter for chapter in division.chapters if chapter.part == part_id]
    if not own or own[0].at != _end(division, part.at):
        raise NotPossible("No chapter stands right under this part.")
    titles = {chapter.at: chapter.title for chapter in own}
    scenes = (replace(one, title=one.title or titles.get(one.at, "")) for one in division.scenes)
    made = Chapter(id=new_id, at=part.at, part=None, kind="chapter", number=None, title=part.title)
    return _reparted(
        replace(
            division,
            parts=_without(division.parts, part_id),
            chapters=_in_order([*(chapter for chapter in division.chapters if chapter not in own), made]),
            scenes=tuple(replace(one, at=part.at) if one.at == own[0].at else one for one in scenes),
        )
    )


def retitle_chapter(division: Division, chapter_id: str, title: str) -> Division:
    """Gives the chapter another title; the manuscript's own line stays as it is."""
    return replace(division, chapters=_retitled(division.chapters, chapter_id, title, "This chapter"))


def retitle_scene(division: Division, scene_id: str, title: str) -> Division:
    """Gives the scene a title; with an empty one its first words are shown again."""
    return replace(division, scenes=_retitled(division.scenes, scene_id, title, "This scene"))


def retitle_part(division: Division, part_id: str, title: str) -> Division:
    """Gives the part another title."""
    return replace(division, parts=_retitled(division.parts, part_id, title, "This part"))


def mark_matter(division: Division, start: int, end: int, *, where: Where, kind: MatterKind, new_id: str) -> Division:
    """Sets the paragraphs `start` to `end` (exclusive) apart as front or back matter `new_id`.

    Scenes, chapters and parts wholly inside go; one that reaches beyond keeps what lies outside.
    """
    if not 0 <= start < end <= len(division.roles):
        raise Missing("This passage")
    _check_cut(division, start, end)
    scenes = _outside(division.scenes, division, start, end)
    if not scenes:
        raise NotPossible("A book needs at least one scene.")
    matter = _outside(division.matter, division, start, end)
    return _reparted(
        Division(
            parts=_outside(division.parts, division, start, end),
            chapters=tuple(_kept_chapters(division, scenes)),
            scenes=scenes,
            matter=_in_order([*matter, Matter(id=new_id, at=start, where=where, kind=kind)]),
            roles=_with_roles(division.roles, start, end, "matter"),
        )
    )


def unmark_matter(division: Division, matter_id: str, *, chapter_id: str, scene_id: str) -> Division:
    """The matter is story after all: it becomes chapter `chapter_id` with one scene, `scene_id`."""
    matter = _find(division.matter, matter_id, "This matter")
    division = _matter_to_scene(division, matter, matter.at, _end(division, matter.at), scene_id)
    chapter = Chapter(
        id=chapter_id, at=matter.at, part=part_at(division, matter.at), kind="other", number=None, title=""
    )
    return replace(division, chapters=_in_order([*division.chapters, chapter]))


def mark_mark(division: Division, paragraph: int, new_id: str) -> Division:
    """The line at `paragraph` is a break mark; with text above and below it, scene `new_id` begins there."""
    _, start = _scene_holding(division, paragraph)
    if division.roles[paragraph] != "story":
        raise NotPossible("This line is a heading or a break mark already.")
    division = replace(division, roles=_with_roles(division.roles, paragraph, paragraph + 1, "mark"))
    end = _end(division, start)
    if "story" in division.roles[start:paragraph] and "story" in division.roles[paragraph:end]:
        return split_scene(division, paragraph, new_id)
    return division


def unmark_mark(division: Division, paragraph: int) -> Division:
    """The break mark at `paragraph` is text after all; a scene that began at it joins the one before."""
    scene, start = _scene_holding(division, paragraph)
    if division.roles[paragraph] != "mark":
        raise NotPossible("This line is not a break mark.")
    if any(role in HEADING_ROLES for role in division.roles[paragraph : _end(division, start)]):
        raise NotPossible("This mark stands above a heading.")
    division = replace(division, roles=_with_roles(division.roles, paragraph, paragraph + 1, "story"))
    before = leaf_at(division, start - 1)
    if start == paragraph and not chapter_at(division, start) and before and isinstance(before[0], Scene):
        return join_scene(division, scene.id)
    return division


def _find(units: tuple[Unit, ...], unit_id: str, what: str) -> Unit:
    for unit in units:
        if unit.id == unit_id:
            return unit
    raise Missing(what)


def _without(units: tuple[Unit, ...], unit_id: str) -> tuple[Unit, ...]:
    return tuple(unit for unit in units if unit.id != unit_id)


def _in_order(units: Iterable[Unit]) -> tuple[Unit, ...]:
    return tuple(sorted(units, key=lambda unit: unit.at))


def _end(division: Division, at: int) -> int:
    """Where the part lines, scene or matter that begins at `at` ends."""
    return next(end for _, start, end in leaves(division) if start == at)


def _scene_holding(division: Division, paragraph: int) -> tuple[Scene, int]:
    leaf = leaf_at(division, paragraph)
    if leaf is None:
        raise Missing("This line")
    if not isinstance(leaf[0], Scene):
        raise NotPossible("This line is not in a scene.")
    return leaf[0], leaf[1]


def _with_marks(roles: tuple[Role, ...], paragraph: int, start: int) -> int:
    """The first of the break marks that stand directly above `paragraph`, within its scene."""
    while paragraph > start and roles[paragraph - 1] == "mark":
        paragraph -= 1
    return paragraph


def _opening(division: Division, paragraph: int, start: int) -> int:
    """Where a chapter whose heading is `paragraph` would begin, in the scene that begins at `start`."""
    if "story" not in division.roles[start:paragraph]:
        return start
    return _with_marks(division.roles, paragraph, start)


def _headed(division: Division, at: int, paragraph: int, text: str) -> Division:
    """The chapter that begins at `at` without a heading gets one."""
    if "heading" in division.roles[at : paragraph + 1]:
        raise NotPossible("This line is the heading of a chapter already.")
    return replace(
        division,
        chapters=tuple(_named(one, text) if one.at == at else one for one in division.chapters),
        scenes=tuple(replace(one, began="heading") if one.at == at else one for one in division.scenes),
        roles=_with_roles(division.roles, paragraph, paragraph + 1, "heading"),
    )


def _named(chapter: Chapter, text: str) -> Chapter:
    read = name(text)
    kind: ChapterKind = "chapter" if read.kind == "none" or read.kind == "part" else read.kind
    return replace(chapter, kind=kind, number=read.number, title=read.title)


def _matter_to_scene(division: Division, matter: Matter, start: int, end: int, scene_id: str) -> Division:
    """Scene `scene_id` takes the paragraphs `start` to `end` of `matter`, which ends at `end`."""
    kept = _without(division.matter, matter.id) if start == matter.at else division.matter
    return replace(
        division,
        matter=kept,
        scenes=_in_order([*division.scenes, Scene(id=scene_id, at=start)]),
        roles=_with_roles(division.roles, start, end, "story"),
    )


def _check_cut(division: Division, start: int, end: int) -> None:
    for unit, first, last in leaves(division):
        if first < start and end < last:
            raise NotPossible("This passage lies inside one scene; split the scene at its end first.")
        if isinstance(unit, Part) and (first < start < last or first < end < last):
            raise NotPossible("The lines of a part's heading cannot be parted.")


def _outside(units: tuple[Unit, ...], division: Division, start: int, end: int) -> tuple[Unit, ...]:
    """What is left of parts, scenes or matter when `start` to `end` is taken out; the cut is checked already."""
    kept: list[Unit] = []
    for unit in units:
        if not start <= unit.at < end:
            kept.append(unit)
        elif _end(division, unit.at) > end:
            kept.append(replace(unit, at=end))
    return tuple(kept)


def _kept_chapters(division: Division, scenes: tuple[Scene, ...]) -> Iterator[Chapter]:
    """The chapters that still have a scene among `scenes`; one that lost its beginning begins at its next scene."""
    limits = [chapter.at for chapter in division.chapters[1:]] + [len(division.roles)]
    for chapter, limit in zip(division.chapters, limits, strict=True):
        first = next((scene.at for scene in scenes if chapter.at <= scene.at < limit), None)
        if first is not None:
            yield replace(chapter, at=first)


def _reparted(division: Division) -> Division:
    """Each chapter in the part it stands in."""
    return replace(
        division,
        chapters=tuple(replace(chapter, part=part_at(division, chapter.at)) for chapter in division.chapters),
    )


def _with_roles(roles: tuple[Role, ...], start: int, end: int, role: Role) -> tuple[Role, ...]:
    return (*roles[:start], *(role for _ in range(start, end)), *roles[end:])


def _told(roles: tuple[Role, ...], start: int, end: int) -> tuple[Role, ...]:
    """Headings between `start` and `end` become text; break marks stay marks."""
    told: tuple[Role, ...] = tuple("story" if role in HEADING_ROLES else role for role in roles[start:end])
    return (*roles[:start], *told, *roles[end:])


def _taken_by(unit: Part | Scene | Matter) -> Role:
    """The role of lines that a unit takes in."""
    if isinstance(unit, Scene):
        return "story"
    return "matter" if isinstance(unit, Matter) else "head"


def _retitled(units: tuple[Titled, ...], unit_id: str, title: str, what: str) -> tuple[Titled, ...]:
    found = _find(units, unit_id, what)
    return tuple(replace(unit, title=title.strip()) if unit is found else unit for unit in units)
