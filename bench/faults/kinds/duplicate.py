"""A paragraph that stands again some scenes or pages later, as a passage does that was moved and not taken out."""

from collections.abc import Iterator
from random import Random

from bench.faults.planted import Edit, Fault, Scenes, Shown

WORDS = range(40, 160)  # of the paragraph
APART = 20  # paragraphs between the two


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    places = [(number, at) for number, scene in enumerate(scenes) for at in range(len(scene))]
    for index in random.sample(range(len(places)), len(places)):
        number, at = places[index]
        text = scenes[number][at]
        if len(text.split()) not in WORDS or text[:1] in "“‘":
            continue
        later = [place for place in places[index + APART :] if scenes[place[0]][place[1]][:1] not in "“‘"]
        if later:
            scene, paragraph = random.choice(later)
            again = Edit(scene, paragraph, (scenes[scene][paragraph], text))
            yield Fault("duplicate", (again,), (Shown(scene, text), Shown(number, text)))
