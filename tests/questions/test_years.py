"""A year that stands alone."""

from afterdraft.questions.each.years import CHECK
from tests.questions.asked import dated

BEFORE, AFTER = ["It was the 3rd of May, 1871."], ["On the 9th of May, 1871, they set out."]


def test_asks_about_a_year_among_others() -> None:
    (one,) = CHECK.find(dated(BEFORE, ["On the 5th of May, 1817, he came."], AFTER))
    assert one.numbers == {"year": 1817, "others": 1871}


def test_is_silent_about_the_same_year_and_other_seasons() -> None:
    assert not list(CHECK.find(dated(BEFORE, ["On the 5th of May, 1871, he came."], AFTER)))
    assert not list(CHECK.find(dated(BEFORE, ["She was born on the 5th of November, 1817."], AFTER)))


def test_is_silent_about_what_a_register_says() -> None:
    assert not list(CHECK.find(dated(BEFORE, ["Baptized, it was found, the 5th of May, 1817."], AFTER)))
