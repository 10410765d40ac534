"""What is shown and never asked: figures of scenes beside the book's own, and what repeats. No verdict is in it."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations, groupby
from statistics import median
from typing import Any

from afterdraft.manuscript.naming import shortened
from afterdraft.manuscript.outline import SceneView
from afterdraft.web.facts_here import people_by_scene
from afterdraft.web.told import Told
from afterdraft.web.view import BookView
from afterdraft.whole.change_points import SERIES, change_points

FAR = 2.0  # times the median length, or its share, from which a scene counts as far from the book's own; by hand
RUN = 4  # scenes of one mode in a row; by hand
SAME = 3  # scenes that open, or end, in the same way; by hand
OFTEN = 4  # scenes two people share at least; by hand
SEEN = 3  # scenes somebody is on the page in, at least, before going out of sight; by hand
LAST = 2 / 3  # of the book, after which somebody who is not met any more is out of sight; by hand


@dataclass(frozen=True, slots=True)
class Row:
    """A scene and its figures."""

    scene: SceneView
    name: str
    words: int
    times: float  # the median scene's words
    far: bool
    speech: float  # share
    events: float  # in 100 words
    sentence: float  # words in one
    mode: str
    valence: float
    levels: tuple[str, ...]  # figures that change their level for good with this scene, in words


@dataclass(frozen=True, slots=True)
class Group:
    """Scenes that something is alike in."""

    what: str
    scenes: tuple[tuple[str, str], ...]  # code and name


@dataclass(frozen=True, slots=True)
class Shown:
    rows: tuple[Row, ...]
    runs: tuple[Group, ...]
    openings: tuple[Group, ...]
    closings: tuple[Group, ...]
    together: tuple[Group, ...]
    out_of_sight: tuple[Group, ...]


_LEVELS: Mapping[str, str] = {
    "words": "length",
    "speech_share": "speech",
    "events_per_100": "events",
    "words_per_sentence": "sentences",
}


def shown(seen: BookView, told: Told) -> Shown:
    scenes = [one for one in seen.outline.scenes if told.of(one.scene.id).measures]
    measures = [told.of(one.scene.id).measures for one in scenes]
    rows = tuple(_rows(seen, scenes, measures))
    texts = [_ends(seen, one) for one in scenes]
    return Shown(
        rows=rows,
        runs=tuple(_runs(rows)),
        openings=tuple(_alike(seen, scenes, [first for first, _ in texts])),
        closings=tuple(_alike(seen, scenes, [last for _, last in texts])),
        together=tuple(_together(seen, told)),
        out_of_sight=tuple(_out_of_sight(seen, told)),
    )


def _rows(seen: BookView, scenes: Sequence[SceneView], measures: Sequence[Mapping[str, Any]]) -> Iterator[Row]:
    usual = median(one["words"] for one in measures) if measures else 0
    levels = {name: set(change_points([float(one[name]) for one in measures])) for name in SERIES} if measures else {}
    for number, (scene, one) in enumerate(zip(scenes, measures, strict=True)):
        times = one["words"] / usual if usual else 0.0
        yield Row(
            scene=scene,
            name=seen.name(scene),
            words=one["words"],
            times=times,
            far=bool(usual) and not 1 / FAR < times < FAR,
            speech=one["speech_share"],
            events=one["events_per_100"],
            sentence=one["words_per_sentence"],
            mode=one["mode"],
            valence=one["valence"],
            levels=tuple(_LEVELS[name] for name in SERIES if number in levels[name]),
        )


def _runs(rows: Sequence[Row]) -> Iterator[Group]:
    for mode, some in groupby(rows, key=lambda row: row.mode):
        run = tuple((row.scene.scene.code, row.name) for row in some)
        if len(run) >= RUN:
            yield Group(mode, run)


def _alike(seen: BookView, scenes: Sequence[SceneView], words: Sequence[str]) -> Iterator[Group]:
    """Those that have the same words there."""
    found: dict[str, list[SceneView]] = {}
    for scene, said in zip(scenes, words, strict=True):
        found.setdefault(said, []).append(scene)
    for said, some in found.items():
        if said and len(some) >= SAME:
            yield Group(said, tuple((one.scene.code, seen.name(one)) for one in some))


def _ends(seen: BookView, scene: SceneView) -> tuple[str, str]:
    """The first two words and the last two, as compared."""
    if not scene.story:
        return "", ""
    first, last = (seen.book.blocks(seen.draft.id, n, n + 1)[0].text.split() for n in (scene.story[0], scene.story[-1]))
    return " ".join(first[:2]).casefold().strip("“‘\"'"), " ".join(last[-2:]).casefold().strip(".,!?…”’\"'")


def _met(seen: BookView, told: Told) -> dict[str, tuple[str, list[int]]]:
    """By id: name, and the scenes somebody is on the page in."""
    found: dict[str, tuple[str, list[int]]] = {}
    by_scene = people_by_scene(seen, told)
    for scene in seen.outline.scenes:
        for one in by_scene[scene.scene.id]:
            if one.how != "mentioned":
                found.setdefault(one.id, (one.name, []))[1].append(scene.index)
    return found


def _together(seen: BookView, told: Told) -> Iterator[Group]:
    """Two who share every scene that either is in."""
    for (name, scenes), (other, others) in combinations(_met(seen, told).values(), 2):
        if scenes == others and len(scenes) >= OFTEN:
            yield Group(f"{name} and {other}", _called(seen, scenes))


def _out_of_sight(seen: BookView, told: Told) -> Iterator[Group]:
    """Who is met in several scenes, and not in the last part of the book: each with the last of those."""
    end = len(seen.outline.scenes) * LAST
    for name, scenes in sorted(_met(seen, told).values(), key=lambda one: -len(one[1])):
        if len(scenes) >= SEEN and scenes[-1] < end:
            yield Group(name, _called(seen, scenes[-1:]))


def _called(seen: BookView, scenes: Sequence[int]) -> tuple[tuple[str, str], ...]:
    views = [seen.outline.scenes[number] for number in scenes]
    return tuple((one.scene.code, shortened(seen.name(one))) for one in views)
