"""What holds of every kind of planted fault: its words stand once, the author's stand elsewhere, the same seed gives
the same."""

from collections.abc import Mapping

import pytest

from bench.faults.kinds import KINDS
from bench.faults.planted import Scenes, plant
from tests.bench.novels import acting, dated, thinking, travelling

NOVELS: Mapping[str, Scenes] = {
    **dict.fromkeys(
        ("trait", "age", "gone", "two places", "viewpoint", "person", "side", "ability", "no kin", "retold", "kinship"),
        thinking(),
    ),
    **dict.fromkeys(("given name", "journey", "origin", "relation", "season"), travelling()),
    **dict.fromkeys(("rank", "trade", "dress", "placeholder", "drift"), acting()),
    **dict.fromkeys(("letter", "moon", "elapsed"), dated()),
}


@pytest.mark.parametrize("kind", NOVELS)
def test_words_stand_once_and_the_author_s_stand_elsewhere(kind: str) -> None:
    novel = NOVELS[kind]
    for round_ in range(5):
        scenes, (fault,) = plant(novel, [KINDS[kind]], f"seed {round_}")
        assert fault.kind == kind
        for one in fault.shown:
            assert sum(text.count(one.words) for text in scenes[one.scene]) == 1, one
        assert fault.shown[0].words not in "\n".join(text for scene in novel for text in scene)


@pytest.mark.parametrize("kind", NOVELS)
def test_the_same_seed_gives_the_same_and_others_give_others(kind: str) -> None:
    assert plant(NOVELS[kind], [KINDS[kind]], "one") == plant(NOVELS[kind], [KINDS[kind]], "one")
    assert len({plant(NOVELS[kind], [KINDS[kind]], str(seed))[0] for seed in range(8)}) > 1


def test_a_rank_is_changed_in_one_place_between_others() -> None:
    scenes, (fault,) = plant(acting(), [KINDS["rank"]], "seed")
    (edit,) = fault.edits
    (was,) = (text for text in acting()[edit.scene] if text not in scenes[edit.scene])
    assert "Captain Averay" in was
    assert "Captain Averay" not in edit.becomes[0]
    assert "Averay" in edit.becomes[0]


def test_nobody_is_given_a_coat_of_another_colour_where_somebody_dresses() -> None:
    dressing = tuple((*scene[:3], "They dressed for supper.", *scene[3:]) for scene in acting())
    for round_ in range(5):
        for fault in plant(dressing, [KINDS["dress"]], f"seed {round_}")[1]:
            first, second = sorted(edit.paragraph for edit in fault.edits)
            assert not first < 3 < second


def test_a_letter_comes_under_the_day_before_which_it_is_not_written() -> None:
    scenes, (fault,) = plant(dated(), [KINDS["letter"]], "seed")
    letter, day = fault.shown
    place = {
        one.words: next(n for n, text in enumerate(scenes[one.scene]) if one.words in text) for one in (letter, day)
    }
    assert letter.scene == day.scene
    assert place[day.words] < place[letter.words]
