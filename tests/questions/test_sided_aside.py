"""More ways to tell of a mark and its side, thirty and later forty, kept aside while the reading was mended: the share
that is read.

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


READ_LATER = 25  # of these, written when hurts were added and the reading had been mended, and mended no more by them
WAYS_LATER = (
    ("He had a left hand like a mitten, three fingers gone and the thumb left to do for all.", "maimed hand", "left"),
    (
        "She could not take her eyes from the right hand, which ended in two fingers and a ridge.",
        "maimed hand",
        "right",
    ),
    ("“Mind the left,” he said, “there’s not much of it,” and she shook what there was.", "maimed hand", "left"),
    ("When he spread his hands on the bar, the right was two short.", "maimed hand", "right"),
    ("The fourth finger of his left hand was a stump with a nail on it.", "maimed hand", "left"),
    ("He’d given the end of his right thumb to the railway.", "maimed hand", "right"),
    ("His left hand, with the missing finger, was the one he shaved with.", "maimed hand", "left"),
    ("The frost had had three toes off her right foot.", "false leg", "right"),
    ("He never took off the glove that hid what was wrong with his left hand.", "maimed hand", "left"),
    ("She hobbled in with her right knee bandaged.", "injured leg", "right"),
    ("The left knee had been troubling him since the spring.", "bad knee", "left"),
    ("He grunted and swung the bad leg, the right, out of the car.", "lame leg", "right"),
    ("His left leg was a good inch short.", "lame leg", "left"),
    ("The hip that had been replaced was the left.", "bad hip", "left"),
    ("He leaned his good ear, the right, toward the grille.", "deaf ear", "left"),
    ("Nobody had told her he was deaf on that side, the left.", "deaf ear", "left"),
    ("“You’ll have to shout,” he said. “That one’s gone.” He tapped his left ear.", "deaf ear", "left"),
    ("The aid in her right ear whistled.", "deaf ear", "right"),
    ("His left eye wandered a little when he was tired.", "weak eye", "left"),
    ("He looked at her with his right eye, since the left was glass.", "blind eye", "left"),
    ("The cataract in her right eye gave it a blue bloom.", "weak eye", "right"),
    ("He’d lost an eye, the left, to a champagne cork.", "blind eye", "left"),
    ("The wire had gone through her left palm like cheese.", "injured hand", "left"),
    ("She wore a grey woollen glove over the bandage on her left hand.", "injured hand", "left"),
    ("His right hand was bandaged to the fingertips.", "injured hand", "right"),
    ("She held out the hand that had been burned, the left.", "injured hand", "left"),
    ("There was a fresh plaster across the knuckles of his right hand.", "injured hand", "right"),
    ("Three of the fingers on her left hand were taped together.", "injured hand", "left"),
    ("He had gashed his right hand on the tin and tied it up in his tie.", "injured hand", "right"),
    ("Her left arm was still in the sling they had given her at Perth.", "injured arm", "left"),
    ("He’d broken the left arm, not badly, and was rather proud of it.", "injured arm", "left"),
    ("Her right shoulder was black and blue.", "injured arm", "right"),
    ("He was on two sticks, with his left foot in plaster.", "leg in a cast", "left"),
    ("It was his left leg he had broken.", "leg in a cast", "left"),
    ("He limped a little on the right leg after the fall.", "lame leg", "right"),
    ("A cut on her right cheekbone had been closed with tape.", "injured cheek", "right"),
    ("The left side of his face was a bruise.", "injured cheek", "left"),
    ("There was a port-wine stain on the left side of her neck.", "port-wine stain on the neck", "left"),
    ("The tattoo on his right forearm said MARIE.", "tattoo on the forearm", "right"),
    ("His left arm hung useless after the stroke.", "weak side", "left"),
)


def test_of_ways_written_later_as_many_are_read_as_then() -> None:
    read = [said for said, kind, side in WAYS_LATER if {one.side for one in sided(said) if one.kind == kind} == {side}]
    assert len(read) >= READ_LATER
