"""The bench of slips as a section of the results."""

from collections import Counter
from collections.abc import Iterator, Sequence

from bench import corpus
from bench.report import Figure, Section
from bench.slips.books import Book, between_books, books
from bench.slips.score import Result, result
from bench.slips.seen import of_book, of_novel
from bench.structure.halves import Half, half

SMALL = 250_000  # bytes of a packed book, up to which it is read in the short run
NOVELS = 3  # of each half in the short run: those of the fewest words
SEEN = frozenset(
    {"The Great Gatsby", "The Mysterious Affair at Styles", "The Strange Case of Dr. Jekyll and Mr. Hyde"}
)  # of the report half by title, but what was asked of them in the slips corpus was looked at while checks were made
HALVES: tuple[Half, Half] = ("tune", "report")


def measure(*, full: bool) -> Section:
    slips = [_of(book) for book in books() if full or book.size() <= SMALL]
    clean = [result(novel.title, which, of_novel(novel)) for which in HALVES for novel in _novels(which, full=full)]
    return Section(
        title="Questions about slips and clean novels",
        corpus=(
            f"{len(slips)} famous novels with slips that their authors made and controls that only look like slips; "
            f"{len(clean)} novels of the structure corpus with their true divisions, taken as clean. Halves by the "
            "SHA-256 of titles (`bench/structure`). Thresholds were chosen on the tuning half, but what was asked of "
            "the slips corpus's books was looked at on both halves; three of those are clean novels of the report half "
            "too, and are left out there. A slip counts as "
            "found where one question shows two of its passages (one, where the calendar says the rest). "
            f"{between_books()} slips between two books are out of reach and not counted."
        ),
        figures=tuple(figure for which in HALVES for figure in _figures(which, slips, clean)),
        lines=(*_listed(slips), "", *_often(clean)),
    )


def _of(book: Book) -> Result:
    return result(book.title, half(book.title), of_book(book), book.slips, book.controls)


def _novels(which: Half, *, full: bool) -> Sequence[corpus.Novel]:
    known = map(corpus.novel, corpus.paths())
    some = [novel for novel in known if half(novel.title) == which and not (which == "report" and novel.title in SEEN)]
    by_length = sorted(some, key=lambda novel: sum(len(text) for ch in novel.chapters for s in ch.scenes for text in s))
    return by_length if full else by_length[:NOVELS]


def _figures(which: Half, slips: Sequence[Result], clean: Sequence[Result]) -> Iterator[Figure]:
    mine = [one for one in slips if one.half == which]
    found = [answer for one in mine for answer in one.slips]
    controls = [answer for one in mine for answer in one.controls]
    novels = [one for one in clean if one.half == which]
    words = sum(one.words for one in novels)
    if found:
        yield Figure(
            f"slips asked about, {which} half",
            sum(bool(one.check) for one in found) / len(found),
            note=f"{len(found)} slips",
        )
    if controls:
        yield Figure(
            f"controls asked about, {which} half",
            sum(bool(one.check) for one in controls),
            unit="controls",
            target=0,
            note=f"of {len(controls)}",
        )
    if words:
        asked = 10_000 * sum(len(one.questions) for one in novels) / words
        yield Figure(
            f"questions on clean novels, {which} half",
            round(asked, 2),
            unit="per 10,000 words",
            target=1,
            note=f"{len(novels)} novels, {words:,} words",
        )


def _listed(slips: Sequence[Result]) -> Iterator[str]:
    yield from ("| slip | kind | half | asked by |", "|---|---|---|---|")
    for one in slips:
        for answer in one.slips:
            yield f"| {answer.listed.id} | {answer.listed.kind} | {one.half} | {answer.check or '–'} |"
        for answer in one.controls:
            if answer.check:
                yield f"| control: {answer.listed.id} | {answer.listed.kind} | {one.half} | {answer.check} |"


def _often(clean: Sequence[Result]) -> Iterator[str]:
    yield from ("| clean novel | half | words | questions | per 10,000 | checks |", "|---|---|---:|---:|---:|---|")
    for one in clean:
        checks = ", ".join(f"{check} {times}" for check, times in one.by_check().most_common())
        yield f"| {one.title} | {one.half} | {one.words:,} | {len(one.questions)} | {one.often:.2f} | {checks} |"
    total: Counter[str] = sum((one.by_check() for one in clean), Counter())
    yield from (
        "",
        "By check, over all: " + ", ".join(f"{check} {times}" for check, times in total.most_common()) + ".",
    )
