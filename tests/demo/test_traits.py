"""The planted differences of eyes are read off the demonstration book with whose they are, with the real model."""

import pytest

from afterdraft.whole.book import read_book
from afterdraft.whole.traits import can_both_be, find_traits
from demo.build import DEMODATA
from tests.demo.reading import paragraphs_of
from tests.facts import Read


@pytest.mark.slow
def test_both_differences_are_found_and_no_other(read_scenes: Read) -> None:
    scenes = list(read_scenes(paragraphs_of(DEMODATA / "manuscript.docx")))
    book = read_book(scenes)
    names = {person.id: person.name for person in book.cast.people}
    eyes: dict[str, list[str]] = {}
    for one in find_traits(book, scenes):
        if one.trait == "eyes":
            eyes.setdefault(names[one.person], []).append(one.value)
    differing = {
        name: values
        for name, values in eyes.items()
        if not all(can_both_be("eyes", first, other) for first in values for other in values)
    }
    assert differing == {"jossie wragg": ["green", "brown"], "tam ockley": ["dark", "blue"]}
