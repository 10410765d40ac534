"""Where in a draft's text something is fastened. Never a story offset: those move when the split is mended."""

from dataclasses import dataclass

CONTEXT = 32  # characters kept on either side of the quote


@dataclass(frozen=True, slots=True)
class Anchor:
    draft: str  # id
    paragraph: int  # counted over the whole file, frozen at import
    start: int  # half-open range in that paragraph's text, code points
    end: int
    quote: str
    before: str  # up to CONTEXT characters
    after: str


@dataclass(frozen=True, slots=True)
class Passage:
    """A stretch of one paragraph; a selection over several paragraphs is several of these."""

    paragraph: int
    start: int  # half-open, code points
    end: int


def anchor(*, draft: str, paragraph: int, text: str, start: int, end: int) -> Anchor:
    """Fasten `start…end` of a paragraph's `text`."""
    return Anchor(
        draft=draft,
        paragraph=paragraph,
        start=start,
        end=end,
        quote=text[start:end],
        before=text[max(0, start - CONTEXT) : start],
        after=text[end : end + CONTEXT],
    )
