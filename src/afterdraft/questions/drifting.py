"""Names that are others for a while: two names of one title, given name or part, of which one person is meant."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rapidfuzz.distance import OSA, Jaro

from afterdraft.questions.names_written import TITLES, WORD, ByName, Names
from afterdraft.questions.question import Span
from afterdraft.whole.given_names import FEMALE, MALE
from afterdraft.whole.nicknames import same_given

NEXT = 2  # scenes before in which the usual one stands, where they only begin alike, or stand by themselves; likewise
SHAPE = 0.75  # how alike two names are at least that do not begin with two letters alike, by Jaro (1989): 0 to 1
NEARLY = 4  # letters at the beginning from which one name is nearly the other; chosen by hand
FAMILIAR, MINOR = 150, 40  # times up to which a name may drift to one that looks alike, and to one that begins alike
SELDOM = 12  # times up to which the usual name stands where a rare word beside both ties them together; likewise
ASKED = 7  # times of the usual name from which one letter's difference is asked about as a spelling
ROUND = 40  # characters on either side in which kinship explains another of the name; chosen by hand
_BEFORE = re.compile(
    r"(?:\b(?:late|an?|another|named|called|certain|some|and|or|nor|like|than|name\sof|both|old|poor|king|saint|st\.?)\s"
    r"|[—–(]\s?|[”’\"]\s)$",
    re.IGNORECASE,
)
_BEHIND = re.compile(
    r",?\s(?:of|who|whom|whose|himself|herself)\b|,?\s(?:and|or)\s[A-Z]|,\s(?:the|an?|my|our|his|her|junior|senior|Esq)\b"
    r"|\s[A-Z][a-z]|,\s\*?[A-Z]|[’']s\s[A-Z]"
)
_TELLS = re.compile(r",?\s(?:who|whom|whose|himself|herself|and|or)\b")
_KING = re.compile(r"\sthe\s(?:[A-Z]\w+(?:st|nd|rd|th)\b|First|Second|Third|Great)")
_KIN = re.compile(
    r"\b(?:sons?|daughters?|brothers?|sisters?|father|mother|uncle|aunt|cousins?|nephew|niece|wife|husband|widow"
    r"|married|family|born|christened|another|namesake)\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Drift:
    """The usual name and the other, each where it stands first of all behind or beside what they share."""

    usual: Span  # the last before the other
    other: tuple[Span, ...]
    times: tuple[int, int]  # that the usual one and the other stand in the book
    tied: bool  # by one part, or by a rare word in one sentence with both


def drifts(names: Names) -> Iterator[Drift]:
    """Every name of a book that may be meant for another one; each once."""
    asked: set[str] = set()
    for kind in (names.parts, names.framed):
        for frame, others in kind.items():
            for other in others:
                if other in asked or not names.is_for_a_while(other):
                    continue
                of_part = kind is names.parts
                by_name = others if of_part else {**names.without(frame, other), **others}
                usual = _usual(names, frame, by_name, other, tied=of_part)
                if (
                    not usual
                    or not _is_known(names, by_name[usual], by_name[other][0], framed=bool(frame))
                    or _is_let_be(names, frame, usual, by_name[other][0], tied=of_part)
                ):
                    continue
                tied = of_part or _share_a_word(names, usual, other)
                if tied or _are_near(names, frame, usual, other):
                    asked.add(other)
                    yield _drift(names, by_name[usual], by_name[other], (usual, other), tied=tied)


def _is_known(names: Names, usual: Sequence[Span], other: Span, *, framed: bool) -> bool:
    """Whether the usual name stands, behind the title too, before the other, and is no king's; and the other is no
    plural of a third."""
    kings = any(_KING.match(names.seen.texts[one.scene][one.paragraph], one.end) for one in usual)
    name = other.quote.split()[-1]
    several = any(name in (f"{one}s", f"{one}es") for one in (name[:-1], name[:-2]) if one in names.stands)
    nearly = _is_nearly(usual[0].quote.split()[-1], name)
    return not kings and not several and (not framed or nearly or usual[0] < other)


def _drift(names: Names, usual: Sequence[Span], places: Sequence[Span], both: tuple[str, str], *, tied: bool) -> Drift:
    near = max((one for one in usual if one < places[0]), default=names.stands[both[0]][0])
    return Drift(near, tuple(places), (len(names.stands[both[0]]), len(names.stands[both[1]])), tied)


def _usual(names: Names, frame: str, by_name: ByName, other: str, *, tied: bool) -> str:
    """The one name of that title, given name or part that may be the same person's, stands more often and earlier, and
    never beside it; "" where there are two, or none."""
    if not tied and names.frames(other) != [frame]:
        return ""
    like = [name for name in by_name if name != other and (tied or _is_like(frame, name, other))]
    if len(like) > 1 and not tied:
        like = [name for name in like if _is_nearly(name, other)]
    if len(like) != 1 or len(names.stands[like[0]]) <= len(names.stands[other]):
        return ""
    known, here = names.scenes(like[0]), names.scenes(other)[0]
    apart = not names.are_beside(like[0], other) if frame else here not in known
    return like[0] if known[0] < here and apart else ""


def _is_like(frame: str, name: str, other: str) -> bool:
    """Whether one may be written for the other: they begin alike, and are not of two genders or forms of one name."""
    if not _looks_alike(name, other):
        return False
    both = [(small in FEMALE, small in MALE) for small in (name.lower(), other.lower())]
    if not frame and all(map(any, both)) and both[0] != both[1]:
        return False
    return not same_given(name.lower(), [other.lower()])


def _is_nearly(name: str, other: str) -> bool:
    return name[:NEARLY] == other[:NEARLY]


def _looks_alike(name: str, other: str) -> bool:
    return name[:2] == other[:2] or Jaro.similarity(name, other) >= SHAPE


def _are_near(names: Names, frame: str, usual: str, other: str) -> bool:
    """Whether they look alike behind a title or given name; else the usual one has to stand shortly before."""
    alike, times = _looks_alike(usual, other), len(names.stands[usual])
    if times > (FAMILIAR if alike else MINOR) or not (alike or frame in TITLES):
        return False
    here = names.scenes(other)[0]
    return bool(frame and alike) or any(here - NEXT <= scene <= here for scene in names.scenes(usual))


def _share_a_word(names: Names, usual: str, other: str) -> bool:
    """Whether a rare word stands in one sentence with somebody who hardly stands, and with the other too."""
    if len(names.stands[usual]) > SELDOM:
        return False
    beside = [
        {word for one in names.stands[name] for word in WORD.findall(names.seen.sentence(one).quote)}
        for name in (usual, other)
    ]
    return bool(beside[0] & beside[1] & names.rare)


def _is_let_be(names: Names, frame: str, usual: str, first: Span, *, tied: bool) -> bool:
    """Whether the other is told of as somebody else, or the usual one may be the married name, or they are asked about
    as a spelling; of one part it is also one person by two names, 'Terry Lomas, the barman'."""
    other = first.quote.split()[-1]
    if is_kin_or_hers(names, first, other):
        return True
    if tied:
        return any(f"{one} {two}" in names.pairs for one, two in ((usual, other), (other, usual)))
    spelled = OSA.distance(usual, other) <= 1 and len(names.stands[usual]) > ASKED
    said = is_brought_in(names, first, nearly=_is_nearly(usual, other))
    return spelled or (frame not in ("", *TITLES) and is_of_a_wife(names, usual)) or said


def is_of_a_wife(names: Names, surname: str) -> bool:
    """Whether somebody may have it by marriage."""
    return any(surname in names.framed.get(title, ()) for title in ("mrs", "miss"))


def is_kin_or_hers(names: Names, first: Span, other: str) -> bool:
    """Whether it is said to be somebody's kin, or stands on the writer's own list of people."""
    text = names.seen.texts[first.scene][first.paragraph]
    close = f"{text[: first.start][-ROUND:]} {text[first.end :][:ROUND]}"
    hers = {word.lower() for one in names.seen.given.people for form in one.forms for word in form.split()}
    return other.lower() in hers or bool(_KIN.search(close))


def is_brought_in(names: Names, first: Span, *, nearly: bool = False) -> bool:
    """Whether the words round it tell who that is, or that it is another; of one that is nearly the usual name, what
    is told of somebody ('who', 'and') says nothing."""
    text = names.seen.texts[first.scene][first.paragraph]
    behind = _BEHIND.match(text[first.end :])
    told = behind and not (nearly and _TELLS.match(text[first.end :]))
    return bool(_BEFORE.search(text[: first.start]) or told)
