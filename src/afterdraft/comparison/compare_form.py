"""The published JSON form `compare/1`: what scripts and measurements read of two drafts."""

from collections.abc import Iterator
from typing import Any

from afterdraft.comparison.comparison import Comparison, Fate
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.read_form import read_head

Form = dict[str, Any]  # JSON: strings, numbers, lists, objects
Row = tuple[int | None, int | None, float]  # old paragraph, new paragraph, similarity


def compare_form(old: Draft, new: Draft, found: Comparison, *, version: str) -> Form:
    """The form as plain data, ready for `json.dumps`."""
    totals = found.totals
    return {
        "afterdraft": version,
        "form": "compare/1",
        "old": read_head(old, words=totals.old),
        "new": read_head(new, words=totals.new),
        "paragraphs": [list(row) for row in rows(found)],
        "scenes": [
            _fate(fate) | {"kept_words": round(fate.kept, 4), "sure": fate.sure, "why": list(fate.why)}
            for fate in found.scenes
        ],
        "chapters": [_fate(fate) for fate in found.chapters],
        "totals": {
            "old_words": totals.old,
            "new_words": totals.new,
            "kept_words": totals.kept,
            "moved_words": totals.moved,
            "cut_words": totals.cut,
            "added_words": totals.added,
        },
    }


def rows(found: Comparison) -> Iterator[Row]:
    """Every paragraph of both drafts: in old order, each new one that has no partner after those it follows."""
    with_new = {pair.new for pair in found.pairs}
    added = iter([new for new in range(len(found.new.paragraphs)) if new not in with_new])
    waiting = next(added, None)
    pairs = iter(found.pairs)
    pair = next(pairs, None)
    for old in range(len(found.old.paragraphs)):
        alone = True
        while pair is not None and pair.old == old:
            while not pair.moved and waiting is not None and waiting < pair.new:
                yield None, waiting, 0.0
                waiting = next(added, None)
            yield old, pair.new, pair.similarity
            alone, pair = False, next(pairs, None)
        if alone:
            yield old, None, 0.0
    while waiting is not None:
        yield None, waiting, 0.0
        waiting = next(added, None)


def _fate(fate: Fate) -> Form:
    return {"old": list(fate.old), "new": list(fate.new), "became": fate.became, "moved": fate.moved}
