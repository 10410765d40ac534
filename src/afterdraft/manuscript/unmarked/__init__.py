"""Scene breaks that the author did not mark, as suggestions: never cut, always with what they rest on.

Every gap between two paragraphs of a scene is a row of numbers (`features`), which a small table of weights (`weights`)
turns into the share of such places that are right; the best are taken, far enough apart (`choose`), and their reasons
told (`reasons`). English only: where a text does not look like it, nothing is suggested.

What it is worth, beside TextTiling on the same text, stands in `bench/RESULTS.md`.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import accumulate
from math import exp, log

from afterdraft.manuscript.division import Division, Scene
from afterdraft.manuscript.draft import Draft, Search, Suggestion
from afterdraft.manuscript.outline import leaves
from afterdraft.manuscript.unmarked.choose import peaks
from afterdraft.manuscript.unmarked.features import Gap, gaps
from afterdraft.manuscript.unmarked.passages import Passage, looks_english, passages
from afterdraft.manuscript.unmarked.reasons import evidence, reasons
from afterdraft.manuscript.unmarked.weights import APART, BIAS, LEAST, WEIGHTS, WORDS_EACH

__all__ = ["found_in", "suggested", "with_suggestions"]


@dataclass(frozen=True, slots=True)
class _Place:
    """Where a scene may begin, among the paragraphs of the scene `told`."""

    told: Sequence[Passage]
    at: int
    gap: Gap
    score: float  # natural logarithm of the odds
    scene: int


def with_suggestions(draft: Draft) -> Draft:
    """The draft with the places where a scene may begin unmarked; its division stays as it is. Linear in the text."""
    return replace(draft, suggestions=found_in(draft.division, [block.text for block in draft.source.blocks]))


def found_in(division: Division, texts: Sequence[str], *, search: Search | None = None) -> tuple[Suggestion, ...]:
    """The places, in order, in paragraphs `texts` so divided; `paragraph` counts over the whole file.

    `search` stands for `suggested` where that is done elsewhere.
    """
    scenes = [
        [number for number in range(start, end) if division.roles[number] == "story"]
        for unit, start, end in leaves(division)
        if isinstance(unit, Scene)
    ]
    found = (search or suggested)([[texts[number] for number in scene] for scene in scenes])
    return tuple(replace(one, paragraph=scenes[scene][one.paragraph]) for scene, one in found)


def suggested(scenes: Sequence[Sequence[str]]) -> list[tuple[int, Suggestion]]:
    """For a book's scenes, each as its paragraphs: places in order, each with the index of its scene.

    `paragraph` counts within the scene. There is at most one place for every `WORDS_EACH` words.
    """
    told = passages([text for scene in scenes for text in scene])
    if not looks_english(told):
        return []
    rest = iter(told)
    found = [place for number, scene in enumerate(scenes) for place in _places([next(rest) for _ in scene], number)]
    most = sum(passage.words for passage in told) // WORDS_EACH or 1
    best = sorted(found, key=lambda place: (-place.score, place.scene, place.at))[:most]
    return [(place.scene, _suggestion(place)) for place in sorted(best, key=lambda place: (place.scene, place.at))]


def _places(told: Sequence[Passage], scene: int) -> Iterator[_Place]:
    rows = gaps(told)
    scores = [_score(gap) for gap in rows]
    ends = list(accumulate(passage.words for passage in told))
    length = ends[-1] if ends else 0
    for index in peaks(scores, ends[:-1], length=length, least=log(LEAST / (1 - LEAST)), apart=APART):
        if reasons(rows[index]):
            yield _Place(told, index + 1, rows[index], scores[index], scene)


def _score(gap: Gap) -> float:
    return BIAS + sum(one.weight * float(getattr(gap, one.sign)) for one in WEIGHTS)


def _suggestion(place: _Place) -> Suggestion:
    why = reasons(place.gap)
    return Suggestion(
        paragraph=place.at,
        strength=round(1 / (1 + exp(-place.score)), 2),
        why=why,
        evidence=tuple(evidence(one, place.told, place.at) for one in why),
    )
