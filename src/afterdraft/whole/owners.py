"""Whom each mention of a scene means: a name its person, 'she' whoever is likeliest, the I of a speech its speaker."""

from collections.abc import Sequence

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.book import BookRead
from afterdraft.whole.pronoun_cautions import Owner
from afterdraft.whole.pronouns import antecedents
from afterdraft.whole.speakers import Spoken
from afterdraft.whole.turns import meant

BY_NAME = 0.9  # how sure, of a name; chosen by hand
Owners = tuple[Owner | None, ...]


def owners_in(book: BookRead, number: int, scene: SceneFacts) -> Owners:
    """Beside each mention of the scene of that number its person, and how sure that is."""
    cast, spoken = book.told[number], book.spoken[number]
    people = meant(scene, cast)
    guesses = antecedents(scene, people, spoken, cast)
    found: list[Owner | None] = []
    for one, person, guess in zip(scene.mentions, people, guesses, strict=True):
        if person:
            found.append((person, BY_NAME))
        elif one.kind == "self" and one.spoken:
            found.append(_speaker(spoken, scene, one.paragraph, one.start))
        else:
            found.append(guess)
    return tuple(found)


def _speaker(spoken: Sequence[Spoken], scene: SceneFacts, paragraph: int, place: int) -> Owner | None:
    """Who says 'I' there."""
    for one in spoken:
        quote = scene.quotes[one.quote]
        if quote.paragraph == paragraph and quote.start <= place < quote.end and one.speaker:
            return one.speaker, round(one.sure * BY_NAME, 2)
    return None
