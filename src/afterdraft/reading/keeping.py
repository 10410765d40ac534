"""Facts as text, and the key they are kept under: the hash of what was read and of what read it. No pickles."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import astuple
from hashlib import sha256
from typing import Any

from afterdraft.reading.counted import Counted, Event
from afterdraft.reading.facts import Mention, Quote, SceneFacts
from afterdraft.reading.place import Place
from afterdraft.reading.scene import RECIPE
from afterdraft.reading.time import Time
from afterdraft.reading.trait import Trait

_LISTS: Mapping[str, type[Any]] = {
    "mentions": Mention,
    "quotes": Quote,
    "counted": Counted,
    "events": Event,
    "traits": Trait,
    "times": Time,
    "places": Place,
}  # fields of SceneFacts that are lists of values


def key(paragraphs: Sequence[str], *, model: str) -> str:
    """Of a scene's facts: the same words read by the same recipe and model have the same."""
    return sha256(json.dumps([RECIPE, model, list(paragraphs)]).encode()).hexdigest()


def packed(facts: SceneFacts) -> str:
    """As JSON; `unpacked` gives the same facts back."""
    lists = [[astuple(one) for one in getattr(facts, name)] for name in _LISTS]
    return json.dumps([facts.paragraphs, *lists], separators=(",", ":"), ensure_ascii=False)


def unpacked(text: str) -> SceneFacts:
    """What `packed` wrote under a key of this recipe."""
    paragraphs, *lists = json.loads(text)
    read = {name: tuple(kind(*one) for one in rows) for (name, kind), rows in zip(_LISTS.items(), lists, strict=True)}
    return SceneFacts(paragraphs, **read)
