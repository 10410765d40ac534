"""Thirty more ways to tell of a mark and its side, kept aside while the reading was mended: the share that is read.

The sentences are invented by whoever mended the reading, so the share is higher than of strangers' sentences: of 24
written after it, 5 were read at first (19 since, in `test_sided`)."""

from afterdraft.questions.sided.reading import sided

READ = 26  # of these, measured once, when the reading was mended
WAYS = (
    ("She offered her right hand, and kept what was left of the other in her pocket.", "maimed hand", "left"),
    ("“Come round to my right side,” said the old man. “I’m deaf on the other.”", "deaf ear", "left"),
    ("Her left eye, the seeing one, followed him.", "blind eye", "right"),
    ("He turned his head to bring the right ear round, which was the one that worked.", "deaf ear", "left"),
    ("The shell had taken his right arm off at the shoulder.", "lost arm", "right"),
    ("She wore the built-up boot on her left foot.", "lame leg", "left"),
    ("His left leg was an inch shorter than the other, and he swung it.", "lame leg", "left"),
    ("He knocked twice on his left shin, and it rang like a door: wood, from the knee down.", "false leg", "left"),
    ("With the right hand he dealt; the other, with its three fingers, held the cards.", "maimed hand", "left"),
    ("The left side of her face was puckered with old burns.", "scar on the cheek", "left"),
    ("On the inside of her left wrist was a tattoo of a swallow.", "tattoo on the wrist", "left"),
    ("Her arm was in plaster, the left one, and she ate with a spoon.", "injured arm", "left"),
    ("He lit it one-handed, the right arm being strapped across his chest in a sling.", "injured arm", "right"),
    (
        "He had one shoe on, the right, and on the other leg a cast that the whole school had signed.",
        "leg in a cast",
        "left",
    ),
    (
        "He held the reins in his right, the left hand being wrapped in a strip of her petticoat.",
        "injured hand",
        "left",
    ),
    ("She put the cup into his left hand, the whole one.", "maimed hand", "right"),
    ("I always walked on his right, since the left ear had gone in the war.", "deaf ear", "left"),
    ("A thorn had had his right eye when he was six.", "blind eye", "right"),
    ("The patch had slipped, and under it the left eye was shut and sunken.", "blind eye", "left"),
    (
        "He was missing the thumb and a finger, and it was the right hand, poor devil, the hand he wrote with.",
        "maimed hand",
        "right",
    ),
    ("“They took three fingers off the left,” he said, and spread those that remained.", "maimed hand", "left"),
    ("He had only the stumps of two fingers on his left hand.", "maimed hand", "left"),
    ("He carried the hook, which was his right hand, inside his coat.", "maimed hand", "right"),
    ("He had one arm, and that the left.", "lost arm", "right"),
    ("His right leg had been off at the knee since Loos.", "false leg", "right"),
    ("She leaned on the stick, because the right hip had never mended.", "bad hip", "right"),
    ("It was the right knee that told him about the weather.", "bad knee", "right"),
    ("He walked with a limp, the right leg coming round a little late.", "lame leg", "right"),
    ("She had a dimple in one cheek only, the left.", "dimple on the cheek", "left"),
    ("He had a strawberry mark as big as a plum under the right ear.", "strawberry mark on the ear", "right"),
)


def test_as_many_are_read_as_when_it_was_measured() -> None:
    read = [said for said, kind, side in WAYS if {one.side for one in sided(said) if one.kind == kind} == {side}]
    assert len(read) >= READ
