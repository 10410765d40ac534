"""Habits of authors, as plans."""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from bench.corpus import Chapter, Novel
from bench.structure.writers import headings
from bench.structure.writers.changes import in_parts, more_scenes, typewriter
from bench.structure.writers.furniture import furnished
from bench.structure.writers.looks import Body
from bench.structure.writers.plan import Expected, Line, Plan, bare, new_parts, parts_of, pick, whole

KINDS = ("prologue", "epilogue", "conclusion")
NUMBER_AS_NAME = re.compile(r"\w+ chapter", re.IGNORECASE)
MARKS = ("***", "#", "~", "⁂", "* * *", "###", "• • •")
PACKED = ("docx", "odt", "rtf", "html", "epub")  # formats that carry a look


def unchanged(novel: Novel) -> Novel:
    return novel


@dataclass(frozen=True, slots=True)
class Habit:
    """How an author sets what is not story. Looks are named in `looks`."""

    name: str
    formats: tuple[str, ...]  # that can carry it
    heading: Callable[[Novel, Chapter], tuple[Line, ...]]
    contents: bool = False
    titles: bool = True  # whether a numbered chapter's title is written
    numbers: bool = True  # whether a titled chapter's number is written
    break_marks: tuple[str, ...] = ("* * *",)  # one is picked for each book; "" for a blank line only
    mixed: bool = False  # one is picked for each break instead
    pages: bool = True  # chapters begin on a new page
    front: bool = True  # there is front matter beside the title page
    levels: bool = True  # something tells chapters from scenes
    counted: bool = False  # every scene has a number, from 1 in each chapter
    page_furniture: bool = False
    apart: bool = False  # a file for each chapter
    body: Body = "indent"
    change: Callable[[Novel], Novel] = unchanged


def plan(novel: Novel, habit: Habit) -> Plan:
    novel = habit.change(novel)
    lines = [*_front(novel, habit)]
    chapters: list[Expected] = []
    for index, chapter in enumerate(novel.chapters):
        if habit.levels:
            lines += _parts(novel, index)
        lines += _chapter(novel, chapter, index, habit)
        chapters.append(_expected(novel, chapter, index, habit))
    if habit.page_furniture:
        lines = [*furnished(lines, novel)]
    return Plan(tuple(lines), tuple(chapters), levels=habit.levels)


def _expected(novel: Novel, chapter: Chapter, index: int, habit: Habit) -> Expected:
    written = habit.numbers or not chapter.title or NUMBER_AS_NAME.fullmatch(chapter.title)
    return Expected(
        number=chapter.number if written and habit.levels and not _is_named(chapter, habit) else None,
        titles=_titles(novel, chapter, habit),
        parts=parts_of(novel, index) if habit.levels else frozenset([""]),
        head=tuple(map(bare, chapter.head)),
    )


def _is_named(chapter: Chapter, habit: Habit) -> bool:
    return habit.heading is headings.named and not NUMBER_AS_NAME.fullmatch(chapter.title)


def _titles(novel: Novel, chapter: Chapter, habit: Habit) -> frozenset[str]:
    """All ways to give the title that are right."""
    title, full = bare(chapter.title), bare(headings.full_title(chapter))
    if not habit.levels or (chapter.number is not None and not habit.titles):
        return frozenset([""])
    right = {title}
    if _is_named(chapter, habit):
        right = {bare(headings.given_name(novel, chapter))}
    elif habit.heading is headings.capitals:
        right = {full.upper(), full}
    elif chapter.subtitle:
        right |= {bare(chapter.subtitle), full}
    # "Prologue" may be told by the chapter's kind alone, "Fourth Chapter" by its number
    kind_is_name = chapter.kind != "chapter" and chapter.number is None
    if kind_is_name or (not habit.numbers and NUMBER_AS_NAME.fullmatch(title)) or title.lower() in KINDS:
        right.add("")
    return frozenset(right)


def _front(novel: Novel, habit: Habit) -> Iterator[Line]:
    yield Line("title page", novel.title, "title", blanks=4)
    yield Line("title page", f"by {novel.author}" if pick((True, False), novel.title, "by") else novel.author, "author")
    if habit.contents:
        yield Line("contents", "Contents", "contents title", page=True, blanks=2)
        for chapter in novel.chapters:
            entry = " ".join(bare(line.label or line.text).replace("\n", " ") for line in habit.heading(novel, chapter))
            if entry:
                yield Line("contents", entry, "contents")
    for front in novel.front if habit.front else ():
        page = True
        if front.title:
            yield Line("matter title", front.title, "matter title", page=True, blanks=2, neutral=front.fiction)
            page = False
        quiet = front.kind in ("dedication", "epigraph")
        for text in front.text:
            look = "centred italic" if quiet else "plain"
            yield Line("matter", text, look, page=page, blanks=2 * page, neutral=front.fiction)
            page = False


def _parts(novel: Novel, index: int) -> Iterator[Line]:
    for part in new_parts(novel, index):
        level = 1 if part.parent is None else 2
        yield Line("part", whole(part), f"part {level}", page=True, blanks=2)
        for line in part.head:
            yield Line("head", line, "head")


def _chapter(novel: Novel, chapter: Chapter, index: int, habit: Habit) -> Iterator[Line]:
    lines = [*habit.heading(novel, chapter)]
    lines += [Line("head", text, "head") for text in chapter.head if habit.levels]
    # numbers that no heading stands over are chapters' own
    counted = habit.counted and bool(lines) and not any(begins.kind == "section" for begins in chapter.breaks)
    for i, (scene, begins) in enumerate(zip(chapter.scenes, chapter.breaks, strict=True)):
        mark = pick(habit.break_marks, novel.title, *((scene[0],) if habit.mixed else (habit.name, "mark")))
        if counted:
            lines.append(Line("section", str(i + 1), "section", scene=i > 0, blanks=1))
        elif begins.kind == "section" and habit.levels:
            lines.append(Line("section", begins.heading, "section", scene=i > 0, blanks=1))
        elif i > 0 and mark:
            lines.append(Line("break", mark, "break", scene=True, blanks=1))
        lines += (Line("story", text) for text in scene)
        if i > 0 and not counted and (begins.kind != "section" or not habit.levels):
            first = len(lines) - len(scene)
            lines[first] = replace(lines[first], scene=not mark, blanks=1)
    blanks = max(lines[0].blanks, 2) if habit.levels else 1
    lines[0] = replace(lines[0], page=habit.pages or index == 0, blanks=blanks, opens=index)
    return iter(lines)


STYLES = Habit("styles", (*PACKED, "md"), headings.styled, contents=True, break_marks=("***", "#"), body="plain")
BOLD = Habit("bold centred", PACKED, headings.spelled)
NUMBERED = Habit("auto-numbered", ("docx",), headings.numbered, break_marks=("#", "* * *"))
BARE = Habit(
    "pages and bare numbers", ("docx", "odt", "rtf"), headings.bare_number, titles=False, break_marks=("#", ""),
    body="tab",
)  # fmt: skip
ROMAN = Habit("hard-wrapped text", ("txt",), headings.in_roman, contents=True)
CAPITALS = Habit(
    "capitals, no number", (*PACKED, "txt"), headings.capitals, numbers=False, pages=False, change=more_scenes
)
BLANK = Habit(
    "blank lines only", ("docx", "txt", "odt", "rtf"), headings.nothing, numbers=False, break_marks=("",), pages=False,
    front=False, levels=False, change=more_scenes,
)  # fmt: skip
MIXED = Habit(
    "marks of mixed kinds", (*PACKED, "txt", "md"), headings.centred, break_marks=MARKS, mixed=True, change=more_scenes
)
STRAY = Habit(
    "stray styles, typed headers", ("docx", "odt", "rtf"), headings.centred, page_furniture=True, body="stray",
    pages=False, change=more_scenes,
)  # fmt: skip
COUNTED = Habit("numbered sections", (*PACKED, "txt"), headings.spelled, counted=True, change=more_scenes)
UNDER = Habit("title on the next line", (*PACKED, "txt"), headings.under, break_marks=("#", "***"), change=more_scenes)
TYPEWRITER = Habit(
    "straight quotes", (*PACKED, "txt"), headings.dashed, break_marks=("***", "---"), body="block",
    change=typewriter,
)  # fmt: skip
RUN_IN = Habit("run-in numbers", (*PACKED, "txt"), headings.run_in, pages=False, change=more_scenes)
MARKDOWN = Habit(
    "markdown", ("md", "txt"), headings.styled, break_marks=("***", "---", "* * *"), body="block", change=more_scenes
)
APART = Habit(
    "a file for each chapter", ("docx", "txt", "odt", "rtf"), headings.centred, apart=True, front=False,
    break_marks=("#",), change=more_scenes,
)  # fmt: skip
PAGED = Habit("typed running heads", ("txt",), headings.centred, page_furniture=True, change=more_scenes)
NAMED = Habit("names only", (*PACKED, "txt"), headings.named, numbers=False, change=more_scenes)
PARTS = Habit("parts on their own pages", (*PACKED, "txt"), headings.centred, change=in_parts)
HABITS = (
    *(STYLES, BOLD, NUMBERED, BARE, ROMAN, CAPITALS, BLANK, MIXED, STRAY, COUNTED, UNDER, TYPEWRITER, RUN_IN),
    *(MARKDOWN, APART, PAGED, NAMED, PARTS),
)
