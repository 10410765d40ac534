"""`afterdraft compare OLD NEW`: what became of every scene between two drafts, as JSON or in short. Changes nothing."""

import json
from argparse import ArgumentParser, Namespace
from collections.abc import Iterator, Sequence
from typing import Any

from afterdraft import __version__, wiring
from afterdraft.cli.options import Command, Serve
from afterdraft.comparison.compare_form import compare_form
from afterdraft.comparison.comparison import Comparison
from afterdraft.comparison.round import counts
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.naming import scene_name
from afterdraft.manuscript.outline import outline

Form = dict[str, Any]  # JSON
SURE = 0.75  # below it a fate is a proposal, and is marked so
NAMED = "a manuscript of any kind, a folder of them, or one of a book's drafts: BOOK.afterdraft#2"


def _options(parser: ArgumentParser) -> None:
    parser.add_argument("old", metavar="OLD", help=NAMED)
    parser.add_argument("new", metavar="NEW", help="likewise")
    parser.add_argument("--json", action="store_true", help="one JSON document, of the form compare/1")
    parser.add_argument(
        "--part-way",
        action="store_true",
        help="NEW goes only as far as the revision has come: what is beyond is not cut",
    )


def _run(options: Namespace, _: Serve) -> int:
    old, new = wiring.draft_named(options.old), wiring.draft_named(options.new)
    found = wiring.compared(old, new, part_way=options.part_way)
    form = compare_form(old, new, found, version=__version__)
    print(json.dumps(form, ensure_ascii=False) if options.json else "\n".join(lines(form, found, old, new)))
    return 0


def lines(form: Form, found: Comparison, old: Draft, new: Draft) -> Iterator[str]:
    """For a person: what became of each scene, by its first words, and the words in all. What the revision has not
    come to is not cut."""
    words = counts(found)
    waiting = f", {words.words_not_reached:,} not reached" if found.part_way else ""
    yield (
        f"{words.words_kept:,} of {found.totals.old:,} words kept, {words.words_moved:,} of them moved; "
        f"{words.words_cut:,} cut{waiting}, {words.words_added:,} added"
    )
    names = _names(old), _names(new)
    for fate in form["scenes"]:
        was, now = ([side[number] for number in fate[key]] for side, key in zip(names, ("old", "new"), strict=True))
        moved = ", moved" if fate["moved"] else ""
        sure = "?" if fate["sure"] < SURE else ""
        yield f"  {fate['became']}{moved}{sure:1}  {' + '.join(was or now)}{_arrow(was, now)}"


def _arrow(was: Sequence[str], now: Sequence[str]) -> str:
    """What it is now, where that is not what it was."""
    return f" → {' + '.join(now)}" if was and now and (len(was) > 1 or len(now) > 1) else ""


def _names(draft: Draft) -> list[str]:
    """Number and title or first words of each scene."""
    texts = [block.text for block in draft.source.blocks]
    scenes = outline(draft.division, [0] * len(texts)).scenes
    return [
        f"{scene.index + 1} {scene_name(scene.scene, texts[scene.story[0]] if scene.story else '')}" for scene in scenes
    ]


COMMAND = Command("compare", "say what became of every scene between two drafts", _options, _run)
