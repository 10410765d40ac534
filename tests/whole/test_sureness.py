"""How sure it is who speaks: names before pronouns, pronouns before turns, few before many."""

from afterdraft.whole.cast import find_cast
from afterdraft.whole.speakers import speakers
from tests.reading.hand import scene, scenes

ALL = ("Ada Lamb", "Mr. Pike", "Miss Wren", "Tom Roe", "Joan Hill")
KNOWN = [f"“Oh,” said {name}." for name in ALL for _ in range(3)]


def sure(*paragraphs: str) -> list[float]:
    facts = scene(*paragraphs)
    return [one.sure for one in speakers(facts, find_cast([*scenes([KNOWN]), facts]))]


def test_a_name_is_surer_than_a_pronoun_and_that_than_a_turn() -> None:
    named, pronoun, turn = sure("“Sit,” said Mr. Pike.", "“No,” said Miss Wren.", "“Why?” he asked.", "“So.”")[1:]
    assert named > pronoun > turn


def test_whose_turn_it_is_is_less_sure_among_many() -> None:
    two = ["“Sit,” said Mr. Pike.", "“No,” said Miss Wren.", "“Why?”"]
    many = ["Ada Lamb, Tom Roe and Joan Hill sat.", *two]
    assert sure(*two)[-1] > sure(*many)[-1]
