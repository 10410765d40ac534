"""A paragraph of the manuscript as HTML: emphasis as elements, everything else escaped."""

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


def prose(block: Block) -> Markup:
    """The text with its emphasis. Overlapping runs are cut at each other's ends, so that elements nest."""
    if not block.runs:
        return escape(block.text)
    edges = sorted({0, len(block.text), *(edge for run in block.runs for edge in (run.start, run.end))})
    return Markup("").join(_stretch(block, start, end) for start, end in pairwise(edges))


def _stretch(block: Block, start: int, end: int) -> Markup:
    html = escape(block.text[start:end])
    for kind, element in TAGS.items():
        if any(run.kind == kind and run.start <= start and end <= run.end for run in block.runs):
            html = element.format(html)
    return html
