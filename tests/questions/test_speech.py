"""Speech is told by paragraph and character, from what stands in marks."""

from afterdraft.questions.speech import speech

SCENE = ("“Come in,” she said.", "He came in.", "“Sit", "“or stand.” She sat.")


def test_what_is_spoken_stands_within_the_marks_of_its_own_paragraph() -> None:
    spoken = speech(SCENE)
    assert all(spoken(*place) for place in ((0, 1), (2, 1), (3, 1)))
    assert not any(spoken(*place) for place in ((0, 11), (1, 1), (3, 12)))
