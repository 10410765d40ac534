"""Somebody's wife, husband, child or dog who has another name for a page: 'his wife Maud', and 'Gerald,' Miriam
said."""

import re
from collections.abc import Iterator, Mapping, Sequence, Set
from functools import cached_property

from rapidfuzz.distance import Jaro

from afterdraft.questions.drifting import Drift, is_kin_or_hers
from afterdraft.questions.genders_of_names import genders, may_be_of_one_gender
from afterdraft.questions.names_written import FEW, TITLES, Names
from afterdraft.questions.question import Span
from afterdraft.whole.nicknames import same_given

ROUND = 60  # characters on either side in which it is said whose wife or husband somebody is; chosen by hand
SHAPE, BEGINS = 0.7, 3  # as for another given name: by Jaro (1989); and letters from which one is short for the other
MINOR = 30  # times that the usual name stands at most; chosen on the novellas
EVERYWHERE = 0.2  # share of the book's paragraphs from which somebody's being near tells nothing, likewise
HALF = 0.5  # share of the usual name's scenes in which the other of the two is near it at least, likewise
_MARRIED = re.compile(
    r"\b(?:wife|husband|widow|widower|married|marriage|wed|fianc\w+|girlfriend|boyfriend|moved in with|partner)\b"
)
_OWN = re.compile(
    r"\b(?:sons?|daughters?|brothers?|sisters?|mother|father|uncle|aunt|nephew|niece|cousin|grand\w+"
    r"|dog|cat|mare|horse|pony)\b"
)
_BROUGHT_IN = re.compile(
    r"\b(?:(?:an?|the|this|that)(?:\s[a-z]+)?|[Tt]his\sis|another|named|called|certain|some|name\s(?:of|is|was)"
    r"|old|poor|late|[A-Z]\w*\.?)\s$"
)
_WITH_BEFORE, _WITH_BEHIND = re.compile(r"([A-Z]\w+) and $"), re.compile(r" and ([A-Z]\w+)")
_SURNAME = re.compile(r" ([A-Z]\w+)")
_CALLED_OUT = re.compile(r"[“‘\"']$"), re.compile(r"[,.!?][”’\"']")

_Places = Set[tuple[int, int]]  # scene and paragraph


class Kin:
    """Of a book."""

    def __init__(self, names: Names) -> None:
        self._names, self._texts = names, names.seen.texts

    def drifts(self) -> Iterator[Drift]:
        """Of one near whose name it is told that he or she is somebody's, and another that begins or looks alike,
        beside the same person later, and is not brought in. Who is no wife or husband may have brothers and sisters:
        then the other one has to do something, or to be named in one breath with that person."""
        own = {name: how for name in self._alone if (how := self._is_own(name))}
        for other in self._alone:
            here = self._names.stands[other]
            if len(here) > FEW or not self._names.is_for_a_while(other) or self._is_told_of(here, other):
                continue
            like = [name for name, how in own.items() if _is_like(name, other) and self._may_be(name, other, how)]
            if len(like) == 1:
                known = self._names.stands[like[0]]
                near = next(one for one in known if self._tells(one, own[like[0]]))
                yield Drift(near, tuple(here), (len(known), len(here)), tied=True)

    @cached_property
    def _alone(self) -> Sequence[str]:
        """Names that have no title."""
        titled = {name for title, names in self._names.framed.items() if title in TITLES for name in names}
        return [name for name in self._names.stands if name not in titled and self._names.is_name(name)]

    def _text(self, one: Span) -> str:
        return self._texts[one.scene][one.paragraph]

    def _tells(self, one: Span, how: re.Pattern[str]) -> bool:
        """Whether it says near it that somebody is somebody's."""
        return bool(how.search(self._text(one)[max(0, one.start - ROUND) : one.end + ROUND]))

    def _is_own(self, name: str) -> re.Pattern[str] | None:
        """By which words it is somebody of somebody's."""
        stands = self._names.stands[name]
        if len(stands) > MINOR or not (self._is_person(name) or any(map(self._is_called_out, stands))):
            return None
        if any(self._tells(one, _MARRIED) for one in stands):
            return _MARRIED
        return _OWN if len(stands) > 1 and any(self._tells(one, _OWN) for one in stands) else None

    def _is_called_out(self, one: Span) -> bool:
        text, (before, behind) = self._text(one), _CALLED_OUT
        return bool(before.search(text[: one.start]) and behind.match(text, one.end))

    def _is_person(self, name: str) -> bool:
        return bool(genders(name)) or self._acts(name)

    def _acts(self, name: str) -> bool:
        return name in self._names.framed.get("", ())

    def _is_told_of(self, here: Sequence[Span], other: str) -> bool:
        brought_in = any(_BROUGHT_IN.search(self._text(one)[: one.start]) for one in here)
        return brought_in or is_kin_or_hers(self._names, here[0], other)

    def _may_be(self, usual: str, other: str, how: re.Pattern[str]) -> bool:
        """Whether somebody is near both, and these two are never in one scene. 'Maud Hale' and 'Miriam Hale' are asked
        about as given names."""
        known, here = self._names.scenes(usual), self._names.scenes(other)
        if known[0] > here[0] or set(known) & set(here) or len(known) < len(here):
            return False
        of, surnames = self._near_both(usual, other), self._surnames(other)
        if not of or surnames & self._surnames(usual):
            return False
        person = self._acts(other) or (how is _MARRIED and (bool(surnames) or self._is_person(other)))
        return not of.isdisjoint(self._joined(other)) or (person and surnames <= of)

    def _near_both(self, usual: str, other: str) -> Set[str]:
        """Who is near the other name, and near the usual one in most of its scenes."""
        places, known = self._places(other), self._places(usual)
        near = [name for name, found in self._near.items() if found & places and name not in (usual, other)]
        half = HALF * len({scene for scene, _ in known})
        return {one for one in near if len({scene for scene, _ in self._near[one] & known}) >= half}

    def _joined(self, name: str) -> Iterator[str]:
        """'Paul and' before it, or 'and Paul' behind."""
        for one in self._names.stands[name]:
            text = self._text(one)
            found = _WITH_BEFORE.search(text[: one.start]), _WITH_BEHIND.match(text, one.end)
            yield from (match[1] for match in found if match)

    def _surnames(self, name: str) -> Set[str]:
        behind = (_SURNAME.match(self._text(one), one.end) for one in self._names.stands[name])
        return {match[1] for match in behind if match}

    def _places(self, name: str) -> _Places:
        return {(one.scene, one.paragraph) for one in self._names.stands[name]}

    @cached_property
    def _near(self) -> Mapping[str, _Places]:
        """Where people are named in a paragraph or beside it, but for those who are nearly everywhere."""
        people = {name for names in self._names.framed.values() for name in names}
        people |= {name for name in self._alone if genders(name)}
        near = {
            name: {(scene, place + step) for scene, place in self._places(name) for step in (-1, 0, 1)}
            for name in people
        }
        most = EVERYWHERE * sum(map(len, self._texts))
        return {name: places for name, places in near.items() if len(places) <= most}


def _is_like(usual: str, other: str) -> bool:
    """Whether one may be written for the other, and is no short form of it."""
    alike = usual[0] == other[0] or Jaro.similarity(usual, other) >= SHAPE
    short = usual[:BEGINS] == other[:BEGINS] or same_given(usual.lower(), [other.lower()])
    return alike and may_be_of_one_gender(usual, other) and not short
