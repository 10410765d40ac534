"""The keys `measures` and `traits` of the published form `read/1` with `--facts`.

`places` and `texts` say, for each scene, where each of its story paragraphs begins in the story text and what it says.
"""

from collections.abc import Sequence

from afterdraft.whole.facts_form import Form
from afterdraft.whole.pace import Measures, Paced, paced
from afterdraft.whole.traits import PersonTrait


def measures_form(measures: Sequence[Measures], paces: Sequence[Paced] | None = None) -> list[Form]:
    """One entry a scene, in order."""
    return list(map(_entry, range(len(measures)), measures, paces or paced(measures)))


def traits_form(
    traits: Sequence[PersonTrait], *, places: Sequence[Sequence[int]], texts: Sequence[Sequence[str]]
) -> list[Form]:
    """One entry a trait, in the order of the text; a guess says how sure it is whose it is."""
    return [
        {
            "person": one.person,
            "trait": one.trait,
            "value": one.value,
            "scene": one.scene,
            "at": places[one.scene][one.paragraph] + one.start,
            "quote": texts[one.scene][one.paragraph][one.start : one.end],
            "sure": one.sure,
        }
        for one in traits
    ]


def _entry(number: int, one: Measures, pace: Paced) -> Form:
    return {
        "scene": number,
        "words": one.words,
        "sentences": one.sentences,
        "speech_share": round(one.speech_share, 4),
        "events_per_100": round(one.events_per_100, 2),
        "words_per_sentence": round(one.words_per_sentence, 2),
        "valence": round(one.valence, 4),
        "person": one.person,
        "tense": one.tense,
        "reading_minutes": round(one.reading_minutes, 1),
        "mode": pace.mode,
    }
