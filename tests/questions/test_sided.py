"""Marks of a body that are on one side, as words tell them; the sentences are invented, the ways to say it common."""

import pytest

from afterdraft.questions.sided.reading import sided


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
        ("He came over from the clinic with his left arm in a cast.", "injured arm", "left"),
        ("He had broken his right wrist on the rocks.", "injured arm", "right"),
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


@pytest.mark.parametrize(
    ("said", "kind", "side"),
    [
        ("He gave me his left hand to shake. It had no thumb.", "maimed hand", "left"),
        ("He was deaf in one ear, from the guns. It was the left.", "deaf ear", "left"),
        (
            "He laid the left hand on the book, the one that a thresher had left three fingers of.",
            "maimed hand",
            "left",
        ),
        ("It was only the right eye that moved; the left was glass.", "blind eye", "left"),
        ("His left arm ended at the elbow.", "lost arm", "left"),
        ("He wrote with the left now, having left his right arm at Arras.", "lost arm", "right"),
        ("He came down heavily on the good leg, the right.", "lame leg", "left"),
        ("The saw had had two fingers off his left hand before he was twenty.", "maimed hand", "left"),
        ("A scar ran the length of his left cheek, from the eye to the lip.", "scar on the cheek", "left"),
        ("There was a swallow tattooed on the back of his right hand.", "tattoo on the hand", "right"),
        ("He wore one gold ring, in the left ear, like a sailor.", "earring", "left"),
        ("She had her foot up on a stool, the right, in plaster to the knee.", "leg in a cast", "right"),
        ("She hopped in on her left foot, the other in a cast as big as a churn.", "leg in a cast", "right"),
        ("The bandage on his left hand had come loose.", "injured hand", "left"),
        ("He patted his pocket with the hand that had all its fingers, the right.", "maimed hand", "left"),
        ("He cupped a hand to his left ear; the other had been dead since the quarry.", "deaf ear", "right"),
        ("He looked at her out of the eye that he had left, the right one.", "blind eye", "left"),
        ("Her left eye was clouded like a marble, and the right did the work of both.", "blind eye", "left"),
        ("The right hand was well enough. The left was a claw.", "maimed hand", "left"),
        ("The ring finger of her right hand stopped at the first joint.", "maimed hand", "right"),
        ("His left hand was a steel hook.", "maimed hand", "left"),
        ("The sleeve of his coat was pinned up, the left sleeve, with a nappy pin.", "lost arm", "left"),
        ("He shook hands with the left, for there was nothing in his right sleeve.", "lost arm", "right"),
        ("The left leg of his trousers was folded up and pinned.", "false leg", "left"),
        (
            "He eased himself down with the left knee stuck straight out, the one that would not bend.",
            "bad knee",
            "left",
        ),
        ("Her left foot turned in, and had since she was born.", "lame leg", "left"),
        ("The calliper on her left leg clicked on the stairs.", "lame leg", "left"),
        ("The mole was on the left cheek, just where the veil ended.", "mole on the cheek", "left"),
        ("She had only the one good eye, the left, and it missed nothing.", "blind eye", "right"),
        ("The propeller had had the ends of three fingers off his right hand.", "maimed hand", "right"),
        ("He was deaf as a post on the left side, and you had to shout.", "deaf ear", "left"),
        ("“Speak up. This is my bad ear, the right.”", "deaf ear", "right"),
        ("He tapped the glass eye, the left one, with his pipe.", "blind eye", "left"),
        ("His left eye was a false one and a size too large.", "blind eye", "left"),
        ("Below the right knee there was nothing but a peg.", "false leg", "right"),
        ("He walked stiffly, sparing his left leg.", "lame leg", "left"),
        ("The sabre cut on his left cheek went white when he was angry.", "scar on the cheek", "left"),
        ("His left arm had stopped at Gallipoli.", "lost arm", "left"),
        ("She had lost the hearing in her right ear to measles.", "deaf ear", "right"),
        ("He gave his left hand, because a mine had had most of the right.", "maimed hand", "right"),
        ("The right was the leg with the plaster on it.", "leg in a cast", "right"),
        ("One of his hands, the left, was webbed with scar tissue and would not close.", "maimed hand", "left"),
        ("A purple birthmark covered the left half of her face.", "birthmark on the cheek", "left"),
        ("His right eye had been closed for good by a swan.", "blind eye", "right"),
        ("A small blue anchor had been tattooed inside his right wrist.", "tattoo on the wrist", "right"),
        ("He crossed his legs, the tin one, which was the left, on top.", "false leg", "left"),
        ("The index finger of his right hand was cut off square at the knuckle.", "maimed hand", "right"),
    ],
)
def test_however_it_is_told(said: str, kind: str, side: str) -> None:
    """By ‘it’, ‘the left’, ‘the other’, ‘the whole one’, what is left of it; over two sentences."""
    assert {one.side for one in sided(said) if one.kind == kind} == {side}


@pytest.mark.parametrize(
    "said",
    [
        "The whole of his left hand was wet.",
        "He took the left turning; the other was blocked.",
        "What was left of the right wing of the house had no roof.",
        "He broke bread with his left hand. It had no taste.",
        "He lifted his right hand. It was empty.",
        "He put out his left foot, and there was nothing.",
        "He spared nobody, and set his left foot on the stair.",
        "He held the pail with the plaster in his left hand.",
        "He gave her his right hand (the left shoulder, the crippled one, was to the wall).",
        "He was right-handed, and carried the gun in his left.",
        "His left hand rested on the stump of an oak.",
        "He held the lame dog with his left hand.",
        "She took his arm, the bandaged one, in her left hand.",
        "He tied the bandage with his left hand.",
        "He pinched it between the thumb and two fingers of the right hand.",
        "He faced the glass, and his left ear was the deaf one.",
        "“You’re right,” he said. “The other is broken.”",
        "He put his left hand on her bad knee.",
        "His left leg hurt him, and he stood on the other.",
        "With two fingers of his left hand he drew the curtain.",
        "She had kicked off her left shoe and stood with her bare left foot on the boot.",
        "He had his left hand in his pocket, and in the other a steel hook for the ice.",
        "She had a gold ring in her left hand.",
        "The left bank was burnt, and the other was in ruins.",
        "He kept his right eye on the road, and the other on his blind mother.",
        "He put his left arm round her; it was the good one of his days.",
        "She gave him her left hand, and he did not see that it was cold.",
        "Of his two hands the left was the quicker.",
        "He wiped the scar of the saw from the plank with his left hand.",
        "He took the deaf man by the left sleeve.",
        "His right arm went round her, and the other was gone to sleep.",
        "His left ear was pressed to the door. It was cold.",
        "He had no time for it, and put out his left hand.",
        "There was no thumb to be seen, for he had on his left glove.",
    ],
)
def test_silent_where_it_only_looks_so(said: str) -> None:
    assert not list(sided(said))
