"""The keys `people`, `appearances`, `speech` of the published form `read/1` with `--facts`.

Offsets are code points into the story text; `places` and `texts` say, for each scene, where each of its story
paragraphs begins there and what it says.
"""

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.book import Appearance, BookRead
from afterdraft.whole.cast import NARRATOR, Person

Form = dict[str, Any]  # JSON: strings, numbers, lists, objects


def facts_form(
    book: BookRead, scenes: Sequence[SceneFacts], *, places: Sequence[Sequence[int]], texts: Sequence[Sequence[str]]
) -> Form:
    """Only what is really computed: a key that is not here was not read."""
    written = spellings(scenes, texts)
    words = book.words_spoken()
    return {
        "people": [_person(person, written, words[person.id]) for person in book.cast.people],
        "appearances": [_appearance(one) for one in book.appearances],
        "speech": [one for number, scene in enumerate(scenes) for one in _speech(book, number, scene, places[number])],
    }


def spellings(scenes: Sequence[SceneFacts], texts: Sequence[Sequence[str]]) -> Mapping[str, str]:
    """How each form of a name or role is mostly written in the book."""
    seen: defaultdict[str, Counter[str]] = defaultdict(Counter)
    for scene, paragraphs in zip(scenes, texts, strict=True):
        for one in scene.mentions:
            if one.kind in ("name", "role"):
                written = " ".join(paragraphs[one.paragraph][one.start : one.end].split())
                seen[one.form][f"the {_whole(one.form, written)}" if one.kind == "role" else written] += 1
    return {form: counts.most_common(1)[0][0] for form, counts in seen.items()}


def _whole(form: str, written: str) -> str:
    """A role's form with the letters of its noun as written: 'old man' where only 'man' was marked."""
    return written if written.lower() == form or written != written.lower() else form


def _person(person: Person, written: Mapping[str, str], words: int) -> Form:
    return {
        "id": person.id,
        "name": NARRATOR if person.name == NARRATOR else written.get(person.name, person.name),
        "aliases": [written.get(form, form) for form in person.aliases],
        "gender": person.gender or None,
        "mentions": person.mentions,
        "words_spoken": words,
        "narrator": person.narrator,
    }


def _appearance(one: Appearance) -> Form:
    return {
        "scene": one.scene,
        "person": one.person,
        "as": one.presence,
        "mentions": one.mentions,
        "words_spoken": one.words_spoken,
    }


def _speech(book: BookRead, number: int, scene: SceneFacts, places: Sequence[int]) -> Iterator[Form]:
    for one in book.spoken[number]:
        quote = scene.quotes[one.quote]
        yield {
            "start": places[quote.paragraph] + quote.start,
            "end": places[quote.paragraph] + quote.end,
            "speaker": one.speaker,
            "how": one.how,
            "sure": round(one.sure, 2),
        }
