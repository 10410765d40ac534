"""Cannot, and does: the texts are invented; that nobody drives who never learned it is common sense."""

import pytest

from afterdraft.questions.each.abilities import CHECK
from afterdraft.questions.wording import worded
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

FILLED = "The wind had gone round in the night, and the boats lay with their sterns to the town. " * 2

pytestmark = pytest.mark.slow


def test_asks_where_somebody_does_what_she_never_learned() -> None:
    (one,) = found_in(CHECK, [*ILSE, "Marta had never learned to drive."], MARTA, [*NIGHT, "Marta drove the van home."])
    assert [span.scene for span in one.evidence] == [0, 2]
    asked = worded("ability", one, ("The ferry", "The toll", "Night"))
    said = "“never learned to drive” is said of Marta Kell in “The ferry”, and “drove the van” in “Night”."
    assert asked == f"{said} Are both meant?"


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Tobias could not swim a stroke.", "Tobias took off his boots and swam out to the boat."),
        ("“I can’t swim,” said Tobias. “Not a stroke.”", "Tobias swam across. He was not even out of breath."),
        ("“Tobias can’t swim,” said Marta.", "Tobias pulled off his coat, and swam."),
        ("Nobody had ever taught Tobias to ride.", "Tobias rode the grey mare home."),
        ("Marta did not know how to cook.", "Marta cooked supper for six."),
        ("“I don’t drink,” said Tobias.", "Tobias poured himself a large whisky."),
        ("Tobias had never smoked.", "Tobias sat down and lit a cigarette."),
        ("Marta spoke no German.", "“Sit down,” Marta said in German."),
        ("Tobias could not read or write.", "Tobias read the letter twice."),
        ("Tobias hated coffee.", "Tobias poured himself a cup of coffee."),
        ("Tobias swam across to the mill.", "Tobias had never learned to swim."),
        ("Tobias, who had never learned to row, sat down.", "Tobias rowed the boat across."),
        ("Tobias had never learned to row.", "He was astonished at the noise. " + FILLED + "Tobias rowed across."),
        ("Marta could not drive.", "It was Marta. She came in, and she’d driven the van over by herself."),
    ],
)
def test_asks_however_it_is_told(first: str, other: str) -> None:
    assert len(found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])) == 1


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Tobias could not swim a stroke.", "Ilse swam out to the boat."),
        ("Tobias could not swim a stroke.", "Tobias’s head swam."),
        ("Marta had never learned to drive.", "Marta was driven home."),
        ("Marta had never learned to drive.", "Marta drove a hard bargain."),
        ("Marta had never learned to drive.", "“Marta drove the van home,” said Ilse."),
        ("Marta had never learned to drive.", "Marta would have driven the van home."),
        ("Marta had never learned to drive.", "Marta sat by the man who drove the van home."),
        ("Marta had never learned to drive.", "Marta drove the van home, for the first time."),
        ("Marta had never learned to drive.", "Tobias had taught her to drive. Marta drove the van home."),
        ("Tobias could not read her face.", "Tobias read the letter twice."),
        ("Tobias smoked a cigar.", "“I don’t smoke,” said Tobias."),
        ("Tobias did not smoke.", "Tobias lit her cigarette."),
        ("Tobias pretended that he could not swim.", "Tobias swam out to the boat."),
        ("A look went over her that Tobias couldn’t read.", "Tobias read the letter twice."),
        ("There was something in her face Tobias couldn’t read.", "Tobias read the letter twice."),
        ("Tobias swam across to the mill.", "“But I can’t swim!” said Tobias."),
    ],
)
def test_silent_where_both_can_be(first: str, other: str) -> None:
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])


def test_silent_where_it_is_learned_between() -> None:
    lessons = [*MARTA, "Marta went to the town. Tobias taught her to drive, up and down the yard."]
    first, other = [*ILSE, "Marta had never learned to drive."], [*NIGHT, "Marta drove the van home."]
    assert not found_in(CHECK, first, lessons, other)
    assert found_in(CHECK, first, [*MARTA, "Ilse went to the town. Tobias taught the dog to sit."], other)


def test_silent_within_a_scene_where_it_is_a_joke_or_a_need() -> None:
    assert not found_in(CHECK, [*ILSE, "“I can’t swim,” said Tobias.", "Tobias swam out to the boat."], MARTA)


def test_who_acts_behind_the_tag_is_not_who_says_it() -> None:
    tag = "“I don’t drive,” she explained, when Marta looked past her for the car."
    assert not found_in(CHECK, [*ILSE, tag], MARTA, [*NIGHT, "Marta drove the van home."])
