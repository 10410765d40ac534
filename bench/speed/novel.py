"""The manuscript that budgets are stated for: 120,000 words in 90 scenes, made of the corpus's novels."""

from collections.abc import Iterator
from dataclasses import replace
from itertools import islice

from bench import corpus
from bench.corpus import Break, Chapter, Novel
from bench.structure.manuscripts import Manuscript, make
from bench.structure.writers.habits import STYLES

WORDS = 120_000
SCENES = 90
SCENES_A_CHAPTER = 3
CUT, CHANGED = 10, 5  # of the next draft: every which chapter loses a scene, every which paragraph a word
LARGEST = "the-old-wives-tale"  # 215,000 words in 104 scenes


def budget_novel(times: int = 1) -> Manuscript:
    """A docx with headings by style and typed breaks: paragraphs of several novels in a row, cut into equal scenes.

    `times` makes it as many times as long, with as many times the scenes.
    """
    scenes = list(islice(_scenes(WORDS // SCENES), SCENES * times))
    chapters = tuple(
        _chapter(number, tuple(scenes[at : at + SCENES_A_CHAPTER]))
        for number, at in enumerate(range(0, len(scenes), SCENES_A_CHAPTER), 1)
    )
    return make(Novel("budget", "A Long Walk Home", "Nora Quill", (), (), chapters), STYLES)


def largest_novel() -> Manuscript:
    return make(_largest(), STYLES)


def largest_revised() -> Manuscript:
    """Its next draft: of every tenth chapter the first scene is cut, and in each fifth paragraph a word is another."""
    novel = _largest()
    chapters = [_revised(chapter, cut=number % CUT == 0) for number, chapter in enumerate(novel.chapters, 1)]
    return make(replace(novel, chapters=tuple(chapter for chapter in chapters if chapter.scenes)), STYLES)


def _largest() -> Novel:
    return corpus.novel(next(path for path in corpus.paths() if LARGEST in path.name))


def _revised(chapter: Chapter, *, cut: bool) -> Chapter:
    scenes = chapter.scenes[1:] if cut else chapter.scenes
    told = tuple(
        tuple(text if n % CHANGED else text.replace(" and ", " but ", 1) for n, text in enumerate(scene))
        for scene in scenes
    )
    return replace(chapter, scenes=told, breaks=chapter.breaks[: len(told)])


def _scenes(words: int) -> Iterator[tuple[str, ...]]:
    """Scenes of about `words` words each: a scene ends with the paragraph that takes all so far to its share."""
    scene: list[str] = []
    taken = due = 0
    for paragraph in _paragraphs():
        scene.append(paragraph)
        taken += len(paragraph.split())
        if taken >= due + words:
            yield tuple(scene)
            scene, due = [], due + words


def _paragraphs() -> Iterator[str]:
    for path in corpus.paths():
        for chapter in corpus.novel(path).chapters:
            for scene in chapter.scenes:
                yield from scene


def _chapter(number: int, scenes: tuple[tuple[str, ...], ...]) -> Chapter:
    breaks = (Break("start", ""), *(Break("hr", "") for _ in scenes[1:]))
    return Chapter(number, f"Stage {number}", "", "", "chapter", (), None, scenes, breaks)
