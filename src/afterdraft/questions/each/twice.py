"""A passage that stands in the book twice, word for word."""

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from afterdraft.questions.check import Check
from afterdraft.questions.question import Finding, Span
from afterdraft.questions.repeats import LEAST
from afterdraft.questions.seen import Seen
from afterdraft.questions.sentences import sentence, sentences
from afterdraft.reading.quotations import quotations
from afterdraft.reading.time_words import DAYS, MONTHS

RUN = 6  # words looked up at once
FIGURES = 3  # from which a passage is a list of them
PIECES = 20  # words that are the same, from which a passage changed in every line stands twice; on the tuning half
COPIED = 25  # words from which whole beginnings of paragraphs that are spoken may be copied, likewise
QUOTED = 0.55  # strength of that
CHANGED = 8  # words between two runs, at most, that are one passage; chosen by hand
TIME = 20  # words, from which it is more than a time that is taken up again; likewise
OFTEN = 3  # places from which it is a refrain
_MARKS = tuple('“‘”’"')
_FIGURE = re.compile(r"\d+")
_CLOSING = re.compile(r"[.!?…,;]*[”’\"]*")
_LED_IN = re.compile(r":\s*[—–-]*\s*[“‘\"*_]*$")
_BEFORE = re.compile(
    r"\b(?:remember\w*|recall\w*|repeat\w*|quot\w+|same\swords|(?:read|ran|stood|wrote|written)\b[^.!?]*\bagain)\b[^.!?]*$",
    re.IGNORECASE,
)
_OTHER = re.compile(r"\b(?:another|a\ssecond|the\ssame)\b", re.IGNORECASE)  # 'another red brick house, with …'
_REFRAIN = re.compile(r"^\W*(?:chorus|refrain)\b", re.IGNORECASE)
_TIME = re.compile(
    rf"\b(?:{'|'.join((*DAYS, *MONTHS))}|o[’']clock|morning|noon|afternoon|evening|night|midnight|half\spast"
    r"|[ap]\.?m|days?|weeks?|months?|years?)\b",
    re.IGNORECASE,
)
_WORD = re.compile(r"[^\W_]+(?:[’'][^\W_]+)*")


@dataclass(frozen=True, slots=True)
class _Word:
    scene: int
    paragraph: int
    start: int
    end: int
    small: str


@dataclass(frozen=True, slots=True)
class _Run:
    """Words of which so many stand in two places; where `same` are fewer than either has, some were changed."""

    first: tuple[int, int]
    second: tuple[int, int]
    same: int
    longest: int  # words without a change


def find(seen: Seen) -> Iterator[Finding]:
    words = list(_words(seen))
    for one in _joined(words, _runs(words)):
        first, second = (tuple(_spans(seen, words[slice(*place)])) for place in (one.first, one.second))
        if (one.longest < LEAST and one.same < PIECES) or _takes_up_a_time(seen, one, (*first, *second)):
            continue
        if _are_tables(first, second):
            continue
        quoted = any(_is_quoted(seen, span) for span in (*first, *second))
        if _is_meant(seen, first[0], second[0], quoted=quoted):
            continue
        if not quoted:
            yield _finding(seen, one, first, second)
        elif one.same >= COPIED and all(_begins_paragraph(seen, run[0]) for run in (first, second)):
            yield _finding(seen, one, first, second, quoted=True)


def _are_tables(first: Sequence[Span], second: Sequence[Span]) -> bool:
    """Whether they are lists of figures that differ."""
    one, other = (_FIGURE.findall(" ".join(span.quote for span in some)) for some in (first, second))
    return min(len(one), len(other)) >= FIGURES and one != other


def _runs(words: list[_Word]) -> Iterator[_Run]:
    """Of a few words too, which may be part of a passage that was changed a little."""
    small = [one.small for one in words]
    places: defaultdict[int, list[int]] = defaultdict(list)  # by hashes, which take less memory than words
    runs = [hash(tuple(small[at : at + RUN])) for at in range(len(words) - RUN + 1)]
    for at, run in enumerate(runs):
        places[run].append(at)
    done = 0  # up to where the first of two passages was told of
    for at, run in enumerate(runs):
        others = [other for other in places[run] if other >= at + RUN]
        if at >= done and others and len(places[run]) < OFTEN:
            long = _same(words, at, others[0])
            if long >= RUN:
                done = at + long
                yield _Run((at, at + long), (others[0], others[0] + long), long, long)


def _joined(words: list[_Word], runs: Iterator[_Run]) -> Iterator[_Run]:
    """Runs with a few other words between them in both places are one passage."""
    last: _Run | None = None
    for one in runs:
        if last and all(
            0 <= next_[0] - before[1] <= CHANGED and words[next_[0]].scene == words[before[0]].scene
            for before, next_ in ((last.first, one.first), (last.second, one.second))
        ):
            first, second = (last.first[0], one.first[1]), (last.second[0], one.second[1])
            last = _Run(first, second, last.same + one.same, max(last.longest, one.longest))
            continue
        if last:
            yield last
        last = one
    if last:
        yield last


def _words(seen: Seen) -> Iterator[_Word]:
    for number, scene in enumerate(seen.texts):
        for place, text in enumerate(scene):
            for match in _WORD.finditer(text):
                yield _Word(number, place, *match.span(), small=match.group().lower().replace("'", "’"))


def _same(words: list[_Word], at: int, other: int) -> int:
    """How many words are the same from there on, in one scene each."""
    long = 0
    while (
        other + long < len(words)
        and at + long < other
        and words[at + long].small == words[other + long].small
        and words[at + long].scene == words[at].scene
        and words[other + long].scene == words[other].scene
    ):
        long += 1
    return long


def _finding(
    seen: Seen, one: _Run, first: tuple[Span, ...], second: tuple[Span, ...], *, quoted: bool = False
) -> Finding:
    return Finding(
        evidence=(*first, *second),
        strength=QUOTED if quoted else min(0.98, 0.6 + one.same / 50),
        subject="twice",
        words={"begins": _begins(seen, first[0])},
        numbers={
            "words": one.same,
            "changed": max(ends - begins for begins, ends in (one.first, one.second)) - one.same,
        },
    )


def _takes_up_a_time(seen: Seen, one: _Run, spans: Sequence[Span]) -> bool:
    """Whether it is no more than when something was, said again: a few words that make no sentence, on either page."""
    whole = any(
        span.start <= begins and ends <= span.end
        for span in spans
        for begins, ends in sentences(seen.texts[span.scene][span.paragraph])
    )
    return one.same < TIME and not whole and all(_TIME.search(span.quote) for span in spans)


def _spans(seen: Seen, run: list[_Word]) -> Iterator[Span]:
    by: defaultdict[int, list[_Word]] = defaultdict(list)
    for one in run:
        by[one.paragraph].append(one)
    for paragraph, some in by.items():
        text = seen.texts[some[0].scene][paragraph]
        closing = _CLOSING.match(text, some[-1].end)
        yield seen.span(some[0].scene, paragraph, some[0].start, closing.end() if closing else some[-1].end)


def _is_quoted(seen: Seen, span: Span) -> bool:
    """Whether it is spoken, quoted, or verse: then it may be said again."""
    text = seen.texts[span.scene][span.paragraph]
    marked = (
        text[: span.start].rstrip("*_( ")[-1:] in _MARKS or text[span.end - 1 : span.end + 1].strip()[-1:] in _MARKS
    )
    return (
        "\n" in text
        or bool(marked)
        or any(
            quote.paragraph == span.paragraph and quote.start <= span.start < quote.end
            for quote in quotations(seen.texts[span.scene])
        )
    )


def _is_meant(seen: Seen, first: Span, second: Span, *, quoted: bool) -> bool:
    """Whether the second is led in as a quotation, and is one: spoken, led in both times, or by words that say so; or
    both stand in italics; or one opens a scene and the other closes it."""
    if first.scene == second.scene and (first.paragraph, second.paragraph) == (0, len(seen.texts[first.scene]) - 1):
        return True
    if all(seen.is_in_italics(one.scene, one.paragraph, one.start, one.end) for one in (first, second)):
        return True
    if _OTHER.search(_opens(seen, second)) or _REFRAIN.search(_over(seen, second)):
        return True
    led_in = _LED_IN.search(before := _before(seen, second))
    return bool(led_in) and (quoted or bool(_BEFORE.search(before) or _LED_IN.search(_before(seen, first))))


def _opens(seen: Seen, span: Span) -> str:
    """What stands before it in its sentence."""
    text = seen.texts[span.scene][span.paragraph]
    return text[sentence(text, span.start, span.end)[0] : span.start]


def _over(seen: Seen, span: Span) -> str:
    """The paragraph above it."""
    return seen.texts[span.scene][span.paragraph - 1] if span.paragraph else ""


def _before(seen: Seen, span: Span) -> str:
    """What stands before it in its paragraph, or in the paragraph before where it begins one."""
    scene = seen.texts[span.scene]
    begins = span.paragraph and _begins_paragraph(seen, span)
    return scene[span.paragraph - 1] if begins else scene[span.paragraph][: span.start]


def _begins_paragraph(seen: Seen, span: Span) -> bool:
    return not any(map(str.isalnum, seen.texts[span.scene][span.paragraph][: span.start]))


def _begins(seen: Seen, one: Span) -> str:
    text = seen.texts[one.scene][one.paragraph][one.start :]
    return " ".join(text.split()[:6]).rstrip(".,;:—–-")


CHECK = Check(
    id="twice",
    name="A passage that stands twice",
    family="accidents",
    looks_at=f"The same {LEAST} words or more, word for word, in two places; or {PIECES}, a little changed.",
    method=f"Every run of {RUN} words is looked up in the whole book and followed for as long as the words are the "
    f"same, with up to {CHANGED} other words in between; capitals and points do not count. What stands three times or "
    "more is taken for a refrain, and so are the words with which a scene both opens and closes; words that only say "
    "when something was, and make no sentence, for a fact that is taken up again; what stands below ‘chorus’, or "
    "behind ‘another’ or ‘the same’, is meant. Common practice.",
    blind="A letter, a verse or a saying that is quoted again on purpose, and not led in by a colon, is asked about. "
    "A passage that was changed in every few words is not seen.",
    reads=("words",),
    find=find,
    recipe=9,
)
