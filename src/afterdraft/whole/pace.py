"""The measures of each scene, and how fast it is told: beside story time where that is known."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby
from statistics import median
from typing import Literal

from afterdraft.reading.facts import SceneFacts

READ = 260  # words a minute: silent reading of fiction in English (Brysbaert 2019, a meta-analysis of 190 studies)
TALK = 150  # words a minute of talk: common practice for reading aloud and conversation
NEAR_TALK = 10  # times faster or slower than talk that still is a scene; chosen
LEAP = 24 * 60  # minutes of story time between two scenes from which they are left out, not only passed over; chosen
TALKING = 0.5  # share of speech from which a scene is mostly that
TOLD_BY_I = 0.15  # share of I and we among the pronouns outside speech, as for whoever tells a scene
FEW = 4  # pronouns up to which a share says little

Voice = Literal["first", "second", "third"]
Tense = Literal["past", "present"]
Tempo = Literal["scene", "summary", "pause"]  # Genette: as long told as lived; shorter; told while nothing passes
Mode = Literal["speech", "events", "telling"]


@dataclass(frozen=True, slots=True)
class Measures:
    """Of one scene. Shares are 0 to 1; valence is -1 to 1: a tendency, never a verdict."""

    words: int
    sentences: int
    speech_share: float  # of its words
    events_per_100: float  # words
    words_per_sentence: float
    valence: float
    person: Voice
    tense: Tense

    @property
    def reading_minutes(self) -> float:
        return self.words / READ


@dataclass(frozen=True, slots=True)
class Paced:
    """How one scene is told. `tempo`, `rate` and `left_out` are known only where story time is."""

    mode: Mode  # what it mostly is, by the book's own measure
    tempo: Tempo | None = None
    rate: float | None = None  # words a minute of story time
    left_out: float | None = None  # minutes of story time before it that are not told: an ellipsis


@dataclass(frozen=True, slots=True)
class Run:
    """Scenes `start` to `end`, exclusive, of one mode."""

    start: int
    end: int
    mode: Mode


def measured(scenes: Sequence[SceneFacts]) -> tuple[Measures, ...]:
    """Of every scene, in order."""
    return tuple(map(measure, scenes))


def measure(scene: SceneFacts) -> Measures:
    counted = scene.counted
    words, sentences = sum(one.words for one in counted), sum(one.sentences for one in counted)
    past, present = sum(one.past for one in counted), sum(one.present for one in counted)
    return Measures(
        words=words,
        sentences=sentences,
        speech_share=_share(sum(one.spoken for one in counted), words),
        events_per_100=100 * _share(len(scene.events), words),
        words_per_sentence=_share(words, sentences),
        valence=_share(sum(one.valence * one.words for one in counted), words),
        person=_person(scene),
        tense="present" if present > past else "past",
    )


def paced(
    measures: Sequence[Measures], *, minutes: Sequence[float | None] = (), gaps: Sequence[float | None] = ()
) -> tuple[Paced, ...]:
    """How each scene is told. `minutes` of story time and those of the `gaps` before may be given, for every scene one
    entry, None where nothing is known."""
    minutes = minutes or (None,) * len(measures)
    gaps = gaps or (None,) * len(measures)
    usual = median([one.events_per_100 for one in measures]) if measures else 0.0
    return tuple(
        Paced(_mode(one, usual), *_tempo(one.words, lasts), gap if gap is not None and gap >= LEAP else None)
        for one, lasts, gap in zip(measures, minutes, gaps, strict=True)
    )


def runs(paces: Sequence[Paced], *, least: int = 2) -> tuple[Run, ...]:
    """Stretches of at least so many scenes of one mode, in order."""
    found, start = [], 0
    for mode, group in groupby(one.mode for one in paces):
        end = start + len(list(group))
        if end - start >= least:
            found.append(Run(start, end, mode))
        start = end
    return tuple(found)


def _share(part: float, whole: float) -> float:
    return part / whole if whole else 0.0


def _person(scene: SceneFacts) -> Voice:
    first, second, third = (sum(getattr(one, name) for one in scene.counted) for name in ("first", "second", "third"))
    least = 0.5 if first + third <= FEW else TOLD_BY_I
    if second > max(first, third):
        return "second"
    return "first" if first > least * (first + third) else "third"


def _mode(one: Measures, usual: float) -> Mode:
    if one.speech_share >= TALKING:
        return "speech"
    return "events" if one.events_per_100 >= usual else "telling"


def _tempo(words: int, minutes: float | None) -> tuple[Tempo | None, float | None]:
    if minutes is None:
        return None, None
    if words > minutes * TALK * NEAR_TALK:
        return "pause", words / minutes if minutes else None
    rate = words / minutes if minutes else 0.0
    return "scene" if rate * NEAR_TALK >= TALK else "summary", rate
