"""People of a novel and sentences about them, by counting capitalised words alone. Imports nothing of the program."""

import re
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from random import Random

from bench.faults.planted import Edit, Fault, Scenes, Shown

TITLES = ("Mr.", "Mrs.", "Miss", "Dr.", "Lady", "Sir", "Lord", "Captain", "Colonel", "Professor", "Madame", "Aunt")
_MALE, _FEMALE = {"Mr.", "Sir", "Lord", "Captain", "Colonel"}, {"Mrs.", "Miss", "Lady", "Madame", "Aunt"}
TALKS = "said|asked|replied|cried|answered|exclaimed|returned|whispered|murmured|remarked|observed|added|began"
_TITLED = "|".join(map(re.escape, TITLES))
_UNTITLED = "".join(rf"(?<!{re.escape(title)} )" for title in TITLES)
_NAMED = rf"(?:(?:{_TITLED}) )?[A-Z][a-z]+(?:-[A-Z][a-z]+)?"
_TAG = re.compile(rf"\b(?:{TALKS}) ({_NAMED})(?! [A-Z])|(?<![A-Za-z.] )({_NAMED}) (?:{TALKS})\b")
_NOBODY = frozenset(
    [
        "The",
        "And",
        "But",
        "Then",
        "What",
        "Why",
        "How",
        "Who",
        "There",
        "This",
        "That",
        "When",
        "Now",
        "Here",
        "Nobody",
        "Everybody",
        "Somebody",
        "One",
        "Both",
        "All",
        "Another",
        "Neither",
        "Each",
        "Someone",
        "Everyone",
        "God",
        "Lord",
        "She",
        "They",
        "His",
        "Her",
        "Its",
        "Not",
        "For",
        "You",
        "Your",
        "Captain",
        "Doctor",
        "Mother",
        "Father",
    ]
)
_PAST = (
    "was|had|went|came|took|sat|stood|gave|made|got|saw|rose|drew|ran|put|turned|left|held|fell|kept|shook|threw|led"
)
_ACTS = re.compile(rf" (?:had |\w+ly )?(?:\w+ed|{_PAST})\b")
_STOP = re.compile(r"(?<!\bMr)(?<!\bMrs)(?<!\bDr)(?<!\bSt)(?<!\b[A-Z])[.!?…]+[”’\")*_]*(?=\s+[“‘\"(*_—]*[A-Z]|\s*$)")
_SPEECH = re.compile(r"“[^”]*(?:”|$)|\"[^\"]*(?:\"|$)|‘[^’]*[,.!?—]’")
_ANYBODY = re.compile(
    r"\b(?:man|woman|girl|boy|lady|gentleman|friend|sister|brother|mother|father|wife|husband|daughter|son|child|aunt|"
    r"uncle|doctor|king|queen|prince|princess|duke|duchess|count|countess|cardinal|general|major|captain|colonel|master|"
    r"mistress|priest|vicar|servant|maid|cook|fellow|stranger|guest|host|other|two|both)(?:s|’s)?\b|"
    r"\b(?:the|a|an) \w+(?:er|or|ist|ian)\b"
)
_OBJECT = {
    "m": re.compile(r"\bhim\b"),
    "f": re.compile(r"\bher(?:[.,;:!?—]|$| (?:to|with|in|into|and|but|from|as|at|on|for|by|up|down|back|away)\b)"),
}  # 'Ilse looked at her': somebody else
SPOKEN, NAMED = 4, 25  # times that somebody speaks by name, and is named, at least
VOTES, MOST = 5, 0.66  # pronouns behind a name, and the share of them that must agree


@dataclass(frozen=True, slots=True)
class Person:
    name: str
    gender: str  # m or f
    count: int  # times named outside speech

    @property
    def pronouns(self) -> dict[str, str]:
        """What stands for the fields of a pattern."""
        he, him, his = ("he", "him", "his") if self.gender == "m" else ("she", "her", "her")
        who = "man" if self.gender == "m" else "woman"
        return {"n": self.name, "he": he, "him": him, "his": his, "He": he.title(), "His": his.title(), "man": who}

    @property
    def pattern(self) -> re.Pattern[str]:
        """The name, where it is no part of a longer one."""
        return re.compile(rf"{_UNTITLED}\b{re.escape(self.name)}\b(?! [A-Z])")


@dataclass(frozen=True, slots=True)
class Place:
    """A sentence: code points `start` to `end` of a scene's paragraph."""

    scene: int
    paragraph: int
    start: int
    end: int


def narrated(text: str) -> str:
    """As long as the paragraph, with blanks where somebody speaks."""
    return _SPEECH.sub(lambda match: " " * len(match.group()), text)


def sentences(text: str) -> list[tuple[int, int]]:
    found, begins = [], 0
    for match in _STOP.finditer(text):
        found.append((begins + len(text[begins:]) - len(text[begins:].lstrip()), match.end()))
        begins = match.end()
    return found


@lru_cache(maxsize=2)
def people(scenes: Scenes) -> tuple[Person, ...]:
    """Who speaks by name, is named often, and is plainly he or she; most named first."""
    told = [narrated(text) for scene in scenes for text in scene]
    tags = Counter(one or other for text in told for one, other in _TAG.findall(text))
    whole = "\n".join(told)
    found = []
    for name, times in tags.items():
        if times >= SPOKEN and not set(name.split()) & _NOBODY - set(TITLES) and len(name) > len("Jo"):
            count = len(Person(name, "", 0).pattern.findall(whole))
            if count >= NAMED and (gender := _gender(name, whole)):
                found.append(Person(name, gender, count))
    found.sort(key=lambda one: (-one.count, one.name))
    return tuple(one for place, one in enumerate(found) if not any(_same(one, other, whole) for other in found[:place]))


def _same(one: Person, other: Person, told: str) -> bool:
    """Whether two names are plainly of one person: 'Mr. Pike' and 'Pike', 'Tom' and 'Pike' of 'Tom Pike'."""
    if one.gender != other.gender:
        return False
    pair = one.name.split()[-1], other.name.split()[-1]
    return pair[0] == pair[1] or any(f" {first} {last}" in told for first, last in (pair, pair[::-1]))


def _gender(name: str, told: str) -> str:
    title = name.split(" ")[0]
    if title in _MALE | _FEMALE:
        return "m" if title in _MALE else "f"
    behind = re.compile(rf"\b{re.escape(name)}\b[^.!?\n]*?\b(he|him|his|himself|she|her|herself)\b")
    votes = Counter("f" if one in ("she", "her", "herself") else "m" for one in behind.findall(told))
    gender, most = votes.most_common(1)[0] if votes else ("", 0)
    wife = gender == "f" and re.search(rf"(?:Mrs\.|Lady) {re.escape(name)}\b", told)  # a bare surname is the man's
    return gender if most >= max(VOTES, MOST * votes.total()) and not wife else ""


def acts(scenes: Scenes, person: Person) -> Iterator[Place]:
    """Sentences outside speech that begin with the name and tell what that person did."""
    for number, scene in enumerate(scenes):
        for at, text in enumerate(scene):
            if person.name not in text:
                continue
            told = narrated(text)
            for start, end in sentences(told):
                if told.startswith(person.name, start) and _ACTS.match(told, start + len(person.name)):
                    yield Place(number, at, start, end)


def alone(scenes: Scenes, person: Person, place: Place) -> bool:
    """Whether nobody else of the gender is told of in the sentence: 'he' behind it can only be that person."""
    said = scenes[place.scene][place.paragraph][place.start : place.end]
    others = [one for one in people(scenes) if one.gender == person.gender and one.name != person.name]
    names = re.findall(r"(?<=[a-z,;] )[A-Z][a-z]+", re.sub(_TITLED, "", said.replace(person.name, "")))
    another = _OBJECT[person.gender].search(narrated(said)) or any(one.pattern.search(said) for one in others)
    return not (names or _ANYBODY.search(said) or another)


def fitting(scenes: Scenes, person: Person, places: Sequence[Place], how: str, words: str) -> list[Place]:
    """Of places for words `behind` a sentence, `name` or `tag`: where a sentence says only 'he', those that let it."""
    if how != "behind" or "{n}" in words:
        return list(places)
    return [one for one in places if alone(scenes, person, one)]


def tags(scenes: Scenes, person: Person) -> Iterator[Place]:
    """'said Ada.' at the end of a paragraph: from the verb to the name."""
    ends = re.compile(rf"(?<=[”\"’] )(?:{TALKS}) {re.escape(person.name)}(?=\.$)")
    for number, scene in enumerate(scenes):
        for at, text in enumerate(scene):
            if match := ends.search(text):
                yield Place(number, at, match.start(), match.end())


def in_its_marks(scenes: Scenes, place: Place, words: str) -> str:
    """Words with marks of speech as the paragraph has them."""
    text = scenes[place.scene][place.paragraph]
    return words.replace("“", '"').replace("”", '"') if '"' in text and "“" not in text else words


def behind(scenes: Scenes, place: Place, words: str) -> Edit:
    """The paragraph with words behind that sentence."""
    text = scenes[place.scene][place.paragraph]
    return Edit(place.scene, place.paragraph, (text[: place.end] + words + text[place.end :],))


def after_name(scenes: Scenes, place: Place, name: str, words: str) -> Edit:
    """The paragraph with words right behind the name that begins that sentence."""
    text = scenes[place.scene][place.paragraph]
    at = place.start + len(name)
    return Edit(place.scene, place.paragraph, (text[:at] + words + text[at:],))


def told_in_halves(
    scenes: Scenes,
    random: Random,
    kind: str,
    two: Callable[[Person], Sequence[str]],
    said: Callable[[Person, str, range], Iterator[tuple[Edit, str]]],
    often: int,
) -> Iterator[Fault]:
    """Of somebody among the most named `two` things that do not go together, one told in each half of the novel;
    `said` gives edits between two scenes, with the words that tell the thing."""
    chosen = list(people(scenes)[:often])
    random.shuffle(chosen)
    halves = range(len(scenes) // 2), range(len(scenes) // 2, len(scenes))
    for person in chosen:
        told = (said(person, thing, half) for thing, half in zip(two(person), halves, strict=True))
        for (first, words), (second, others) in zip(*told, strict=False):
            fault = Fault(kind, (first, second), (Shown(second.scene, others), Shown(first.scene, words)))
            if holds(scenes, fault):
                yield fault


def stands_once(scenes: Scenes, edits: Sequence[Edit], shown: Shown) -> bool:
    """Whether the words stand once in their scene as it will be."""
    becomes = {edit.paragraph: edit.becomes for edit in edits if edit.scene == shown.scene}
    scene = [one for at, text in enumerate(scenes[shown.scene]) for one in becomes.get(at, (text,))]
    return sum(text.count(shown.words) for text in scene) == 1


def holds(scenes: Scenes, fault: Fault) -> bool:
    """Whether all words of a fault stand once, and its edits are of different paragraphs."""
    touched = {(edit.scene, edit.paragraph) for edit in fault.edits}
    return len(touched) == len(fault.edits) and all(stands_once(scenes, fault.edits, one) for one in fault.shown)


def mostly(scenes: Scenes, one: str, other: str) -> str:
    """Whichever of two spellings the novel has more of."""
    whole = "\n".join(text for scene in scenes for text in scene)
    count = {word: len(re.findall(rf"\b{word}\b", whole)) for word in (one, other)}
    return other if count[other] > count[one] else one
