from itertools import pairwise
from unicodedata import category

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.reading.quotations import quotations, typography


def spoken(*paragraphs: str) -> list[str]:
    return [paragraphs[one.paragraph][one.start : one.end] for one in quotations(paragraphs)]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("“I know,” said Ada.", ["I know,"]),
        ('"I know," said Ada.', ["I know,"]),
        ("‘I know,’ said Ada.", ["I know,"]),
        ("'I know,' said Ada.", ["I know,"]),
        ("« Je sais », dit Ada.", [" Je sais "]),
        ("„Ich weiß“, sagte Ada.", ["Ich weiß"]),
        ("“I,” said Ada, “know.”", ["I,", "know."]),
        ("Ada said, “He told me ‘Never,’ and went.”", ["He told me ‘Never,’ and went."]),
        ("‘He told me “Never,” and went,’ said Ada.", ["He told me “Never,” and went,"]),
    ],
    ids=[
        "curly",
        "straight",
        "single curly",
        "single straight",
        "guillemets",
        "low",
        "broken",
        "nested",
        "outer single",
    ],
)
def test_speech_is_found_between_marks_of_every_kind(text: str, expected: list[str]) -> None:
    assert spoken(text) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("‘I don’t know, and ’tis late,’ said Ada.", ["I don’t know, and ’tis late,"]),
        ("'I don't know, and 'tis late,' said Ada.", ["I don't know, and 'tis late,"]),
        ("‘The boys’ hats are gone,’ said Ada.", ["The boys’ hats are gone,"]),
        ("'The boys' hats are gone,' said Ada.", ["The boys' hats are gone,"]),
        ("‘Rock ’n’ roll in ’99,’ said Ada.", ["Rock ’n’ roll in ’99,"]),
        ("'Well,' said Ada, 'the Joneses' dog's gone.'", ["Well,", "the Joneses' dog's gone."]),
    ],
)
def test_apostrophes_are_no_quotation_marks(text: str, expected: list[str]) -> None:
    assert spoken(text) == expected


def test_a_telling_with_apostrophes_only_has_no_speech() -> None:
    assert spoken("The sailors' boats weren't in. 'Twas the dogs' day.") == []


def test_a_quotation_goes_on_over_paragraphs_that_open_again_and_close_only_at_the_end() -> None:
    found = quotations(["“First,” she began.", "“Then this.", "“And that.”", "“No.”"])
    assert [(one.paragraph, one.goes_on) for one in found] == [(0, False), (1, False), (2, True), (3, False)]


def test_words_only_set_in_marks_are_no_speech() -> None:
    assert spoken("“Yes.”", "She kept what he called a “library” in the hall.") == ["Yes."]


def test_speech_opened_by_a_dash_leaves_out_what_the_narrator_puts_in() -> None:
    found = spoken("— I know, said Ada. It was the door.", "— Which door?", "Nobody answered.", "– That one!")
    assert found == ["I know,", "It was the door.", "Which door?", "That one!"]


def test_one_broken_line_does_not_make_a_scene_of_dashes() -> None:
    assert typography(["— and so it went.", "“Yes,” said Ada.", "“No.”"]) == "curly double"


def test_speech_resumes_in_small_letters_after_no_full_stop() -> None:
    assert spoken("“And this,” he nodded towards the hall, “must take a while.”")[1] == "must take a while."


@pytest.mark.parametrize(("opening", "closing"), ["“”", "‘’", "«»"])
def test_marks_that_open_and_close_are_those_of_the_unicode_standard(opening: str, closing: str) -> None:
    # Unicode Character Database (UAX #44), General_Category: Pi opens and Pf closes a quotation.
    assert (category(opening), category(closing)) == ("Pi", "Pf")
    assert spoken(f"{opening}Sit,{closing} said Ada. {opening}Do.{closing}") == ["Sit,", "Do."]


@given(st.lists(st.text(alphabet="“”‘’\"'«»—-.,!? abAB\n", max_size=40), max_size=8))
def test_whatever_the_marks_stretches_lie_in_order_inside_their_paragraphs(paragraphs: list[str]) -> None:
    found = quotations(paragraphs)
    for one in found:
        assert 0 <= one.start < one.end <= len(paragraphs[one.paragraph])
    for one, after in pairwise(found):
        assert (one.paragraph, one.end) <= (after.paragraph, after.start)
