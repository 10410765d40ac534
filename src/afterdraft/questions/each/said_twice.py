"""What is told once, and told again far away in nearly the same words, as if it were new."""

import re
from collections.abc import Iterator, Sequence
from itertools import groupby

from afterdraft.questions.alike import APART, BETWEEN, KEYS, RARE, Alike, Place, alike
from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.repeats import LEAST
from afterdraft.questions.seen import Seen
from afterdraft.reading.quotations import quotations

WEIGHT = 18.0  # of the words that two places share, from which they are laid beside each other
TOGETHER = 34.0  # that weight and the number of words that are the same; both by novels of the tuning half
SAME = 8  # words that are the same at least
CHANGED = 3  # of them that stand outside the longest run: else it is a turn of phrase that comes again
PART, PART_OF_LONGER = 0.55, 0.38  # of the words of the shorter and of the longer that are the same, likewise
BESIDE = 60  # letters on either side that may point back to the first
FAR = 5_000  # words between two places of one scene
SPOKEN = 0.5  # of a place that is spoken, from which all of it is
QUOTED, LEAD = 7, 3  # words with which a place is named, and of its sentence that may stand before what is shared
MOST = 1  # asked about in a book, the weightiest: of 19 such questions on finished novels three were good
FIGURES = 3  # in a place, from which it is a table
_BACK = re.compile(
    r"\b(?:again|once\smore|this\stime|(?:the|that)\s(?:same|old|phrase|words?|saying)|as\s(?:usual|before|ever|always)"
    r"|already|remember\w*|recall\w*|recollect\w*|repeat\w*|quot(?:ed?|ing)|phrases?|remind\w*|by\sheart|previous\w*"
    r"|another|as\s(?:(?:his|her|my|your|the)\s)?\w+\s(?:had\s)?(?:said|told|put\sit|used\sto\ssay)"
    r"|(?<![”\"’']\s)(?:I|he|she|we|they|you)(?:\shad|[’']d|[’']ve|\shave)?\s(?:\w+ly\s)?(?:said|told|heard|read)"
    r"|(?:I|he|she|we|they|you)\sused\sto\ssay)\b",
    re.IGNORECASE,
)  # but not who says it: “…” she said


def find(seen: Seen) -> Iterator[Finding]:
    found = alike(seen.texts, WEIGHT)
    asked = [one for one in found if _is_told_twice(one) and not _is_refrain(one, found) and _is_news(seen, one)]
    for one in sorted(asked, key=_together, reverse=True)[:MOST]:
        yield _finding(seen, one)


def _together(one: Alike) -> float:
    return one.weight + one.same


def _is_told_twice(one: Alike) -> bool:
    """Whether it is more than a few words, and less than a passage that stands twice word for word."""
    apart = one.first.scene != one.again.scene or one.again.at - one.first.at >= FAR
    alike_ = one.same >= max(SAME, PART * one.shorter, PART_OF_LONGER * one.longer)
    return apart and alike_ and _together(one) >= TOGETHER and one.run < LEAST and one.same - one.run >= CHANGED


def _is_refrain(one: Alike, found: Sequence[Alike]) -> bool:
    """Whether a third place has it too."""
    places = (one.first, one.again)
    return any(
        any(its.meets(mine) for mine in places for its in (other.first, other.again))
        and not all(any(its.meets(mine) for mine in places) for its in (other.first, other.again))
        for other in found
    )


def _is_news(seen: Seen, one: Alike) -> bool:
    """Whether the second does not say that it comes again, and neither is a letter or the other's words in quotation
    marks."""
    set_in = any((span.scene, span.paragraph) in seen.set_in for span in _spans(seen, one.first, one.again))
    spoken = {_is_spoken(seen, place) for place in (one.first, one.again)}
    first, again = (_beside(seen, place) for place in (one.first, one.again))
    asked = spoken == {True} and again.rstrip("”’\"'").endswith("?")
    back = {match.group().lower() for match in _BACK.finditer(again)}
    meant = back - {match.group().lower() for match in _BACK.finditer(first)}
    figures = max(sum(map(str.isdigit, words.split())) for words in (first, again))
    return len(spoken) == 1 and not (set_in or asked or meant) and figures < FIGURES


def _beside(seen: Seen, place: Place) -> str:
    """The words that are shared, with some on either side in their sentences."""
    (paragraph, start, _), (last, _, end) = place.sentences[0], place.sentences[-1]
    text = seen.texts[place.scene]
    before = text[paragraph][start : place.begins[1]][-BESIDE:]
    behind = text[last][place.ends[1] : end].strip()[:BESIDE]
    spans = list(_spans(seen, place))
    inside = " ".join(span.quote for span in spans)
    cut = place.begins[1] - spans[0].start
    return f"{before}{inside[cut : len(inside) - (spans[-1].end - place.ends[1])]} {behind}"


def _is_spoken(seen: Seen, place: Place) -> bool:
    """Whether most of the words are within quotation marks."""
    quotes = quotations(seen.texts[place.scene])
    long = spoken = 0
    for paragraph in range(place.begins[0], place.ends[0] + 1):
        start = place.begins[1] if paragraph == place.begins[0] else 0
        end = place.ends[1] if paragraph == place.ends[0] else len(seen.texts[place.scene][paragraph])
        long += end - start
        spoken += sum(max(0, min(end, one.end) - max(start, one.start)) for one in quotes if one.paragraph == paragraph)
    return spoken >= SPOKEN * long


def _spans(seen: Seen, *places: Place) -> Iterator[Span]:
    """Whole sentences, those of a paragraph as one."""
    for place in places:
        for paragraph, group in groupby(place.sentences, lambda one: one[0]):
            some = list(group)
            text = seen.texts[place.scene][paragraph][: some[-1][2]]
            yield seen.span(place.scene, paragraph, some[0][1], len(text.rstrip()))


def _finding(seen: Seen, one: Alike) -> Finding:
    return Finding(
        evidence=tuple(_spans(seen, one.first, one.again)),
        strength=min(0.6, 0.45 + (_together(one) - TOGETHER) / 60),
        subject="said twice",
        words={"first": _begins(seen, one.first), "again": _begins(seen, one.again)},
        numbers={"same": one.same, "words": one.shorter},
    )


def _begins(seen: Seen, place: Place) -> str:
    """The words with which what is shared begins; its sentence's first where they are near."""
    (paragraph, start, _), shared = place.sentences[0], place.begins[1]
    text = seen.texts[place.scene][paragraph]
    begins = start if len(text[start:shared].split()) <= LEAD else shared
    return " ".join(text[begins:].split()[:QUOTED]).strip(".,;:—–-?!*_(“‘”’\"' ")


CHECK = Check(
    id="said twice",
    name="The same thing told twice",
    family="accidents",
    looks_at=f"Two places, {APART:,} words and more apart, that tell the same in nearly the same words: {SAME} of them "
    f"or more, with others between. The one that has most in common is asked about.",
    method=f"Two sentences in a row that share {KEYS} words which the book has {RARE} times at most are laid beside "
    "each other, and the words they share are weighed: the rarer the more, half where their order is another, and less "
    f"{BETWEEN} for each word that only one has. As in the search for text that was used again; the measures are our "
    "own. What stands in three places is taken for a refrain, a second that points back (‘again’, ‘you said’, "
    "‘the same’) for one that means the first, and what one has in quotation marks and the other outside for a report "
    "of what was said.",
    blind="The same thing in quite other words. A picture or a remark that is taken up "
    "again on purpose, and does not say so, is asked about.",
    reads=("words",),
    find=find,
    recipe=3,
)
