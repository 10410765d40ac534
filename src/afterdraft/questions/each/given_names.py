"""Somebody's surname with another given name than theirs."""

import re
from collections import Counter, defaultdict
from collections.abc import Container, Iterator, Mapping, Sequence

from rapidfuzz.distance import Jaro

from afterdraft.questions.check import Check
from afterdraft.questions.genders_of_names import genders, may_be_of_one_gender
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.reading import lexicon
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import same_given

KNOWN = 5  # times that the usual given name stands at least; chosen on the tuning half
RARE = 2  # times that the other does at most, likewise; in full, the usual name stands more often
_NAME = re.compile(r"(?<![\w’'-])(?P<given>[A-Z][a-zé]+)(?= (?P<surname>[A-Z][a-zé’]+[a-z])\b(?!-))")
_NO_GIVEN = lexicon.TITLES | lexicon.ROLES | lexicon.NO_NAMES | {f"{title}s" for title in lexicon.TITLES}
_WORD = re.compile(r"[^\W\d_]+")
_KIN = re.compile(
    r"\b(?:sons?|daughters?|brothers?|sisters?|father|mother|parents|uncle|aunt|cousins?|nephew|niece|wife|husband"
    r"|widow"
    r"|family|child|children|born|christened|ancestor\w*|grand\w+)\b",
    re.IGNORECASE,
)
_OTHER = r"(?i:late|old|young|little|poor|an?)|another|named|called|certain|Mrs\.?|Lady|Sir|Lord|né|née"
_JUNIOR = r",? of\b|, (?:junior|senior|Esq)\b| [A-Z]|, Jun| Jun"
_ANOTHER = re.compile(rf"\b(?:{_OTHER}) $"), re.compile(_JUNIOR)
_TOLD_OF = re.compile(rf"\b(?:{_OTHER}|and|or) $"), re.compile(rf"{_JUNIOR}|,? (?:who|whom|whose)\b|, (?:the|an?)\b")
_DOES = re.compile(r",? (?:who |had |was )?(?:[a-z]+ed|said|came|went|took|sat|stood|told|held|put|got|ran|rose)\b")
BEGINS = 3  # letters alike at the beginning from which one may be the other's short form; chosen by hand
SHAPE = 0.7  # how alike two are at least that do not begin with one letter, by Jaro (1989): 0 to 1; likewise
ROUND = 40  # characters on either side in which kinship explains another of the name; chosen by hand


def find(seen: Seen) -> Iterator[Finding]:
    counted = Counter(word for scene in seen.texts for text in scene for word in _WORD.findall(text))
    known = list(_of_known(seen, counted))
    yield from known
    asked = {one.words["surname"] for one in known}
    for one in (*_called_by_surname(seen, counted), *_alike(seen, counted)):
        if one.words["surname"] not in asked:
            asked.add(one.words["surname"])
            yield one


def _of_known(seen: Seen, counted: Counter[str]) -> Iterator[Finding]:
    """Of somebody who is mostly called by the given name."""
    for surname, by_given in _full(seen, FEMALE | MALE).items():
        if counted[surname.lower()]:
            continue
        for other, places in by_given.items():
            known = _usual(other, by_given) if counted[other] <= RARE else ""
            if counted[known] < KNOWN or not _is_met(seen, f"{known} {surname}"):
                continue
            if not any(_is_explained(seen, one, known) for one in places):
                yield _finding(seen, surname, (known, by_given[known]), (other, places), counted)


def _called_by_surname(seen: Seen, counted: Counter[str]) -> Iterator[Finding]:
    """Of somebody who is mostly called by the bare surname, in the scenes of either given name: nobody else has it."""
    names = _never_small(counted)
    for surname, by_given in _full(seen, names).items():
        if len(by_given) != 2 or surname.lower() not in names:
            continue
        (known, usual), (other, places) = sorted(by_given.items(), key=lambda one: (-len(one[1]), one[1]))
        scenes = [{one.scene for one in spans} for spans in (usual, places)]
        if counted[other] > RARE or _is_in(seen, known, scenes[1]) or not _may_be_one(known, other):
            continue
        if not (genders(known) or genders(other) or _are_people(seen, usual, places)):
            continue
        bare = _bare(seen, surname, counted)
        if all(bare & some for some in scenes) and not any(_is_explained(seen, one, known) for one in places):
            yield _finding(seen, surname, (known, usual), (other, places), counted)


def _alike(seen: Seen, counted: Counter[str]) -> Iterator[Finding]:
    """Of somebody who has another given name that begins with the same letter or looks like it, in another scene: kin
    of such names are told of together, or it is said who they are."""
    names = _never_small(counted)
    for surname, by_given in _full(seen, names).items():
        for other, places in by_given.items() if surname.lower() in names else ():
            like = [given for given in by_given if given != other and _looks_like(given, other)]
            known = like[0] if len(like) == 1 and _may_be_one(like[0], other) else ""
            if not known or not len(places) == counted[other] <= RARE or _order(by_given[known]) > _order(places):
                continue
            if not (genders(known) or genders(other) or _are_people(seen, by_given[known], places)):
                continue
            apart = known[:BEGINS] != other[:BEGINS] and not _is_in(seen, known, {one.scene for one in places})
            if apart and not any(_is_explained(seen, one, known, _ANOTHER) for one in places):
                yield _finding(seen, surname, (known, by_given[known]), (other, places), counted)


def _are_people(seen: Seen, *both: Sequence[Span]) -> bool:
    """Whether somebody of either name does something: 'Royal Anglia' and 'Radio Anglia' are nobody's names."""
    return all(any(_DOES.match(seen.texts[one.scene][one.paragraph], one.end) for one in full) for full in both)


def _order(full: Sequence[Span]) -> tuple[int, Span]:
    """Who stands more often comes first; of those who stand as often, who stands before."""
    return -len(full), full[0]


def _looks_like(given: str, other: str) -> bool:
    """Whether one may be written for the other: 'Geoff' for 'Graham', 'Jerry' for 'Terry'."""
    return given[0] == other[0] or Jaro.similarity(given, other) >= SHAPE


def _never_small(counted: Counter[str]) -> frozenset[str]:
    """What the book writes with a capital alone, in small letters."""
    capital = {word.lower() for word in counted if word[0].isupper()}
    return frozenset(capital - {word for word in counted if word.islower()} - _NO_GIVEN)


def _is_in(seen: Seen, name: str, scenes: Container[int]) -> bool:
    """Whether it stands in one of these scenes."""
    some = (texts for number, texts in enumerate(seen.texts) if number in scenes)
    return any(name in _WORD.findall(text) for texts in some for text in texts)


def _may_be_one(given: str, other: str) -> bool:
    return may_be_of_one_gender(given, other) and not same_given(given.lower(), [other.lower()])


def _bare(seen: Seen, surname: str, counted: Counter[str]) -> set[int]:
    """Scenes in which a surname stands with no other name or title before it."""
    stands = re.compile(rf"(?:\b([A-Z]\w*)\.? )?(?<![\w’'-]){surname}\b(?! [A-Z]|-)")
    return {
        number
        for number, scene in enumerate(seen.texts)
        if any(not match[1] or counted[match[1].lower()] for text in scene for match in stands.finditer(text))
    }


def _usual(other: str, by_given: Mapping[str, Sequence[Span]]) -> str:
    """The one given name of the same gender that stands often, and is no short form of it; "" where there are two: a
    family."""
    often = [given for given, spans in by_given.items() if len(spans) > RARE and _is_her(given) == _is_her(other)]
    return often[0] if len(often) == 1 and not same_given(often[0].lower(), [other.lower()]) else ""


def _is_her(given: str) -> bool:
    return given.lower() in FEMALE


def _full(seen: Seen, given: Container[str]) -> Mapping[str, Mapping[str, list[Span]]]:
    """By surname and given name, of such given names in small letters, where the two stand together."""
    found: defaultdict[str, defaultdict[str, list[Span]]] = defaultdict(lambda: defaultdict(list))
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in _NAME.finditer(text):
                slanted = seen.is_in_italics(number, place, *match.span())
                if match["given"].lower() in given and not slanted:
                    full = seen.span(number, place, match.start(), match.end("surname"))
                    found[match["surname"]][match["given"]].append(full)
    return found


def _is_met(seen: Seen, name: str) -> bool:
    """Whether it is somebody of the book's own, and not of history."""
    forms = seen.book.cast.by_form.items()
    people = {person for form, person in forms if f" {form}".endswith(f" {name.lower()}")}  # with a title before it too
    return any(one.person in people and one.presence != "mentioned" for one in seen.book.appearances)


def _is_explained(seen: Seen, one: Span, known: str, told: tuple[re.Pattern[str], re.Pattern[str]] = _TOLD_OF) -> bool:
    """Whether it is said to be somebody else, by what stands right before or behind it."""
    text = seen.texts[one.scene][one.paragraph]
    before, behind = text[max(0, one.start - ROUND) : one.start], text[one.end : one.end + ROUND]
    if known in seen.sentence(one).quote or told[0].search(before) or told[1].match(behind):
        return True
    return _KIN.search(f"{before} {behind}") is not None


def _finding(
    seen: Seen,
    surname: str,
    usual: tuple[str, Sequence[Span]],
    other: tuple[str, Sequence[Span]],
    counted: Counter[str],
) -> Finding:
    first = other[1][0]
    near = min(usual[1], key=lambda one: (abs(one.scene - first.scene), abs(one.paragraph - first.paragraph)))
    return Finding(
        evidence=(seen.sentence(first), seen.sentence(near)),
        strength=0.75,
        subject=f"{usual[0]} or {other[0]} {surname}",
        words={"surname": surname, "usual": usual[0], "rare": other[0]},
        numbers={"usual": counted[usual[0]], "rare": counted[other[0]]},
    )


CHECK = Check(
    id="given name",
    name="Another given name",
    family="cast",
    looks_at="A surname that stands once or twice with another given name than its usual one, where nothing "
    "says that it is somebody else's.",
    method="Counts given names that many know before surnames, in the whole book; any given name before one by "
    "which somebody is mostly called, where the bare surname stands beside either; and any two given names before one "
    "surname, in different scenes, that begin with one letter or look alike by Jaro (1989). Short forms are let be, "
    "surnames of which two are usual, and names that are explained (‘his brother’, ‘old’, ‘the vicar’). The rule is "
    "our own.",
    blind="Given names quite unlike, of people who are named in full alone. A namesake who comes once without a word "
    "about it is asked about.",
    reads=("words", "cast"),
    find=find,
    recipe=7,
)
