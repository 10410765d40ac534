"""How long somebody is dead, how old they died, and how old they would be: what a text says of it in plain words."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from afterdraft.questions.dead_words import (
    AGO,
    CLAUSE,
    DEAD,
    DIED_AT,
    DIES,
    ELSEWHEN,
    EVENT,
    GONE,
    HOURS,
    LOST,
    SEASON,
    SIGN,
    SINCE,
    WAS,
    WAS_WHEN,
    WIDOW,
    WOULD,
    Years,
    season_of,
    years_of,
)
from afterdraft.questions.deaths import is_gone
from afterdraft.questions.minds import teller
from afterdraft.questions.people_in import Somebody, people_in, small_words
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentences
from afterdraft.reading.trait_words import number

What = Literal["since", "gone", "died at", "would be"]

SURE = 0.75  # of who speaks
LONG = 1.0  # years from which who is gone is not out for a while
NEAR = 5  # words between somebody and 'dead'; chosen by hand


@dataclass(frozen=True, slots=True)
class Said:
    """What is said of somebody dead: years since, or an age."""

    what: What
    who: str  # id in the cast, or a name in small letters; "" where only he or she
    name: str  # as it stands there
    gender: str  # "m", "f" or ""
    scene: int
    paragraph: int
    start: int
    end: int
    years: Years
    words: str


def said_of_the_dead(seen: Seen) -> Iterator[Said]:
    """In the order of the text, talk and letters with it."""
    small = small_words(seen)
    for scene, paragraphs in enumerate(seen.texts):
        for paragraph, text in enumerate(paragraphs):
            if SIGN.search(text):
                yield from _Reader(seen, scene, paragraph, text, small).all()


@dataclass(frozen=True, slots=True)
class _Reader:
    seen: Seen
    scene: int
    paragraph: int
    text: str
    small: frozenset[str]  # words that the book writes small

    def all(self) -> Iterator[Said]:
        people = list(people_in(self.seen, self.text, self.small, self._me))
        for begins, ends in self._clauses():
            clause = self.text[begins:ends]
            yield from self._would(people, begins, clause)
            if not ELSEWHEN.search(clause):
                yield from self._since(people, begins, ends)
                yield from self._event(begins, clause)
        yield from self._in_one_paragraph(people)

    def _me(self, at: int) -> str:
        """Who says ‘my’ there: whoever speaks, if that is sure, or the I that tells; or whom ‘her’ means."""
        if self.text[at : at + 3].lower() in ("his", "her"):
            mentions = zip(self.seen.facts[self.scene].mentions, self.seen.owners(self.scene), strict=True)
            here = (owner for one, owner in mentions if (one.paragraph, one.start) == (self.paragraph, at))
            person, sure = next(here, None) or ("", 0.0)
            return person if sure >= SURE else ""
        for number_, quote in enumerate(self.seen.facts[self.scene].quotes):
            if quote.paragraph == self.paragraph and quote.start <= at < quote.end:
                said = self.seen.book.spoken[self.scene][number_]
                return (said.speaker or "") if said.sure >= SURE else ""
        return teller(self.seen, self.scene) or ""

    def _clauses(self) -> Iterator[tuple[int, int]]:
        for begins, ends in sentences(self.text):
            at = begins
            for match in CLAUSE.finditer(self.text, begins, ends):
                yield at, match.start()
                at = match.end()
            yield at, ends

    def _said(self, what: What, who: Somebody | None, at: tuple[int, int], years: Years, gender: str = "") -> Said:
        key, name = (who.key, who.name) if who else ("", "")
        words = " ".join(self.text[slice(*at)].split())
        return Said(what, key, name, who.gender if who else gender, self.scene, self.paragraph, *at, years, words)

    def _since(self, people: Sequence[Somebody], begins: int, ends: int) -> Iterator[Said]:
        clause = self.text[begins:ends]
        here = [one for one in people if begins <= one.start < ends]
        yield from self._counted(here, begins, clause)
        for match in DEAD.finditer(clause):
            x = "" if match["count"] else "x"
            who = next((one for one in reversed(here) if one.end <= begins + match.start()), here[0] if here else None)
            years = years_of(match[f"{x}count"], match[f"{x}unit"], match[f"{x}vague"] or match["odd"])
            if who and who.key and years and self._is_subject(who, begins + match.start()):
                at = begins + match.start(f"{x}count"), begins + match.end(f"{x}unit")
                yield self._said("since", who, at, years)
        for match in WAS_WHEN.finditer(clause):
            who = next((one for one in reversed(here) if one.end <= begins + match.start()), None)
            if who and who.key and (age := number(match["age"])):
                yield self._said("died at", who, (begins + match.start(), begins + match.end()), (age, age))
        dead = next((one for one in here if one.key and LOST.search(self.text[begins : one.start])), None)
        dead = dead or next((one for one in here if one.key and self._dies(one, begins, ends)), None)
        if not dead:
            return
        for match in AGO.finditer(clause):
            if years := years_of(match["count"], match["unit"], match["vague"] or match["odd"]):
                yield self._said("since", dead, (begins + match.start(), begins + match.end()), years)
        for match in SEASON.finditer(clause):
            yield self._said("since", dead, (begins + match.start(), begins + match.end()), season_of(match))
        for match in DIED_AT.finditer(clause):
            age = number(match["age"])
            if age and (age > HOURS or "age" in match.group()):
                yield self._said("died at", dead, (begins + match.start(), begins + match.end()), (age, age))

    def _counted(self, here: Sequence[Somebody], begins: int, clause: str) -> Iterator[Said]:
        """'Twelve years since Ilse died', and 'Ilse had been gone twelve years'."""
        for pattern in (*SINCE, *GONE):
            for match in pattern.finditer(clause):
                what: What = "gone" if pattern in GONE else "since"
                who = next((one for one in here if one.start <= begins + match.start("name") < one.end), None)
                years = years_of(match["count"], match["unit"], match["vague"])
                if who and who.key and years and (what == "since" or years[0] > LONG):
                    yield self._said(what, who, (begins + match.start("count"), begins + match.end("unit")), years)
        for match in (found for pattern in WIDOW for found in pattern.finditer(clause)):
            left = next((one for one in reversed(here) if one.key and one.end <= begins + match.start()), None)
            years = years_of(match["count"], match["unit"], match["vague"])
            key = left.key if left else self._me(begins + match.start())
            if years and (name := self.seen.name(key)):
                his = match["wed"] == "widower" or (left and left.gender == "m")
                kin, gender = ("wife", "f") if his else ("husband", "m")
                who = Somebody(f"{kin} of {key}", f"{name}’s {kin}", gender, 0, 0)
                yield self._said("since", who, (begins + match.start("count"), begins + match.end("unit")), years)

    def _event(self, begins: int, clause: str) -> Iterator[Said]:
        for match in (found for pattern in EVENT for found in pattern.finditer(clause)):
            if years := years_of(match["count"], match["unit"], match["vague"]):
                who = Somebody(f"the {match['event']}", f"the {match['event']}", "", 0, 0)
                yield self._said("since", who, (begins + match.start("count"), begins + match.end("unit")), years)

    def _dies(self, who: Somebody, begins: int, ends: int) -> bool:
        behind = self.text[who.end : ends]
        return is_gone(self.text[begins : who.start], behind.removeprefix(", who"))

    def _is_subject(self, who: Somebody, at: int) -> bool:
        """Whether no more than a verb stands between somebody and that they are dead."""
        between = self.text[who.end : at] if who.end <= at else ""
        return len(between.split()) <= NEAR

    def _would(self, people: Sequence[Somebody], begins: int, clause: str) -> Iterator[Said]:
        for match in WOULD.finditer(clause):
            age = number(match["age"])
            who = next((one for one in people if one.start <= begins + match.start("who") < one.end), None)
            if age and age > HOURS and who and (match["when"] or "have" in match.group()):
                yield self._said("would be", who, (begins + match.start("who"), begins + match.end()), (age, age))

    def _in_one_paragraph(self, people: Sequence[Somebody]) -> Iterator[Said]:
        """'Three years earlier … Dean Kell was forty-one years old … he died': all of one full name."""
        full = {one.key: one for one in reversed(people) if " " in one.name}
        match = WAS.search(self.text)
        ago = AGO.search(self.text)
        dies = DIES.search(self.text)
        who = next((one for one in full.values() if match and match["name"] == one.name), None)
        if match and who and dies and ago and (age := number(match["age"])):
            gender = "m" if dies.group().lower().startswith("he") else "f"
            who = Somebody(who.key, who.name, who.gender or gender, who.start, who.end)
            yield self._said("died at", who, match.span(), (age, age))
            if years := years_of(ago["count"], ago["unit"], ago["vague"] or ago["odd"]):
                yield self._said("since", who, ago.span(), years)
