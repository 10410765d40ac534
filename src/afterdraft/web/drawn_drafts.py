"""What the picture of two drafts is drawn from: scenes or chapters, their names, and where each ribbon leads."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from afterdraft.comparison.comparison import Comparison, Link
from afterdraft.manuscript.naming import shortened
from afterdraft.web.fates import FateRow
from afterdraft.web.ribbons import Column, Picture, picture
from afterdraft.web.two_drafts import Named, TwoDrafts

SHORT = 36  # characters of a name beside a scene


@dataclass(frozen=True, slots=True)
class Label:
    code: str
    short: str


@dataclass(frozen=True, slots=True)
class Line:
    """Where a fate leads, and what it is called."""

    path: str
    says: str


@dataclass(frozen=True, slots=True)
class DrawnDrafts:
    picture: Picture
    lines: tuple[Line, ...]  # as the fates are
    olds: tuple[Label, ...]
    news: tuple[Label, ...]


def drawn_scenes(two: TwoDrafts, rows: Sequence[FateRow]) -> DrawnDrafts:
    """In their chapters; each fate leads to both texts side by side."""
    paths = [f"{two.base}/drafts/side/{row.key}{two.query}" for row in rows]
    columns = [Column([one.words for one in side], _heads(side)) for side in (two.olds, two.news)]
    drawing = picture(columns[0], columns[1], [row.fate for row in rows], two.compared.found.links)
    return DrawnDrafts(drawing, _lines(rows, paths), _labels(two.olds), _labels(two.news))


def drawn_chapters(two: TwoDrafts, rows: Sequence[FateRow]) -> DrawnDrafts:
    """Each fate leads to its line in the list."""
    links = [Link(old, new, kept, False, 1.0, ()) for (old, new), kept in _between(two.compared.found, rows).items()]
    columns = [Column([one.words for one in side], {}) for side in (two.old_chapters, two.new_chapters)]
    drawing = picture(columns[0], columns[1], [row.fate for row in rows], links)
    paths = [f"#f-{row.key}" for row in rows]
    names = [[Label("", shortened(one.name, SHORT)) for one in side] for side in (two.old_chapters, two.new_chapters)]
    return DrawnDrafts(drawing, _lines(rows, paths), tuple(names[0]), tuple(names[1]))


def _lines(rows: Sequence[FateRow], paths: Sequence[str]) -> tuple[Line, ...]:
    return tuple(Line(path, f"{row.called}: {row.became}") for row, path in zip(rows, paths, strict=True))


def _labels(scenes: Sequence[Named]) -> tuple[Label, ...]:
    return tuple(Label(one.code, shortened(one.name, SHORT)) for one in scenes)


def _heads(scenes: Sequence[Named]) -> dict[int, str]:
    """Names of chapters, by the scene that each begins at."""
    return {
        n: shortened(one.chapter, SHORT + 6) for n, one in enumerate(scenes) if n == 0 or one.at != scenes[n - 1].at
    }


def _between(found: Comparison, rows: Sequence[FateRow]) -> dict[tuple[int, int], int]:
    """Words kept between chapters that became one another; none, where they did so by their place alone."""
    chapters = [[told.scenes[scene].chapter for scene in told.scene_at()] for told in (found.old, found.new)]
    kept: Counter[tuple[int, int]] = Counter()
    for pair in found.pairs:
        kept[chapters[0][pair.old], chapters[1][pair.new]] += pair.kept
    return {(old, new): kept[old, new] for row in rows for old in row.fate.old for new in row.fate.new}
