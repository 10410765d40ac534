"""`afterdraft read FILE…`: how a manuscript comes apart, as JSON or as a short outline. Makes no book."""

import json
import sys
from argparse import ArgumentParser, Namespace
from collections.abc import Iterator
from pathlib import Path

from afterdraft import __version__, wiring
from afterdraft.cli.options import Command, Serve
from afterdraft.manuscript.asked import questions
from afterdraft.manuscript.draft import Draft
from afterdraft.manuscript.naming import chapter_name, scene_name, shortened
from afterdraft.manuscript.outline import SceneView, outline
from afterdraft.manuscript.words import count

UNREAD = (
    "The manuscript says that it is written in {!r}. People and speech are read in English only, so they are left out; "
    "everything else is there."
)


def _options(parser: ArgumentParser) -> None:
    parser.add_argument("files", nargs="+", type=Path, metavar="FILE", help="the manuscript: a file, several, a folder")
    parser.add_argument("--json", action="store_true", help="one JSON document, of the form read/1")
    parser.add_argument("--text", action="store_true", help="with --json: the paragraphs of each scene too")
    parser.add_argument("--facts", action="store_true", help="with --json: the people, who speaks, and measures, too")
    parser.add_argument("--strict", action="store_true", help="exit code 1 if anything was unsure")


def _run(options: Namespace, _: Serve) -> int:
    draft = wiring.read(wiring.load(options.files))
    if options.json:
        print(_as_json(draft, text=options.text, facts=options.facts))
    else:
        print("\n".join(_lines(draft)))
    return 1 if options.strict and draft.doubts else 0


def _as_json(draft: Draft, *, text: bool, facts: bool) -> str:
    from afterdraft.manuscript.read_form import read_form
    from afterdraft.manuscript.unmarked import with_suggestions

    form = read_form(with_suggestions(draft), version=__version__, text=text)
    if facts:
        found = wiring.facts(draft)
        if found is None:
            print(UNREAD.format(draft.language), file=sys.stderr)
        form |= found or {}
    return json.dumps(form, ensure_ascii=False, indent=1)


def _lines(draft: Draft) -> Iterator[str]:
    """For a person: chapters and scenes with their words, then what was unsure."""
    texts = [block.text for block in draft.source.blocks]
    whole = outline(draft.division, [count(text) for text in texts])
    yield (
        f"{draft.title or draft.source.name}: {whole.words:,} words, {_many(len(whole.chapters), 'chapter')}, "
        + _many(len(whole.scenes), "scene")
    )
    for chapter in whole.chapters:
        yield f"\n{chapter_name(chapter.chapter)}  {chapter.words:,}"
        for scene in chapter.scenes:
            yield f"  {scene.index + 1:>4}  {scene.words:>7,}  {scene_name(scene.scene, _first(scene, texts))}"
    if draft.doubts:
        yield f"\nUnsure of {_many(len(draft.doubts), 'place')}:"
    for asked in questions(draft.doubts):
        yield f"  {asked[0].what}"
        yield from (f"    paragraph {one.paragraph + 1}: {shortened(texts[one.paragraph])}" for one in asked)


def _first(scene: SceneView, texts: list[str]) -> str:
    return texts[scene.story[0]] if scene.story else ""


def _many(number: int, what: str) -> str:
    return f"{number:,} {what}{'' if number == 1 else 's'}"


COMMAND = Command("read", "show how a manuscript comes apart, without making a book", _options, _run)
