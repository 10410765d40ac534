"""One name spelled two ways."""

import re
from collections import Counter, defaultdict
from collections.abc import Container, Iterator, Mapping, Sequence

from rapidfuzz.distance import OSA

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.reading import lexicon
from afterdraft.reading.time_words import DAYS, MONTHS
from afterdraft.whole.cast import READ
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import GROUPS

USUAL = 8  # times that the usual spelling stands there at least; chosen on the tuning half
RARE = 2  # times that the other does at most, likewise
SHORTEST = 3  # letters: shorter words are too near one another
USUAL_SHORTEST = 4  # likewise of the usual spelling
OFTEN = 16  # times that a short one does at least, where letters are changed and none is left out, likewise
SHORT = 4  # letters up to which what is a given name itself is let be, likewise
_WORD = re.compile(r"[^\W\d_]+(?:[’'][^\W\d_]+)*")
_THING = re.compile(r"\s([A-Z][a-z]+)")
_INFLECTED = re.compile(r"(?:[’']s?|s[’'])$")
_VOWELS = frozenset("aeiouy")
_QUOTED = re.compile(r"[“‘\"]$"), re.compile(r"[”’\"]")
_SPELLED = re.compile(
    r"\b(?:spel(?:t|led|ling)|sign(?:s|ed)\s(?:(?:him|her|my)self|(?:his|her|my)\sname)|pronounced?\s(?:it|as|like|his|her|the\sname))\b"
)
_CALLED = re.compile(r"\b(?:call(?:s|ed)?\s(?:him|her|me|himself|herself|myself)|christened(?:\s(?:him|her|me))?)\s$")
_ENDINGS = frozenset("saonye")  # of families, feminines, pet names
_LAST = frozenset("aeiys")  # letters that change at the end of such


_Bearers = Mapping[str, Sequence[str]]
GIVEN = FEMALE | MALE
DATED = frozenset((*DAYS, *MONTHS))


def find(seen: Seen) -> Iterator[Finding]:
    written, small = _written(
        seen, {word for one in seen.book.cast.people for form in one.aliases for word in _words(form)}
    )
    people = _people(seen, {word.lower() for word, spans in written.items() if len(spans) > RARE})
    usual = [
        word
        for word, spans in written.items()
        if len(spans) >= USUAL and word.lower() in people and not small[word.lower()]
    ]
    for word, spans in written.items():
        if len(word) >= SHORTEST and len(spans) <= RARE and not small[word.lower()] and word.lower() not in DATED:
            other = next((one for one in usual if _may_be(word, len(spans), one, len(written[one]), people)), None)
            if other and not any(_is_spoken_of(seen, one, other) for one in spans):
                yield _finding(seen, other, word, written, people[other.lower()][0])


def _may_be(word: str, times: int, usual: str, often: int, people: _Bearers) -> bool:
    """Whether a word that stands so many times may be the usual name, which stands so often. Short names take more."""
    if len(word) <= SHORT and (times > 1 or word.lower() in GIVEN or not _is_slip_of_the_pen(word, usual, often)):
        return False
    if len(usual) < USUAL_SHORTEST or not _is_slip(word, usual):
        return False
    return not _is_own(word.lower(), usual.lower(), people)


def _people(seen: Seen, often: Container[str]) -> _Bearers:
    """By word of a name the people who bear it, who is named most first. Whom only a name read once or twice tells of
    may be somebody else misspelled, and so may be a rare word of one name of somebody who has others."""
    found: defaultdict[str, list[str]] = defaultdict(list)
    for person in seen.book.cast.people:
        if person.mentions <= RARE and person.id.startswith(READ):
            continue
        forms = [_words(form) for form in person.aliases]
        for word in (word for form in forms for word in form):
            may_be_slip = word not in often and word not in GIVEN and not all(word in form for form in forms)
            if word not in lexicon.TITLES and word not in lexicon.ROLES and not may_be_slip:
                found[word].append(person.id)
    return dict(found)


def _words(form: str) -> list[str]:
    return re.split(r"[\s-]", form)


def _written(seen: Seen, names: Container[str]) -> tuple[Mapping[str, list[Span]], Counter[str]]:
    """Where words with a capital stand, by how they are written; and how often words stand without one."""
    found: defaultdict[str, list[Span]] = defaultdict(list)
    small: Counter[str] = Counter()
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in _WORD.finditer(text):
                word = _INFLECTED.sub("", match.group())
                thing = _THING.match(text, match.end())
                if thing and thing.group(1).lower() not in names and word == match.group():
                    continue  # 'the Lally Rook': a name of its own
                if word[:1].isupper() and not word.isupper():
                    found[word].append(Span(number, place, match.start(), match.start() + len(word), word))
                else:
                    small[word.lower()] += 1
    return found, small


def _is_slip(word: str, other: str) -> bool:
    """Whether one may be a slip of the pen, or of the memory, for the other, and is no form of it."""
    one, two = word.lower(), other.lower()
    if one == two or abs(len(one) - len(two)) > 1:
        return False
    if OSA.distance(one, two, score_cutoff=1) > 1:
        return False
    if one[:-1] == two[:-1] and {one[-1], two[-1]} <= _LAST and _is_form(one, two):
        return False
    if one[:-1] == two and one[-1] == two[-1]:
        return True  # doubled, in 'Boriss' too
    return two != one + "s" and not (one.startswith(two) and one[len(two) :] in _ENDINGS)


def _is_form(one: str, two: str) -> bool:
    """Of names that end otherwise: Louise, Louisa; George, Georgy; Georges."""
    return one in GIVEN or "s" in (one[-1], two[-1]) or (two in GIVEN and one[-1] == "y")


def _is_slip_of_the_pen(word: str, other: str, often: int) -> bool:
    """Of short names: a letter left out or written twice within it, or one of two alike at its end; of those that stand
    often also two letters changed about, and one vowel for another."""
    if word[0] != other[0]:
        return False
    if len(word) != len(other):
        return not other.startswith(word) or other[-1] == word[-1]
    changed = [(one, two) for one, two in zip(word, other, strict=True) if one != two]
    return often >= OFTEN and (len(changed) == 2 or set(changed[0]) <= _VOWELS)


def _is_own(word: str, other: str, people: _Bearers) -> bool:
    """Whether it is the name of nobody who bears the usual one, or a short form."""
    known = any(word in group and other in group for group in GROUPS)
    return known or (word in people and not set(people[word]) & set(people[other]))


def _is_spoken_of(seen: Seen, one: Span, usual: str) -> bool:
    """Whether the page says that it is spelled so, or quotes it, or quotes the usual spelling close by and says so."""
    scene, (before, behind) = seen.texts[one.scene], _QUOTED
    text = scene[one.paragraph]
    if before.search(text[: one.start]) and behind.match(text, one.end):
        return True
    close = scene[max(0, one.paragraph - 1) : one.paragraph + 2]
    told = any(_SPELLED.search(near) and re.search(rf"[“‘\"]{usual}[”’\"]", near) for near in close)
    return told or bool(_CALLED.search(text[: one.start]) or _SPELLED.search(seen.sentence(one).quote))


def _finding(seen: Seen, usual: str, rare: str, written: Mapping[str, list[Span]], person: str) -> Finding:
    first = written[rare][0]
    near = min(written[usual], key=lambda one: (abs(one.scene - first.scene), abs(one.paragraph - first.paragraph)))
    return Finding(
        evidence=(seen.sentence(first), seen.sentence(near)),
        strength=0.85 if len(written[rare]) == 1 else 0.75,
        subject=f"{usual} or {rare}",
        words={"usual": usual, "rare": rare},
        numbers={"usual": len(written[usual]), "rare": len(written[rare])},
        people=(person,),
    )


CHECK = Check(
    id="spelling",
    name="One name spelled two ways",
    family="cast",
    looks_at="A name that stands once or twice and is one letter away from a name that stands often.",
    method="Words with a capital are compared with the names of the cast: one letter more, less, other or changed "
    "with its neighbour (optimal string alignment distance). Short forms, plurals and feminine endings are "
    "let be, and so is what is the name of somebody else of the cast, a common word, or said on the page to be "
    "spelled so.",
    blind="Names of three letters or fewer. Spellings that each stand often. Two people who are named almost alike, "
    "the second of them once or twice, are asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=3,
)
