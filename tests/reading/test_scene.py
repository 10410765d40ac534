import pytest

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import key, packed, unpacked
from tests.reading.hand import scene


def tags(facts: SceneFacts) -> list[str | None]:
    return [facts.mentions[one.tag].form if one.tag is not None else None for one in facts.quotes]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("“Go,” said Ada Lamb.", ["ada lamb"]),
        ("“Go,” Ada said.", ["ada"]),
        ("“Go,” she said.", ["she"]),
        ("“Go,” I said.", ["i"]),
        ("“Go,” said the old man.", ["old man"]),
        ("Ada said, “Go.”", ["ada"]),
        ("And so Mr. Pike asked: “Why?”", ["mr pike"]),
        ("“Go,” said Ada, “or stay.”", ["ada", "ada"]),
        ("“Go.” Ada turned.", ["ada"]),
        ("“Go.” It rained.", [None]),
        ("“Go?” Ada said nothing.", [None]),
        ("“Go,” said her mother.", ["her mother"]),
        ("“Go!” cried Ada. Pike nodded and said: “No.”", ["ada", "pike"]),
        ("“Go!” cried Pike, and Ada howled, “No!”", ["pike", "ada"]),
    ],
)
def test_the_words_beside_speech_name_its_speaker(text: str, expected: list[str | None]) -> None:
    assert tags(scene(text)) == expected


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("“Go,” Ada asserted.", [("ada", True)]),
        ("“Go?” hazarded Mr. Pike.", [("mr pike", True)]),
        ("“Go!” Ada hotly asserted.", [("ada", True)]),
        ("“Go,” she smiled.", [("she", True)]),  # any verb, where the sentence goes on
        ("“Why?” she smiled.", [("she", True)]),
        ("“Go.” She smiled.", [("she", False)]),  # an act beside the words
        ("“Go.” It was late, and Ada smiled.", []),
        ("“Go.” Ada told them all.", [("ada", False)]),  # the words are at an end: an act
        ("“Go?” Ada asked.", [("ada", True)]),
    ],
)
def test_rarer_verbs_tell_words_where_they_touch_them(text: str, expected: list[tuple[str, bool]]) -> None:
    facts = scene(text)
    assert [(facts.mentions[one.tag].form, one.plain) for one in facts.quotes if one.tag is not None] == expected


def test_a_paragraph_that_ends_in_a_colon_leads_up_to_the_next() -> None:
    assert tags(scene("Ada looked at the wall and said:", "“Paint it.”")) == ["ada"]


def test_who_is_called_is_not_who_is_spoken_of() -> None:
    facts = scene("“Come here, Ada, and sit with Pike.”")
    assert {one.form: one.called for one in facts.mentions} == {"ada": True, "pike": False}


def test_a_roman_number_and_a_shout_are_no_names() -> None:
    assert [one.form for one in scene("They came to II. and read STOP there.").mentions] == []


def test_facts_come_back_as_they_were_kept() -> None:
    facts = scene("“Go,” said Ada.", "He saw the vicar and Mr. Pike.")
    assert unpacked(packed(facts)) == facts


def test_the_key_changes_with_words_and_model_and_with_nothing_else() -> None:
    assert key(["a", "b"], model="m") == key(["a", "b"], model="m")
    assert len({key(["a", "b"], model="m"), key(["ab"], model="m"), key(["a", "b"], model="n")}) == 3


@pytest.mark.parametrize(
    ("before", "text", "expected"),
    [
        ("After a while Ada spoke.", "“Go.”", "ada"),
        ("Ada rose and said", "“Go.”", "ada"),  # no stop: the words follow
        ("Ada turned, and then Ada said:", "“Go,” she said, “or stay.”", "ada"),  # by name, not by pronoun
        ("Ada made no answer.", "“Go.”", None),
        ("Ada sat.", "“Go.”", None),
    ],
)
def test_a_paragraph_may_lead_up_to_the_next(before: str, text: str, expected: str | None) -> None:
    assert tags(scene(before, text))[0] == expected
