"""Tellers who go from one tense to the other all along."""

from collections.abc import Sequence

from afterdraft.questions.deeds import acts, tells
from afterdraft.questions.seen import Seen
from afterdraft.questions.told_now import share
from afterdraft.reading.facts import SceneFacts

TOLD = 0.6  # share of a scene's verbs in the past, where it tells the past
MIXED = 0.1  # share of such a teller's paragraphs in the past that have a deed in the present too; novels have 0.05
NEAR_BY, LEAST_TOLD = 2, 20  # scenes on either side in which that is so, and paragraphs below which it is chance


def mixing(seen: Seen) -> frozenset[int]:
    """Scenes whose teller, there and in those around, goes from one tense to the other all along where the past is
    told: 'He come in and says'."""
    counted = [_mixed(texts, scene) for texts, scene in zip(seen.texts, seen.facts, strict=True)]
    around = [counted[max(0, number - NEAR_BY) : number + NEAR_BY + 1] for number in range(len(counted))]
    return frozenset(
        number
        for number, some in enumerate(around)
        if sum(both for both, _ in some) > MIXED * max(sum(told for _, told in some), LEAST_TOLD)
    )


def _mixed(texts: Sequence[str], scene: SceneFacts) -> tuple[int, int]:
    """Of a scene that tells the past, how many of its paragraphs tell a deed in the present too, and how many there
    are."""
    if share(scene.counted) < TOLD:
        return 0, 0
    told = [place for place in range(len(texts)) if scene.counted[place].past]
    deeds = {one.paragraph for one in scene.mentions if tells(one) and acts(texts[one.paragraph], one)}
    return len(deeds & {*told}), len(told)
