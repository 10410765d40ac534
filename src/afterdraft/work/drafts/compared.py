"""Two drafts of a book, compared: what became of every scene, by the scenes' own ids."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Protocol

from afterdraft.comparison.compare import compare
from afterdraft.comparison.comparison import Comparison, Fate
from afterdraft.comparison.kept_form import from_form, key, to_form
from afterdraft.comparison.said import Said, overruled
from afterdraft.comparison.told import Told, files_paragraphs, told
from afterdraft.desk.draft import SaidOfScenes
from afterdraft.manuscript.division import Division, Scene
from afterdraft.manuscript.outline import outline
from afterdraft.work.ports import Book


class Read(Protocol):
    """What of a book, or of an edit, comparing reads."""

    def division(self, draft: str) -> Division: ...
    def texts(self, draft: str) -> tuple[str, ...]: ...


@dataclass(frozen=True)
class Side:
    """A draft as comparison has it: indices of scenes and story paragraphs, and what they are in the book."""

    draft: str  # id
    told: Told
    division: Division
    texts: tuple[str, ...]  # of the whole file
    scenes: tuple[Scene, ...]  # in telling order
    chapters: tuple[str, ...]  # ids, in telling order
    paragraphs: tuple[int, ...]  # number in the file of each story paragraph

    @cached_property
    def scene_index(self) -> Mapping[str, int]:
        return {scene.id: n for n, scene in enumerate(self.scenes)}

    @cached_property
    def story_index(self) -> Mapping[int, int]:
        """Story paragraph by its number in the file."""
        return {number: n for n, number in enumerate(self.paragraphs)}


@dataclass(frozen=True)
class Compared:
    old: Side
    new: Side
    found: Comparison  # with what she says

    @cached_property
    def pieces(self) -> Mapping[str, tuple[str, ...]]:
        """By id of each old scene: those it lives on in, the one with most of the words first."""
        linked = _linked([(link.old, link.new, link.kept) for link in self.found.links])
        news = self.new.scenes
        return {scene.id: tuple(news[one].id for one in linked.get(n, ())) for n, scene in enumerate(self.old.scenes)}

    @cached_property
    def sources(self) -> Mapping[str, tuple[str, ...]]:
        """By id of each new scene: those it came from, the one with most of the words first."""
        linked = _linked([(link.new, link.old, link.kept) for link in self.found.links])
        olds = self.old.scenes
        return {scene.id: tuple(olds[one].id for one in linked.get(n, ())) for n, scene in enumerate(self.new.scenes)}

    @cached_property
    def mains(self) -> Mapping[str, str]:
        """Old scenes and the new ones that are the same: each of both once, by most words."""
        links = sorted(self.found.links, key=lambda link: (-link.kept, -link.sure, link.old, link.new))
        olds: dict[int, int] = {}
        taken: set[int] = set()
        for link in links:
            if link.old not in olds and link.new not in taken:
                olds[link.old] = link.new
                taken.add(link.new)
        return {self.old.scenes[old].id: self.new.scenes[new].id for old, new in olds.items()}

    @cached_property
    def chapters(self) -> Mapping[str, str]:
        """Old chapters and the new ones that are the same, by id: each of both once."""
        found: dict[str, str] = {}
        for fate in self.found.chapters:
            for old, new in zip(fate.old, fate.new, strict=False):
                found[self.old.chapters[old]] = self.new.chapters[new]
        return found

    @cached_property
    def fates(self) -> Mapping[str, Fate]:
        """By id of a scene of either draft."""
        return {
            **{self.old.scenes[n].id: fate for fate in self.found.scenes for n in fate.old},
            **{self.new.scenes[n].id: fate for fate in self.found.scenes for n in fate.new},
        }


def compared(book: Book, old: str, new: str, *, part_way: bool) -> Compared:
    """Draft `old` and draft `new` of a book, by their ids; worked out only where texts or divisions have changed since
    they were compared last. Raises `Missing`, `BookTrouble`."""
    sides = side(book, old), side(book, new)
    found = _kept(book, sides, part_way=part_way)
    return ruled(sides[0], sides[1], found, book.said_of(old, new))


def compared_now(read: Read, old: str, new: str, *, part_way: bool, said: SaidOfScenes) -> Compared:
    """The same inside an edit; nothing is kept."""
    sides = side(read, old), side(read, new)
    found = compare(sides[0].told, sides[1].told, part_way=part_way)
    return ruled(*sides, found, said)


def side(read: Read, draft: str) -> Side:
    """Raises `Missing`."""
    division, texts = read.division(draft), read.texts(draft)
    laid_out = outline(division, [0] * len(texts))
    return Side(
        draft,
        told(division, texts),
        division,
        texts,
        tuple(view.scene for view in laid_out.scenes),
        tuple(view.chapter.id for view in laid_out.chapters),
        files_paragraphs(division),
    )


def ruled(old: Side, new: Side, found: Comparison, said: SaidOfScenes) -> Compared:
    """With what she says of scenes that are still there."""
    olds, news = old.scene_index, new.scene_index
    links = {
        (olds[one], news[other]): so for (one, other), so in said.lives_on.items() if one in olds and other in news
    }
    became = {olds[scene]: what for scene, what in said.became.items() if scene in olds}
    ours = Said(
        linked=frozenset(pair for pair, so in links.items() if so),
        apart=frozenset(pair for pair, so in links.items() if not so),
        unreached=frozenset(scene for scene, what in became.items() if what == "not reached"),
        reached=frozenset(scene for scene, what in became.items() if what == "cut"),
    )
    return Compared(old, new, overruled(found, ours))


def _linked(links: Sequence[tuple[int, int, int]]) -> dict[int, list[int]]:
    """What is linked with each, the one with most words kept first. `links`: one, other, words."""
    found: dict[int, list[int]] = {}
    for one, other, _ in sorted(links, key=lambda link: (-link[2], link[1])):
        found.setdefault(one, []).append(other)
    return found


def _kept(book: Book, sides: tuple[Side, Side], *, part_way: bool) -> Comparison:
    old, new = (one.told for one in sides)
    wanted = key(old, new, part_way=part_way)
    kept = book.kept_comparison(sides[0].draft, sides[1].draft)
    if kept is not None and kept[0] == wanted:
        return from_form(json.loads(kept[1]), old, new)
    found = compare(old, new, part_way=part_way)
    book.keep_comparison(sides[0].draft, sides[1].draft, wanted, json.dumps(to_form(found), separators=(",", ":")))
    return found
