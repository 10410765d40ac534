"""All that the facts of a book's scenes tell, as plain JSON: the published keys, and what stands where for screens."""

from collections.abc import Iterator, Sequence
from typing import Any

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.book import BookRead, read_book
from afterdraft.whole.facts_form import Form, facts_form
from afterdraft.whole.given import NOTHING, Given
from afterdraft.whole.measures_form import measures_form, traits_form
from afterdraft.whole.pace import measured
from afterdraft.whole.traits import find_traits
from afterdraft.whole.turns import meant

RECIPE = 1  # part of the key under which a result is kept: a change of what is told counts it up
Row = list[Any]  # positions in a paragraph, and what stands there


def told(
    scenes: Sequence[SceneFacts],
    *,
    places: Sequence[Sequence[int]],
    texts: Sequence[Sequence[str]],
    given: Given = NOTHING,
) -> Form:
    """The keys of the form `read/1` that `--facts` adds; `places` and `texts` as `facts_form` takes them."""
    return _form(read_book(scenes, given), scenes, places, texts)


def told_in_place(
    scenes: Sequence[SceneFacts],
    *,
    places: Sequence[Sequence[int]],
    texts: Sequence[Sequence[str]],
    given: Given = NOTHING,
) -> Form:
    """`told`, and under `in_place` for each scene where people are named and who speaks: rows of paragraph (among the
    scene's), start, end, person, and of speech how and how sure; under `unmet` names of hers that stand nowhere."""
    book = read_book(scenes, given)
    here = [
        {"named": list(_named(book, scene)), "said": list(_said(book, number, scene))}
        for number, scene in enumerate(scenes)
    ]
    return _form(book, scenes, places, texts) | {"in_place": here, "unmet": list(book.cast.unmet)}


def _form(
    book: BookRead, scenes: Sequence[SceneFacts], places: Sequence[Sequence[int]], texts: Sequence[Sequence[str]]
) -> Form:
    return facts_form(book, scenes, places=places, texts=texts) | {
        "measures": measures_form(measured(scenes)),
        "traits": traits_form(find_traits(book, scenes), places=places, texts=texts),
    }


def _named(book: BookRead, scene: SceneFacts) -> Iterator[Row]:
    for mention, person in zip(scene.mentions, meant(scene, book.cast), strict=True):
        if person and mention.kind in ("name", "role"):
            yield [mention.paragraph, mention.start, mention.end, person]


def _said(book: BookRead, number: int, scene: SceneFacts) -> Iterator[Row]:
    for one in book.spoken[number]:
        quote = scene.quotes[one.quote]
        yield [quote.paragraph, quote.start, quote.end, one.speaker, one.how, round(one.sure, 2)]
