"""What is counted in a paragraph, and an event in it: values of `SceneFacts`."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Counted:
    """One paragraph, in order: every paragraph of the scene has one. Pronouns and verbs are those outside speech."""

    words: int
    sentences: int
    spoken: int  # words inside speech
    first: int  # I, me, my, we, us, …
    second: int  # you, your, …
    third: int  # he, her, they, …
    past: int  # verbs in the past tense
    present: int
    valence: float  # of its sentences, weighed by their words: -1 to 1


@dataclass(frozen=True, slots=True)
class Event:
    """A word that tells of something that happens: actual, specific, asserted (LitBank's definition)."""

    paragraph: int
    start: int
    end: int
