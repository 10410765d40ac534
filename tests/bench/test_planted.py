"""Faults of several kinds in one novel leave one another standing."""

from collections.abc import Iterator
from random import Random

import pytest

from bench.faults.planted import Edit, Fault, Plant, Scenes, Shown, plant

NOVEL = (("It rained.", "Ilse was slow.", "Nobody spoke."), ("It was dry.", "Tobias sang."))


def changes(scene: int, paragraph: int, becomes: str) -> Plant:
    """A fault that is shown by its own words alone."""

    def made(scenes: Scenes, random: Random) -> Iterator[Fault]:
        yield Fault("change", (Edit(scene, paragraph, (becomes,)),), (Shown(scene, becomes),), enough=1)

    return made


def disagrees(*rests_on: str) -> Plant:
    """Faults in the last paragraph, each of which rests on words of the author's in the first scene."""

    def made(scenes: Scenes, random: Random) -> Iterator[Fault]:
        for words in rests_on:
            becomes = f"{words} was never said."
            yield Fault("disagreement", (Edit(1, 1, (becomes,)),), (Shown(1, becomes), Shown(0, words)))

    return made


def test_a_fault_does_not_rest_on_words_that_another_took_away() -> None:
    scenes, faults = plant(NOVEL, [changes(0, 1, "Ilse was quick."), disagrees("Ilse was slow", "Nobody spoke")], "")
    assert [one.shown[-1].words for one in faults] == ["Ilse was quick.", "Nobody spoke"]
    assert all(any(one.words in text for text in scenes[one.scene]) for fault in faults for one in fault.shown)


@pytest.mark.parametrize("kinds", [[disagrees("Ilse was slow"), changes(0, 1, "Ilse was quick.")]])
def test_nor_does_it_take_away_what_another_rests_on(kinds: list[Plant]) -> None:
    _, faults = plant(NOVEL, kinds, "")
    assert [one.kind for one in faults] == ["disagreement"]
