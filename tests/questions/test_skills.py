"""What somebody cannot do, and where it is done: the sentences are invented, the ways of saying it common."""

import pytest

from afterdraft.questions.skill_words import SKILLS
from afterdraft.questions.skills import claims, deeds, teaches


@pytest.mark.parametrize(
    ("said", "skill"),
    [
        ("I can’t swim, you see.", "swim"),
        ("I CAN'T SWIM.", "swim"),
        ("She could not swim a stroke.", "swim"),
        ("He had never been taught to swim.", "swim"),
        ("Nobody had ever taught her to swim.", "swim"),
        ("She was seventy and had never in her life learned to drive; her husband drove.", "drive"),
        ("'I don't drive,' she explained.", "drive"),
        ("Never learned to drive, and never would.", "drive"),
        ("She had never driven a car.", "drive"),
        ("He didn’t know how to ride a bicycle.", "ride a bicycle"),
        ("He had never learnt to ride.", "ride"),
        ("She couldn’t boil an egg.", "cook"),
        ("She never learned how to type.", "type"),
        ("He could neither read nor write.", "read"),
        ("The old man was illiterate.", "read"),
        ("She doesn’t speak French.", "speak French"),
        ("He had not a word of German.", "speak German"),
        ("She can’t play the piano.", "play the piano"),
        ("“I don’t drink,” he said.", "drink"),
        ("He was a strict teetotaller.", "drink"),
        ("He had never touched a drop, or so they said.", "drink"),
        ("She had never smoked.", "smoke"),
        ("He’s a vegetarian.", "eat meat"),
        ("She hated coffee.", "drink coffee"),
        ("He took no sugar.", "take sugar"),
        ("He never wore a watch.", "wear a watch"),
        ("She had never sat on a horse.", "ride"),
        ("She had never been behind a wheel in her life.", "drive"),
        ("She had never held a gun.", "fire a gun"),
        ("He hadn’t touched a drop since the war.", "drink"),
        ("Tom, who had never been taught to row, sat down.", "row"),
        ("She doesn’t wear glasses.", "wear glasses"),
    ],
)
def test_what_is_claimed(said: str, skill: str) -> None:
    assert skill in [one.skill for one in claims(said)]


@pytest.mark.parametrize(
    "said",
    [
        "He could not swim again until June.",
        "He grew up in the house of an illiterate father.",
        "She could not drive in this snow.",
        "I couldn’t drive home.",
        "She could not read his face.",
        "He can’t play the innocent.",
        "You can’t ride roughshod over them.",
        "She could not cook the goose that day.",
        "He didn’t drink any more.",
        "I don’t drink so very much.",
        "As a child he could not swim.",
        "If I could not swim, I would say so.",
        "She pretended that she could not swim.",
        "Can’t you swim?",
        "It was hot chocolate that I can’t drink.",
        "They went to a vegetarian restaurant.",
        "He could not whistle up a wind.",
    ],
)
def test_what_is_said_of_today_or_of_something_else_is_no_claim(said: str) -> None:
    assert not list(claims(said))


@pytest.mark.parametrize(
    ("said", "skill"),
    [
        ("He swam as he did sums, steadily.", "swim"),
        ("He struck out for the far bank.", "swim"),
        ("she’d driven the van over by herself", "drive"),
        ("She wound the window down as she drove the three of them along the quay.", "drive"),
        ("He got behind the wheel.", "drive"),
        ("He was a strong swimmer.", "swim"),
        ("She had been a bus driver for six years.", "drive"),
        ("He ordered a large whisky.", "drink"),
        ("She took a cigarette from the box.", "smoke"),
        ("He fired the rifle.", "fire a gun"),
        ("He rode the grey mare home.", "ride"),
        ("She pedalled up the hill.", "ride a bicycle"),
        ("She cooked him supper.", "cook"),
        ("She read the letter twice.", "read"),
        ("“Good,” he said in French.", "speak French"),
        ("He played two waltzes on the piano.", "play the piano"),
        ("He poured himself a large whisky.", "drink"),
        ("He lit a cigarette.", "smoke"),
        ("She cut into her steak.", "eat meat"),
        ("She sipped her coffee.", "drink coffee"),
        ("He stirred two sugars into it.", "take sugar"),
        ("He glanced at his watch.", "wear a watch"),
    ],
)
def test_what_is_done(said: str, skill: str) -> None:
    assert list(deeds(said, skill))


@pytest.mark.parametrize(
    "said",
    [
        "Her eyes swam with tears.",
        "She was driven home.",
        "She had been driven to the station.",
        "He drove her mad.",
        "He drove a hard bargain.",
        "He drove the nail home.",
        "He drove them to despair.",
        "She would have driven the car.",
        "He rode to the station on the bus.",
        "He read her face.",
        "She knitted her brows.",
        "The chicken smoked in the oven.",
        "He sipped his ginger beer.",
        "“Good,” he said in bad French.",
        "She was a poor swimmer.",
        "She was not a good cook.",
        "He shot a look at her.",
        "She had never driven the van.",
        "He took his glasses to the bar and poured the lemonade.",
    ],
)
def test_what_only_sounds_like_it_is_not_done(said: str) -> None:
    assert not [skill for skill in SKILLS if skill != "wear glasses" and list(deeds(said, skill))]


def test_lessons_are_told_of_what_they_teach() -> None:
    assert teaches("Tom taught her to drive that winter.", "drive")
    assert teaches("She had six driving lessons.", "drive")
    assert teaches("He learned to swim at last.", "swim")
    assert not teaches("She never learned to drive.", "drive")
    assert not teaches("Tom taught her to swim.", "drive")
    assert not teaches("The lesson was heard by a crowd.", "row")
    assert not teaches("The lesson was over, and they all went out and stood in the yard until he drove up.", "drive")
