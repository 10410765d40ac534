"""All that the facts of a book's scenes tell, as plain JSON: the published keys, and what stands where for screens."""

from collections.abc import Iterator, Sequence
from typing import Any

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.book import BookRead, Speak, read_book, speak_anew
from afterdraft.whole.facts_form import Form, facts_form
from afterdraft.whole.given import NOTHING, Given
from afterdraft.whole.measures_form import measures_form, traits_form
from afterdraft.whole.pace import measured
from afterdraft.whole.places import find_places
from afterdraft.whole.places_form import place_spellings, places_form, settings_form
from afterdraft.whole.story_time import StoryTime, story_time
from afterdraft.whole.times_form import contradictions_form, scene_times_form, time_rows, times_form
from afterdraft.whole.traits import find_traits
from afterdraft.whole.turns import meant

RECIPE = 29  # part of the key under which a result is kept: a change of what is told counts it up
Row = list[Any]  # positions in a paragraph, and what stands there


def told(
    scenes: Sequence[SceneFacts],
    *,
    places: Sequence[Sequence[int]],
    texts: Sequence[Sequence[str]],
    given: Given = NOTHING,
    heads: Sequence[Sequence[str]] = (),
    in_place: bool = False,
    speak: Speak = speak_anew,
) -> Form:
    """The keys of the form `read/1` that `--facts` adds; `places` and `texts` as `facts_form` takes them;
    `heads` has for each scene the lines of the heading right over it.

    With `in_place` also, for each scene, where people are named, who speaks, and its times: rows of paragraph (among
    the scene's), start, end, and then the person; of speech how and how sure as well; of times kind and value. Under
    `unmet` names of hers that stand nowhere.
    """
    book = read_book(scenes, given, speak, heads)
    story = story_time(scenes, heads, given.times)
    form = _form(book, scenes, places, texts, given) | _times(story, scenes, places, texts)
    return form | _in_place(book, scenes) if in_place else form


def _in_place(book: BookRead, scenes: Sequence[SceneFacts]) -> Form:
    here = [
        {"named": list(_named(book, scene)), "said": list(_said(book, number, scene)), "times": time_rows(scene)}
        for number, scene in enumerate(scenes)
    ]
    return {"in_place": here, "unmet": list(book.cast.unmet)}


def _form(
    book: BookRead,
    scenes: Sequence[SceneFacts],
    places: Sequence[Sequence[int]],
    texts: Sequence[Sequence[str]],
    given: Given,
) -> Form:
    found = find_places(scenes, given, people=[form for one in book.cast.people for form in one.aliases])
    return facts_form(book, scenes, places=places, texts=texts) | {
        "places": places_form(found, place_spellings(scenes, texts)),
        "settings": settings_form(found),
        "measures": measures_form(measured(scenes)),
        "traits": traits_form(find_traits(book, scenes), places=places, texts=texts),
    }


def _times(
    story: StoryTime, scenes: Sequence[SceneFacts], places: Sequence[Sequence[int]], texts: Sequence[Sequence[str]]
) -> Form:
    return {
        "times": times_form(scenes, places=places, texts=texts),
        "scene_times": scene_times_form(story, places=places),
        "time_contradictions": contradictions_form(story, places=places),
    }


def _named(book: BookRead, scene: SceneFacts) -> Iterator[Row]:
    for mention, person in zip(scene.mentions, meant(scene, book.cast), strict=True):
        if person and mention.kind in ("name", "role"):
            yield [mention.paragraph, mention.start, mention.end, person]


def _said(book: BookRead, number: int, scene: SceneFacts) -> Iterator[Row]:
    for one in book.spoken[number]:
        quote = scene.quotes[one.quote]
        yield [quote.paragraph, quote.start, quote.end, one.speaker, one.how, round(one.sure, 2)]
