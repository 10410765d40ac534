"""Which names are one person's: by the parts of names alone, as common practice has them."""

from dataclasses import replace

import pytest

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.cast import Cast, find_cast
from afterdraft.whole.nicknames import same_given
from afterdraft.whole.people_names import parse
from tests.reading.hand import scenes


def cast(*lines: str) -> Cast:
    return find_cast(scenes([lines]))


def are_one(found: Cast, *forms: str) -> bool:
    return len({found.by_form[form] for form in forms}) == 1


@pytest.mark.parametrize(
    ("form", "titles", "names"),
    [
        ("st john pike", (), ("st john", "pike")),
        ("farmer pike", ("farmer",), ("pike",)),
        ("mrs john pike", ("mrs",), ("pike",)),  # his given name
        ("mrs ada pike", ("mrs",), ("ada", "pike")),
        ("captain", (), ("captain",)),
    ],
)
def test_titles_and_names_of_a_form(form: str, titles: tuple[str, ...], names: tuple[str, ...]) -> None:
    assert parse(form) == (titles, names)


def test_a_servant_s_mr_with_a_given_name_is_the_one_who_has_it() -> None:
    found = cast("Leonard Wren came in.", "“Sit,” said Mr. Leonard.", "“No,” said Ada.", "“Oh,” said Leonard Wren.")
    assert are_one(found, "mr leonard", "leonard wren")


def test_what_somebody_is_stands_for_a_title() -> None:
    found = cast("“Sit,” said Gilbert Wren.", "“No,” said Ada.", "“Oh,” said Farmer Wren.", "“Ah,” said Ada.")
    assert are_one(found, "farmer wren", "gilbert wren")


def test_a_long_name_holds_its_shorter_ones_together() -> None:
    said = ["“Sit,” said Long Tom Pike.", "“Oh,” said Long Tom.", "“Ah,” said Tom Pike."] * 2
    lines = [line for one in said for line in (one, "“No,” said Ada.")]
    assert are_one(cast(*lines), "long tom pike", "long tom", "tom pike")


def test_two_short_forms_of_one_name_are_not_one_by_that_alone() -> None:
    assert same_given("eliza", ["elizabeth"])
    assert same_given("elizabeth", ["bessie"])
    assert not same_given("bessie", ["eliza"])


def test_a_given_name_tells_the_gender_so_that_mr_is_not_the_daughter() -> None:
    found = cast("“Sit,” said Louisa Wren.", "“No,” said Mr. Wren.", "Then Louisa Wren and Ada sat.")
    assert not are_one(found, "louisa wren", "mr wren")
    assert {one.name: one.gender for one in found.people}["louisa wren"] == "f"


def test_a_mr_is_the_one_of_two_whom_the_book_does_not_tell_apart_from_him() -> None:
    lines = ["“Sit,” said Mr. Wren.", "“No,” said Cyril.", "“Oh,” said Mr. Wren.", "Cyril Wren sat. Samuel Wren came."]
    assert are_one(cast(*lines, "“Ah,” said Samuel Wren."), "mr wren", "samuel wren")


def test_a_role_goes_to_the_one_for_whom_far_more_speaks() -> None:
    lines = ["“Sit,” said Professor Wren."] * 4 + ["“No,” said the professor.", "“Oh,” said Ada."] * 2
    assert are_one(cast(*lines, "“Ah,” said Professor Pike."), "professor", "professor wren")


def test_a_full_name_of_two_known_parts_joins_them() -> None:
    lines = ["“Sit,” said Ada.", "“No,” said Pike.", "“Oh,” said Miss Wren.", "“Ah,” said Pike."]
    assert are_one(cast(*lines, "They went to Ada Wren."), "ada", "miss wren")


def test_a_word_that_begins_a_sentence_is_no_part_of_a_name() -> None:
    assert "because ada" not in cast("Because Ada came, Pike sat.", "“Sit,” said Ada.").by_form


def test_sir_thomas_is_not_tom_of_the_same_family() -> None:
    lines = ["Tom Wren came in.", "Tom Wren sat.", "“Sit,” said Tom.", "“No,” said Ada.", "“Oh,” said Sir Thomas Wren."]
    assert not are_one(cast(*lines, "“Ah,” said Ada.", "“Oh,” said Sir Thomas."), "tom wren", "sir thomas wren")


def test_a_role_in_a_list_of_people_is_nobody_of_the_list() -> None:
    lines = ["“Sit,” said Ada.", "“No,” said the doctor.", "“Oh,” said Joan.", "“Ah,” said the doctor."]
    assert not are_one(cast(*lines, "She saw Ada, the doctor, and Joan."), "ada", "doctor")
    assert not are_one(cast(*lines, "She saw Joan, the doctor and Ada."), "joan", "doctor")


def test_a_word_that_begins_a_sentence_is_no_part_of_the_name() -> None:
    found = cast("“Sit,” said Ada.", "Hitherto Ada sat.", "“No,” said Tom.", "Then Ada smiled.", "“Oh,” said Miss Ada.")
    assert are_one(found, "ada", "hitherto ada", "miss ada")


def test_a_name_turned_round_is_the_same() -> None:
    found = cast(
        "Then Ada Pike sat.", "“Sit,” said Ada Pike.", "“No,” said Tom.", "So spoke Pike Ada.", "“Oh,” said Ada."
    )
    assert are_one(found, "ada pike", "pike ada", "ada")


def test_a_family_is_nobody() -> None:
    found = cast(
        "Then Tom Pike sat.", "“Sit,” said Tom Pike.", "“No,” said Tom.", "Then Tom Pikes came. The Misses Pike sat."
    )
    assert {"tom pikes", "misses pike"}.isdisjoint(found.by_form)


def as_places(*lines: str, form: str) -> list[SceneFacts]:
    """Scenes in which the pipeline takes a form for a place throughout."""
    return [
        replace(
            scene,
            mentions=tuple(replace(one, entity="place") if one.form == form else one for one in scene.mentions),
        )
        for scene in scenes([lines])
    ]


def test_whoever_acts_and_is_spoken_of_as_he_is_a_person_whatever_the_pipeline_says() -> None:
    lines = [
        "“Sit,” said Ada.",
        "Then Korvin turned. He sat.",
        "So Korvin stood, and he smiled.",
        "But Korvin went out.",
    ]
    assert "korvin" in find_cast(as_places(*lines, form="korvin")).by_form


def test_a_place_that_seldom_acts_is_none() -> None:
    lines = ["“Sit,” said Ada.", "She was in Korvin. Then Korvin was there.", "We loved Korvin. They came to Korvin."]
    assert "korvin" not in find_cast(as_places(*lines, form="korvin")).by_form


def test_a_given_name_that_acts_is_a_person_whatever_the_pipeline_says() -> None:
    lines = ["“Sit,” said Tom.", "Then Agatha turned.", "So they saw Agatha, and they left Agatha there."]
    assert "agatha" in find_cast(as_places(*lines, form="agatha")).by_form


def test_the_surname_of_somebody_is_theirs_whatever_the_pipeline_says() -> None:
    lines = [
        "“Sit,” said Gus Korvin.",
        "“No,” said Tom.",
        "“Oh,” said Gus.",
        "They saw Korvin. They left Korvin. So Korvin sat, and he smiled.",
    ]
    found = find_cast(as_places(*lines, form="korvin"))
    assert are_one(found, "korvin", "gus korvin")


@pytest.mark.parametrize(
    "lines",
    [
        ["“Sit,” said Ada.", "“No,” said the toneless Voice.", "“Oh,” said the toneless Voice."],
        [
            "“Sit,” said Ada.",
            "Then Korvin Hill stood, and they saw Korvin Hill.",
            "So Korvin Hill was there. She smiled.",
        ],
        [
            "“Sit,” said Ada.",
            "Then Providence turned, and she sat. So Providence smiled. They saw Providence, and she rose.",
        ],
        [
            "“Sit,” said Ada.",
            "Then Italians turned, and he sat. So Italians smiled, he said. They saw Italians, and Italians stood.",
        ],
        ["“Sit,” said Ada. “Farewell, Tom. Oh, Farewell, you.”", "“So, Farewell.”", "“Ah, Farewell, Tom.”"],
    ],
)
def test_what_is_no_person(lines: list[str]) -> None:
    found = find_cast(as_places(*lines, form="italians"))
    assert {one.name for one in found.people} <= {"ada", "tom"}


def gender_in(found: Cast, form: str) -> str:
    return next(one.gender for one in found.people if one.id == found.by_form[form])


def test_a_given_name_of_one_gender_outweighs_whom_else_the_pronouns_mean() -> None:
    found = cast("“Sit,” said Miriam.", *["Miriam saw him. Miriam saw her." for _ in range(5)], "Miriam saw him.")
    assert gender_in(found, "miriam") == "f"


def test_a_name_that_is_called_mr_is_a_man_s_though_a_heroine_is_near() -> None:
    found = cast("“Sit,” said Mr. Korvin.", "“No,” said Ada.", *["“Oh,” said Korvin. She smiled." for _ in range(5)])
    assert are_one(found, "korvin", "mr korvin")
    assert gender_in(found, "korvin") == "m"


def test_mrs_is_the_only_woman_of_the_surname_where_nobody_is_called_miss() -> None:
    lines = ["“Sit,” said Emily Pike.", "“No,” said Tom.", "“Oh,” said Mrs. Pike.", "“Ah,” said Tom."]
    assert are_one(cast(*lines), "emily pike", "mrs pike")
    found = cast(*lines, "“So,” said Miss Pike.")
    assert not are_one(found, "emily pike", "mrs pike")


def test_an_aunt_by_her_surname_is_nobody_s_daughter() -> None:
    lines = ["“Sit,” said Georgiana Wren.", "“No,” said Tom.", "“Oh,” said Mrs. Wren.", "“Ah,” said Georgiana."]
    found = cast(
        *lines, "“So,” said Miss Georgiana.", "“Why?” said Miss Wren.", "Then Aunt Wren sat. They saw Aunt Wren."
    )
    assert are_one(found, "aunt wren", "mrs wren")


def test_a_soldier_may_be_called_by_a_short_name() -> None:
    lines = ["“Sit,” said Francis Pike.", "“No,” said Ada.", "“Oh,” said Sergeant Pike.", "“Ah,” said Ada."]
    assert are_one(cast(*lines, "“So,” said Frank."), "frank", "francis pike", "sergeant pike")


def test_a_short_name_of_two_long_ones_does_not_make_them_one() -> None:
    assert not same_given("robert", ["bertram", "bert"])
    assert same_given("bert", ["bertram"])


def test_two_with_a_title_and_a_surname_each_are_two_though_one_answers() -> None:
    called = ["“Sit, Lord Alwyn,” said Ada.", "“No,” said Mr. Hale.", "“Sit, Lord Alwyn.”", "“Oh,” said Mr. Hale."]
    found = cast(*called, *called)
    assert not are_one(found, "lord alwyn", "mr hale")


def test_a_lady_is_her_daughter_s_mother() -> None:
    lines = ["“Sit,” said Emily Pike.", "“No,” said Tom.", "“Oh,” said Lady Pike.", "“Ah,” said Tom."]
    assert not are_one(cast(*lines), "emily pike", "lady pike")


def test_a_rank_of_two_words_is_whoever_bears_both() -> None:
    lines = ["“Sit,” said Chief Inspector Pike.", "“No,” said Inspector Wren.", "“Oh,” said the Chief Inspector."]
    assert are_one(cast(*lines * 2), "chief inspector", "chief inspector pike")


def test_a_woman_who_marries_is_one_with_both_surnames() -> None:
    lines = [
        "“Sit,” said Mina Wren.",
        "“No,” said Tom.",
        "“Oh,” said Mina.",
        "“Ah,” said Miss Wren.",
        "“So,” said Tom.",
    ]
    later = ["“Sit,” said Mina Pike.", "“No,” said Tom.", "“Oh,” said Mrs. Pike.", "“Ah,” said Mina."]
    assert are_one(cast(*lines, *later), "mina wren", "mina pike", "mina", "mrs pike", "miss wren")


def test_two_women_of_one_given_name_are_two_where_none_is_married() -> None:
    lines = [
        "“Sit,” said Mina Wren.",
        "“No,” said Tom.",
        "“Oh,” said Mina.",
        "“Ah,” said Miss Wren.",
        "“So,” said Tom.",
    ]
    later = ["“Sit,” said Mina Pike.", "“No,” said Tom.", "“Oh,” said Miss Pike.", "“Ah,” said Mina."]
    assert not are_one(cast(*lines, *later), "mina wren", "mina pike")


def test_a_title_that_hardly_speaks_is_whoever_bears_it() -> None:
    lines = [
        "“Sit,” said Duke Korvin.",
        "“No,” said Ada.",
        "Then the duke sat.",
        "So they saw the duke. The duke smiled.",
    ]
    assert are_one(cast(*lines), "duke", "duke korvin")
    assert "duke" not in cast(*(line.replace("Duke Korvin", "Tom") for line in lines)).by_form
