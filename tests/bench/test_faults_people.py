"""Planted faults about people, who are told by counting."""

import re

from bench.faults.kinds import age, gone, trait, viewpoint
from bench.faults.people import Place, acts, alone, in_its_marks, narrated, people, sentences
from bench.faults.planted import plant
from tests.bench.novels import thinking


def test_people_are_those_who_are_named_and_speak() -> None:
    assert [(one.name, one.gender) for one in people(thinking())] == [("Ilse", "f"), ("Tobias", "m")]


def test_sentences_outside_speech_that_begin_with_the_name() -> None:
    scene = ("“Ilse sat down,” he said. Ilse sat down. “No.” Mr. Pike saw Ilse.",)
    (place,) = acts((scene,), people(thinking())[0])
    assert scene[0][place.start : place.end] == "Ilse sat down."
    assert [narrated(scene[0])[start:end] for start, end in sentences(narrated(scene[0]))][-1] == "Mr. Pike saw Ilse."


def test_colours_that_the_author_gives_are_contradicted() -> None:
    scenes = thinking()
    told = ("Ilse raised her large blue eyes to the window.", *scenes[1])
    _, (fault,) = plant((scenes[0], told, *scenes[2:]), [trait.plant], "seed")
    assert fault.shown[1].words == told[0]
    assert len(fault.edits) == 1


def test_nobody_gets_looks_that_the_author_tells_however_it_is_told() -> None:
    looks = "His eyes were grey, his hair dark, his beard red. He was tall, had a scar, and was lame."
    assert any(plant(thinking(), [trait.plant], f"{seed}")[1] for seed in range(6))
    scenes = tuple(
        (*scene, f"Tobias came. {looks}", looks.replace("His", "Ilse’s").replace("He ", "Ilse "))
        for scene in thinking()
    )
    assert not any(plant(scenes, [trait.plant], f"{seed}")[1] for seed in range(6))


def test_a_telling_that_knows_all_minds_has_no_place_for_a_stray_thought() -> None:
    both = tuple((*scene, "Tobias wondered why.", "Tobias knew that she lied.") for scene in thinking())
    assert plant(both, [viewpoint.plant], "seed")[1] == ()
    assert plant(thinking(), [viewpoint.plant], "seed")[1]


def test_who_is_gone_speaks_later_in_the_author_s_words() -> None:
    _, (fault,) = plant(thinking(), [gone.plant], "seed")
    first, *later = fault.shown
    assert all(one.scene > first.scene for one in later)
    assert all(any(one.words in text for text in thinking()[one.scene]) for one in later)


def test_ages_are_written_out() -> None:
    assert [age.words(years) for years in (19, 30, 41)] == ["nineteen", "thirty", "forty-one"]


def test_who_is_gone_is_told_behind_a_sentence_that_ends_and_may_speak_in_the_next_paragraph() -> None:
    added = (
        "Tobias rose. “No. They went.",
        "Tobias turned back. He said at last:",
        "“No.”",
        "Tobias sat down, and he said:",
        "“Yes.”",
    )
    scenes = tuple((*scene, *added) for scene in thinking())
    faults = [plant(scenes, [gone.plant], f"seed {round_}")[1][0] for round_ in range(12)]
    assert not any("last: " in edit.becomes[0] for one in faults for edit in one.edits)
    assert not any("“No. They" in edit.becomes[0] for one in faults for edit in one.edits)
    assert all(any(shown.words.startswith("Tobias sat down, and") for shown in one.shown) for one in faults)


def test_he_is_not_planted_behind_a_sentence_that_ends_in_another_name() -> None:
    tobias = people(thinking())[1]
    scenes = (
        ("Tobias nodded to Mr. Pike, and shook his head at Rolf.", "Tobias nodded, and shook his head."),
        *thinking(),
    )
    assert [alone(scenes, tobias, Place(0, at, 0, len(scenes[0][at]))) for at in (0, 1)] == [False, True]


def test_words_of_speech_have_the_marks_of_their_paragraph() -> None:
    scenes = (('"No," said Ilse.', "“No,” said Ilse."),)
    assert [in_its_marks(scenes, Place(0, at, 0, 5), "“Yes.”") for at in (0, 1)] == ['"Yes."', "“Yes.”"]


def test_nobody_gets_an_age_whose_age_the_author_tells() -> None:
    assert {one.edits[0].becomes for seed in range(6) for one in plant(thinking(), [age.plant], f"{seed}")[1]}
    told = "Ilse was thirty-one years old, and Tobias was forty."
    behind = "Tobias looked at Ilse.", "She was some thirty-one years of age; he was a boy of twelve."
    for added in ((told,), behind):
        scenes = tuple((*scene, *added) for scene in thinking())
        assert not any(plant(scenes, [age.plant], f"{seed}")[1] for seed in range(6))


def test_an_age_at_which_somebody_had_done_something_is_of_another_time() -> None:
    scenes = tuple((*scene, "Ilse had left the house, and Tobias had gone.") for scene in thinking())
    faults = [one for seed in range(20) for one in plant(scenes, [age.plant], f"{seed}")[1]]
    assert faults
    assert not any(re.search(r", at [\w-]+, had", edit.becomes[0]) for one in faults for edit in one.edits)


def test_who_is_gone_by_a_first_name_speaks_by_the_whole_too() -> None:
    scenes = tuple((*scene, "“Yes,” said Tobias Pike, and he went.") for scene in thinking())
    faults = [one for seed in range(20) for one in plant(scenes, [gone.plant], f"{seed}")[1]]
    his = [one for one in faults if "Tobias" in one.shown[0].words]
    assert his
    assert all(any("Tobias Pike" in shown.words for shown in one.shown) for one in his)


def test_a_man_who_is_gone_speaks_by_his_whole_name_too() -> None:
    scenes = tuple(
        (*(text.replace("Tobias", "Mr. Pike") for text in scene), "“Yes,” said Tom Pike, and he went.")
        for scene in thinking()
    )
    faults = [one for seed in range(20) for one in plant(scenes, [gone.plant], f"{seed}")[1]]
    pike = [one for one in faults if "Mr. Pike" in one.shown[0].words]
    assert pike
    assert all(any("Tom Pike" in shown.words for shown in one.shown) for one in pike)
