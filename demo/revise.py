"""Make the consistent book and the second draft from the first, and say what became of every scene.

`edits.json` says where the first draft differs from the consistent book; `plan.json` is the revision.
Nothing is typed twice: a scene that stays as it was is taken from the first draft.
"""

import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from difflib import SequenceMatcher
from pathlib import Path
from typing import Any

from demo.source import SourceChapter, parse, parts, plain, scene_texts

HERE = Path(__file__).parent
PASSAGE = 8  # words that a paragraph must have to be known again in another scene


@dataclass(frozen=True, slots=True)
class Revised:
    """A scene of the second draft: its source, and the scenes of the first draft (from 1) it was made from."""

    text: str
    made_from: tuple[int, ...]
    entry: dict[str, Any]  # as `plan.json` tells it


def stored(name: str) -> Any:
    return json.loads((HERE / name).read_text(encoding="utf-8"))


def consistent() -> tuple[str, ...]:
    """The scenes of the book without its planted faults and cuts, in order."""
    edits = stored("edits.json")
    whole = {edit["scene"]: edit["true"] for edit in edits["scenes"]}
    scenes = [
        "\n\n".join(map(_written, whole[number])) if number in whole else undone(text, _edits(number))
        for number, text in enumerate(scene_texts(HERE / "first"), 1)
    ]
    return tuple(filter(None, scenes))


def second() -> tuple[Revised, ...]:
    """The scenes of the second draft, in order."""
    first = scene_texts(HERE / "first")
    return tuple(_revised(entry, first) for chapter in stored("plan.json")["chapters"] for entry in chapter["scenes"])


def second_chapters() -> tuple[SourceChapter, ...]:
    """The second draft, ready to be set."""
    scenes = iter(second())
    return tuple(parse(_chapter(chapter, scenes)) for chapter in stored("plan.json")["chapters"])


def changes() -> dict[str, Any]:
    """What became of every scene and passage, as told in README.md."""
    first, later = scene_texts(HERE / "first"), second()
    plan = stored("plan.json")
    return {
        "scenes": [_fate(number, text, later) for number, text in enumerate(first, 1)],
        "new": [_named(at, scene.text) for at, scene in enumerate(later, 1) if scene.entry["became"] == "new"],
        "passages": list(_passages(first, later)),
        "new_fault": plan["new_fault"],
        "guarded_lost": plan["guarded_lost"],
    }


def undone(text: str, edits: Iterable[dict[str, Any]]) -> str:
    """`text` with `edits` taken back. Raises ValueError where one is not there just once."""
    for edit in edits:
        text = _replaced(text, edit["first"], edit["true"])
    return text


def _edits(scene: int) -> list[dict[str, Any]]:
    """Those of one scene, the last first, as they were made one upon another."""
    return [edit for edit in reversed(stored("edits.json")["words"]) if edit["scene"] == scene]


def _replaced(text: str, old: str, new: str) -> str:
    if text.count(old) != 1:
        raise ValueError(f"These words should stand once and stand {text.count(old)} times: {old[:60]!r}")
    return text.replace(old, new)


def _written(name: str) -> str:
    return (HERE / "second" / f"{name}.txt").read_text(encoding="utf-8").strip()


def _revised(entry: dict[str, Any], first: tuple[str, ...]) -> Revised:
    if "text" in entry:
        replaced = (entry["replaces"],) if "replaces" in entry else ()
        return Revised(_written(entry["text"]), replaced, entry)
    text = "\n\n".join(_mended(first[number - 1], number, entry) for number in entry["from"])
    start, end = entry.get("part", (None, None))
    text = "\n\n".join(parts(text)[start:end])
    for old, new in entry.get("edits", ()):
        text = _replaced(text, old, new)
    return Revised(text, tuple(entry["from"]), entry)


def _mended(text: str, number: int, entry: dict[str, Any]) -> str:
    mends = entry.get("mends", ())
    wanted = [e for e in _edits(number) if e["fault"] in mends or (e["fault"] is None and entry.get("restores"))]
    return undone(text, wanted)


def _chapter(chapter: dict[str, Any], scenes: Iterator[Revised]) -> str:
    lines = [f"@{chapter['heading']} {chapter['line']}" + ("\n@tabs" if chapter.get("tabs") else "")]
    for entry in chapter["scenes"]:
        lines += [] if entry["break"] == "heading" else [entry["break"]]
        lines.append(next(scenes).text)
    return "\n\n".join(lines)


def _fate(number: int, text: str, later: tuple[Revised, ...]) -> dict[str, Any]:
    made = [(at, scene.entry) for at, scene in enumerate(later, 1) if number in scene.made_from]
    return {
        "first": number,
        "opens": _named(number, text)["opens"],
        "became": made[0][1]["became"] if made else "cut",
        "moved": any(entry.get("moved", False) and entry["from"][0] == number for _, entry in made),
        "second": [at for at, _ in made],
    }


def _named(at: int, text: str) -> dict[str, Any]:
    return {"scene": at, "opens": " ".join(_paragraphs(text)[0].split()[:PASSAGE])}


def _paragraphs(text: str) -> list[str]:
    return [plain(part) for part in parts(text)]


def _passages(first: tuple[str, ...], later: tuple[Revised, ...]) -> Iterator[dict[str, Any]]:
    """Where each paragraph of the first draft went: kept, reworded, moved to another scene, or gone.

    Paragraphs are matched inside the scenes that came of theirs; then, word for word, in all others.
    """
    elsewhere = {
        paragraph: (at, within)
        for at, scene in enumerate(later, 1)
        for within, paragraph in enumerate(_paragraphs(scene.text), 1)
    }
    for number, text in enumerate(first, 1):
        found = _within(number, _paragraphs(text), later)
        for at, paragraph in enumerate(_paragraphs(text), 1):
            yield {"first": [number, at], **(found.get(at) or _moved(paragraph, elsewhere))}


def _within(number: int, old: list[str], later: tuple[Revised, ...]) -> dict[int, dict[str, Any]]:
    found: dict[int, dict[str, Any]] = {}
    for place, scene in enumerate(later, 1):
        if number in scene.made_from and scene.entry["became"] != "rewritten":
            found |= {at: {"became": word, "second": [place, to]} for at, to, word in _pairs(old, scene.text)}
    return found


def _pairs(old: list[str], text: str) -> Iterator[tuple[int, int, str]]:
    new = _paragraphs(text)
    for tag, start, end, to, stop in SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        if tag == "equal":
            yield from ((at + 1, at - start + to + 1, "kept") for at in range(start, end))
        elif tag == "replace":
            yield from _reworded(old, new, range(start, end), range(to, stop))


def _reworded(old: list[str], new: list[str], here: range, there: range) -> Iterator[tuple[int, int, str]]:
    """Pair the paragraphs that share at least half of their letters, each with the next one like it."""
    left = list(there)
    for at in here:
        like = next((to for to in left if SequenceMatcher(None, old[at], new[to], autojunk=False).ratio() >= 0.5), None)
        if like is not None:
            left = [to for to in left if to > like]
            yield at + 1, like + 1, "reworded"


def _moved(paragraph: str, elsewhere: dict[str, tuple[int, int]]) -> dict[str, Any]:
    place = elsewhere.get(paragraph) if len(paragraph.split()) >= PASSAGE else None
    return {"became": "moved", "second": list(place)} if place else {"became": "gone"}
