"""Earlier names of people and places: kept apart from other names, found, joined, read, and asked about."""

from afterdraft.manuscript.outline import outline
from afterdraft.questions.each.old_names import CHECK
from afterdraft.questions.marks import Renamed
from afterdraft.questions.seen import Seen
from afterdraft.store.book import BookFile
from afterdraft.work.cast.add_known import add_known
from afterdraft.work.cast.found import of_known
from afterdraft.work.cast.given import given
from afterdraft.work.cast.join_known import join_known
from afterdraft.work.cast.keep_found import keep_found
from afterdraft.work.cast.mark_presence import mark_presence
from afterdraft.work.questions.to_ask import marks
from afterdraft.work.write_field import write_once
from tests.store.sample import desk_dump, undo


def renamed(book: BookFile, name: str, former: str) -> str:
    made = add_known(book, "person", name)
    write_once(book, "person", made, "former", former)
    return made


def test_they_are_a_field_that_is_undone_and_searched(book: BookFile) -> None:
    before = desk_dump(book)
    renamed(book, "Ottla Brenn", "Hedwig\n\n Miss  Sorge ")
    (one,) = book.known("person")
    assert (one.aliases, one.former) == ((), ("Hedwig", "Miss Sorge"))
    assert one.names == ("Ottla Brenn", "Hedwig", "Miss Sorge")
    assert one.in_use == ("Ottla Brenn",)  # of which it is said where they stand nowhere
    assert [hit.kind for hit in book.search("sorge")] == ["person"]
    assert undo(book) == "Earlier names of “Ottla Brenn”"
    assert book.search("sorge") == ()
    undo(book)
    assert desk_dump(book) == before


def test_an_earlier_name_still_means_the_same_person(book: BookFile, draft: str) -> None:
    ottla = renamed(book, "Ottla", "Hedwig")
    mark_presence(book, [book.division(draft).scenes[0].id], "hedwig", "on page")
    assert [one.id for one in book.known("person")] == [ottla]
    assert given(book, draft, {}).people[0].forms == ("ottla", "hedwig")


def test_joined_and_kept_under_another_name_they_stay_earlier_names(book: BookFile) -> None:
    ottla, brenn = renamed(book, "Ottla", "Hedwig"), renamed(book, "Miss Brenn", "Miss Sorge")
    join_known(book, "person", into=ottla, of=brenn)
    (one,) = book.known("person")
    assert (one.aliases, one.former) == (("Miss Brenn",), ("Hedwig", "Miss Sorge"))
    keep_found(book, "person", of_known(one), name="Tilly")
    (one,) = book.known("person")
    assert (one.name, one.aliases, one.former) == ("Tilly", ("Ottla", "Miss Brenn"), ("Hedwig", "Miss Sorge"))


def test_checks_are_told_of_people_and_places(book: BookFile, draft: str) -> None:
    renamed(book, "Ottla", "ferry")
    quay = add_known(book, "place", "The quay")
    write_once(book, "place", quay, "former", "The wharf")
    write_once(book, "place", quay, "aliases", "quay")
    texts = [block.text for block in book.blocks(draft)]
    scenes = outline(book.division(draft), [0] * len(texts)).scenes
    told = marks(book, draft, scenes)
    assert told.renamed == (Renamed("Ottla", ("ferry",)), Renamed("The quay", ("The wharf",), ("quay",)))
    story = tuple(tuple(texts[place] for place in one.story) for one in scenes)
    assert {one.subject for one in CHECK.find(Seen(texts=story, marks=told))} == {"ferry"}
