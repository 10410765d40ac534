"""Marks of a body that are on one side, as words tell them; the sentences are invented, the ways to say it common."""

import pytest

from afterdraft.questions.sided import sided


@pytest.mark.parametrize(
    ("said", "kind", "side"),
    [
        ("She had gone stone-deaf in the right ear after the shelling.", "deaf ear", "right"),
        ("The bell rang on his left side, where he never heard it.", "deaf ear", "left"),
        ("You had to keep to the window, for he heard nothing on the right.", "deaf ear", "right"),
        ("Her left ear, the deaf one, was to the wall.", "deaf ear", "left"),
        ("His left ear had been no use since the fever.", "deaf ear", "left"),
        ("It was the right eye that he had lost, as a child, to a thorn.", "blind eye", "right"),
        ("She bent to her good left ear.", "deaf ear", "right"),
        ("His right ear, the good one, was at the door.", "deaf ear", "left"),
        ("His left eye was glass and looked at nobody.", "blind eye", "left"),
        ("He wore a patch over his right eye.", "blind eye", "right"),
        ("She was blind in one eye, the left.", "blind eye", "left"),
        ("He had put out his left eye on a thorn.", "blind eye", "left"),
        ("He took it in his left, and she saw that the hand was short of two fingers.", "maimed hand", "left"),
        ("He held on with his sound left hand.", "maimed hand", "right"),
        ("He had lost two fingers of his right hand at the sawmill.", "maimed hand", "right"),
        ("The little finger was missing from his left hand.", "maimed hand", "left"),
        ("The thumb of his left hand was gone.", "maimed hand", "left"),
        ("It was his left hand, the one with the ring finger cut short at the joint.", "maimed hand", "left"),
        ("I watched the short finger on the right one go up the rope.", "maimed hand", "right"),
        ("He wrote with his right hand, the left being short of a thumb.", "maimed hand", "left"),
        ("His right hand had only three fingers.", "maimed hand", "right"),
        ("His left sleeve was pinned up across his chest.", "lost arm", "left"),
        ("The stump of his right arm was bare.", "lost arm", "right"),
        ("He knocked with his wooden left leg.", "false leg", "left"),
        ("He had a cork leg, the right, and was proud of it.", "false leg", "right"),
        ("He had lost his left leg at the knee.", "false leg", "left"),
        ("She dragged her left foot.", "lame leg", "left"),
        ("Her bad knee, the right, had swollen.", "bad knee", "right"),
        ("Her right knee was the bad one.", "bad knee", "right"),
        ("He came over from the clinic with his left arm in a cast.", "arm in a cast", "left"),
        ("He had broken his right wrist on the rocks.", "arm in a cast", "right"),
        ("On the little finger of his left hand he wore a signet ring.", "signet ring", "left"),
        ("There was an anchor tattooed on his left forearm.", "tattoo on the forearm", "left"),
        ("Her left cheek had a small brown mole on it.", "mole on the cheek", "left"),
    ],
)
def test_what_is_marked_and_on_which_side(said: str, kind: str, side: str) -> None:
    assert (kind, side) in {(one.kind, one.side) for one in sided(said)}


@pytest.mark.parametrize(
    "said",
    [
        "He put his right hand on the deaf man’s shoulder.",
        "He had a wooden leg, and put his left foot on the stair.",
        "In the mirror his left ear was the deaf one.",
        "He held the stump of a cigar in his left hand.",
        "His left hand broke the seal.",
        "The fingers of his left hand had gone numb.",
        "She carried an empty basket on her left arm.",
        "A brooch was pinned to her left shoulder.",
        "He was quite right, and blind to nothing.",
        "He left the deaf boy at the school.",
        "She was deaf, and sat on the left side of the table.",
        "He had lost his hat, and held his left hand to his head.",
        "He was not deaf in the left ear.",
        "He heard nothing, and turned to the right.",
        "The tattoo was on the left forearm or the right.",
    ],
)
def test_silent_where_the_side_is_of_something_else(said: str) -> None:
    assert not list(sided(said))
