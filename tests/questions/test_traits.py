"""Looks that differ: the text is invented; what goes together is common sense."""

import pytest

from afterdraft.questions.each.traits import CHECK
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def test_asks_where_eyes_are_of_two_colours() -> None:
    one = found_in(CHECK, [*ILSE, "Ilse had green eyes."], MARTA, [*NIGHT, "Ilse’s brown eyes were on the lamp."])
    assert len(one) == 1
    assert (one[0].words["name"], one[0].words["first"], one[0].words["other"]) == ("Ilse", "green", "brown")
    assert [span.scene for span in one[0].evidence] == [0, 2]


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("“Now,” said Ilse, lifting her green eyes.", "Ilse, whose eyes were brown, sat down."),
        ("Tobias sat still. The dark eyes were half shut.", "Tobias, with his blue eyes on the lamp, sat down."),
        ("Ilse had hair the children pulled. Her straw-coloured hair was long.", "Ilse’s hair was black."),
        ("Tobias rubbed the scar on his left cheek.", "The scar on Tobias’s right cheek was red."),
        ("Ilse’s green eyes were half shut, as if the light hurt them.", "Ilse’s brown eyes were open."),
        ("Tobias, whose beard was ginger, nodded, as if he knew.", "Tobias stroked his black beard."),
        ("She turned. Ilse turned round, and pushed back her black hair.", "Ilse’s hair was golden."),
        ("Ilse’s green eyes were wet.", "Ilse held her gaze on the lamp, those brown eyes drawn up against the light."),
        ("Tobias had blue eyes.", "Tobias lifted his head, and the lamp shone on the brown eyes and the wet beard."),
        ("Tobias had blue eyes.", "Tobias’s eyes, brown and quite steady, went to the lamp and did not leave it."),
        ("Ilse had a long face, a scar on the chin, and grey eyes, a really pale grey.", "Ilse’s brown eyes were wet."),
        ("By the lamp was Ilse, very upright, with a wool jacket and pale blue eyes.", "Ilse’s brown eyes were wet."),
        ("Ilse has a wide face with brown eyes in it.", "Ilse had the grey eyes of somebody bred to look at water."),
        ("Tobias sat there with his mother’s eyes, which were brown.", "Tobias shut his blue eyes."),
        ("Ilse’s green eyes were wet.", "Ilse’s wet hair lay like weed, and her eyes were as brown as beer."),
        ("Ilse’s brown eyes were wet.", "Ilse had eyes of that pale grey that looks blue by the sea."),
        ("Tobias was lame of the left leg.", "Tobias, who limped with the right leg, sat down."),
    ],
)
def test_asks_however_it_is_told(first: str, other: str) -> None:
    assert len(found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])) == 1


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Ilse had blue eyes.", "Ilse’s grey eyes were on the lamp."),
        ("Ilse had green eyes.", "Marta’s brown eyes were on the lamp."),
        ("Ilse had black hair then.", "Ilse had grey hair now."),
        ("Ilse had blue eyes.", "Ilse sat down, and her eyes were dark with anger."),
        ("Ilse had blue eyes.", "The blue and black eyes of Ilse were all that he saw."),
        ("Tobias had black eyes.", "His face was so thin that Tobias thought of fever; but his blue eyes were young."),
        ("Marta had black eyes.", "Marta heard her greet the lad, and knew how brilliant her blue eyes became."),
        ("Ilse had black hair then.", "Ilse turned grey, and her hair had turned red in the wet."),
        ("Tobias rubbed the scar on his left cheek.", "The scar on Tobias’s right hand was red."),
        ("Ilse had green eyes.", "Ilse turned her eyes on the lamp, which had grown brown."),
        ("Ilse had green eyes.", "Ilse’s hair lay flat, and like brown eyes the lamps looked back at her."),
        ("The baby was Tobias. Tobias had gold hair.", "Tobias had black hair."),
        ("Ilse had grey eyes.", "Ilse sat still. Her eyes were dark and full of fear."),
        ("Tobias was tall.", "Tobias was short and offhand with the men."),
        ("Tobias had red hair.", "A man stood at the lamp. He was tired. His pale fair hair was wet."),
        ("Ilse’s hair was fair.", "Ilse had on the red hair, clear to the waist."),
        ("Ilse had green eyes.", "Ilse sat by a girl with brown eyes."),
        ("Ilse had green eyes.", "Ilse kept her gaze on a boy, whose brown eyes were wet."),
        ("Ilse had green eyes.", "Ilse had never seen the brown eyes of somebody who lies."),
    ],
)
def test_is_silent_about_shades_other_people_and_grey_hair(first: str, other: str) -> None:
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])


def test_is_silent_about_somebody_told_of_by_what_he_is() -> None:
    blue, black = "Tobias had blue eyes.", "Tobias bent down. The old sailor on the straw rolled his black eyes."
    assert not found_in(CHECK, [*ILSE, blue], MARTA, [*NIGHT, black])
    assert found_in(CHECK, [*ILSE, blue], MARTA, [*NIGHT, black.replace("The old sailor on the straw", "Tobias")])


def test_a_name_that_is_also_a_word_has_its_own_looks() -> None:
    gold = ["Mr. Gold came in.", "“No,” said Mr. Gold.", "“Yes,” said Gold. He sat down.", "Gold laughed at him."]
    first, other = [*ILSE, *gold, "Tobias had black eyes."], [*NIGHT, "Tobias let go. Gold rubbed his blue eyes."]
    assert not found_in(CHECK, first, MARTA, other)


RED, BLACK = "Ilse had red hair, cropped like a boy’s.", "Ilse’s hair was as black as tar."


@pytest.mark.parametrize(
    "told",
    [
        "“What in God’s name have you done?” said Marta.",
        "“What have you done to your hair?” said Marta.",
        "“It’ll grow out,” said Ilse. “I lost a bet.”",
        "“Your hair!” said Marta.",
        "“Do you like it?” said Ilse. “It came out of a packet. I’ve dyed it.”",
        "Ilse had bleached it in the sink, with the window open.",
        "“You’ve been to the hairdresser,” said Marta.",
        "The red was showing at the roots.",
        "It was a good wig.",
        "“I hardly knew you,” said Marta. “It’s a fine disguise.”",
        "Marta stared at her hair and said nothing.",
    ],
)
def test_is_silent_where_hair_is_dyed_or_astonishes_beside_either(told: str) -> None:
    assert found_in(CHECK, [*ILSE, RED], MARTA, [*NIGHT, BLACK])
    assert not found_in(CHECK, [*ILSE, RED], MARTA, [*NIGHT, BLACK, told])
    assert not found_in(CHECK, [*ILSE, RED], MARTA, [*NIGHT, told, BLACK])


@pytest.mark.parametrize(
    "told",
    [
        "Ilse had dyed her hair in the sink.",
        "Ilse’s hair was growing out, and Marta laughed at it.",
        "Ilse minded the smell of the hair dye.",
        "Ilse had got a wig for her poor cropped head.",
    ],
)
def test_is_silent_where_hair_is_dyed_between(told: str) -> None:
    assert not found_in(CHECK, [*ILSE, RED], [*MARTA, told, *MARTA], [*NIGHT, BLACK])


@pytest.mark.parametrize(
    "told",
    [
        "On Saturdays Ilse washed it in soda, and on Sunday her hair was red.",
        "The lampblack got into everybody’s hair.",
        "There was flour in her hair, and on her sleeves.",
    ],
)
def test_is_silent_where_something_lies_on_it(told: str) -> None:
    assert not found_in(CHECK, [*ILSE, RED], MARTA, [*NIGHT, BLACK, told])


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Ilse rubbed the scar that she had on the left cheek.", "Ilse had a scar across her right cheek."),
        ("Ilse, whose eyes were very dark, sat down.", "Ilse, whose eyes were pale green, sat down."),
    ],
)
def test_asks_about_what_somebody_has_for_good(first: str, other: str) -> None:
    assert found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])


@pytest.mark.parametrize("looks", ["considered her, under his eyebrows", "looked at her for a while", "studied Marta"])
def test_eyes_that_somebody_looks_into_are_not_theirs(looks: str) -> None:
    own, said = "Tobias had blue eyes, and very pale ones.", "“Ay,” said Tobias. He {}: the sandy hair, {} brown eyes."
    assert found_in(CHECK, [*ILSE, own], MARTA, [*NIGHT, said.format("was a sight", "his")])
    assert not found_in(CHECK, [*ILSE, own], MARTA, [*NIGHT, said.format(looks, "the")])


@pytest.mark.parametrize(
    "told",
    [
        "Marta had dyed her hair in the sink. Ilse laughed.",
        "An old man with a bleached beard came by.",
        "“I will give a good brush to your hair,” said Marta.",
    ],
)
def test_hair_of_others_accounts_for_nothing(told: str) -> None:
    assert found_in(CHECK, [*ILSE, RED], [*MARTA, told, *MARTA], [*NIGHT, BLACK])


def test_dyed_wool_and_other_peoples_roots_account_for_no_hair() -> None:
    for told in ("Marta had dyed the wool in the sink.", "The roots of the old tree were in the drain."):
        assert found_in(CHECK, [*ILSE, RED], [*MARTA, told, *MARTA], [*NIGHT, BLACK])


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Ilse had red hair.", "Ilse came in out of the rain, and her wet hair was black."),
        ("Tobias rubbed the scar on his left cheek.", "In the mirror Tobias saw the scar on his right cheek."),
        ("Ilse had blue eyes.", "Ilse’s brown eyes were sore from the contact lenses."),
    ],
)
def test_is_silent_about_wet_hair_mirrors_and_lenses(first: str, other: str) -> None:
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])
