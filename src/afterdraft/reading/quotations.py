"""Where people speak, in every typography: “ ”, ‘ ’, " ", ' ', « », „ “, and the opening dash.

Pure: from paragraphs of one scene to stretches of speech. Which mark opens speech is decided once for the scene, by
what stands first in its paragraphs, so that nested quotations and apostrophes stay what they are.
"""

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Literal

from afterdraft.reading.lexicon import words_of

Marks = Literal["curly double", "straight double", "curly single", "straight single", "guillemets", "low", "dash"]

OPENS: dict[str, tuple[Marks, ...]] = {
    "“": ("curly double",),
    '"': ("straight double",),
    "‘": ("curly single",),
    "'": ("straight single",),
    "«": ("guillemets",),
    "„": ("low",),
}
SIGNS: dict[Marks, tuple[str, str]] = {  # opens, closes
    "curly double": ("“", "”"),
    "straight double": ('"', '"'),
    "curly single": ("‘", "’"),
    "straight single": ("'", "'"),
    "guillemets": ("«", "»"),
    "low": ("„", "“”"),
}
DASHES = "—–―"
OPENING_DASH = re.compile(r"\s*(?:[—–―]|--|-(?=\s))\s*(?=[\w¿¡…'’])")
BEFORE_OPEN = " \t\n([{—–―-/“‘\"'«„"  # signs that may stand before a mark that opens
ELISIONS = words_of(
    """
    tis twas twere twill twould til till em cause bout cos cuz nuff gainst round neath
    """
)
MANY_DASHES = 2  # paragraphs that open with a dash before a scene is taken to speak so: one may be a broken-off line
RESUMED_WORDS = 3  # fewer, in small letters, are more often a word that is set in marks; chosen on the tuning half
SPOKEN_WORDS = 10  # so many words in marks are spoken or written by someone, wherever they stand; the same
SAYING = re.compile(
    r"\b(?:said|says?|saying|asked|asks?|replied|answered|cried|cries|called|exclaimed|thought|wrote|read|shouted|"
    r"whispered|murmured|muttered|added|began|repeated|returned|screamed|continued)\b[^.]{0,40}$",
    re.IGNORECASE,
)
OF_A_THING = re.compile(r"\b(?:a|an|the|his|her|its|their|my|our|your|this|that|of|as)$", re.IGNORECASE)  # then a name
# Narration inside a paragraph that opens with a dash: after , ! ? … a verb of speech and who, to the sentence's end.
INSERTED = re.compile(
    r"(?<=[,!?…—–])\s*(?P<told>[—–]?\s*(?:(?:said|asked|replied|answered|cried|called|exclaimed|shouted|whispered|"
    r"murmured|muttered|added|began|repeated|returned|continued|says|asks)\s+(?:\w+\s*){1,4}|(?:he|she|I|they|[A-Z]\w+)\s+"
    r"(?:said|asked|replied|answered|cried|called|exclaimed|shouted|whispered|murmured|muttered|added|says|asks)\b)"
    r"[^.!?—–]*(?:[.!?]|[—–]|$))"
)


@dataclass(frozen=True, slots=True)
class Quote:
    """A stretch of speech within one paragraph, its marks left out; positions in the paragraph, half-open."""

    paragraph: int  # of the scene, from 0
    start: int
    end: int
    goes_on: bool = False  # continues the quotation that the paragraph before left open


def quotations(paragraphs: Sequence[str]) -> tuple[Quote, ...]:
    """All speech of a scene, in order. Words that are only set in marks ('the so-called "view"') are left out."""
    marks = typography(paragraphs)
    found: list[Quote] = []
    open_before = False
    for number, text in enumerate(paragraphs):
        if marks == "dash" and (dash := OPENING_DASH.match(text)):
            found.extend(Quote(number, *span) for span in _after_dash(text, dash.end()))
            open_before = False
            continue
        spans, still_open = _within(text, "curly double" if marks == "dash" else marks)
        first = len(text) - len(text.lstrip())
        for start, end in spans:
            goes_on = open_before and start - 1 <= first
            resumes = bool(found) and found[-1].paragraph == number and _resumes(text, found[-1].end, start, end)
            if goes_on or resumes or _is_speech(text, start, end):
                found.append(Quote(number, start, end, goes_on))
        open_before = still_open
    return tuple(found)


def typography(paragraphs: Sequence[str]) -> Marks:
    """Which mark opens speech in these paragraphs: the one that most of them use first."""
    votes: Counter[Marks] = Counter()
    dashes = 0
    for text in paragraphs:
        dashes += OPENING_DASH.match(text) is not None
        first = next(_openings(text), None)
        if first:
            votes[first] += 1
    best: Marks = votes.most_common(1)[0][0] if votes else "curly double"
    return "dash" if dashes >= MANY_DASHES and dashes > votes[best] else best


def _openings(text: str) -> Iterator[Marks]:
    for place, sign in enumerate(text):
        if sign in OPENS and _can_open(text, place):
            yield OPENS[sign][0]


def _can_open(text: str, place: int) -> bool:
    """Whether the mark at `place` can open: nothing or a space before it, a word after it, and no elision."""
    before = text[place - 1] if place else " "
    after = text[place + 1] if place + 1 < len(text) else " "
    if before not in BEFORE_OPEN or (after.isspace() and text[:place].strip()):
        return False
    if text[place] in "'‘":
        word = re.match(r"\w+", text[place + 1 :])
        return not (word and (word.group().lower() in ELISIONS or word.group().isdigit())) or _closes_after(text, place)
    return True


def _closes_after(text: str, place: int) -> bool:
    """Whether an elision's look-alike opens speech after all: at the paragraph's beginning, closed with a stop."""
    return not text[:place].strip() and re.search(r"[.,!?…—]['’]", text[place + 1 :]) is not None


def _within(text: str, marks: Marks) -> tuple[list[tuple[int, int]], bool]:
    """Stretches between marks, and whether the last was left open at the paragraph's end."""
    opens, closes = SIGNS[marks]
    single = marks in ("curly single", "straight single")
    spans: list[tuple[int, int]] = []
    start: int | None = None
    for place, sign in enumerate(text):
        if start is None:
            if sign == opens and (_can_open(text, place) if opens == closes or single else True):
                start = place + 1
        elif sign in closes and _closes(text, place, single=single, same=opens == closes):
            spans.append((start, place))
            start = None
    if start is not None and start < len(text):
        spans.append((start, len(text)))
    return [span for span in spans if text[slice(*span)].strip()], start is not None


def _closes(text: str, place: int, *, single: bool, same: bool) -> bool:
    before = text[place - 1]
    after = text[place + 1] if place + 1 < len(text) else " "
    if not single:
        return not (same and before.isspace() and not after.isspace() and place + 1 < len(text))
    if after.isalnum():  # don’t
        return False
    if before in ".,!?;:…—–-*)" or before in '”"' or place + 1 == len(text):
        return True
    if before.isspace():
        return False
    return not _stop_before_next(text, place)  # the boys’ hats: speech goes on to a stop


def _stop_before_next(text: str, place: int) -> bool:
    """Whether a later mark closes more plainly than the one at `place`, before another opens."""
    for later in range(place + 1, len(text)):
        if text[later] in "‘'" and text[later - 1].isspace() and _can_open(text, later):
            return False
        if text[later] in "’'" and text[later - 1] in ".,!?…—–-":
            return True
    return False


def _resumes(text: str, before: int, start: int, end: int) -> bool:
    """Whether the speech that was broken off at `before` goes on: in small letters, after no full stop."""
    said = text[start:end].strip()
    return text[before - 1] not in ".!?" and said[0].islower() and len(said.split()) >= RESUMED_WORDS


def _is_speech(text: str, start: int, end: int) -> bool:
    """Whether words in marks are spoken: not when the sentence runs on through them without a stop."""
    said = text[start:end].strip()
    before = text[: start - 1].rstrip()
    if len(said.split()) >= SPOKEN_WORDS:
        return True
    if not before or before[-1] in '.,:;!?…—–-”"’)*' or (said[-1] in ".,!?;:…—–-" and said[0].isupper()):
        return not _is_title(text, before, said, end)
    return SAYING.search(before) is not None and OF_A_THING.search(before) is None


def _is_title(text: str, before: str, said: str, end: int) -> bool:
    """A single quoted word or name in the middle of a sentence."""
    after = text[end + 1 :].lstrip()
    return bool(before) and before[-1] in ",;—–-" and said[-1] not in ".,!?;:…—–-" and after[:1].islower()


def _after_dash(text: str, start: int) -> Iterator[tuple[int, int]]:
    """Speech of a paragraph that opens with a dash: all of it but what the narrator puts in."""
    place = start
    for told in INSERTED.finditer(text, start):
        if text[place : told.start("told")].strip():
            yield place, len(text[: told.start("told")].rstrip())
        place = told.end()
    while place < len(text) and text[place] in f" {DASHES}":
        place += 1
    if text[place:].strip():
        yield place, len(text)
