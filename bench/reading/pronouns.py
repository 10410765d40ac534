"""The pronouns of LitBank's passages (CC BY 4.0) with whom each means, each passage read as a book of its own."""

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

from afterdraft.reading.facts import Mention, SceneFacts
from afterdraft.reading.scene import scene_facts
from afterdraft.whole.book import read_book
from afterdraft.whole.cast import Cast
from afterdraft.whole.pronouns import antecedents
from afterdraft.whole.speakers import Spoken
from afterdraft.whole.turns import meant
from bench.measures.litbank import Part, Passage, passages, people_meant
from bench.reading.kept import analysed
from bench.report import Figure

SURE = 0.75  # from which an owner is asked about


@dataclass(frozen=True)
class Known:
    """A passage as it is read, and beside each mention whom it means by the corpus; None where that is not said."""

    scene: SceneFacts
    people: tuple[str | None, ...]
    spoken: tuple[Spoken, ...]
    cast: Cast
    right: tuple[str | None, ...]

    @cached_property
    def same(self) -> Mapping[str, str]:
        """Whom of the corpus each of the cast is: by most of their names."""
        met: defaultdict[str, Counter[str]] = defaultdict(Counter)
        for one, person, right in zip(self.scene.mentions, self.people, self.right, strict=True):
            if person and right and one.kind in ("name", "role"):
                met[person][right] += 1
        return {person: found.most_common(1)[0][0] for person, found in met.items()}

    def pronouns(self) -> Iterator[tuple[int, Mention]]:
        """Those of which it is known whom they mean."""
        for number, (one, right) in enumerate(zip(self.scene.mentions, self.right, strict=True)):
            if one.kind == "pronoun" and not one.spoken and one.gender in ("f", "m") and right:
                yield number, one


def known(part: Part) -> list[Known]:
    return [_known(one) for one in passages(part)]


def _known(passage: Passage) -> Known:
    scene = scene_facts(analysed(passage.paragraphs))
    book = read_book([scene])
    people = meant(scene, book.told[0])
    return Known(scene, people, book.spoken[0], book.told[0], _right(passage, scene.mentions))


def _right(passage: Passage, mentions: Sequence[Mention]) -> tuple[str | None, ...]:
    """By exactly the same words; of names and roles also by the shortest that end alike: 'old' may be left out."""
    gold = people_meant(passage)
    exact = dict(gold)
    ends: dict[tuple[int, int], str] = {}
    for (paragraph, _, end), who in sorted(gold):
        ends[paragraph, end] = who
    return tuple(
        exact.get((one.paragraph, one.start, one.end))
        or (ends.get((one.paragraph, one.end)) if one.kind in ("name", "role") else None)
        for one in mentions
    )


@dataclass(frozen=True, slots=True)
class Score:
    """Pronouns outside speech whose person is of the cast, counted one by one."""

    of_cast: int
    sure: int  # given to somebody, as likely as `SURE` or likelier, whether or not they mean one of the cast
    right: int  # of these

    def figures(self) -> Iterator[Figure]:
        yield Figure(f"pronouns surely somebody's ({SURE}), right", self.right / self.sure, note=f"of {self.sure}")
        yield Figure("the same, of all that mean one of the cast", self.right / self.of_cast, note=f"of {self.of_cast}")


def score(some: Sequence[Known]) -> Score:
    of_cast = sure = right = 0
    for one in some:
        owners = antecedents(one.scene, one.people, one.spoken, one.cast, paragraphs=False)  # the corpus has none
        for number, _ in one.pronouns():
            owner, who = owners[number], one.right[number]
            of_cast += who in one.same.values()
            if owner and owner[1] >= SURE:
                sure += 1
                right += one.same.get(owner[0]) == who
    return Score(of_cast, sure, right)
