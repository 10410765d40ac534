"""Letters: the name's own where they are free, two capitals when one is not enough."""

from hypothesis import given
from hypothesis import strategies as st

from afterdraft.desk.lettering import free_letter, is_letter


def test_a_names_first_letter_then_its_others_then_any_then_two() -> None:
    assert free_letter("The sugar", ()) == "T"
    assert free_letter("The sugar", {"T"}) == "H"
    assert free_letter("Österreich", ()) == "S"
    assert free_letter("1946", {"A"}) == "B"
    assert free_letter("Io", {chr(n) for n in range(65, 91)}) == "AA"


@given(st.lists(st.text(max_size=8), max_size=60))
def test_every_one_has_its_own(names: list[str]) -> None:
    given_out: list[str] = []
    for name in names:
        given_out.append(free_letter(name, given_out))
    assert len(set(given_out)) == len(names)
    assert all(map(is_letter, given_out))


def test_what_is_a_letter() -> None:
    assert [text for text in ("A", "AB", "", "ABC", "a", "1", "Ä", "A ") if is_letter(text)] == ["A", "AB"]
