"""A revision of a novel made by chance, and the truth of it. Imports nothing of the program."""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from random import Random
from typing import Literal

from bench.comparison.editing import Paragraph, Stock, Word, edited, reparagraphed, text

Act = Literal["same", "light", "heavy", "cut", "anew", "split", "join", "move", "insert"]
ACTS: dict[Act, float] = {
    "same": 0.28, "light": 0.22, "heavy": 0.12, "cut": 0.07, "anew": 0.05, "split": 0.07, "join": 0.06, "move": 0.08,
    "insert": 0.05,
}  # fmt: skip
LIGHT, HEAVY = (0.01, 0.09), (0.25, 0.6)  # share of words touched
FAR = 3  # scenes that a moved one is carried over, at least: a swap of neighbours can be told either way
STRAY = 0.25  # single paragraphs moved into another scene, per scene
STRAY_WORDS = 15  # of such a paragraph, at least
STRAY_SHARE = 0.1  # of its scene, at most: from 0.15 on two scenes count as linked
INSIDE = 0.03  # paragraphs cut, and put in, and split, and joined, in scenes that were worked on
NAMES = 0.5  # of what stands for a name in donated text is a name of the scene that it retells
TOPICS = 0.12  # … and so many of its longer words are words of that scene
TOPIC = 6  # letters of a longer word


@dataclass(slots=True)
class Scene:
    paragraphs: list[Paragraph]
    origins: set[int]  # old scenes it was made of; empty for a new one
    act: Act
    moved: bool = False


@dataclass(frozen=True, slots=True)
class Revision:
    """Two drafts as scenes of paragraphs, and what became of what."""

    old: tuple[tuple[str, ...], ...]
    new: tuple[tuple[str, ...], ...]
    links: frozenset[tuple[int, int]]  # old scene, new scene
    anew: frozenset[int]  # old scenes told anew in other words
    moved: frozenset[tuple[int, int]]  # of the links
    became: dict[int, str]  # of each old scene
    pairs: frozenset[tuple[int, int]]  # paragraphs, counted through each draft
    strays: frozenset[tuple[int, int]]  # of them, those moved singly
    words: tuple[tuple[Word, ...], ...] = field(repr=False)  # of each new paragraph, with where they stood


def revision(scenes: Sequence[Sequence[str]], donor: Sequence[str], seed: int) -> Revision:
    """Revise `scenes`; `donor` has paragraphs of another book, for what is told anew or put in."""
    chance = Random(seed)
    old = [[paragraph.split() for paragraph in scene] for scene in scenes]
    made = list(_acted(_numbered(old), Stock([w for s in old for p in s for w in p]), _Donor(donor, chance), chance))
    _move(made, chance)
    strays = _stray(made, chance)
    made = [scene for scene in made if scene.paragraphs]
    return _told(old, made, strays)


def _numbered(old: Sequence[Sequence[Sequence[str]]]) -> list[list[Paragraph]]:
    scenes: list[list[Paragraph]] = []
    number = 0
    for scene in old:
        scenes.append([])
        for words in scene:
            scenes[-1].append([(word, (number, at)) for at, word in enumerate(words)])
            number += 1
    return scenes


class _Donor:
    """Gives paragraphs of another book, each once, in which names and topics of a scene are put."""

    def __init__(self, paragraphs: Sequence[str], chance: Random) -> None:
        self._paragraphs = paragraphs
        self._at = chance.randrange(len(paragraphs))
        self._chance = chance

    def about(self, scene: list[Paragraph]) -> list[Paragraph]:
        words = [word for paragraph in scene for word, _ in paragraph[1:]]
        names = [word for word in words if word[0].isupper() and len(word) > 2] or ["Somebody"]
        topics = [word for word in words if len(word) >= TOPIC and word.islower()] or ["something"]
        wanted, given = len(words), 0
        told: list[Paragraph] = []
        while given < wanted or not told:
            paragraph = self._paragraphs[self._at % len(self._paragraphs)].split()
            self._at += 1
            told.append([(self._put(word, names, topics), None) for word in paragraph])
            given += len(paragraph)
        return told

    def _put(self, word: str, names: list[str], topics: list[str]) -> str:
        if word[0].isupper():
            return self._chance.choice(names) if self._chance.random() < NAMES else word
        if len(word) >= TOPIC and self._chance.random() < TOPICS:
            return self._chance.choice(topics)
        return word


def _acted(scenes: list[list[Paragraph]], stock: Stock, donor: _Donor, chance: Random) -> Iterator[Scene]:
    joining: Scene | None = None
    for number, scene in enumerate(scenes):
        act = chance.choices(list(ACTS), list(ACTS.values()))[0]
        if joining is not None:
            joining.paragraphs += _worked(scene, chance.choice([(0.0, 0.0), LIGHT]), stock, donor, chance)
            joining.origins.add(number)
            yield joining
            joining = None
        elif act == "join" and number + 1 < len(scenes):
            joining = Scene(_worked(scene, chance.choice([(0.0, 0.0), LIGHT]), stock, donor, chance), {number}, "join")
        elif act == "insert":
            yield Scene([list(paragraph) for paragraph in scene], {number}, "same")
            yield Scene(donor.about(chance.choice(scenes)), set(), "insert")
        elif act == "cut":
            continue
        elif act == "anew":
            yield Scene(donor.about(scene), {number}, "anew")
        elif act == "split" and len(scene) >= 6:
            done = _worked(scene, chance.choice([(0.0, 0.0), LIGHT]), stock, donor, chance)
            at = chance.randint(len(done) // 3, 2 * len(done) // 3)
            yield from (Scene(part, {number}, "split") for part in (done[:at], done[at:]))
        elif act == "move":
            shares = chance.choice([(0.0, 0.0), LIGHT, HEAVY])
            yield Scene(_worked(scene, shares, stock, donor, chance), {number}, "move", moved=True)
        else:
            shares = {"light": LIGHT, "heavy": HEAVY}.get(act, (0.0, 0.0))
            yield Scene(_worked(scene, shares, stock, donor, chance), {number}, act)


def _worked(
    scene: list[Paragraph], shares: tuple[float, float], stock: Stock, donor: _Donor, chance: Random
) -> list[Paragraph]:
    """A scene edited by a share drawn between two; not touched at all where both are nothing."""
    if not shares[1]:
        return [list(paragraph) for paragraph in scene]
    share = chance.uniform(*shares)
    done: list[Paragraph] = []
    for paragraph in scene:
        if chance.random() < INSIDE:
            done.append(donor.about([paragraph])[0])
        if chance.random() >= INSIDE or len(scene) < 3:
            done.append(edited(paragraph, share, stock, chance))
    return reparagraphed(done or [list(scene[0])], INSIDE, chance)


def _move(made: list[Scene], chance: Random) -> None:
    """Carry each scene that moves over at least `FAR` that stay."""
    going = [scene for scene in made if scene.moved]
    staying = [scene for scene in made if not scene.moved]
    places = {id(scene): sum(not one.moved for one in made[:at]) for at, scene in enumerate(made)}
    targets: list[tuple[int, float, Scene]] = []
    for scene in going:
        free = [at for at in range(len(staying) + 1) if abs(at - places[id(scene)]) >= FAR]
        scene.moved = bool(free)
        targets.append((chance.choice(free) if free else places[id(scene)], chance.random(), scene))
    for at, _, scene in sorted(targets, key=lambda one: one[:2], reverse=True):
        staying.insert(at, scene)
    made[:] = staying


def _stray(made: list[Scene], chance: Random) -> list[Paragraph]:
    """Move single paragraphs, each into a scene some way off."""
    strays = []
    for _ in range(int(STRAY * len(made))):
        source = chance.choice(made)
        fit = [p for p in source.paragraphs if p[0][1] and STRAY_WORDS <= len(p) <= STRAY_SHARE * _size(source)]
        others = [scene for scene in made if scene is not source and len(scene.paragraphs) > 5]
        if fit and others:
            paragraph = chance.choice(fit)
            source.paragraphs = [one for one in source.paragraphs if one is not paragraph]
            target = chance.choice(others)
            target.paragraphs.insert(chance.randint(1, len(target.paragraphs) - 1), paragraph)
            strays.append(paragraph)
    return strays


def _size(scene: Scene) -> int:
    return sum(map(len, scene.paragraphs))


def _told(old: Sequence[Sequence[Sequence[str]]], made: Sequence[Scene], strays: list[Paragraph]) -> Revision:
    links = {(origin, at) for at, scene in enumerate(made) for origin in scene.origins}
    fresh = [paragraph for scene in made for paragraph in scene.paragraphs]
    pairs = {(before, at) for at, paragraph in enumerate(fresh) for before in _sources(paragraph)}
    astray = {id(paragraph) for paragraph in strays}
    return Revision(
        old=tuple(tuple(" ".join(words) for words in scene) for scene in old),
        new=tuple(tuple(map(text, scene.paragraphs)) for scene in made),
        links=frozenset(links),
        anew=frozenset(origin for scene in made if scene.act == "anew" for origin in scene.origins),
        moved=frozenset((origin, at) for at, scene in enumerate(made) if scene.moved for origin in scene.origins),
        became=_became(old, made),
        pairs=frozenset(pairs),
        strays=frozenset((before, at) for before, at in pairs if id(fresh[at]) in astray),
        words=tuple(map(tuple, fresh)),
    )


def _sources(paragraph: Paragraph) -> set[int]:
    """Old paragraphs it has words of."""
    return {place[0] for _, place in paragraph if place is not None}


SAME, REVISED = 0.999, 0.85  # shares of both sides' words kept, as the form `compare/1` has them


def _became(old: Sequence[Sequence[Sequence[str]]], made: Sequence[Scene]) -> dict[int, str]:
    news: dict[int, list[Scene]] = {number: [] for number in range(len(old))}
    for scene in made:
        for origin in scene.origins:
            news[origin].append(scene)
    starts = _starts(old)
    return {number: _fate(number, scenes, old, starts) for number, scenes in news.items()}


def _starts(old: Sequence[Sequence[Sequence[str]]]) -> list[int]:
    starts = [0]
    for scene in old:
        starts.append(starts[-1] + len(scene))
    return starts


def _fate(number: int, news: list[Scene], old: Sequence[Sequence[Sequence[str]]], starts: list[int]) -> str:
    if not news:
        return "cut"
    if len(news) > 1:
        return "split"
    if len(news[0].origins) > 1:
        return "joined"
    own = range(starts[number], starts[number + 1])
    words = [place for paragraph in news[0].paragraphs for _, place in paragraph]
    kept = sum(1 for place in words if place is not None and place[0] in own)
    share = 2 * kept / (len(words) + sum(map(len, old[number])))
    return "same" if share >= SAME else "revised" if share >= REVISED else "rewritten"


def unique(paragraphs: Sequence[Sequence[str]], length: int) -> set[tuple[str, ...]]:
    """Runs of so many words inside a paragraph that stand just once in the draft."""
    counts = Counter(tuple(words[at : at + length]) for words in paragraphs for at in range(len(words) - length + 1))
    return {run for run, count in counts.items() if count == 1}
