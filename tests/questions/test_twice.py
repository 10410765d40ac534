"""A passage that stands twice."""

from afterdraft.questions.each.twice import CHECK
from tests.questions.asked import found, quotes

PASSAGE = "On the sill stood a jar of brass screws, and behind it the river went by as if it had been paid to."


def test_asks_where_a_passage_stands_in_two_scenes() -> None:
    one = found(CHECK, ["It rained.", f"He came in. {PASSAGE} Nobody spoke."], ["It was dry.", f"{PASSAGE} She sat."])
    assert quotes(one) == [[PASSAGE, PASSAGE]]
    assert one[0].numbers["words"] == 23


def test_what_was_joined_into_another_sentence_is_found_as_far_as_it_is_the_same() -> None:
    (one,) = found(CHECK, [f"So it was: {PASSAGE.lower()}"], [f"{PASSAGE}"])
    assert one.numbers["words"] == 23


def test_is_silent_about_few_words_and_refrains() -> None:
    assert not found(
        CHECK, ["On the sill stood a jar of brass screws, and he wept."], ["On the sill stood a jar of brass screws."]
    )
    assert not found(CHECK, [PASSAGE], [PASSAGE], [PASSAGE])


def test_what_is_said_again_is_asked_less_sharply() -> None:
    told = found(CHECK, [PASSAGE], [PASSAGE])
    long = f"“{PASSAGE} And I said so at the time, to anyone who would hear it.”"
    said = found(CHECK, [long], [long])
    assert said[0].strength < told[0].strength
    assert not found(CHECK, [PASSAGE], [f"“{PASSAGE}”"])
