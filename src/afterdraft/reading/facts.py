"""What is kept of one scene: plain values that can be thrown away and made again.

Positions are code points in the paragraph, half-open; paragraphs count from 0 in the scene. Mentions and quotes stand
in order of their places.
"""

from dataclasses import dataclass
from typing import Literal

from afterdraft.reading.counted import Counted, Event
from afterdraft.reading.lexicon import OWNERS
from afterdraft.reading.place import Place
from afterdraft.reading.time import Time
from afterdraft.reading.trait import Trait

Gender = Literal["f", "m", "n", ""]
Kind = Literal["name", "role", "pronoun", "self"]
# name: Lucy, Miss Bartlett · role: the old man, the Mouse · pronoun: he, her · self: I, my, outside speech the narrator
Entity = Literal["person", "place", "other", ""]  # what the pipeline takes it for


@dataclass(frozen=True, slots=True)
class Mention:
    """A place where somebody is meant."""

    paragraph: int
    start: int
    end: int
    kind: Kind
    form: str  # as compared: small letters, no points, no article: "miss bartlett", "old man", "she", "her mother"
    gender: Gender = ""  # of the words themselves
    entity: Entity = ""
    subject: bool = False  # of a verb
    speaks: bool = False  # of a verb of speech
    answers: bool = False  # subject of a verb by which a turn of talk is taken, in words or by a nod
    feels: bool = False  # subject of a verb of perception or thought
    spoken: bool = False  # inside speech
    called: bool = False  # spoken to by this form: a vocative
    large: bool = False  # written with a capital, so that a role is a name
    first: bool = False  # first word of its sentence: its capital says nothing
    placed: bool = False  # after a preposition of place: in, at, near
    apposed: bool = False  # a role right behind a name: 'Mr. X, the vicar'
    joined: bool = False  # by "and" to the mention before: two people, not one

    @property
    def owned(self) -> bool:
        """Whether it is a role by whose it is: 'her mother', "lucy's brother"."""
        first = self.form.split(" ", 1)[0]
        return self.kind == "role" and (first in OWNERS or first.endswith("'s")) and first != self.form


@dataclass(frozen=True, slots=True)
class Quote:
    """A stretch of speech, and who the words beside it name as its speaker."""

    paragraph: int
    start: int
    end: int
    goes_on: bool = False
    words: int = 0
    tag: int | None = None  # mention of the speaker; None where nothing beside it tells
    plain: bool = False  # the tag has a verb of speech, and is not only somebody's act beside the words


@dataclass(frozen=True, slots=True)
class SceneFacts:
    paragraphs: int
    mentions: tuple[Mention, ...] = ()
    quotes: tuple[Quote, ...] = ()
    counted: tuple[Counted, ...] = ()  # one a paragraph
    events: tuple[Event, ...] = ()
    traits: tuple[Trait, ...] = ()
    times: tuple[Time, ...] = ()
    places: tuple[Place, ...] = ()
