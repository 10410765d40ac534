"""What a round of revision did, in counts. No verdict."""

from collections import Counter
from dataclasses import dataclass

from afterdraft.comparison.comparison import Comparison


@dataclass(frozen=True, slots=True)
class RoundCounts:
    """Scenes of the old draft, but for `new`. The same, the touched and the not reached are all of them."""

    scenes_same: int  # and where they were
    scenes_touched: int  # the rest: those that were …
    revised: int
    rewritten: int
    split: int
    joined: int
    cut: int
    moved: int  # … some of which are counted above too, if more was done to them
    not_reached: int  # by a part-way draft
    new: int  # scenes of the new draft
    words_kept: int  # words of the old draft are kept, cut or not reached; …
    words_cut: int
    words_not_reached: int
    words_added: int  # … those of the new one kept or added
    words_moved: int  # of those kept


def counts(found: Comparison) -> RoundCounts:
    """Of a comparison, or of one that the writer overruled."""
    became = Counter(fate.became for fate in found.scenes for _ in fate.old)
    same = sum(len(fate.old) for fate in found.scenes if fate.became == "same" and not fate.moved)
    ahead = _words_not_reached(found)
    return RoundCounts(
        scenes_same=same,
        scenes_touched=became.total() - same - became["not reached"],
        revised=became["revised"],
        rewritten=became["rewritten"],
        split=became["split"],
        joined=became["joined"],
        cut=became["cut"],
        moved=len({link.old for link in found.links if link.moved}),
        not_reached=became["not reached"],
        new=sum(len(fate.new) for fate in found.scenes if fate.became == "new"),
        words_kept=found.totals.kept,
        words_cut=found.totals.cut - ahead,
        words_not_reached=ahead,
        words_added=found.totals.added,
        words_moved=found.totals.moved,
    )


def _words_not_reached(found: Comparison) -> int:
    """Words of scenes not reached, but for those that stand somewhere else already."""
    ahead = {old for fate in found.scenes if fate.became == "not reached" for old in fate.old}
    scenes = found.old.scene_at()
    kept = sum(pair.kept for pair in found.pairs if scenes[pair.old] in ahead) if ahead else 0
    return sum(found.old_words[scene] for scene in ahead) - kept
