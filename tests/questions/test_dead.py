"""Somebody dead who speaks."""

import pytest

from afterdraft.questions.each.dead import CHECK
from tests.questions.asked import found_in, quotes
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def test_asks_where_somebody_dead_speaks_later() -> None:
    one = found_in(CHECK, ILSE, [*MARTA, "Tobias died in the spring, of his chest."], NIGHT)
    assert quotes(one) == [["Tobias died in the spring, of his chest.", "“She’s wanted to for years,” said Tobias."]]


@pytest.mark.parametrize(
    "told",
    [
        "When the doctor came Tobias was already dead.",
        "They buried Tobias on the Friday.",
        "Before morning Tobias was dead.",
        "The fever took Tobias before the month was out.",
        "Tobias was slow that year. He died in the spring.",
        "Marta found Tobias in the morning, drowned.",
        "Tobias sailed for Norway, and never came back.",
        "It was the last time that anybody saw Tobias alive.",
        "Tobias was buried two days afterwards, in the rain.",
        "That was the end of Tobias; the funeral was on the Thursday.",
        "Tobias was found dead on the landing.",
        "Tobias perished in the snow that winter.",
        "They carried him in, and at noon Tobias expired.",
        "Tobias was shot dead on the bridge.",
        "Tobias met his death at the weir.",
    ],
)
def test_asks_however_it_is_told(told: str) -> None:
    assert len(found_in(CHECK, ILSE, [*MARTA, told], NIGHT)) == 1


@pytest.mark.parametrize(
    "middle",
    [
        "They buried Tobias’s uncle on the Friday.",
        "The great Mrs. Tobias was no more.",
        "Mrs. Tobias had met her death by strychnine.",
        "When Tobias died she would have the ferry.",
        "Tobias left the door open, and she never saw it.",
        "She thought that Tobias was dead.",
        "Tobias was dead tired.",
        "Tobias nearly died of laughing.",
        "“Tobias died in the spring,” said Marta.",
        "If Tobias died, who would take the pole?",
        "That was the end of Tobias’s pipe; the funeral of the ferryman was on the Thursday.",
        "That was the end of Tobias, Marta thought, and she went on with the funeral.",
        "Tobias was killed two or three times over in her dreams.",
        "Tobias, doubtless, was dead, and the ferry with him.",
        "But Tobias, most likely, had perished with the boat.",
        "No doubt Tobias had been drowned.",
        "Tobias was probably dead.",
        "In all likelihood Tobias was dead.",
    ],
)
def test_is_silent_where_nobody_is_dead_for_certain(middle: str) -> None:
    assert not found_in(CHECK, ILSE, [*MARTA, middle], NIGHT)


def test_is_silent_about_what_somebody_said_before() -> None:
    assert not found_in(CHECK, ILSE, NIGHT, [*MARTA, "Tobias died in the spring, of his chest."])
    last = ["The house was quiet.", "“Nobody buys a ferry,” Tobias had said, the year before."]
    assert not found_in(CHECK, [*ILSE, "Tobias died in the spring, of his chest."], last)


def test_is_silent_about_a_dream() -> None:
    dies = [*MARTA, "Tobias died in the spring, of his chest."]
    told = "Ilse dreamed that she went down to the ferry. The lamp was lit. “It’s a good light,” said Tobias."
    assert found_in(CHECK, [*ILSE, *NIGHT], dies, ["It rained.", told.replace("dreamed that she", "woke, and")])
    assert not found_in(CHECK, [*ILSE, *NIGHT], dies, ["It rained.", told])
    spoken = ["In her dream the lamp was lit.", "“It’s a good light,” said Tobias."]
    assert not found_in(CHECK, [*ILSE, *NIGHT], dies, ["It rained.", *spoken])


def test_what_seems_to_say_says_nothing() -> None:
    dies = [*MARTA, "Tobias died in the spring, of his chest."]
    assert not found_in(CHECK, [*ILSE, *NIGHT], dies, ["It rained.", "Tobias seemed to say, “Have you forgotten me?”"])


def test_asks_about_a_name_that_is_also_a_word() -> None:
    silver = ["Silver came in.", "“No,” said Silver.", "“Yes,” said Silver. He sat down.", "Silver laughed at him."]
    dies = ["They called him. He fell, and did not get up again. Silver was dead."]
    assert len(found_in(CHECK, [*ILSE, *silver], dies, ["It rained.", "“No,” said Silver."])) == 1


BACK = ["It was the 3rd of May, 1871. The river was high.", "“Sit down,” said Marta. Marta was slow."]


def test_asks_where_the_telling_went_back_before_somebody_died() -> None:
    late = ["It was the 9th of May, 1880. The river was low.", "“Sit down,” said Marta. Marta was slow."]
    dies = [*BACK, "Tobias died in the spring, of his chest."]
    assert len(found_in(CHECK, ILSE, late, dies, ["It was the 4th of May, 1871.", *NIGHT])) == 1
    assert not found_in(CHECK, ILSE, late, dies, ["It was the 4th of May, 1869.", *NIGHT])
    assert not found_in(CHECK, ILSE, [*late, dies[-1]], ["It was the 4th of May, 1871.", *NIGHT])


def test_a_frame_told_first_does_not_send_the_whole_book_back() -> None:
    frame = [["It was the 9th of May, 1880. The river was low."], ["It was the 11th of May, 1880."]]
    rain, last = [["It rained."]] * 4, ["It was the 5th of May, 1871.", *NIGHT]
    dies = [*ILSE, "Tobias died in the spring, of his chest."]
    assert len(found_in(CHECK, *frame, dies, ["It was the 3rd of May, 1871.", *MARTA], *rain, last)) == 1
    assert not found_in(CHECK, *frame, dies, last, *rain)


def test_an_aunt_of_that_name_is_somebody_else() -> None:
    middle = [*MARTA, "On the Friday poor Aunt Marta died in her cottage."]
    assert not found_in(CHECK, ILSE, middle, ["It rained.", "“No,” said Marta."])
    assert found_in(CHECK, ILSE, middle, ["It rained.", "“No,” said Aunt Marta."])


def test_asks_about_a_death_told_after_another_that_nobody_outlives() -> None:
    middle = [*MARTA, "On the Friday poor Aunt Marta died in her cottage.", "Marta was killed by a horse."]
    (one,) = found_in(CHECK, ILSE, middle, ["It rained.", "“No,” said Marta."])
    assert one.evidence[0].quote == "Marta was killed by a horse."


@pytest.mark.parametrize(
    "last",
    [
        ["Tobias had called her in, and had told her to sit.", "“What for?”", "“It is time,” said Tobias."],
        ["Tobias’d taken her by the wrist.", "“What for?”", "“It is time,” said Tobias, and let go."],
        ["“It is time,” said Tobias. He did not speak of it again before he died."],
        ["Six months before, she was at the weir with him.", "“It is time,” said Tobias."],
        ["It was the last time she saw the pole in his hand.", "“It is time,” said Tobias."],
    ],
)
def test_is_silent_about_what_is_remembered_of_the_dead(last: list[str]) -> None:
    assert not found_in(CHECK, ILSE, [*MARTA, "Tobias died in the spring, of his chest."], ["It rained.", *last])


def test_what_somebody_else_had_done_leads_to_no_memory() -> None:
    last = ["It rained.", "Marta had called her in.", "“What for?”", "“It is time,” said Tobias."]
    assert len(found_in(CHECK, ILSE, [*MARTA, "Tobias died in the spring, of his chest."], last)) == 1
