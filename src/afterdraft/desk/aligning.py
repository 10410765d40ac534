"""Which scene each row of a scene list means: by code where there is one; else by chapter, order, then words.

Rows and scenes are laid beside each other in their orders so that the sum of what speaks for the pairs is greatest
(Needleman and Wunsch 1970, with no cost for gaps): a pair never crosses another. Words that few scenes have weigh more
(inverse document frequency, Spärck Jones 1972). The same rows and scenes always give the same pairs.
"""

import re
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import log
from typing import Final, Literal

from afterdraft.desk.scene_list import Listed
from afterdraft.manuscript.division import Chapter
from afterdraft.manuscript.naming import chapter_name
from afterdraft.manuscript.structure import numerals

By = Literal["code", "number", "title", "words", "order"]

# What speaks for a pair; chosen by hand so that a chapter outweighs words, and words outweigh mere order.
CHAPTER: Final = 1.0  # taken off where the row names another chapter
NUMBER: Final = 0.75
OTHER_NUMBER: Final = -0.25
TITLE: Final = 2.0
WORDS: Final = 2.0  # times the share of the row's words that the scene has, rare ones weighing more
ORDER: Final = 0.05  # that both are next
SPEAKS: Final = 0.25  # from this share on, words are given as the reason
STEM: Final = 6  # letters by which a word is known in all its forms; English prose needs no more to be told apart
SHORTEST: Final = 3  # letters of a word that counts

_WORD = re.compile(r"[^\W\d_]+")
_NUMBERS = re.compile(r"(?:(\d{1,3})\s*[.\-–:/]\s*)?(\d{1,4})\.?")
_CHAPTER = re.compile(r"(?:chapter|chap\.?|ch\.?)?\s*([\w-]+)?\s*[.:–—-]*\s*(.*)", re.IGNORECASE | re.DOTALL)


@dataclass(frozen=True, slots=True)
class Placed:
    """A scene as rows are compared with it."""

    code: str
    title: str
    chapter: int  # index of its chapter
    within: int  # its place in the chapter, from 1
    words: frozenset[str]  # as `stems` gives them, of its title and text


@dataclass(frozen=True, slots=True)
class Pair:
    scene: int  # index
    by: By


def stems(text: str) -> frozenset[str]:
    return frozenset(word.casefold()[:STEM] for word in _WORD.findall(text) if len(word) >= SHORTEST)


def aligned(rows: Sequence[Listed], scenes: Sequence[Placed], chapters: Sequence[Chapter]) -> tuple[Pair | None, ...]:
    """For each row its scene, or None. Headings have none; a code is believed, and each scene has one row at most,
    but for rows that have the same code."""
    codes = {scene.code: n for n, scene in enumerate(scenes)}
    found: list[Pair | None] = [_by_code(row, codes) for row in rows]
    taken = {pair.scene for pair in found if pair}
    left = [n for n, row in enumerate(rows) if found[n] is None and not row.heading]
    free = [n for n in range(len(scenes)) if n not in taken]
    judge = _Judge([rows[n] for n in left], scenes, chapters)
    for row, scene in _best(len(left), free, judge):
        found[left[row]] = Pair(scene, judge.reason(row, scene))
    return tuple(found)


def _by_code(row: Listed, codes: Mapping[str, int]) -> Pair | None:
    scene = codes.get(row.text("code").strip().upper())
    return None if scene is None or row.heading else Pair(scene, "code")


class _Judge:
    """What speaks for a row and a scene being a pair."""

    def __init__(self, rows: Sequence[Listed], scenes: Sequence[Placed], chapters: Sequence[Chapter]) -> None:
        self._scenes = scenes
        self._titles = [" ".join(row.text("title").casefold().split()) for row in rows]
        self._scene_titles = [" ".join(scene.title.casefold().split()) for scene in scenes]
        named = {text: meant(text, chapters) for text in {row.text("chapter") for row in rows} if text}
        self._chapters = [named.get(row.text("chapter"), frozenset()) for row in rows]
        self._numbers = [_number(row.text("number")) for row in rows]
        plain = [number for chapter, number in self._numbers if number and chapter is None]
        self._restarts = len(set(plain)) < len(plain)  # then they count within chapters
        spread = Counter(word for scene in scenes for word in scene.words)
        self._weights = {word: log((1 + len(scenes)) / count) for word, count in spread.items()}
        holders: dict[str, list[int]] = {}
        for n, scene in enumerate(scenes):
            for word in scene.words:
                holders.setdefault(word, []).append(n)
        self._shares = [self._shared(self._known(row), holders) for row in rows]

    def score(self, row: int, scene: int) -> float:
        return ORDER + self._place(row, scene) + TITLE * self._title(row, scene) + WORDS * self.share(row, scene)

    def share(self, row: int, scene: int) -> float:
        """Of the row's words that the book has, how much stands in the scene: 0 to 1."""
        return self._shares[row].get(scene, 0.0)

    def reason(self, row: int, scene: int) -> By:
        if self._title(row, scene):
            return "title"
        if self._numbered(row, scene):
            return "number"
        return "words" if self.share(row, scene) >= SPEAKS else "order"

    def _shared(self, words: frozenset[str], holders: Mapping[str, Sequence[int]]) -> dict[int, float]:
        """By scene; only those that have one of the words."""
        total = sum(self._weights[word] for word in sorted(words))
        found: dict[int, float] = {}
        for word in sorted(words):  # always summed in one order
            for scene in holders[word]:
                found[scene] = found.get(scene, 0.0) + self._weights[word] / total
        return found

    def _known(self, row: Listed) -> frozenset[str]:
        told = " ".join(row.text(kind) for kind in ("title", "first words", "summary"))
        return frozenset(word for word in stems(told) if word in self._weights)

    def _place(self, row: int, scene: int) -> float:
        chapters = self._chapters[row]
        score = 0.0
        if chapters:
            score += CHAPTER if self._scenes[scene].chapter in chapters else -CHAPTER
        if self._numbers[row][1]:
            score += NUMBER if self._numbered(row, scene) else OTHER_NUMBER
        return score

    def _title(self, row: int, scene: int) -> bool:
        return bool(self._titles[row]) and self._titles[row] == self._scene_titles[scene]

    def _numbered(self, row: int, scene: int) -> bool:
        chapter, number = self._numbers[row]
        place = self._scenes[scene]
        if chapter is not None:
            return (chapter, number) == (place.chapter + 1, place.within)
        return bool(number) and number == (place.within if self._restarts else scene + 1)


def _best(rows: int, scenes: Sequence[int], judge: _Judge) -> list[tuple[int, int]]:
    """Row and scene of each pair in the best laying of both orders beside each other."""
    scores = [[judge.score(row, scene) for scene in scenes] for row in range(rows)]
    best = [[0.0] * (len(scenes) + 1) for _ in range(rows + 1)]
    for row in range(1, rows + 1):
        above, here, own = best[row - 1], best[row], scores[row - 1]
        for place in range(1, len(scenes) + 1):
            here[place] = max(above[place], here[place - 1], above[place - 1] + max(own[place - 1], 0.0))
    return _traced(scores, best, scenes)


def _traced(scores: list[list[float]], best: list[list[float]], scenes: Sequence[int]) -> list[tuple[int, int]]:
    pairs = []
    row, place = len(scores), len(scenes)
    while row and place:
        if best[row][place] == best[row - 1][place]:
            row -= 1
        elif best[row][place] == best[row][place - 1]:
            place -= 1
        else:
            row, place = row - 1, place - 1
            pairs.append((row, scenes[place]))
    return pairs[::-1]


def _number(text: str) -> tuple[int | None, int | None]:
    """ "12" → (None, 12); "3.2" → (3, 2), the second scene of the third chapter; (None, None) for anything else."""
    match = _NUMBERS.fullmatch(text.strip())
    return (int(match[1]) if match[1] else None, int(match[2])) if match else (None, None)


def meant(text: str, chapters: Sequence[Chapter]) -> frozenset[int]:
    """Indices of the chapters that a row may mean: by their whole name or title, else by the number they print, else by
    their place. Empty where the book has none such."""
    wanted = " ".join(text.casefold().split())
    match = _CHAPTER.fullmatch(text.strip())
    number = numerals.read(match[1]) if match and match[1] else None
    title = " ".join((match[2] if match and number else "").casefold().split())
    names = [(chapter_name(chapter).casefold(), chapter.title.casefold()) for chapter in chapters]
    by_name = frozenset(n for n, name in enumerate(names) if wanted in name or (title and title == name[1]))
    if not wanted:
        return frozenset()
    if by_name or number is None:
        return by_name
    printed = frozenset(n for n, chapter in enumerate(chapters) if chapter.number == number.value)
    return printed or frozenset({number.value - 1} & set(range(len(chapters))))
