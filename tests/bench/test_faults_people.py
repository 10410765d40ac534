"""Planted faults about people: their words stand, the same seed gives the same, and people are told by counting."""

import pytest

from bench.faults.kinds import age, gone, person, trait, two_places, viewpoint
from bench.faults.people import acts, narrated, people, sentences
from bench.faults.planted import Plant, Scenes, plant

ALL: dict[str, Plant] = {
    one.__name__.rsplit(".")[-1]: one.plant for one in (trait, age, gone, two_places, viewpoint, person)
}


def novel(chapters: int = 14) -> Scenes:
    """An invented one: Ilse thinks, Tobias acts, and both speak."""
    return tuple(
        (
            f"Ilse came down to the ferry for the {number}th crossing. Ilse wondered who had coiled the rope.",
            f"“You’re early,” said Tobias. “The river’s up, and there are {number} boats out.”",
            f"Tobias turned to the {number}th post and untied it with his cold hands. He was slow.",
            "“It was up yesterday,” said Ilse. She hoped that it would rain.",
            f"Ilse thought of her sister. She knew that she had {number} letters to write, and that she would not.",
            f"Tobias pushed off. He had his pipe with him, but he did not light it, though Ilse had {number} matches.",
            f"She set her basket down beside her and drew her shawl over her knees, and she felt the cold, "
            f"and counted {number} gulls, "
            "and then she shut her eyes and let the water carry her where it would, as she always did.",
            "“We’ll be slow,” said Tobias.",
        )
        for number in range(1, chapters + 1)
    )


def test_people_are_those_who_are_named_and_speak() -> None:
    assert [(one.name, one.gender) for one in people(novel())] == [("Ilse", "f"), ("Tobias", "m")]


def test_sentences_outside_speech_that_begin_with_the_name() -> None:
    scene = ("“Ilse sat down,” he said. Ilse sat down. “No.” Mr. Pike saw Ilse.",)
    (place,) = acts((scene,), people(novel())[0])
    assert scene[0][place.start : place.end] == "Ilse sat down."
    assert [narrated(scene[0])[start:end] for start, end in sentences(narrated(scene[0]))][-1] == "Mr. Pike saw Ilse."


@pytest.mark.parametrize("kind", ALL)
def test_words_stand_once_and_the_author_s_stand_elsewhere(kind: str) -> None:
    for round_ in range(5):
        scenes, (fault,) = plant(novel(), [ALL[kind]], f"seed {round_}")
        for one in fault.shown:
            assert sum(text.count(one.words) for text in scenes[one.scene]) == 1, one
        assert fault.shown[0].words not in "\n".join(text for scene in novel() for text in scene)


@pytest.mark.parametrize("kind", ALL)
def test_one_seed_gives_one_fault_and_others_others(kind: str) -> None:
    def planted(seed: str, how: Plant = ALL[kind]) -> Scenes:
        return plant(novel(), [how], seed)[0]

    assert planted("a") == planted("a")
    assert len({planted(seed) for seed in "abcdefgh"}) > 1


def test_colours_that_the_author_gives_are_contradicted() -> None:
    scenes = novel()
    told = ("Ilse raised her large blue eyes to the window.", *scenes[1])
    _, (fault,) = plant((scenes[0], told, *scenes[2:]), [trait.plant], "seed")
    assert fault.shown[1].words == told[0]
    assert len(fault.edits) == 1


def test_a_telling_that_knows_all_minds_has_no_place_for_a_stray_thought() -> None:
    both = tuple((*scene, "Tobias wondered why.", "Tobias knew that she lied.") for scene in novel())
    assert plant(both, [viewpoint.plant], "seed")[1] == ()
    assert plant(novel(), [viewpoint.plant], "seed")[1]


def test_who_is_gone_speaks_later_in_the_author_s_words() -> None:
    _, (fault,) = plant(novel(), [gone.plant], "seed")
    first, *later = fault.shown
    assert all(one.scene > first.scene for one in later)
    assert all(any(one.words in text for text in novel()[one.scene]) for one in later)


def test_ages_are_written_out() -> None:
    assert [age.words(years) for years in (19, 30, 41)] == ["nineteen", "thirty", "forty-one"]


def test_who_is_gone_is_told_behind_a_sentence_that_ends_and_may_speak_in_the_next_paragraph() -> None:
    added = ("Tobias turned back. He said at last:", "“No.”", "Tobias sat down, and he said:", "“Yes.”")
    scenes = tuple((*scene, *added) for scene in novel())
    faults = [plant(scenes, [gone.plant], f"seed {round_}")[1][0] for round_ in range(12)]
    assert not any("last: " in edit.becomes[0] for one in faults for edit in one.edits)
    assert all(any(shown.words.startswith("Tobias sat down, and") for shown in one.shown) for one in faults)
