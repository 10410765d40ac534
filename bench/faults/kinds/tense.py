"""A paragraph of narration put from the past into the present, within a scene told in the past."""

import re
from collections import Counter
from collections.abc import Iterator
from random import Random

from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import WORD, is_told, names
from bench.faults.verbs import in_the_present

WORDS = range(35, 160)  # of the paragraph
ROUND = 6  # paragraphs on either side, narration among which is in the past
_PAST, _PRESENT = re.compile(r"\b(?:was|were|had|did)\b"), re.compile(r"\b(?:is|are|has|does)\b")


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    known = names(scenes, 10)
    written = Counter(word for scene in scenes for text in scene for word in WORD.findall(text) if word.islower())
    places = [(number, at) for number, scene in enumerate(scenes) for at in range(1, len(scene))]
    for scene, at in random.sample(places, len(places)):
        text = scenes[scene][at]
        if not is_told(text) or len(text.split()) not in WORDS or re.search(r"[“”‘]", text):
            continue
        if _is_past_around(scenes, scene, at) and (becomes := in_the_present(text, known, written)):
            yield Fault("tense", (Edit(scene, at, (becomes,)),), (Shown(scene, becomes),), enough=1)


def _is_past_around(scenes: Scenes, scene: int, at: int) -> bool:
    near = " ".join(text for text in scenes[scene][max(0, at - ROUND) : at + ROUND + 1] if "“" not in text)
    return len(_PAST.findall(near)) > 5 * len(_PRESENT.findall(near))
