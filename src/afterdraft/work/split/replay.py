"""Corrections of the split, made again in the next draft."""

from collections.abc import Callable, Mapping, Sequence
from typing import Any, Final

from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript import editing
from afterdraft.manuscript.division import Chapter, Division, Matter, Part, Scene
from afterdraft.manuscript.validity import leaf_at
from afterdraft.work.ports import Desk
from afterdraft.work.split.mending import keep_cards

Act = Callable[[Desk, str, Division, int, Mapping[str, Any]], Division]
Unit = Part | Chapter | Scene | Matter


def replay(desk: Desk, draft: str) -> int:
    """What was corrected in other drafts is corrected in `draft` too, where the same words stand there, in the order it
    was done; doubts about those places are settled. Returns how many corrections changed something.

    A place that the text has outgrown is passed over: what is there is asked about as if it were new.
    """
    before = now = desk.division(draft)
    done: list[int] = []
    for kind, paragraph, detail in desk.corrections_met(draft):
        act = ACTS.get(kind)
        made = now if act is None else _tried(act, desk, draft, now, paragraph, detail)
        if made != now:
            now = made
            done.append(paragraph)
    if now != before:
        keep_cards(desk, before, now)
        desk.set_division(draft, now)
    for paragraph in done:
        desk.close_doubt(draft, paragraph)
    return len(done)


def _tried(act: Act, desk: Desk, draft: str, now: Division, paragraph: int, detail: Mapping[str, Any]) -> Division:
    try:
        return act(desk, draft, now, paragraph, detail)
    except (Missing, NotPossible):  # it is so already, or the text around has changed
        return now


def _split(desk: Desk, _: str, now: Division, paragraph: int, __: Mapping[str, Any]) -> Division:
    return editing.split_scene(now, paragraph, desk.new_id("scene"))


def _join(_: Desk, __: str, now: Division, paragraph: int, ___: Mapping[str, Any]) -> Division:
    return editing.join_scene(now, _at(now.scenes, paragraph))


def _make_chapter(desk: Desk, draft: str, now: Division, paragraph: int, _: Mapping[str, Any]) -> Division:
    text = desk.text(draft, paragraph)
    return editing.make_chapter(now, paragraph, text, desk.new_id("chapter"), desk.new_id("scene"))


def _unmake_chapter(_: Desk, __: str, now: Division, paragraph: int, ___: Mapping[str, Any]) -> Division:
    return editing.unmake_chapter(now, _at(now.chapters, paragraph))


def _part_to_chapter(desk: Desk, _: str, now: Division, paragraph: int, __: Mapping[str, Any]) -> Division:
    return editing.part_to_chapter(now, _at(now.parts, paragraph), desk.new_id("chapter"))


def _unmake_part(_: Desk, __: str, now: Division, paragraph: int, ___: Mapping[str, Any]) -> Division:
    return editing.unmake_part(now, _at(now.parts, paragraph))


def _mark(desk: Desk, _: str, now: Division, paragraph: int, __: Mapping[str, Any]) -> Division:
    return editing.mark_mark(now, paragraph, desk.new_id("scene"))


def _unmark(_: Desk, __: str, now: Division, paragraph: int, ___: Mapping[str, Any]) -> Division:
    return editing.unmark_mark(now, paragraph)


def _matter(desk: Desk, _: str, now: Division, paragraph: int, detail: Mapping[str, Any]) -> Division:
    """No further than the scene goes in which it begins."""
    leaf = leaf_at(now, paragraph)
    end = min(paragraph + int(detail["paragraphs"]), leaf[2] if leaf else paragraph)
    where, kind, made = detail["where"], detail["kind"], desk.new_id("matter")
    return editing.mark_matter(now, paragraph, end, where=where, kind=kind, new_id=made)


def _unmatter(desk: Desk, _: str, now: Division, paragraph: int, __: Mapping[str, Any]) -> Division:
    chapter, scene = desk.new_id("chapter"), desk.new_id("scene")
    return editing.unmark_matter(now, _at(now.matter, paragraph), chapter_id=chapter, scene_id=scene)


def _title_scene(_: Desk, __: str, now: Division, paragraph: int, detail: Mapping[str, Any]) -> Division:
    return editing.retitle_scene(now, _at(now.scenes, paragraph), detail["title"])


def _title_chapter(_: Desk, __: str, now: Division, paragraph: int, detail: Mapping[str, Any]) -> Division:
    return editing.retitle_chapter(now, _at(now.chapters, paragraph), detail["title"])


def _title_part(_: Desk, __: str, now: Division, paragraph: int, detail: Mapping[str, Any]) -> Division:
    return editing.retitle_part(now, _at(now.parts, paragraph), detail["title"])


def _at(units: Sequence[Unit], paragraph: int) -> str:
    """Id of the unit that begins at `paragraph`. Raises `Missing`."""
    for unit in units:
        if unit.at == paragraph:
            return unit.id
    raise Missing("This place")


ACTS: Final[Mapping[str, Act]] = {  # by the kind that the correction is kept under
    "split": _split,
    "join": _join,
    "make chapter": _make_chapter,
    "unmake chapter": _unmake_chapter,
    "part to chapter": _part_to_chapter,
    "unmake part": _unmake_part,
    "mark": _mark,
    "unmark": _unmark,
    "matter": _matter,
    "unmatter": _unmatter,
    "title scene": _title_scene,
    "title chapter": _title_chapter,
    "title part": _title_part,
}
