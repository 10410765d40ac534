"""Every wrong quotation with what the program saw of it, as `faults` asks for it."""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from functools import cache

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.speakers import Spoken
from afterdraft.whole.speaking import Heard, concerned, heard
from bench.reading.faults import Case
from bench.reading.given import owners
from bench.reading.novels import Novel, Quotation

Met = tuple[int, Spoken]  # scene, and what was said of a stretch in it


class Cases:
    """Over one novel and one cast; `met` stands beside the corpus's quotations."""

    def __init__(
        self,
        book: Novel,
        scenes: Sequence[SceneFacts],
        cast: Cast,
        matched: Mapping[str, int],
        said: Sequence[Sequence[Spoken]],
        met: Sequence[Met | None],
    ) -> None:
        self._scenes, self._cast, self._said = scenes, cast, said
        self._by_character = {character: person for person, character in matched.items()}
        self._names: defaultdict[int, set[str]] = defaultdict(set)
        for alias, ids in owners(book.characters).items():
            for character in ids:
                self._names[character].add(alias)
        self._nobody = {one.id for one in book.characters if one.name.startswith("_")}
        self._speakers: defaultdict[tuple[int, int], set[int]] = defaultdict(set)
        for quotation, at in zip(book.quotations, met, strict=True):
            if at:
                self._speakers[at[0], at[1].quote].add(quotation.speaker)
        self._heard = cache(self._hear)

    def of(self, quotation: Quotation, at: Met | None) -> Case | None:
        if at is None:
            return None
        scene, one = at
        seen, by_quote = self._heard(scene)
        chain = [self._said[scene][turn.quotes[0]].speaker for turn in seen.turns]
        right = [self._right(scene, turn.quotes, who) for turn, who in zip(seen.turns, chain, strict=True)]
        return Case(
            kind=quotation.kind,
            nobody=quotation.speaker in self._nobody,
            known=bool(self._names[quotation.speaker] & self._cast.by_form.keys()),
            shared=len(self._speakers[scene, one.quote]) > 1,
            speaker=self._by_character.get(quotation.speaker),
            said=one.speaker,
            scene=self._scenes[scene],
            seen=seen,
            number=by_quote[one.quote],
            chain=chain,
            right=right,
        )

    def _hear(self, scene: int) -> tuple[Heard, Mapping[int, int]]:
        seen = heard(self._scenes[scene], concerned(self._scenes[scene], self._cast, {}))
        return seen, {quote: number for number, turn in enumerate(seen.turns) for quote in turn.quotes}

    def _right(self, scene: int, quotes: Sequence[int], who: str | None) -> bool:
        """Whether the turn is right, or the corpus says nothing of it."""
        known = {self._by_character.get(one) for quote in quotes for one in self._speakers[scene, quote]}
        return not known or who in known
