"""A manuscript's recovered division against what was written into it."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import reduce
from operator import and_

from afterdraft.manuscript.division import Chapter
from afterdraft.manuscript.draft import Draft
from bench.structure.match import Match, Stream, neutral, short, within
from bench.structure.writers.plan import Expected, Line, Plan, bare


@dataclass(frozen=True, slots=True)
class Count:
    """Of `expected` things, `right` were found; `found` were claimed."""

    right: int = 0
    found: int = 0
    expected: int = 0

    def __add__(self, other: "Count") -> "Count":
        return Count(self.right + other.right, self.found + other.found, self.expected + other.expected)

    @property
    def precision(self) -> float:
        return self.right / self.found if self.found else 1.0

    @property
    def recall(self) -> float:
        return self.right / self.expected if self.expected else 1.0

    @property
    def f1(self) -> float:
        """1 where nothing was to be found and nothing was."""
        return 2 * self.right / (self.found + self.expected) if self.found + self.expected else 1.0


@dataclass(frozen=True, slots=True)
class Score:
    chapters: Count = field(default_factory=Count)  # at their place
    titles: Count = field(default_factory=Count)  # at their place, with number, title and part
    breaks: Count = field(default_factory=Count)  # marked ones, within chapters
    heads: Count = field(default_factory=Count)  # lines under headings
    front: Count = field(default_factory=Count)  # letters of front matter kept out of the story
    story: Count = field(default_factory=Count)  # letters of the story counted as story
    paragraphs: Count = field(default_factory=Count)  # beginnings of paragraphs, of the story
    italics: Count = field(default_factory=Count)  # letters in italics
    texts: Count = field(default_factory=Count)  # files whose text is kept to the letter
    numbers: Count = field(default_factory=Count)  # of chapters found at their place, with the number written
    parts: Count = field(default_factory=Count)  # of the same, within the part written
    faults: tuple[str, ...] = ()

    def __add__(self, other: "Score") -> "Score":
        return Score(*(getattr(self, name) + getattr(other, name) for name in self.__slots__))


def score(draft: Draft, plan: Plan) -> Score:
    lines, match = plan.lines, Match(draft, plan)
    want, got = match.want, match.got
    if plan.levels:
        chapters, titles, heads, faults = _chapters(draft, plan, want, match)
        breaks, more = _breaks(draft, lines, want, match)
    else:  # every boundary counts as a break
        chapters, titles, heads, faults = Count(), Count(), Count(), []
        breaks, more = _boundaries(draft, lines, want, match)
    front, story = _story(draft, lines, want, match)
    kept = want.signs == got.signs
    if not kept:
        more = [*more, f"text differs {match.where()}"]
    return Score(
        chapters=chapters,
        titles=titles,
        breaks=breaks,
        heads=heads,
        front=front,
        story=story,
        paragraphs=_paragraphs(lines, want, match),
        italics=_italics(draft, lines, want, match),
        texts=Count(int(kept), 1, 1),
        numbers=_named(draft, plan, match, lambda c, e: c.number == e.number),
        parts=_named(draft, plan, match, lambda c, e: _part(draft, c) in map(_plain, e.parts)),
        faults=tuple(faults + more),
    )


def _chapters(draft: Draft, plan: Plan, want: Stream, match: Match) -> tuple[Count, Count, Count, list[str]]:
    expected = {
        want.starts[i]: (line, plan.chapters[line.opens]) for i, line in enumerate(plan.lines) if line.opens is not None
    }
    taste = neutral(plan.lines, want)
    found = {
        place: c
        for c in draft.division.chapters
        if (place := match.place(c.at)) in expected or not within(place, taste)
    }
    faults = [
        f"no chapter at “{short(line.text)}”{_number(e)}" for at, (line, e) in expected.items() if at not in found
    ]
    faults += [f"chapter too many at “{short(_text(draft, c.at))}”" for at, c in found.items() if at not in expected]
    right = [(found[at], e) for at, (_, e) in expected.items() if at in found]
    titled = [(c, e) for c, e in right if _titled(draft, c, e)]
    faults += [_mistitled(draft, c, e) for c, e in right if not _titled(draft, c, e)]
    heads = sum((_heads(c, e) for c, e in right), Count())
    faults += [
        f"head {[short(h) for h in c.head]} for {[short(h) for h in e.head]}" for c, e in right if _heads(c, e).f1 < 1
    ]
    return (
        Count(len(right), len(found), len(expected)),
        Count(len(titled), len(found), len(expected)),
        heads,
        faults,
    )


def _named(draft: Draft, plan: Plan, match: Match, right: Callable[[Chapter, Expected], bool]) -> Count:
    """Chapters found at their place, and of these the ones that are `right`; none where nothing tells levels."""
    places = {match.place(chapter.at): chapter for chapter in draft.division.chapters}
    at = ((match.want.starts[i], line.opens) for i, line in enumerate(plan.lines) if line.opens is not None)
    pairs = [(places[place], plan.chapters[opens]) for place, opens in at if place in places and plan.levels]
    return Count(sum(right(*pair) for pair in pairs), len(pairs), len(pairs))


def _titled(draft: Draft, chapter: Chapter, expected: Expected) -> bool:
    title = _folded(chapter.title)
    titles = {_folded(t) for t in expected.titles}
    if "" in titles:  # a prologue, or no title at all: the kind's own name is no fault
        titles |= {t.lower() for t in titles}
        title = title.lower() if title.lower() in titles else title
    return (
        chapter.number == expected.number and title in titles and _part(draft, chapter) in map(_plain, expected.parts)
    )


def _part(draft: Draft, chapter: Chapter) -> str:
    return next((_plain(part.title) for part in draft.division.parts if part.id == chapter.part), "")


def _mistitled(draft: Draft, chapter: Chapter, expected: Expected) -> str:
    part = _part(draft, chapter)
    right = part in map(_plain, expected.parts)
    wrong = "" if right else f", in part “{short(part)}” for “{short(min(expected.parts))}”"
    title = max(expected.titles, key=len)
    return f"title {chapter.number} “{short(chapter.title)}” for {expected.number} “{short(title)}”{wrong}"


def _heads(chapter: Chapter, expected: Expected) -> Count:
    found, wanted = set(map(_plain, chapter.head)), set(map(_plain, expected.head))
    return Count(len(found & wanted), len(found), len(wanted))


def _breaks(draft: Draft, lines: Sequence[Line], want: Stream, match: Match) -> tuple[Count, list[str]]:
    expected = {want.starts[i]: _next_text(lines, i) for i, line in enumerate(lines) if line.scene}
    taste = neutral(lines, want)
    opening = {want.starts[i] for i, line in enumerate(lines) if line.opens is not None}
    chapters = {chapter.at for chapter in draft.division.chapters}
    places = {match.place(scene.at): scene for scene in draft.division.scenes if scene.at not in chapters}
    found = {p: s for p, s in places.items() if p in expected or (p not in opening and not within(p, taste))}
    faults = [f"no break before “{short(text)}”" for at, text in expected.items() if at not in found]
    faults += [f"break too many at “{short(_text(draft, s.at))}”" for at, s in found.items() if at not in expected]
    return Count(len(expected.keys() & found.keys()), len(found), len(expected)), faults


def _boundaries(draft: Draft, lines: Sequence[Line], want: Stream, match: Match) -> tuple[Count, list[str]]:
    """Beginnings of chapters and scenes alike, the first of all left out."""
    first = next(want.starts[i] for i, line in enumerate(lines) if line.opens is not None)
    expected = {
        want.starts[i]: line.text
        for i, line in enumerate(lines)
        if (line.scene or line.opens is not None) and want.starts[i] != first
    }
    found = {place: one for one in draft.division.scenes if (place := match.place(one.at)) != first}
    faults = [f"no boundary before “{short(text)}”" for at, text in expected.items() if at not in found]
    faults += [f"boundary too many at “{short(_text(draft, s.at))}”" for at, s in found.items() if at not in expected]
    return Count(len(expected.keys() & found.keys()), len(found), len(expected)), faults


def _story(draft: Draft, lines: Sequence[Line], want: Stream, match: Match) -> tuple[Count, Count]:
    """Letters of front matter that are not story, and letters of the story that are."""
    told = bytearray(len(want.letters))
    for i, role in enumerate(draft.division.roles):
        if role == "story":
            start = match.place(i)
            end = min(len(told), start + match.got.starts[i + 1] - match.got.starts[i])
            told[start:end] = b"\1" * (end - start)
    front = story = front_told = story_told = 0
    for i, line in enumerate(lines):
        a, b = want.starts[i], want.starts[i + 1]
        if line.kind == "story":
            story, story_told = story + b - a, story_told + told.count(1, a, b)
        elif line.kind in ("title page", "matter title", "matter", "contents") and not line.neutral:
            front, front_told = front + b - a, front_told + told.count(1, a, b)
    return Count(front - front_told, front, front), Count(story_told, story, story)


def _paragraphs(lines: Sequence[Line], want: Stream, match: Match) -> Count:
    ranges = [(want.starts[i], want.starts[i + 1]) for i, line in enumerate(lines) if line.kind == "story"]
    wanted = {a for a, b in ranges if a < b}
    told = bytearray(len(want.letters) + 1)
    for a, b in ranges:
        told[a:b] = b"\1" * (b - a)
    places = {match.place(i) for i, text in enumerate(match.got.texts) if any(map(str.isalnum, text))}
    found = {place for place in places if 0 <= place < len(told) and told[place]}
    return Count(len(wanted & found), len(found), len(wanted))


def _italics(draft: Draft, lines: Sequence[Line], want: Stream, match: Match) -> Count:
    wanted = bytearray(len(want.letters))
    for i, line in enumerate(lines):
        if line.kind in ("story", "matter") and "*" in line.text:
            at = want.starts[i]
            for k, piece in enumerate(line.text.split("*")):
                length = sum(map(str.isalnum, piece))
                wanted[at : at + length] = bytes([k % 2]) * length
                at += length
    found = bytearray(len(want.letters))
    for i, block in enumerate(draft.source.blocks):
        for run in block.runs:
            if run.kind == "italic":
                a = match.place(i) + sum(map(str.isalnum, block.text[: run.start]))
                length = sum(map(str.isalnum, block.text[run.start : run.end]))
                found[a : a + length] = b"\1" * length
    counted = bytearray(len(want.letters))
    for i, line in enumerate(lines):
        if line.kind == "story":
            counted[want.starts[i] : want.starts[i + 1]] = b"\1" * (want.starts[i + 1] - want.starts[i])
    return Count(_set(wanted, found, counted), _set(found, counted), _set(wanted, counted))


def _set(*rows: bytearray) -> int:
    """How many places are 1 in all of the rows, which hold 0 and 1."""
    return reduce(and_, (int.from_bytes(row, "little") for row in rows)).bit_count()


def _next_text(lines: Sequence[Line], index: int) -> str:
    return next(line.text for line in lines[index:] if any(map(str.isalnum, line.text)))


def _text(draft: Draft, paragraph: int) -> str:
    blocks = draft.source.blocks[paragraph : paragraph + 3]
    return next((b.text for b in blocks if any(map(str.isalnum, b.text))), "")


def _number(expected: Expected) -> str:
    return f" (number {expected.number})" if expected.number is not None else ""


def _folded(text: str) -> str:
    return " ".join(bare(text).replace("_", "").split())


def _plain(text: str) -> str:
    """Letters and digits in lower case: how a heading is set in capitals or pointed is not the matter."""
    return "".join(filter(str.isalnum, text.lower()))
