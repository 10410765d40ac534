"""Two drafts compared: paragraphs, moves, scenes, chapters, totals. Pure and deterministic."""

from collections import Counter
from collections.abc import Sequence

from afterdraft.comparison.blocks import runs_in_scenes
from afterdraft.comparison.comparison import Block, Comparison, Fate, Link, Totals
from afterdraft.comparison.fates import fates, reached_by
from afterdraft.comparison.linking import Kept, linked, summed
from afterdraft.comparison.matches import Match, matched
from afterdraft.comparison.pairs import paragraph_pairs
from afterdraft.comparison.rewritten import rewritten
from afterdraft.comparison.scenes import Places, Sizes, moved_among, scene_links, sureness
from afterdraft.comparison.told import Told
from afterdraft.comparison.units import Units, units


def compare(old: Told, new: Told, *, part_way: bool = False) -> Comparison:
    """What became of everything in `old`. `part_way`: `new` goes only as far as the revision has come."""
    old_units, new_units, matches = _matched(old, new)
    homes = _homes(old, old_units), _homes(new, new_units)
    kept, places = _between_scenes(matches, *homes)
    sizes = Sizes(_summed(old_units, homes[0], len(old.scenes)), _summed(new_units, homes[1], len(new.scenes)))
    links = scene_links(old, new, kept, places, sizes)
    words = _words(old_units, homes[0], len(old.scenes)), _words(new_units, homes[1], len(new.scenes))
    links = sorted([*links, *rewritten(old, new, links, words)], key=lambda link: (link.old, link.new))
    backbone, blocks = _order(matches, links, *homes, old_units, new_units)
    reached = reached_by(links) if part_way else None
    return Comparison(
        old=old,
        new=new,
        pairs=paragraph_pairs(old, new, matches, backbone, (old_units, new_units)),
        blocks=blocks,
        links=tuple(links),
        scenes=fates(links, sizes.old, sizes.new, reached=reached),
        chapters=_chapters(old, new, kept, places, sizes, reached),
        totals=_totals(matches, backbone, old_units, new_units),
        old_words=tuple(sizes.old),
        new_words=tuple(sizes.new),
        part_way=part_way,
    )


def _matched(old: Told, new: Told) -> tuple[Units, Units, list[Match]]:
    """Both drafts' units and their pairs, by old unit.

    Which draft is called the old one must not matter to what belongs together: they are matched from the same side
    always.
    """
    if old.paragraphs <= new.paragraphs:
        old_units, new_units = units(old.paragraphs, new.paragraphs)
        return old_units, new_units, matched(old_units, new_units)
    new_units, old_units = units(new.paragraphs, old.paragraphs)
    turned = [Match(match.new, match.old, match.kept) for match in matched(new_units, old_units)]
    return old_units, new_units, sorted(turned, key=lambda match: (match.old, match.new))


def _homes(told: Told, side: Units) -> list[int]:
    """The scene of each unit."""
    scenes = told.scene_at()
    return [scenes[paragraph] for paragraph in side.paragraphs]


def _summed(side: Units, homes: Sequence[int], scenes: int) -> list[int]:
    """Words of each scene."""
    words = [0] * scenes
    for home, count in zip(homes, side.counts, strict=True):
        words[home] += count
    return words


def _words(side: Units, homes: Sequence[int], scenes: int) -> list[str]:
    """Each scene's words, in one string."""
    parts: list[list[str]] = [[] for _ in range(scenes)]
    for home, words in zip(homes, side.words, strict=True):
        parts[home].append(words)
    return ["".join(one) for one in parts]


def _between_scenes(
    matches: Sequence[Match], old_homes: Sequence[int], new_homes: Sequence[int]
) -> tuple[Counter[tuple[int, int]], Places]:
    """Words kept between each two scenes, and the match between them that keeps most: where they meet."""
    kept: Counter[tuple[int, int]] = Counter()
    main: dict[tuple[int, int], Match] = {}
    for match in matches:
        pair = old_homes[match.old], new_homes[match.new]
        kept[pair] += match.kept
        if pair not in main or match.kept > main[pair].kept:
            main[pair] = match
    return kept, {pair: (match.old, match.new) for pair, match in main.items()}


def _order(
    matches: Sequence[Match],
    links: Sequence[Link],
    old_homes: Sequence[int],
    new_homes: Sequence[int],
    old: Units,
    new: Units,
) -> tuple[frozenset[tuple[int, int]], tuple[Block, ...]]:
    """Pairs of units that kept their order, and the blocks of paragraphs that did not."""
    gone = {(link.old, link.new) for link in links if link.moved}
    pairs = [(match.old, match.new) for match in matches]
    homes = [(old_homes[match.old], new_homes[match.new]) for match in matches]
    found = runs_in_scenes(pairs, [match.kept for match in matches], homes, gone)
    words = {(match.old, match.new): match.kept for match in matches}
    blocks = [
        Block(
            (old.paragraphs[run[0][0]], old.paragraphs[run[-1][0]] + 1),
            (new.paragraphs[run[0][1]], new.paragraphs[run[-1][1]] + 1),
            sum(words[pair] for pair in run),
        )
        for run in found.moved
    ]
    return frozenset(found.backbone), tuple(blocks)


def _chapters(old: Told, new: Told, kept: Kept, places: Places, sizes: Sizes, reached: int | None) -> tuple[Fate, ...]:
    """What became of the chapters, by the words of their scenes."""
    homes = [scene.chapter for scene in old.scenes], [scene.chapter for scene in new.scenes]
    total = summed(kept, *homes)
    words = Sizes(_by_chapter(sizes.old, homes[0], old.chapters), _by_chapter(sizes.new, homes[1], new.chapters))
    pairs = linked(total, words.old, words.new)
    moved = moved_among(pairs, total, _met(kept, places, homes), words)
    links = [
        Link(*pair, total[pair], moved[place], sureness(total[pair] / max(words.new[pair[1]], 1)), ("words",))
        for place, pair in enumerate(pairs)
    ]
    first = None if reached is None else next((homes[0][at] for at in range(reached, len(homes[0]))), old.chapters)
    return fates(links, words.old, words.new, reached=first)


def _met(kept: Kept, places: Places, homes: tuple[Sequence[int], Sequence[int]]) -> Places:
    """Where the main pair of units lies between each two chapters: that of the scenes that keep most."""
    met: dict[tuple[int, int], tuple[int, int]] = {}
    for old, new in sorted(kept, key=lambda pair: (kept[pair], pair)):
        met[homes[0][old], homes[1][new]] = places[old, new]
    return met


def _by_chapter(words: Sequence[int], homes: Sequence[int], chapters: int) -> list[int]:
    total = [0] * chapters
    for home, count in zip(homes, words, strict=True):
        total[home] += count
    return total


def _totals(matches: Sequence[Match], backbone: frozenset[tuple[int, int]], old: Units, new: Units) -> Totals:
    old_words, new_words = sum(old.counts), sum(new.counts)
    kept = sum(match.kept for match in matches)
    moved = sum(match.kept for match in matches if (match.old, match.new) not in backbone)
    return Totals(old_words, new_words, kept, moved, old_words - kept, new_words - kept)
