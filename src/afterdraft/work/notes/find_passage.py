"""Find words in the text of a scene, so that something can be fastened to them."""

from collections.abc import Iterator

from afterdraft.desk.anchor import Passage
from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import Scene
from afterdraft.manuscript.outline import leaves
from afterdraft.work.notes.fastening import NOT_HERE
from afterdraft.work.plain import plain
from afterdraft.work.ports import Book

_ALIKE = str.maketrans("‘’ʼ“”\u00a0", "'''\"\" ")  # keyboards type these, manuscripts have those; one for one


def find_passage(book: Book, scene: str, words: str) -> tuple[Passage, ...]:
    """Where `words` first stand in the scene; over several paragraphs where each line of them is the whole text of one,
    but for the first and the last. Straight and curly quotation marks are alike.

    Raises `NotPossible` where they do not stand there, `Missing`.
    """
    texts = list(_texts(book, scene))
    lines = [line.strip().translate(_ALIKE) for line in plain(words).split("\n") if line.strip()]
    for n in range(len(texts) - len(lines) + 1):
        if lines and (found := _at(texts[n : n + len(lines)], lines)):
            return found
    raise NotPossible(NOT_HERE)


def _at(texts: list[tuple[int, str]], lines: list[str]) -> tuple[Passage, ...]:
    """The passages if these paragraphs hold these lines, one each."""
    (number, first), *_ = texts
    start = first.find(lines[0])
    if len(lines) == 1:
        return (Passage(number, start, start + len(lines[0])),) if start >= 0 else ()
    inner = all(text.strip() == line for (_, text), line in zip(texts[1:-1], lines[1:-1], strict=True))
    if not (first.rstrip().endswith(lines[0]) and inner and texts[-1][1].lstrip().startswith(lines[-1])):
        return ()
    starts = [first.rstrip().rfind(lines[0]), *(len(text) - len(text.lstrip()) for _, text in texts[1:])]
    return tuple(
        Passage(at, begin, begin + len(line)) for (at, _), begin, line in zip(texts, starts, lines, strict=True)
    )


def _texts(book: Book, scene: str) -> Iterator[tuple[int, str]]:
    """Number and text of the scene's story paragraphs."""
    draft = book.draft_of(scene)
    division = book.division(draft)
    start, end = next(
        ((a, b) for unit, a, b in leaves(division) if isinstance(unit, Scene) and unit.id == scene), (0, 0)
    )
    if start == end:
        raise Missing("This scene")
    for number, block in enumerate(book.blocks(draft, start, end), start):
        if division.roles[number] == "story":
            yield number, block.text.translate(_ALIKE)
