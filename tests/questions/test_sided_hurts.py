"""Hurts that heal, what is acted, and more ways to tell of a mark; the sentences are invented."""

import pytest

from afterdraft.questions.sided.reading import acted_in, sided


@pytest.mark.parametrize(
    ("said", "kind", "side"),
    [
        ("The shed wanted a door, and his left hand wanted its two smallest fingers.", "maimed hand", "left"),
        ("The mill had kept the first joint of his right forefinger.", "maimed hand", "right"),
        ("He steadied the ladder, and his sound left held the hammer.", "maimed hand", "right"),
        ("His right hand had been through a mangle at the laundry.", "maimed hand", "right"),
        ("“I have a knee that tells me the weather,” he said. “The left one.”", "bad knee", "left"),
        ("His right knee had been full of gravel since Anzio.", "bad knee", "right"),
        ("He sat with his left leg stretched out to spare the knee.", "bad knee", "left"),
        ("She had not a scrap of hearing on the left side.", "deaf ear", "left"),
        ("Half of his right ear was gone.", "maimed ear", "right"),
        ("The stroke had taken the use of her left arm.", "weak side", "left"),
        ("He rolled the bad shoulder, the left one, and winced.", "bad shoulder", "left"),
        ("The nail went into the heel of her right hand.", "injured hand", "right"),
        ("His left hand went in under the blade and was laid open to the wrist.", "injured hand", "left"),
        (
            "He steered with his left hand, and the right one, in its dirty bandage, lay on his knee.",
            "injured hand",
            "right",
        ),
        ("He had wrapped a handkerchief round his left hand.", "injured hand", "left"),
        ("She broke her wrist, the right one, in the second week.", "injured arm", "right"),
        ("She sat down, her left arm strapped to her chest.", "injured arm", "left"),
        ("He took a bullet in the right thigh.", "injured leg", "right"),
        ("The doctor put four stitches in his left eyebrow.", "injured eye", "left"),
        ("There was a yellow bruise on his right cheekbone.", "injured cheek", "right"),
        ("A white streak ran back from her left temple.", "pale streak at the temple", "left"),
        ("A scar divided her right eyebrow.", "scar on the eyebrow", "right"),
        ("He screwed the monocle into his right eye.", "monocle", "right"),
        ("He had a gold tooth on the left that showed when he laughed.", "gold tooth", "left"),
        ("A stud glittered in her left nostril.", "stud in the nostril", "left"),
    ],
)
def test_what_other_writers_would_say(said: str, kind: str, side: str) -> None:
    assert {one.side for one in sided(said) if one.kind == kind} == {side}


def test_how_a_hurt_came_is_told_apart_from_how_it_is_since() -> None:
    assert [one.fresh for one in sided("The nail tore her left palm.")] == [True]
    assert [one.fresh for one in sided("There was a cut across her left palm.")] == [True]
    assert [one.fresh for one in sided("The cut across her left palm was clean.")] == [False]
    assert [one.fresh for one in sided("There was a bandage round her left palm.") if one.kind == "injured hand"][
        -1:
    ] == [False]


@pytest.mark.parametrize(
    "said",
    [
        "Under his left arm, done up in brown paper, was a picture.",
        "He twisted her left arm behind her.",
        "She cast a glance over her left shoulder.",
        "The rope was wound round his left wrist.",
        "He took the rifle sling from his left shoulder.",
        "He took her by the left hand.",
        "The stitches dropped from the needle in her left hand.",
        "He put his left hand into the fire bucket.",
        "She put out the lamp, and felt along the wall with her left hand.",
    ],
)
def test_silent_where_nothing_is_hurt(said: str) -> None:
    assert not list(sided(said))


@pytest.mark.parametrize(
    ("said", "kind", "side"),
    [
        ("He rubbed his left hip.", "bad hip", "left"),
        ("She noticed that the ring finger of his left hand was not there.", "maimed hand", "left"),
        ("He cupped a hand behind his right ear.", "deaf ear", "left"),
        ("He clenched his left hand, and felt the stitches pull.", "injured hand", "left"),
    ],
)
def test_what_is_acted_or_told_loosely_is_weak(said: str, kind: str, side: str) -> None:
    assert {one.side for one in acted_in(said) if one.kind == kind} == {side}
    assert all(one.weak for one in acted_in(said))


@pytest.mark.parametrize(
    "said",
    [
        "With his right hand he felt the bandage.",
        "He wiped the blood off in his right hand.",
        "His right hand picked at the bandage.",
        "The left hand was bandaged, and he wrote with the right.",
        "She put her left hand on his bandage.",
    ],
)
def test_a_hand_that_only_does_something_is_not_told_of(said: str) -> None:
    assert "right" not in {one.side for one in acted_in(said)}
