"""Scenes in which somebody thinks: whose each is, and whether it keeps to that one's mind."""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from afterdraft.questions.minds import SURE, Thought, Whose, teller, whose
from afterdraft.questions.seen import Seen
from afterdraft.reading.facts import Gender
from afterdraft.whole.book import genders

OWN = 3  # thoughts and perceptions of the viewpoint's own that a scene has at least; chosen on the tuning half
LEAD = 4  # times as many as all others', likewise
ALIKE = 0.7  # share of all who think that are 'he' or 'she' as the viewpoint is, likewise
AHEAD = 2  # times as often as anybody else of that gender, likewise


@dataclass(frozen=True, slots=True)
class MindScene:
    """One in which somebody thinks, and whose it is."""

    number: int
    viewpoint: str
    gender: Gender
    marked: bool  # she says whose it is
    tells: bool  # the viewpoint is an I
    minds: tuple[Thought, ...]
    sides: tuple[Whose, ...]  # one each

    def pairs(self) -> Iterator[tuple[Thought, Whose]]:
        return zip(self.minds, self.sides, strict=True)


def mind_scenes(seen: Seen, minds: Mapping[int, tuple[Thought, ...]]) -> Iterator[MindScene]:
    read, hers = _viewpoints(seen)
    known = genders(seen.book.cast.people)
    for number, here in minds.items():
        who = hers.get(number) or read.get(number) or _most(here)
        if who and (number in hers or len(here) >= OWN):
            gender, tells = known.get(who, ""), teller(seen, number) == who
            sides = tuple(whose(one, who, gender, tells=tells) for one in here)
            yield MindScene(number, who, gender, number in hers, tells, here, sides)


def _viewpoints(seen: Seen) -> tuple[Mapping[int, str], Mapping[int, str]]:
    """By scene whose it is: as reading found, and as she says."""
    read = {one.scene: one.person for one in seen.book.appearances if one.presence == "point of view"}
    return read, {scene: person for (scene, person), how in seen.marks.present.items() if how == "viewpoint"}


def _most(minds: Sequence[Thought]) -> str | None:
    """Whose thoughts most of a scene's are."""
    ranked = Counter(one.person for one in minds if one.person).most_common(1)
    return ranked[0][0] if ranked and ranked[0][1] >= OWN else None


def keeps(scene: MindScene) -> bool:
    """Whether a scene tells of one mind, nearly, and it is beyond doubt of whose."""
    others = sum(its != "own" and one.known for one, its in scene.pairs())
    return scene.sides.count("own") >= max(OWN, LEAD * others) and (scene.tells or _is_plainly(scene))


def _is_plainly(scene: MindScene) -> bool:
    alike = [one for one in scene.minds if one.gender in ("", scene.gender)]
    sure = Counter(one.person for one in alike if one.sure >= SURE)
    own = sure.pop(scene.viewpoint, 0)
    return len(alike) >= ALIKE * len(scene.minds) and own >= max([1, *(AHEAD * times for times in sure.values())])
