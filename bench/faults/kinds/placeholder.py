"""Words that were to be written later and still stand: in a sentence of the author's, in many ways."""

from collections.abc import Iterator
from random import Random

from bench.faults.people import holds, sentences
from bench.faults.planted import Edit, Fault, Scenes, Shown
from bench.faults.prose import is_told

MARKS = (
    "TK",
    "TKTK",
    "[TK: the street]",
    "[name?]",
    "[check this]",
    "XXX",
    "XXXX",
    "TODO",
    "[add weather here]",
    "[insert the letter]",
    "???",
    "[more here later]",
    "[look up the train]",
    "(TK)",
    "[which day?]",
)
PLACES = 200  # tried of each novel at most


def plant(scenes: Scenes, random: Random) -> Iterator[Fault]:
    told = [(scene, at) for scene, some in enumerate(scenes) for at, text in enumerate(some) if is_told(text)]
    for scene, at in random.sample(told, min(PLACES, len(told))):
        text = scenes[scene][at]
        start, end = random.choice(sentences(text) or [(0, len(text))])
        gaps = [n for n in range(start + 1, end - 1) if text[n] == " "]
        if not gaps:
            continue
        gap, mark = random.choice(gaps), random.choice(MARKS)
        words = f"{text[:gap].split()[-1]} {mark} {text[gap:].split()[0]}"
        edit = Edit(scene, at, (f"{text[:gap]} {mark}{text[gap:]}",))
        fault = Fault("placeholder", (edit,), (Shown(scene, words),), enough=1)
        if holds(scenes, fault):
            yield fault
