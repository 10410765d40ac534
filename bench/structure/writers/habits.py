"""Five habits of authors, as plans."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

from bench.corpus import Chapter, Novel
from bench.structure.writers.plan import (
    Expected,
    Line,
    Plan,
    bare,
    cardinal,
    new_parts,
    parts_of,
    pick,
    roman,
    whole,
    word,
)

Heading = Callable[[Novel, Chapter], tuple[Line, ...]]


@dataclass(frozen=True, slots=True)
class Habit:
    """How an author sets what is not story. Looks are named in `docx_page` and `txt_page`."""

    name: str
    ending: str
    heading: Heading  # the lines that name a chapter; none where the book names it in no way
    contents: bool = False
    titles: bool = True  # whether a numbered chapter's title is written
    break_marks: tuple[str, ...] = ("* * *",)  # one is picked for each book; "" for a blank line only


def plan(novel: Novel, habit: Habit) -> Plan:
    lines = [*_front(novel, habit)]
    chapters: list[Expected] = []
    for index, chapter in enumerate(novel.chapters):
        lines += _parts(novel, index)
        lines += _chapter(novel, chapter, index, habit)
        chapters.append(
            Expected(
                number=chapter.number,
                titles=_titles(chapter, habit),
                parts=parts_of(novel, index),
                head=tuple(map(bare, chapter.head)),
            )
        )
    return Plan(tuple(lines), tuple(chapters))


def _titles(chapter: Chapter, habit: Habit) -> frozenset[str]:
    title = bare(chapter.title)
    if chapter.number is not None and not habit.titles:
        return frozenset([""])
    if chapter.subtitle:
        return frozenset([title, bare(chapter.subtitle), f"{title}: {bare(chapter.subtitle)}"])
    if chapter.kind != "chapter" and chapter.number is None:
        return frozenset([title, ""])  # "Prologue" may be told by the chapter's kind alone
    return frozenset([title])


def _front(novel: Novel, habit: Habit) -> Iterator[Line]:
    yield Line("title page", novel.title, "title", blanks=4)
    yield Line("title page", f"by {novel.author}" if pick((True, False), novel.title, "by") else novel.author, "author")
    if habit.contents:
        yield Line("contents", "Contents", "contents title", page=True, blanks=2)
        for chapter in novel.chapters:
            entry = " ".join(bare(line.label or line.text).replace("\n", " ") for line in habit.heading(novel, chapter))
            if entry:
                yield Line("contents", entry, "contents")
    for front in novel.front:
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
    lines += [Line("head", text, "head") for text in chapter.head]
    mark = pick(habit.break_marks, novel.title, habit.name, "mark")
    for i, (scene, begins) in enumerate(zip(chapter.scenes, chapter.breaks, strict=True)):
        if begins.kind == "section":
            lines.append(Line("section", begins.heading, "section", scene=i > 0, blanks=1))
        elif i > 0 and mark:
            lines.append(Line("break", mark, "break", scene=True, blanks=1))
        lines += (Line("story", text) for text in scene)
        if i > 0 and begins.kind != "section":
            first = len(lines) - len(scene)
            lines[first] = replace(lines[first], scene=not mark, blanks=1)
    lines[0] = replace(lines[0], page=True, blanks=max(lines[0].blanks, 2), opens=index)
    return iter(lines)


def _styled(novel: Novel, chapter: Chapter) -> tuple[Line, ...]:
    look = f"chapter {1 + _depth(novel)}"
    title = f"{chapter.title}: {chapter.subtitle}" if chapter.subtitle else chapter.title
    if chapter.number is None:
        return (Line("chapter", title, look),) if title else ()
    form = pick(("{word} {n}: {title}", "{n}. {title}", "{word} {n}\n{title}"), novel.title, "styled heading")
    if not title:
        form = "{word} {n}"
    elif chapter.label not in ("", "Chapter"):
        form = "{word} {n}: {title}"
    return (Line("chapter", form.format(word=word(chapter), n=chapter.number, title=title), look),)


def _spelled(_: Novel, chapter: Chapter) -> tuple[Line, ...]:
    title = (Line("chapter", chapter.title, "bold"),) if chapter.title else ()
    under = (Line("chapter", chapter.subtitle, "bold"),) if chapter.subtitle else ()
    if chapter.number is None:
        return title + under
    return (Line("chapter", f"{word(chapter)} {cardinal(chapter.number)}".upper(), "bold"), *title)


def _numbered(novel: Novel, chapter: Chapter) -> tuple[Line, ...]:
    styled = pick((True, False), novel.title, "numbering")
    look = f"numbered {1 + _depth(novel)}" if styled else "numbered bold"
    title = f"{chapter.title}: {chapter.subtitle}" if chapter.subtitle else chapter.title
    if chapter.number is None:
        return (Line("chapter", title, look),) if title else ()
    return (Line("chapter", title, look, label=word(chapter), number=chapter.number),)


def _bare(_: Novel, chapter: Chapter) -> tuple[Line, ...]:
    if chapter.number is None:
        lines = [Line("chapter", text) for text in (chapter.title, chapter.subtitle) if text]
        return tuple(lines)
    text = str(chapter.number) if chapter.label in ("", "Chapter") else f"{chapter.label} {chapter.number}"
    return (Line("chapter", text, "number"),)


def _roman(novel: Novel, chapter: Chapter) -> tuple[Line, ...]:
    title = tuple(Line("chapter", text, blanks=1) for text in (chapter.title, chapter.subtitle) if text)
    if chapter.number is None:
        return title
    # An author whose sections are numbered in roman does not number chapters by bare roman numerals as well.
    sections = any(b.kind == "section" and set(b.heading) <= set("IVX") for c in novel.chapters for b in c.breaks)
    forms = (
        ("CHAPTER {n}", "CHAPTER {n}. {title}")
        if sections
        else ("CHAPTER {n}", "{n}.", "CHAPTER {n}. {title}", "{n}. {title}")
    )
    form = pick(forms, novel.title, "roman heading")
    if chapter.label not in ("", "Chapter"):
        form = chapter.label.upper() + " {n}"
    elif not chapter.title:
        form = form.replace(" {title}", "")
    text = form.format(n=roman(chapter.number), title=chapter.title)
    if "{title}" in form:
        return (Line("chapter", text),)
    return (Line("chapter", text), *title)


def _depth(novel: Novel) -> int:
    """How many levels of parts stand above the chapters."""
    if not novel.parts:
        return 0
    return 2 if any(part.parent is not None for part in novel.parts) else 1


STYLES = Habit("styles", "docx", _styled, contents=True, break_marks=("***", "#"))
BOLD = Habit("bold centred", "docx", _spelled)
NUMBERED = Habit("auto-numbered", "docx", _numbered, break_marks=("#", "* * *"))
BARE = Habit("pages and bare numbers", "docx", _bare, titles=False, break_marks=("#", ""))
ROMAN = Habit("hard-wrapped text", "txt", _roman, contents=True)
HABITS = (STYLES, BOLD, NUMBERED, BARE, ROMAN)
