"""Planted faults about people, who are told by counting."""

from bench.faults.kinds import age, gone, trait, viewpoint
from bench.faults.people import acts, narrated, people, sentences
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
    added = ("Tobias turned back. He said at last:", "“No.”", "Tobias sat down, and he said:", "“Yes.”")
    scenes = tuple((*scene, *added) for scene in thinking())
    faults = [plant(scenes, [gone.plant], f"seed {round_}")[1][0] for round_ in range(12)]
    assert not any("last: " in edit.becomes[0] for one in faults for edit in one.edits)
    assert all(any(shown.words.startswith("Tobias sat down, and") for shown in one.shown) for one in faults)
