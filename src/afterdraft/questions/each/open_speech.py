"""Speech that is opened and never closed, as an edit leaves it."""

import re
from collections import Counter
from collections.abc import Iterator, Sequence

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence

SHOWN = 4  # places that are shown
MANNER = 0.02  # share of paragraphs with speech that may be so before it is the book's manner; chosen by hand
AHEAD = 12  # paragraphs in which what is opened may be closed
_ENDS = re.compile(r"[.!?,;:…—-]['’]?\"['’]?$")  # with a mark that closes
_PROSE = re.compile(r"[\w“\"‘'(\[…—][^\n]*[.!?…”\"’')\]—]")


def find(seen: Seen) -> Iterator[Finding]:
    marks = Counter(mark for scene in seen.texts for text in scene for mark in text if mark in '“"')
    opens, closes = ("“", "”") if marks["“"] >= marks['"'] else ('"', '"')
    talk = sum(opens in text for scene in seen.texts for text in scene)
    places = [one for number in seen.scenes for one in _places(seen, number, opens, closes)]
    if places and len(places) <= max(1, MANNER * talk):
        yield Finding(
            evidence=tuple(places[:SHOWN]),
            strength=0.65,
            subject="open speech",
            numbers={"times": len(places)},
        )


def _places(seen: Seen, number: int, opens: str, closes: str) -> Iterator[Span]:
    """The last words that are opened in a paragraph, with nothing behind that closes them or goes on with them."""
    texts = seen.texts[number]
    closed = set(_closing(texts, opens)) if opens == closes else set()
    for place, text in enumerate(texts):
        if place in closed or not _is_open(text, opens, closes):
            continue
        if not _is_prose(texts, place) or _goes_on(texts, place, opens):
            continue
        if opens == closes or not any(
            _is_closed(later, opens, closes) for later in texts[place + 1 : place + 1 + AHEAD]
        ):
            at = text.rindex(opens)
            yield seen.span(number, place, *sentence(text, at, at + 1))


def _closing(texts: Sequence[str], mark: str) -> Iterator[int]:
    """Of marks that are the same on both sides: paragraphs of which one opens what the other closes, as verses and
    letters that are read out do, and those with marks that were mixed up (‘""tis so’)."""
    begun: int | None = None
    for place, text in enumerate(texts):
        if mark * 2 in text:
            yield place
        elif _is_open(text, mark, mark):
            if begun is not None and place - begun <= AHEAD and _ENDS.search(text):
                yield from (begun, place)
                begun = None
            else:
                begun = place


def _is_open(text: str, opens: str, closes: str) -> bool:
    if opens == closes:
        return text.count(opens) % 2 == 1
    return text.count(opens) > text.count(closes)


def _is_closed(text: str, opens: str, closes: str) -> bool:
    """Whether it closes what an earlier paragraph opened, as a letter or verses that are read out do."""
    return text.count(closes) > text.count(opens)


def _is_prose(texts: Sequence[str], place: int) -> bool:
    """Whether it is a paragraph of prose, and the next one too: what is sung or written is set apart from it."""
    return place + 1 < len(texts) and all(_PROSE.fullmatch(text.strip()) for text in texts[place : place + 2])


def _goes_on(texts: Sequence[str], place: int, opens: str) -> bool:
    """Whether the next paragraph opens anew, as speech of several paragraphs does (common practice)."""
    return texts[place + 1].lstrip("*_‘'—… ").startswith(opens)


CHECK = Check(
    id="open speech",
    name="Speech that is not closed",
    family="accidents",
    looks_at="A paragraph in which speech is opened and not closed, and the next does not go on with it. One question "
    "for the book.",
    method="Counts the marks that open and close in each paragraph; speech of several paragraphs opens each anew, and "
    "only the last closes (common practice). Marks that are the same on both sides are paired with the next paragraph "
    f"that ends with one, {AHEAD} on at most. Verse and what is set apart is let be, and a book that leaves speech "
    "open now and then as its manner.",
    blind="Speech between single marks, which are apostrophes too; speech behind dashes; a mark too many at the end.",
    reads=("words",),
    find=find,
    recipe=3,
)
