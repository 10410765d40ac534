"""What the writer has said of the cast and places, as reading takes it."""

from collections.abc import Iterable, Iterator, Mapping

from afterdraft.desk.cast import Known, SaidBy
from afterdraft.reading.mentions import form
from afterdraft.whole.given import Given, GivenPerson, GivenPlace, Said
from afterdraft.work.ports import Book

Place = tuple[int, int]  # of a paragraph: its scene, and its place among the scene's story paragraphs


def given(book: Book, draft: str, where: Mapping[int, Place]) -> Given:
    """Of a book as it stands; `where` says where each story paragraph of the draft lies."""
    people = _people(book.known("person"))
    theirs = {name for person in people for name in person.forms}
    places = {form(name) for place in book.known("place") for name in place.names}
    return Given(
        people=people,
        nobody=book.no_names("person") | (places - theirs),  # a place of hers is no person, unless she says that too
        speakers=dict(_speakers(book.said_by(draft), where)),
        places=tuple(_places(book.known("place"))),
        nowhere=book.no_names("place"),
    )


def _people(known: Iterable[Known]) -> tuple[GivenPerson, ...]:
    """A name that two of them have is the first one's."""
    taken: set[str] = set()
    people = []
    for one in known:
        forms = tuple(name for name in dict.fromkeys(map(form, one.names)) if name and name not in taken)
        taken.update(forms)
        people.append(GivenPerson(one.id, one.name, forms, one.gender, one.narrator))
    return tuple(people)


def _places(known: Iterable[Known]) -> Iterator[GivenPlace]:
    """A name that two of them have is the first one's."""
    taken: set[str] = set()
    for one in known:
        forms = tuple(name for name in dict.fromkeys(map(form, one.names)) if name and name not in taken)
        taken.update(forms)
        yield GivenPlace(one.id, one.name, forms)


def _speakers(said: Iterable[SaidBy], where: Mapping[int, Place]) -> Iterable[tuple[Said, str]]:
    for one in said:
        for anchor in one.anchors:
            if anchor.paragraph in where:
                yield (*where[anchor.paragraph], anchor.start), one.person or ""
