"""What somebody tells aloud, or what is seen of somebody, is no thought of theirs that the telling enters."""

from dataclasses import replace

import pytest

from afterdraft.questions.each.viewpoint import CHECK
from tests.questions.asked import found_in, quotes, read
from tests.questions.people import ILSE
from tests.questions.test_viewpoint import JONAS, MIND, OTHER, SHORT

pytestmark = pytest.mark.slow
BEFORE = [*[[*ILSE, *MIND]] * 3, [*JONAS]]
THOUGHT = "Jonas wondered if she got enough to eat."


@pytest.mark.parametrize(
    "around",
    ["{}", "The lamp was low. {}", "{} He took the cap down.", "The talk died. {}"],
)
def test_asks_where_nobody_says_or_sees_it(around: str) -> None:
    assert quotes(found_in(CHECK, *BEFORE, [*SHORT, around.format(THOUGHT), *SHORT[1:], SHORT[0]])) == [[THOUGHT]]


def test_a_deed_and_a_thought_are_no_thought_of_two() -> None:
    told = "Ilse shut the door and Jonas wondered if she got enough to eat."
    assert quotes(found_in(CHECK, *BEFORE, [*SHORT, told, *SHORT[1:], SHORT[0]])) == [[told]]


@pytest.mark.parametrize(
    "told",
    [
        "Jonas remembered nothing of it, he said, except for the yellow dog in the yard.",
        "Jonas remembered nothing, he told her, but the dog and the smell of the oil.",
        "So Jonas talked. Jonas remembered nothing of it but the dog and the smell of the oil.",
        "Jonas told her about his mother. Jonas remembered nothing of her but the smell of the oil.",
        "Jonas told her about his mother, and the house. It had stood by the mill. Jonas remembered the smell of oil.",
        "Jonas spoke of the war. Jonas remembered nothing of it but the mud and the smell of oil.",
        "Ilse asked him about the flood. Jonas remembered nothing of it but the mud and the smell.",
        "Yes, the boat was his. Jonas remembered the day that it came, and the smell of the oil.",
        "His story was short. Jonas remembered nothing of it but the mud and the smell of oil.",
        "It all came out. Jonas remembered the mud, and the smell of the oil, and his mother.",
        "By his own account Jonas remembered nothing of it but the mud and the smell of oil.",
        "Jonas, it turned out, remembered nothing of it but the mud and the smell of oil.",
        "Jonas remembered nothing of it but the mud. That, at any rate, was what he told them.",
        "Jonas wondered aloud if she got enough to eat in that house.",
        "Jonas remembered nothing of it but the mud. It had been a bad year, he said.",
        "Jonas wondered if she got enough to eat, or so Jonas said.",
        "The boat was off, Jonas explained to her. Jonas wondered if she got enough to eat.",
        "Jonas went on to describe the flood. Jonas remembered nothing of it but the mud.",
        "Jonas wrote to them of the flood. Jonas remembered nothing of it but the mud.",
        "In his letter Jonas wondered if she got enough to eat in that house.",
        "Over the telephone Jonas wondered if she got enough to eat in that house.",
        "Jonas was telling her of the flood. Jonas remembered nothing of it but the mud.",
    ],
)
def test_is_silent_about_what_somebody_tells_aloud(told: str) -> None:
    assert not found_in(CHECK, *BEFORE, [*SHORT, told, *SHORT[1:], SHORT[0]])


def test_is_silent_where_a_report_goes_on_from_the_paragraph_before() -> None:
    report = "Jonas told her about the flood, and how they had sat on the roof with the dog between them."
    assert not found_in(CHECK, *BEFORE, [*SHORT, report, THOUGHT, *SHORT[1:], SHORT[0]])
    plain = "Jonas sat down on the step, and the dog lay down with him."
    assert found_in(CHECK, *BEFORE, [*SHORT, plain, THOUGHT, *SHORT[1:], SHORT[0]])


@pytest.mark.parametrize(
    "told",
    [
        "Jonas remembered the dog, she saw, and was ashamed of it before all of them.",
        "Jonas was thinking of the dog, Ilse guessed, and of all that it had cost him.",
        "Ilse could see him at it. Jonas was thinking of the dog, and of all that it had cost.",
        "Ilse pictured him there. Jonas was thinking of the dog, and of all that it had cost him.",
        "Ilse watched Jonas. Jonas was thinking of the dog, and of all that it had cost him.",
        "Jonas wondered if she got enough to eat. It was written all over him.",
        "Jonas wondered if she got enough to eat. Ilse could see it.",
        "Ilse knew that look. Jonas was thinking of the dog, and of all that it had cost him.",
        "His face showed nothing new. Jonas was thinking of the dog, and of all that it had cost him.",
    ],
)
def test_is_silent_about_what_somebody_else_sees(told: str) -> None:
    assert not found_in(CHECK, *BEFORE, [*SHORT, told, *SHORT[1:], SHORT[0]])


@pytest.mark.parametrize(
    "told",
    [
        "“Sit,” said Ilse to him. Jonas wondered if she got enough to eat.",
        "“You told me about it,” said Ilse. Jonas wondered if she got enough to eat.",
        "Jonas never told her about it. Jonas wondered if she got enough to eat.",
    ],
)
def test_speech_in_marks_and_what_is_not_told_are_no_report(told: str) -> None:
    assert quotes(found_in(CHECK, *BEFORE, [*SHORT, told, *SHORT[1:], SHORT[0]])) == [[THOUGHT]]


def test_is_silent_about_a_thought_in_italics() -> None:
    seen = read([*BEFORE, [*SHORT, THOUGHT, *SHORT[1:], SHORT[0]]])
    assert list(CHECK.find(seen))
    slanted = {(len(BEFORE), len(SHORT)): ((0, len(THOUGHT)),)}
    assert not list(CHECK.find(replace(seen, italics=slanted)))


@pytest.mark.parametrize(
    ("before", "behind"),
    [
        ([], [*MIND, *MIND]),
        (["Tobias saw the light go out across the water.", *MIND], MIND),
    ],
)
def test_is_silent_where_the_one_does_not_think_first_or_last(before: list[str], behind: list[str]) -> None:
    book = [*ILSE, *MIND]
    assert found_in(CHECK, book, [*ILSE, *MIND, OTHER, *MIND], book)
    assert not found_in(CHECK, book, [*ILSE, *before, OTHER, *behind], book)


TELLS = [
    "I heard the door, and I hoped it was my dog.",
    "I remembered the key, and I felt for it in my coat.",
    "I counted my oars, and I sat down by my lamp.",
]
HIS = "Tobias wondered who had the oil, and how much of it was gone."


def test_is_silent_where_the_i_is_away_or_says_how_it_knows() -> None:
    def scene(*told: str) -> list[str]:
        return [*ILSE, *TELLS, *told, *TELLS]

    away = ["The boat lay on the mud.", "The rope was wet.", "Nobody came by.", "The dog slept."]
    assert quotes(found_in(CHECK, [*ILSE, *TELLS], scene(HIS))) == [[HIS]]
    assert not found_in(CHECK, [*ILSE, *TELLS], scene(*away, HIS, *away))
    for how in ("He told me so at Easter.", "I like to think that he did.", "I learned of it much later."):
        assert not found_in(CHECK, [*ILSE, *TELLS], scene(f"{HIS} {how}"))


def test_asks_what_an_i_cannot_know_of_a_heart() -> None:
    hoped = "Tobias hoped {}that nobody would ask, and turned the lamp down."
    for how, asked in (("", []), ("with all his heart ", [[hoped.format("with all his heart ")]])):
        assert quotes(found_in(CHECK, [*ILSE, *TELLS], [*ILSE, *TELLS, hoped.format(how), *TELLS])) == asked


def test_the_one_whose_scene_it_is_need_not_think_behind_a_stray() -> None:
    book = [*ILSE, *MIND]
    told = [*ILSE, *MIND, *MIND, OTHER, "Ilse put the towel down. Ilse went to the door, and shut it."]
    assert quotes(found_in(CHECK, book, told, book)) == [[OTHER]]


@pytest.mark.parametrize(
    "told",
    [
        "Jonas had always hoped to be a priest, and his mother had hoped so before him.",
        "Jonas had dreaded the water ever since the flood took his brother.",
        "Years later Jonas wondered if she had had enough to eat in that house.",
        "Jonas wondered who had the oil, as did she.",
        "Ilse and Jonas wondered who had the oil, and how much of it was gone.",
        "Jonas hoped that she would excuse him, and that the towel was dry.",
        "Jonas feared that he must be going, with the river as it was.",
        "Jonas remembered the towel.",
        "Jonas hoped that it would not rain, like everybody.",
    ],
)
def test_is_silent_about_what_those_around_may_know(told: str) -> None:
    assert not found_in(CHECK, *BEFORE, [*SHORT, told, *SHORT[1:], SHORT[0]])


def test_is_silent_about_a_beast() -> None:
    dog = "Jonas, the dog, lay down. Jonas barked twice at the water."
    assert not found_in(CHECK, *BEFORE, [*SHORT, dog, THOUGHT, *SHORT[1:], SHORT[0]])
