"""Reading the novels of the dialogue corpus, and what is right of it."""

from bisect import bisect_left
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.scene import scene_facts
from afterdraft.whole.cast import Cast, find_cast
from afterdraft.whole.speakers import speakers
from bench.reading.cases import Cases, Met
from bench.reading.faults import fault
from bench.reading.given import compared, owners, theirs, true_cast
from bench.reading.halves import Half, halves
from bench.reading.kept import analysed
from bench.reading.novels import Novel, Quotation, novel, titles
from bench.reading.same import joined
from bench.reading.score import Found, Span, b_cubed, found, overlap

MATTERING = ("major", "intermediate")


@dataclass(frozen=True, slots=True)
class Answer:
    """One quotation of the corpus, and what was said of it."""

    kind: str  # Explicit, Anaphoric, Implicit, ""
    right: bool
    how: str  # named, pronoun, turn, none; "" where the quotation was not found
    sure: float
    speaker: str  # of the corpus
    said: str  # name of whom we took, "" for nobody
    fault: str = ""  # the kind of fault, where it is wrong


@dataclass(frozen=True, slots=True)
class Result:
    slug: str
    half: Half
    quotes: Found
    own: tuple[Answer, ...]
    true: tuple[Answer, ...]  # with the true cast given
    people: tuple[int, int]  # major and intermediate characters found, and all
    aliases: tuple[float, float]  # B³ precision and recall over aliases
    unknown: int  # people shown none of whose names the corpus has


def measured(only: Half | None = None) -> Iterator[Result]:
    """One result a novel, all or one half."""
    side = halves(titles().values())
    for slug, title in titles().items():
        if only is None or side[title] == only:
            yield read(joined(novel(slug)), side[title])


def read(book: Novel, half: Half) -> Result:
    scenes = [scene_facts(analysed([p.text for p in chapter])) for chapter in book.chapters]
    spans = [span for span, _, _ in _spans(book, scenes)]
    own = find_cast(scenes)
    matched = theirs(own, book, _selves(book, scenes))
    given = true_cast(book, scenes)
    wanted = [c for c in book.characters if c.category in MATTERING and not c.name.startswith("_")]
    return Result(
        slug=book.slug,
        half=half,
        quotes=found([span for quote in book.quotations for span in quote.spans], spans),
        own=tuple(_answers(book, scenes, own, matched)),
        true=tuple(_answers(book, scenes, given, {str(c.id): c.id for c in book.characters})),
        people=(sum(c.id in matched.values() for c in wanted), len(wanted)),
        aliases=_aliases(book, scenes, own),
        unknown=sum(not _known(person.aliases, book) for person in own.people if not person.narrator),
    )


def _spans(book: Novel, scenes: Sequence[SceneFacts]) -> Iterator[tuple[Span, int, int]]:
    """Every stretch found, as it stands in the file, with its scene and its place among the scene's."""
    for number, (scene, chapter) in enumerate(zip(scenes, book.chapters, strict=True)):
        for place, quote in enumerate(scene.quotes):
            raw = chapter[quote.paragraph].raw
            yield (raw[quote.start], raw[quote.end - 1] + 1), number, place


def _answers(book: Novel, scenes: Sequence[SceneFacts], cast: Cast, matched: Mapping[str, int]) -> Iterator[Answer]:
    said = [speakers(scene, cast) for scene in scenes]
    placed = [(span, (number, said[number][place])) for span, number, place in _spans(book, scenes)]
    names = {c.id: c.name for c in book.characters}
    own = {person.id: person.name for person in cast.people}
    met = [_overlapping(quotation, placed) for quotation in book.quotations]
    cases = Cases(book, scenes, cast, matched, said, met)
    for quotation, at in zip(book.quotations, met, strict=True):
        one = at[1] if at else None
        right = (matched.get(one.speaker or "") if one else None) == quotation.speaker
        yield Answer(
            quotation.kind,
            right,
            one.how if one else "",
            one.sure if one else 0.0,
            names[quotation.speaker],
            own.get(one.speaker or "", "") if one else "",
            "" if right else fault(cases.of(quotation, at)),
        )


def _overlapping(quotation: Quotation, placed: Sequence[tuple[Span, Met]]) -> Met | None:
    """What was said of the stretch that covers most of the quotation: by speaker, over all its spans."""
    votes: Counter[str | None] = Counter()
    sample: dict[str | None, Met] = {}
    for span in quotation.spans:
        place = max(0, bisect_left(placed, span[0], key=lambda one: one[0][1]) - 1)
        while place < len(placed) and placed[place][0][0] < span[1]:
            shared = overlap(span, placed[place][0])
            if shared:
                number, one = placed[place][1]
                votes[one.speaker] += shared
                sample.setdefault(one.speaker, (number, one))
            place += 1
    return sample[votes.most_common(1)[0][0]] if votes else None


def _selves(book: Novel, scenes: Sequence[SceneFacts]) -> Counter[int]:
    """Who speaks, by the corpus, what stands beside 'I said'."""
    spans = sorted((span, quote.speaker) for quote in book.quotations for span in quote.spans)
    told: Counter[int] = Counter()
    for span, number, place in _spans(book, scenes):
        quote = scenes[number].quotes[place]
        if quote.plain and quote.tag is not None and scenes[number].mentions[quote.tag].kind == "self":
            at = bisect_left(spans, span[0], key=lambda one: one[0][1])
            if at < len(spans) and overlap(span, spans[at][0]):
                told[spans[at][1]] += 1
    return told


def _aliases(book: Novel, scenes: Sequence[SceneFacts], cast: Cast) -> tuple[float, float]:
    """Over the aliases that are one character's alone and that the text was seen to hold."""
    seen = {mention.form for scene in scenes for mention in scene.mentions if mention.kind in ("name", "role")}
    by = owners(book.characters)
    items = [alias for alias, ids in by.items() if len(ids) == 1 and alias in seen]
    return b_cubed({a: min(by[a]) for a in items}, {a: cast.by_form.get(a, f"alone {a}") for a in items})


def _known(forms: Sequence[str], book: Novel) -> bool:
    """Whether any name, or any word of one that is no title, is the corpus's too."""
    aliases = {compared(alias) for c in book.characters for alias in c.aliases}
    return any(form in aliases for form in forms)
