"""What a habit does to a novel before it is written: more scenes, parts where there are none, typewriter's signs."""

from collections.abc import Callable
from dataclasses import replace

from bench.corpus import Break, Chapter, Novel, Part
from bench.structure.writers.plan import pick

SCENE = 1800  # words of a scene, about (common practice: one to three thousand)
ENDS = (".", "!", "?", "”", "…")
TYPED = {"“": '"', "”": '"', "‘": "'", "’": "'", "—": "--", "–": "-", "…": "...", "⸺": "----", "⸻": "------"}
PARTS = ("One", "Two", "Three")
FEWEST = 6  # chapters that are worth parts


def more_scenes(novel: Novel) -> Novel:
    """Breaks between two told paragraphs, every `SCENE` words or so; the novels have few of their own."""
    return replace(novel, chapters=tuple(_cut(novel, chapter) for chapter in novel.chapters))


def _cut(novel: Novel, chapter: Chapter) -> Chapter:
    scenes: list[tuple[str, ...]] = []
    breaks: list[Break] = []
    for scene, begins in zip(chapter.scenes, chapter.breaks, strict=True):
        pieces = _pieces(novel, scene)
        scenes += pieces
        breaks += [begins, *[Break("hr", "")] * (len(pieces) - 1)]
    return replace(chapter, scenes=tuple(scenes), breaks=tuple(breaks))


def _pieces(novel: Novel, scene: tuple[str, ...]) -> list[tuple[str, ...]]:
    pieces: list[list[str]] = [[]]
    told, left = 0, sum(len(text.split()) for text in scene)
    for before, text in zip(("", *scene), scene, strict=False):
        wanted = SCENE * pick((0.4, 0.7, 1.0, 1.3, 1.6), novel.title, text[:80])
        if told >= wanted and left >= SCENE / 3 and _may_part(before, text):
            pieces.append([])
            told = 0
        pieces[-1].append(text)
        told += len(text.split())
        left -= len(text.split())
    return [tuple(piece) for piece in pieces]


def _may_part(before: str, after: str) -> bool:
    """Both are told in prose, and a sentence is over."""
    return "\n" not in before + after and before.strip("*_").endswith(ENDS) and after[:1].isupper()


def typewriter(novel: Novel) -> Novel:
    """More scenes; straight quotes, two hyphens for a dash, three points for an ellipsis."""
    return _retyped(more_scenes(novel), lambda text: "".join(TYPED.get(sign, sign) for sign in text))


def _retyped(novel: Novel, typed: Callable[[str], str]) -> Novel:
    def all_of(texts: tuple[str, ...]) -> tuple[str, ...]:
        return tuple(map(typed, texts))

    return replace(
        novel,
        title=typed(novel.title),
        front=tuple(replace(f, title=typed(f.title), text=all_of(f.text)) for f in novel.front),
        parts=tuple(
            replace(p, title=typed(p.title), subtitle=typed(p.subtitle), head=all_of(p.head)) for p in novel.parts
        ),
        chapters=tuple(
            replace(
                c,
                title=typed(c.title),
                subtitle=typed(c.subtitle),
                head=all_of(c.head),
                scenes=tuple(map(all_of, c.scenes)),
                breaks=tuple(replace(b, heading=typed(b.heading)) for b in c.breaks),
            )
            for c in novel.chapters
        ),
    )


def in_parts(novel: Novel) -> Novel:
    """More scenes; three parts where a book has none, and in half of such books chapters that begin anew in each."""
    novel = more_scenes(novel)
    if novel.parts or len(novel.chapters) < FEWEST or any(c.label not in ("", "Chapter") for c in novel.chapters):
        return novel
    anew = pick((True, False), novel.title, "parts")
    third = -(-len(novel.chapters) // len(PARTS))
    counts = [0] * len(PARTS)
    chapters: list[Chapter] = []
    for place, chapter in enumerate(novel.chapters):
        part = place // third
        counts[part] += chapter.number is not None
        number = counts[part] if anew and chapter.number is not None else chapter.number
        chapters.append(replace(chapter, part=part, number=number))
    parts = tuple(Part(f"Part {one}", "", (), None) for one in PARTS[: -(-len(chapters) // third)])
    return replace(novel, parts=parts, chapters=tuple(chapters))
