"""Who the I of a scene is: whoever signs it, as letters and diaries are signed, or stands over it, where a book's
chapters are headed with whose they are; else the book's narrator."""

from dataclasses import replace

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.cast import Cast
from afterdraft.whole.evidence import signature, told_by_i


def told_in(scene: SceneFacts, cast: Cast, whose: str = "") -> Cast:
    """The cast as the scene has it: where an I tells it, the narrator is whoever signs it, or `whose` chapter it is."""
    if not told_by_i(scene):
        return cast
    signed = signature(scene)
    writer = (cast.by_form.get(signed.form) if signed else None) or whose
    return _narrated(cast, writer) if writer else cast


def _narrated(cast: Cast, writer: str) -> Cast:
    people = tuple(
        person if person.narrator == (person.id == writer) else replace(person, narrator=person.id == writer)
        for person in cast.people
    )
    return replace(cast, people=people)
