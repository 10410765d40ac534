"""What the writer has said of the cast, as reading takes it."""

from collections.abc import Iterable, Mapping

from afterdraft.desk.cast import Known, SaidBy
from afterdraft.reading.mentions import form
from afterdraft.whole.given import Given, GivenPerson, Said
from afterdraft.work.ports import Book

Place = tuple[int, int]  # of a paragraph: its scene, and its place among the scene's story paragraphs


def given(book: Book, draft: str, places: Mapping[int, Place]) -> Given:
    """Of a book as it stands; `places` says where each story paragraph of the draft lies."""
    return Given(
        people=_people(book.known("person")),
        nobody=book.no_names("person"),
        speakers=dict(_speakers(book.said_by(draft), places)),
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


def _speakers(said: Iterable[SaidBy], places: Mapping[int, Place]) -> Iterable[tuple[Said, str]]:
    for one in said:
        for anchor in one.anchors:
            if anchor.paragraph in places:
                yield (*places[anchor.paragraph], anchor.start), one.person or ""
