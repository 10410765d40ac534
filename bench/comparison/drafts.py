"""Two real drafts of one novel, 1818 and 1831, against their published map (`corpus/drafts`)."""

import json
from dataclasses import dataclass
from itertools import accumulate
from typing import Any

from afterdraft.comparison.compare import compare
from afterdraft.comparison.told import Told, told
from afterdraft.formats.table import read
from afterdraft.manuscript.structure import structure
from bench.corpus import CORPUS

FOLDER = CORPUS / "drafts" / "frankenstein"
Places = dict[tuple[int, int], int]  # (section, paragraph in it) → story paragraph


@dataclass(frozen=True, slots=True)
class Found:
    precision: float  # of chapter links
    recall: float
    pairs: float  # share of the listed paragraph pairs that were found
    listed: int
    wrong: int  # listed paragraphs that were given another partner alone


def measured() -> Found:
    """Preface and introduction are front matter, which is not compared: their links and pairs are left out."""
    known: dict[str, Any] = json.loads((FOLDER / "map.json").read_text("utf-8"))
    fronts = {side: _front(known["sections"][side]) for side in ("1818", "1831")}
    drafts = [_draft(side) for side in ("1818", "1831")]
    found = compare(*drafts)
    links = {
        (old["section"] - fronts["1818"], new["section"] - fronts["1831"])
        for link in known["chapters"]
        for old in link["old"]
        for new in link["new"]
    }
    links = {link for link in links if min(link) >= 0}
    said = {(old, new) for fate in found.chapters for old in fate.old for new in fate.new}
    places = [_places(known["sections"][side], fronts[side]) for side in ("1818", "1831")]
    listed = [
        (places[0][old], places[1][new])
        for pair in known["paragraphs"]
        if (old := tuple(pair["old"])) in places[0] and (new := tuple(pair["new"])) in places[1]
    ]
    pairs = {(pair.old, pair.new) for pair in found.pairs}
    partnered = {old for old, _ in pairs}
    right = sum(pair in pairs for pair in listed)
    wrong = sum(pair not in pairs and pair[0] in partnered for pair in listed)
    return Found(len(said & links) / len(said), len(said & links) / len(links), right / len(listed), len(listed), wrong)


def _draft(year: str) -> Told:
    name = f"{year}.txt"
    draft = structure(read((FOLDER / name).read_bytes(), name))
    return told(draft.division, [block.text for block in draft.source.blocks])


def _front(sections: list[dict[str, Any]]) -> int:
    return sum(section["kind"] in ("preface", "introduction") for section in sections)


def _places(sections: list[dict[str, Any]], front: int) -> Places:
    story = sections[front:]
    starts = [0, *accumulate(section["paragraphs"] for section in story)]
    return {
        (section["section"], at): start + at
        for section, start in zip(story, starts, strict=False)
        for at in range(section["paragraphs"])
    }
