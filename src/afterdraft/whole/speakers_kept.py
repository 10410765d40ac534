"""Who speaks, remembered from one reading to the next: most of what a whole book tells takes, and few scenes change."""

import json
from collections.abc import Sequence
from dataclasses import astuple
from hashlib import sha256

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.speakers import How, Spoken, spoken
from afterdraft.whole.speaking import Concerned

SPEAKERS = "speakers"  # under which the form is kept: one a book, that of what was told last


class KeptSpeakers:
    """A `Speak` that looks up what it told before of the same facts, with the same people concerned."""

    def __init__(self, facts: Sequence[str], form: str = "", *, recipe: int) -> None:
        """`facts` are the keys of each scene's facts, `form` what one before this one gave, `recipe` the whole's."""
        self._facts = facts
        self._recipe = recipe
        self._known: dict[str, list[tuple[int, str | None, How, float]]] = json.loads(form) if form else {}
        self._told: dict[str, tuple[Spoken, ...]] = {}

    def __call__(self, number: int, scene: SceneFacts, cast: Concerned) -> tuple[Spoken, ...]:
        key = self._key(self._facts[number], cast)
        if key not in self._told:
            known = self._known.get(key)
            self._told[key] = spoken(scene, cast) if known is None else tuple(Spoken(*row) for row in known)
        return self._told[key]

    @property
    def form(self) -> str:
        """What was told, for the next; "" where that is what was known."""
        if self._told.keys() == self._known.keys():
            return ""
        return json.dumps({key: [astuple(one) for one in told] for key, told in self._told.items()})

    def _key(self, facts: str, cast: Concerned) -> str:
        about = [
            self._recipe,
            facts,
            cast.people,
            cast.narrator,
            sorted(cast.genders.items()),
            sorted(cast.seldom),
            sorted(cast.said.items()),
        ]
        return sha256(json.dumps(about).encode()).hexdigest()
