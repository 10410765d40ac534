"""One name spelled two ways."""

import re
from collections import Counter, defaultdict
from collections.abc import Container, Iterator, Mapping, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.slips import is_slip, is_slip_of_the_pen
from afterdraft.reading import lexicon
from afterdraft.reading.tense_forms import form, stem
from afterdraft.reading.time_words import DAYS, MONTHS
from afterdraft.whole.cast import READ
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import GROUPS

USUAL = 8  # times that the usual spelling stands there at least; chosen on the tuning half
RARE = 2  # times that the other does at most, likewise
SHORTEST = 3  # letters: shorter words are too near one another
USUAL_SHORTEST = 4  # likewise of the usual spelling
SHORT = 4  # letters up to which what is a given name itself is let be, likewise
_WORD = re.compile(r"[^\W\d_]+(?:[’'][^\W\d_]+)*")
_GIVEN = re.compile(r"\b([A-Z][a-z]+)\s$")
_THING = re.compile(r"\s([A-Z][a-z]+)")
_INFLECTED = re.compile(r"(?:[’']s?|s[’'])$")
_QUOTED = re.compile(r"[“‘\"]$"), re.compile(r"[”’\"]")
_OBJECT = re.compile(
    r"\s(?:them|it|him|her|me|us|we|I|you|he|she|they|the|an?|my|his|your|our|their|this|that|those)\b"
)
_ADDRESS = (
    re.compile(r"(?:[“‘\"']|,\s|\b(?i:oh|ah|well|now|yes|no|my|dear|come)\s)$"),
    re.compile(r"[,.!?…—]+[”’\"'\s]"),
)
_SPELLED = re.compile(
    r"\b(?:spel(?:t|led|ling)|sign(?:s|ed)\s(?:(?:him|her|my)self|(?:his|her|my)\sname)|pronounced?\s(?:it|as|like|his|her|the\sname))\b"
)
_CALLED = re.compile(r"\b(?:call(?:s|ed)?\s(?:him|her|me|himself|herself|myself)|christened(?:\s(?:him|her|me))?)\s$")


_Bearers = Mapping[str, Sequence[str]]
GIVEN = FEMALE | MALE
DATED = frozenset((*DAYS, *MONTHS))


def find(seen: Seen) -> Iterator[Finding]:
    written, small = _written(
        seen, {word for one in seen.book.cast.people for form in one.aliases for word in _words(form)}
    )
    people = _people(seen, {word.lower() for word, spans in written.items() if len(spans) > RARE}, small)
    usual = [
        word
        for word, spans in written.items()
        if len(spans) >= USUAL and word.lower() in people and not small[word.lower()]
    ]
    stems = {stem(word) for word in small}
    for word, spans in written.items():
        if len(word) >= SHORTEST and len(spans) <= RARE and not small[word.lower()] and word.lower() not in DATED:
            other = next((one for one in usual if _may_be(word, len(spans), one, len(written[one]), people)), None)
            if other and not _is_common(seen, word, spans, stems) and not _is_let_be(seen, word, other, written):
                yield _finding(seen, other, word, written, people[other.lower()][0])


def _may_be(word: str, times: int, usual: str, often: int, people: _Bearers) -> bool:
    """Whether a word that stands so many times may be the usual name, which stands so often. Short names take more."""
    if len(word) <= SHORT and (times > 1 or word.lower() in GIVEN or not is_slip_of_the_pen(word, usual, often)):
        return False
    if len(usual) < USUAL_SHORTEST or not is_slip(word, usual):
        return False
    return not _is_own(word.lower(), usual.lower(), people)


def _people(seen: Seen, often: Container[str], small: Counter[str]) -> _Bearers:
    """By word of a name the people who bear it, who is named most first. Whom only a name read once or twice tells of
    may be somebody else misspelled, and so may be a rare word of one name of somebody who has others. A title or a
    trade is a name only in a book that never writes it small: 'Miss Miller'."""
    found: defaultdict[str, list[str]] = defaultdict(list)
    for person in seen.book.cast.people:
        if person.mentions <= RARE and person.id.startswith(READ):
            continue
        forms = [_words(alias) for alias in person.aliases]
        for word in (word for words in forms for word in words):
            may_be_slip = word not in often and word not in GIVEN and not all(word in words for words in forms)
            title = word in lexicon.PLAIN_TITLES or (word in lexicon.TITLES | lexicon.ROLES and small[word])
            if not title and not may_be_slip:
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
                if match.start() and thing and thing.group(1).lower() not in names and word == match.group():
                    continue  # 'the Lally Rook': a name of its own
                if word[:1].isupper() and not word.isupper():
                    found[word].append(Span(number, place, match.start(), match.start() + len(word), word))
                elif word.islower():  # 'MR. LAMB' over a chapter tells nothing
                    small[word] += 1
    return found, small


def _is_common(seen: Seen, word: str, spans: Sequence[Span], stems: Container[str]) -> bool:
    """Whether its capital says nothing and the book has other forms of it: 'Hunted' in a line of verse."""
    first = form(word.lower()) in ("both", "ing") or all(_is_first(seen, one) for one in spans)
    return first and stem(word.lower()) in stems


def _is_let_be(seen: Seen, word: str, usual: str, written: Mapping[str, Sequence[Span]]) -> bool:
    others = any(
        _is_else(seen, one, written) or _is_spoken_of(seen, one, usual) or _is_a_verb(seen, one)
        for one in written[word]
    )
    pet = (
        usual.startswith(word[:-1])
        and len(word) <= len(usual)
        and all(_is_called_out(seen, one) for one in written[word])
    )
    return others or pet or _is_plural(word, usual, written)


def _is_called_out(seen: Seen, one: Span) -> bool:
    """Whether somebody is called it: 'Good day, Pose?' may be a pet form, where it ends otherwise."""
    text, (before, behind) = seen.texts[one.scene][one.paragraph], _ADDRESS
    return bool(before.search(text[: one.start]) and behind.match(text, one.end))


def _is_a_verb(seen: Seen, one: Span) -> bool:
    """'Sell them', 'Shall we': at the beginning, before whom or what."""
    return _is_first(seen, one) and bool(_OBJECT.match(seen.texts[one.scene][one.paragraph], one.end))


def _is_plural(word: str, usual: str, written: Mapping[str, Sequence[Span]]) -> bool:
    """Of another name that stands there: 'Highland Marys', beside somebody called Mars."""
    one = word[:-1]
    known = one.lower() in GIVEN or len(written.get(one, ())) > RARE
    return word.endswith("s") and one != usual and known


def _is_first(seen: Seen, one: Span) -> bool:
    """Whether it begins its sentence, or a line: then its capital says nothing."""
    return not re.search(r"[\w,;][”’\"]?[^\S\n]$", seen.texts[one.scene][one.paragraph][: one.start])


def _is_else(seen: Seen, one: Span, written: Mapping[str, Sequence[Span]]) -> bool:
    """Whether it stands behind a given name that nobody else has here: 'Henry Tobyas'."""
    behind = _GIVEN.search(seen.texts[one.scene][one.paragraph][: one.start])
    return behind is not None and behind.group(1).lower() in GIVEN and len(written.get(behind.group(1), ())) <= RARE


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
    "with its neighbour (optimal string alignment distance; most wrong words are no further off: Damerau, 1964), and "
    "not the first, which is seldom wrong (Pollock and Zamora, 1984). Another letter has to be one that a hand or an "
    "ear takes for it. Short forms, other endings of who is called so (‘Good day, "
    "Pose?’), plurals and feminine endings are let be, and so is what is the name of somebody "
    "else of the cast, stands behind a given name that nobody else has, is a form of a common word at the beginning of "
    "a sentence, or is said on the page to be spelled so.",
    blind="Names of three letters or fewer. Spellings that each stand often. Wrong first letters, and letters that are "
    "quite unlike. Two people who are named almost alike, the second of them once or twice, are asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=7,
)
