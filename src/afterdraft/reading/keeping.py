"""Facts as text, and the key they are kept under: the hash of what was read and of what read it. No pickles."""

import json
from collections.abc import Sequence
from dataclasses import astuple
from hashlib import sha256

from afterdraft.reading.facts import Mention, Quote, SceneFacts
from afterdraft.reading.scene import RECIPE


def key(paragraphs: Sequence[str], *, model: str) -> str:
    """Of a scene's facts: the same words read by the same recipe and model have the same."""
    return sha256(json.dumps([RECIPE, model, list(paragraphs)]).encode()).hexdigest()


def packed(facts: SceneFacts) -> str:
    """As JSON; `unpacked` gives the same facts back."""
    return json.dumps(
        [facts.paragraphs, [astuple(one) for one in facts.mentions], [astuple(one) for one in facts.quotes]],
        separators=(",", ":"),
        ensure_ascii=False,
    )


def unpacked(text: str) -> SceneFacts:
    """What `packed` wrote under a key of this recipe."""
    paragraphs, mentions, quotes = json.loads(text)
    return SceneFacts(paragraphs, tuple(Mention(*one) for one in mentions), tuple(Quote(*one) for one in quotes))
