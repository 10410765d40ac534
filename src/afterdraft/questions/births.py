"""Years in which people of the cast are said to be born: in a sentence of theirs, or on a stone or a sheet below their
name."""

import re
from collections.abc import Iterator
from dataclasses import dataclass

from afterdraft.questions.ages_beside import names_them
from afterdraft.questions.people_in import people_in
from afterdraft.questions.question import Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence
from afterdraft.whole.turns import resolve

_YEAR = r"(?:1[6-9]\d\d|20\d\d)"
_BORN = re.compile(rf"\b(?:(?:was|had\sbeen)\s)?born\b[^.;!?]*?\b(?P<year>{_YEAR})\b")
_LINK = re.compile(r",?\s(?:who\s)?(?:(?:her|him)self\s)?|,\s")
_ON_STONE = re.compile(
    rf"^[\W_]*(?P<name>[A-Z][\w’'-]+(?:\s[A-Z][\w’'-]*\.?){{1,4}})?[\s,.(*_—–-]*(?:(?:Born|BORN|born|b\.)\s(?:[^.;!?\d]|\d\d?\b){{0,50}}?(?P<year>{_YEAR})\b"
    rf"|(?P<from>{_YEAR})\s?[–—-]\s?{_YEAR}\b)"
)  # at the head of a line


@dataclass(frozen=True, slots=True)
class Birth:
    person: str
    year: int
    scene: int
    span: Span


def births(seen: Seen) -> Iterator[Birth]:
    people = {one.id for one in seen.book.cast.people}
    for scene, paragraphs in enumerate(seen.texts):
        for paragraph, text in enumerate(paragraphs):
            if told := _on_stone(seen, scene, paragraph):
                yield told
                continue
            for match in _BORN.finditer(text):
                who = [it for it in people_in(seen, text) if _LINK.fullmatch(text[it.end : match.start()])]
                if who and who[-1].key in people:
                    span = seen.span(scene, paragraph, *sentence(text, *match.span()))
                    yield Birth(who[-1].key, int(match["year"]), scene, span)


def _on_stone(seen: Seen, scene: int, paragraph: int) -> Birth | None:
    """'Ilse Brandt, 1860–1912'; 'Born at the ferry in 1860', below a line that is a name."""
    text = seen.texts[scene][paragraph]
    match = _ON_STONE.match(text)
    if match is None:
        return None
    above = (
        seen.texts[scene][paragraph - 1 : paragraph] if paragraph else (seen.heads[scene][-1:] if seen.heads else ())
    )
    person = _full_name(seen, match["name"] or "".join(above))
    span = seen.span(scene, paragraph, *sentence(text, match.start(), match.end()))
    return Birth(person, int(match["year"] or match["from"]), scene, span) if person else None


def _full_name(seen: Seen, line: str) -> str:
    """Whose name of several words a line is, and nothing else."""
    words = line.strip(" *_>\n").rstrip(".,").split()
    if len(words) < 2 or not all(word[:1].isupper() for word in words):
        return ""
    name = " ".join(word.capitalize() for word in words)
    for form in (name, f"{name.split()[0]} {name.split()[-1]}"):
        person = resolve(form.lower(), seen.book.cast.by_form)
        if person and names_them(seen.book.cast, person, form):
            return person
    return ""
