"""Words that were to be written later: TK, XXX, a remark in brackets."""

import re
from collections.abc import Iterator

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence

_LATER = (
    r"TK|TKTK|XX+|TODO|TBD|FIXME|\?\?+|check|insert|add|fix|find|look up|name|date|place|scene|chapter|rewrite"
    r"|expand|describe|research|more|something|someone|later|here"
)
_SURE = re.compile(r"\b(?:TK)+\b|\bTODO\b|\bFIXME\b|\bTBD\b|(?<![A-Z])X{3,}(?![A-Z])|(?<!\w)\?{3,}")
_BRACKETS = re.compile(r"\[[^\[\]\n]{1,120}\]")
_REMARK = re.compile(rf"^\[\W*(?:{_LATER})\b|\?\s*\]$|\b(?:TK|XXX+|TODO|TBD)\b|\?\?", re.IGNORECASE)
_OF_A_DOCUMENT = re.compile(
    r"\b(?:crossed\sout|struck\sout|illegible|indecipherable|torn\saway|sic|blotted|laughter)\b", re.IGNORECASE
)  # what an editor within the story says of a page
_NOTE = re.compile(
    r"\[\W*(?:\d+|[ivx]+|[a-e])\W*\]"
    r"|\[[^\]]*\b(?:(?:early|earlier|first|later|original)\seditions?|(?:editor|translator|author)[’']s\snote"
    r"|note\sby\sthe\s(?:editor|translator|author))\b[^\]]*\]",
    re.IGNORECASE,
)  # the mark of a footnote, or what an edition says; any other sentence may be hers, of what is to be written
FEW = 3  # brackets in a whole book up to which they are no manner of its own; chosen by hand


def find(seen: Seen) -> Iterator[Finding]:
    brackets = sum(len(_BRACKETS.findall(text)) for scene in seen.texts for text in scene)
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            yield from _in_paragraph(seen, number, place, text, own=brackets > FEW)


def _in_paragraph(seen: Seen, number: int, place: int, text: str, *, own: bool) -> Iterator[Finding]:
    taken: list[tuple[int, int]] = []
    for match in _BRACKETS.finditer(text):
        if _NOTE.fullmatch(match.group()):
            continue
        remark = bool(_REMARK.search(match.group()))
        if remark or not (own or _OF_A_DOCUMENT.search(match.group())):
            taken.append(match.span())
            yield _finding(seen, number, place, match, 0.95 if remark else 0.5)
    for match in _SURE.finditer(text):
        if not any(start <= match.start() < end for start, end in taken):
            yield _finding(seen, number, place, match, 0.97)


def _finding(seen: Seen, number: int, place: int, match: re.Match[str], strength: float) -> Finding:
    start, end = sentence(match.string, *match.span())
    return Finding(
        evidence=(seen.span(number, place, start, end),),
        strength=strength,
        subject=match.group(),
        words={"words": match.group()},
    )


CHECK = Check(
    id="placeholder",
    name="Words to be written later",
    family="accidents",
    looks_at="TK, XXX, TODO, ??? and remarks in square brackets that still stand in the text.",
    method="Looks for the signs themselves. Brackets that say nothing of the kind are asked about only where the "
    "book has three at most. The signs are common practice among writers and printers.",
    blind="Does not know signs of your own. A roman thirty (XXX) or a bracket that is meant may be asked about.",
    reads=("words",),
    find=find,
    recipe=5,
)
