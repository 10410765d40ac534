"""A paragraph of the manuscript as HTML: emphasis and marked passages as elements, everything else escaped."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from markupsafe import Markup, escape

from afterdraft.manuscript.blocks import Block, Emphasis

TAGS: dict[Emphasis, Markup] = {
    "italic": Markup("<em>{}</em>"),
    "bold": Markup("<strong>{}</strong>"),
    "underline": Markup("<u>{}</u>"),
    "strike": Markup("<s>{}</s>"),
    "small caps": Markup('<span class="sc">{}</span>'),
    "superscript": Markup("<sup>{}</sup>"),
    "subscript": Markup("<sub>{}</sub>"),
}
_NOTED = Markup('<span class="noted" data-ink="{}">{}</span>')
_GUARDED = Markup('<span class="guarded">{}</span>')
_LINED = Markup('<span class="lined">{}</span>')
# Without any text of its own, so that places counted in the paragraph's text stay true.
_TICK = Markup('<a class="passage-tick" href="#{}" data-letter="{}" data-ink="{}" aria-label="{}"></a>')
_PERSON = Markup('<span class="read-person">{}</span>')
_TIME = Markup('<span class="read-time">{}</span>')
_SAID = Markup('<span class="read-said">{}</span>')
# Who speaks, behind the words, without any text of its own as the ticks.
_WHO = Markup('<span class="read-who" data-who="{}" aria-label="{}" role="note"></span>')
_ASKED = Markup('<span class="asked">{}</span>')
_GONE, _COME = Markup("<del>{}</del>"), Markup("<ins>{}</ins>")
_PASSAGES = {
    "gone": _GONE,
    "come": _COME,
    "guarded": _GUARDED,
    "lined": _LINED,
    "person": _PERSON,
    "time": _TIME,
    "said": _SAID,
    "asked": _ASKED,
}


@dataclass(frozen=True, slots=True)
class Stretch:
    """A passage of a paragraph that a note is on, that is guarded, that a line's mark is fastened to, that a
    question rests on, or that shows what was read there."""

    start: int  # half-open, code points
    end: int
    kind: str  # "noted", "guarded", "lined", "asked"; as read: "person", "time", "said"
    ink: str = ""  # a note's colour; "" for plain pencil
    letter: str = ""
    leads_to: str = ""  # fragment of the address of what is fastened here
    says: str = ""  # read out
    ticked: bool = True  # its sign stands at its end; of several stretches only the last is ticked
    who: str = ""  # of speech: whose name stands behind it


def prose(block: Block, marked: Sequence[Stretch] = ()) -> Markup:
    """The text with its emphasis and marked passages. What overlaps is cut, so that elements nest."""
    if not block.runs and not marked:
        return escape(block.text)
    ends = {edge for run in block.runs for edge in (run.start, run.end)} | {e for m in marked for e in (m.start, m.end)}
    edges = sorted({0, len(block.text), *(edge for edge in ends if edge <= len(block.text))})
    return Markup("").join(_stretch(block, marked, start, end) for start, end in pairwise(edges))


def _stretch(block: Block, marked: Sequence[Stretch], start: int, end: int) -> Markup:
    html = escape(block.text[start:end])
    for kind, element in TAGS.items():
        if any(run.kind == kind and run.start <= start and end <= run.end for run in block.runs):
            html = element.format(html)
    for one in marked:
        if one.start <= start and end <= one.end:
            html = _PASSAGES[one.kind].format(html) if one.kind in _PASSAGES else _NOTED.format(one.ink, html)
    ends_here = [one for one in marked if one.end == end]
    ticks = (_TICK.format(m.leads_to, m.letter, m.ink, m.says) for m in ends_here if m.ticked and m.leads_to)
    names = (_WHO.format(m.who, m.says) for m in ends_here if m.who)
    return Markup("").join([html, *names, *ticks])
