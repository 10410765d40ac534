"""A mark that changes sides: the texts are invented; that a deaf ear stays on its side is common sense."""

import pytest

from afterdraft.questions.each.sides import CHECK
from afterdraft.questions.wording import worded
from tests.questions.asked import found_in
from tests.questions.people import ILSE, MARTA, NIGHT

pytestmark = pytest.mark.slow


def test_asks_where_a_deaf_ear_changes_sides() -> None:
    (one,) = found_in(
        CHECK, [*ILSE, "Tobias was deaf in the left ear."], MARTA, [*NIGHT, "Tobias turned his good left ear to her."]
    )
    assert [span.scene for span in one.evidence] == [0, 2]
    asked = worded("side", one, ("The ferry", "The toll", "Night"))
    assert asked == "The deaf ear of Tobias is on the left in “The ferry” and on the right in “Night”. Which is meant?"


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Tobias had lost two fingers of his right hand.", "Tobias held on with his sound right hand."),
        ("Tobias’s left eye was glass.", "Tobias, with the black patch over his right eye, sat down."),
        ("Tobias knocked with his wooden left leg.", "Tobias had a wooden leg, the right, and was proud of it."),
        ("Ilse wore a signet ring on her left hand.", "Ilse turned the signet ring on her right hand."),
        ("Tobias had an anchor tattooed on his left forearm.", "The tattoo on Tobias’s right forearm was blue."),
        ("Ilse came with her left arm in a sling.", "Ilse rested the cast on her right arm on the rail."),
        ("Ilse scratched the mole on her left cheek.", "Ilse’s right cheek had a mole on it."),
        ("Tobias sat down. His left sleeve was pinned up.", "Tobias sat down. The stump of his right arm was bare."),
        ("“I’m deaf in my left ear,” said Tobias.", "Tobias was hard of hearing in his right ear."),
        ("Tobias was quick. Marta saw the short finger on the right one.", "Tobias’s left hand lacked a finger."),
        ("Deaf in the left ear, Tobias turned.", "Marta bent to Tobias’s good left ear."),
    ],
)
def test_asks_however_it_is_told(first: str, other: str) -> None:
    assert len(found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])) == 1


def test_he_who_is_not_named_yet_is_the_one_man_who_has_such_a_mark() -> None:
    lean = ["A lean man wrote the names down.", "He took the page in his left, and the hand was short of two fingers."]
    other = [*NIGHT, "Tobias held on with his sound left hand. He nodded, and two fingers of the right were gone."]
    assert len(found_in(CHECK, lean, ILSE, MARTA, other)) == 1


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Tobias was deaf in the left ear.", "Tobias turned his good right ear to her."),
        ("Tobias was deaf in the left ear.", "Ilse was deaf in the right ear."),
        ("Tobias was deaf in the left ear.", "In the mirror the deaf ear of Tobias, the right ear, was red."),
        ("Tobias had lost two fingers of his right hand.", "Tobias took it in his left hand."),
        ("Tobias used his good left hand.", "Tobias used his good right hand."),
        ("Ilse scratched the mole on her left cheek.", "Ilse scratched the mole on her right hand."),
        ("Ilse had a bad left knee.", "Ilse had a wooden leg, the right."),
        ("Tobias had lost the thumb of his left hand and two fingers of his right.", "Tobias sat down."),
        ("Tobias was blind in the left eye.", "Tobias shut his right eye, which was tired."),
        ("Tobias was deaf in the left ear.", "Tobias was right, and deaf to reason."),
    ],
)
def test_silent_where_both_can_be(first: str, other: str) -> None:
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Tobias gave her his left hand. It had no thumb.", "Tobias held out his hand, the left, the whole one."),
        ("Tobias had what the war had spared of his left hand in a pocket.", "Tobias had no thumb on his right hand."),
        ("Tobias came in on the good leg, the right.", "Tobias sat down, the lame right leg stuck out."),
        (
            "Ilse turned her left ear; the other had been dead since May.",
            "Ilse had been deaf in one ear. It was the left.",
        ),
        (
            "Tobias stood on the rail with what Hull had spared of the right hand.",
            "Tobias had a left hand of only three fingers.",
        ),
    ],
)
def test_asks_over_two_sentences_and_by_the_other(first: str, other: str) -> None:
    assert len(found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])) == 1


@pytest.mark.parametrize(
    ("first", "other"),
    [
        (
            "The rope jerked, and the hook went through the palm of Ilse’s left hand.",
            "Ilse unwound the grubby bandage from her right hand.",
        ),
        ("The grey mare kicked Ilse on the left wrist.", "Ilse signed, the strapping on her right wrist being thick."),
        ("Ilse’s left hand was burned by the stove.", "Ilse carried the jug with the right hand in its bandage."),
        ("Ilse twisted her left ankle on the step.", "Ilse’s right ankle, strapped and swollen, was on a chair."),
        ("Ilse had a cut over her left eye.", "Ilse touched the stitches in her right eyebrow."),
        ("Tobias had lost his left thumb to the winch.", "Tobias held up the right hand, which lacked a thumb."),
        (
            "Tobias leaned on the rail to spare his left knee.",
            "Tobias’s right knee had been a torment to him for years.",
        ),
        ("Tobias was deaf in the left ear.", "Tobias lay on his left side, with his good ear in the pillow."),
        ("Ilse wore her watch on her left wrist.", "Ilse wore a big steel watch on her right wrist."),
        ("Ilse dislocated her left shoulder on the weir.", "Ilse sat still, her right arm in a sling."),
    ],
)
def test_asks_of_a_hurt_that_heals_and_of_what_is_worn(first: str, other: str) -> None:
    assert len(found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])) == 1


@pytest.mark.parametrize(
    ("first", "other"),
    [
        ("Ilse twisted her left ankle on the step.", "Ilse twisted her right ankle on the stair."),
        ("Ilse had a cut over her left eye.", "Ilse’s right hand was bandaged."),
        ("Ilse cut her left palm on the hook.", "Ilse pulled at the bandage with her right hand."),
        ("Ilse cut her left palm on the hook.", "Ilse held the bandage in her right hand."),
        ("Ilse cut her left palm on the hook.", "Tobias’s right hand was in a bandage."),
        ("Ilse’s right hand was in a bandage.", "The knife slipped and cut Ilse’s left palm."),
        ("Ilse cut her left palm on the hook, and Ilse burned her right hand.", "Ilse’s right hand was bandaged."),
        ("Ilse cut her left palm on the hook.", "Ilse’s right hand was bruised and swollen."),
        ("Ilse was shot through the left thigh.", "Ilse’s right knee ached, and she rubbed it."),
        ("Ilse’s bandaged hands smelt of tar, and the left hand was in a rag.", "Ilse’s right hand was in a bandage."),
        ("Ilse lifted the jug with her good right hand.", "Ilse’s right hand was in a bandage."),
        ("Ilse’s left hand was burned by the stove.", "Ilse’s right hand was burned by the soup."),
        (
            "Tobias had a bad left knee, and a dog bit Tobias in the right calf.",
            "Tobias limped in, favouring his right leg.",
        ),
        ("Tobias caught Ilse by the left wrist.", "Ilse’s right wrist was strapped up."),
        ("Tobias had a bad left knee.", "Tobias had a parcel under his right arm, done up in paper."),
    ],
)
def test_silent_where_it_is_another_hurt_or_none(first: str, other: str) -> None:
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])


def test_a_hurt_of_long_ago_is_another_though_scenes_are_short() -> None:
    long = ["The river went on past the window, brown and slow, and nobody looked at it. " * 80]
    first, other = "Ilse cut her left palm on the hook.", "Ilse’s right hand was in a bandage."
    assert found_in(CHECK, [*ILSE, first], *([MARTA] * 11), [*NIGHT, other])
    assert not found_in(CHECK, [*ILSE, first], *([[*MARTA, *long]] * 11), [*NIGHT, other])


def test_what_is_only_felt_counts_of_somebody_who_is_told_to_have_the_mark() -> None:
    first, felt = "Tobias had a bad left knee.", "Tobias rubbed his right knee."
    assert len(found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, felt])) == 1
    assert not found_in(CHECK, [*ILSE, felt], MARTA, [*NIGHT, "Tobias rubbed his left knee."])


def test_he_who_is_named_right_before_and_has_the_mark_is_meant() -> None:
    karl = ["Karl Voss brought the sacks.", "“Nine,” said Karl. “And one that is wet.”", "“Nine,” said Karl again."]
    first = "Tobias had lost two fingers of his left hand."
    last = [
        "Karl danced with Ilse.",
        "“There is Tobias,” said Ilse.",
        "He came up with a pail on his three-fingered right hand.",
    ]
    assert len(found_in(CHECK, [*ILSE, first], karl, [*karl, *last])) == 1
    assert not found_in(CHECK, [*ILSE, first], karl, [*karl, *last[:1], last[2]])


def test_a_wrist_is_asked_about_once() -> None:
    """It is of the hand and of the arm."""
    first, other = "Ilse sprained her left wrist.", "The splint on Ilse’s right wrist was new."
    (one,) = found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])
    assert worded("side", one, ("The ferry", "The toll", "Night")) == (
        "The injured hand of Ilse is on the left in “The ferry” and on the right in “Night”. Which is meant?"
    )


def test_my_mother_is_one_person_of_who_tells() -> None:
    first = "My mother sat in the window, with her left leg in a cast, and I read to her."
    other = "My mother came to find me. She was stumping along in her bare left foot and the boot."
    (one,) = found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])
    assert one.words["name"] == "the narrator’s mother"
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other.replace("My mother", "My aunt")])
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other.replace("left", "right")])


def test_a_he_who_may_be_another_is_the_one_man_near_who_has_such_a_mark() -> None:
    """Not where somebody else is surely meant."""
    karl = ["Karl Voss brought the sacks.", "“Nine,” said Karl. “And one that is wet.”", "“Nine,” said Karl again."]
    first = "Tobias held on with his sound left hand."
    mark = "Two fingers of his left hand he had left behind at the bridge."
    assert found_in(
        CHECK, [*ILSE, first], karl, [*karl, "Behind Karl stood a boy, and Tobias.", f"He lit a pipe. {mark}"]
    )
    assert not found_in(CHECK, [*ILSE, first], karl, [*karl, f"Karl held on. {mark}"])


def test_a_sling_of_long_ago_is_another() -> None:
    long = ["The river went on past the window, brown and slow, and nobody looked at it. " * 80]
    between = [[*MARTA, *long]] * 11
    assert not found_in(
        CHECK, [*ILSE, "Ilse had her left arm in a sling."], *between, [*NIGHT, "Ilse had her right arm in a sling."]
    )


def test_a_scar_is_asked_about_once() -> None:
    """The check of looks asks about it."""
    first, other = "Tobias rubbed the scar on his left cheek.", "The scar on Tobias’s right cheek was red."
    assert not found_in(CHECK, [*ILSE, first], MARTA, [*NIGHT, other])
