from dataclasses import replace

from afterdraft.whole.book import read_book
from afterdraft.whole.cast import find_cast
from afterdraft.whole.given import Given, GivenPerson
from afterdraft.whole.speakers import Spoken, said_of, speakers
from afterdraft.whole.turns import meant
from tests.reading.hand import scene, scenes


def who(*paragraphs: str, known: tuple[str, ...] = ()) -> list[str | None]:
    """Names of the speakers, one a quotation; `known` are paragraphs from elsewhere in the book."""
    facts = scene(*paragraphs)
    cast = find_cast([*scenes([known]), facts])
    names = {person.id: person.name for person in cast.people}
    return [names.get(one.speaker or "") for one in speakers(facts, cast)]


PAIR = (
    "“Sit,” said Ada.",
    "She turned.",
    "“No,” said Pike.",
    "He turned.",
    "So Ada sat. She smiled.",
    "“Oh,” Pike said. He rose.",
)


def test_two_who_are_named_go_on_by_turns() -> None:
    assert who("“Sit,” said Ada.", "“No,” said Pike.", "“Why?”", "“Because.”", "“Oh.”") == ["ada", "pike"] * 2 + ["ada"]


def test_a_pronoun_is_whoever_of_that_gender_is_near() -> None:
    assert who("Ada came in. Pike rose.", "“Sit,” he said.", "“No,” she said.", known=PAIR) == ["pike", "ada"]


def test_who_is_called_answers() -> None:
    assert who(
        "“Where is it, Pike?” said Ada.", "“Gone.”", "“Where, Joan?”", "“There.”", known=(*PAIR, "“I,” said Joan.")
    ) == [
        "ada",
        "pike",
        "ada",
        "joan",
    ]


def test_nobody_calls_themselves() -> None:
    assert who("“Sit,” said Ada.", "“No,” said Pike.", "“Sit down, Pike.”") == ["ada", "pike", "ada"]


def test_who_acts_beside_the_words_speaks_them() -> None:
    assert who("“Sit,” said Ada.", "“No,” said Pike.", "“Look.” Pike turned.", known=PAIR) == ["ada", "pike", "pike"]


def test_a_quotation_that_goes_on_has_one_speaker() -> None:
    assert who("“Sit,” said Ada.", "“No,” said Pike. “First this.", "“Then that.”") == ["ada", "pike", "pike", "pike"]


def test_two_may_speak_in_one_paragraph() -> None:
    assert who(
        "Miss Lamb came in. Mr. Pike rose.",
        "“Why?” she asked. “Because,” he said.",
        known=("“Oh,” said Miss Lamb.", "“No,” said Mr. Pike."),
    ) == ["miss lamb", "mr pike"]


def test_her_mother_is_nobody_by_that_alone() -> None:
    assert "her mother" not in {
        form for one in find_cast(scenes([("“Go,” said her mother.",) * 3])).people for form in one.aliases
    }


def test_the_i_that_tells_speaks() -> None:
    found = who(
        "I came in, and I looked at my hat, for I was late.",
        "“Sit,” said Ada.",
        "“No,” I said.",
        "“Why?”",
        "“My feet.”",
    )
    assert found == ["ada", "the narrator", "ada", "the narrator"]


def test_how_and_how_surely() -> None:
    facts = scene("Ada came in. Pike rose.", "“Sit,” said Ada.", "“No,” he said.", "“Why?”")
    found = speakers(facts, find_cast([facts, *scenes([PAIR])]))
    assert [one.how for one in found] == ["named", "pronoun", "turn"]
    assert all(0 < one.sure <= 1 for one in found)
    assert found[0].sure == max(one.sure for one in found)


def test_speech_in_an_empty_room_is_nobodys() -> None:
    facts = scene("“Sit.”")
    assert speakers(facts, find_cast([facts])) == (Spoken(0, None, "none", 0.0),)


TALK = ("“Sit,” said Ada.", "“No,” said Pike.", "“Why?”", "“Because.”", "“Oh.”")
ADA, PIKE, JOAN = (GivenPerson(one, one.title(), (one,)) for one in ("ada", "pike", "joan"))


def corrected(said: dict[int, str]) -> list[Spoken]:
    """The speakers of TALK; `said` by paragraph is what the writer said of its first quotation."""
    facts = scene(*TALK)
    speakers = {(0, paragraph, facts.quotes[paragraph].start): person for paragraph, person in said.items()}
    return list(read_book([facts], Given((ADA, PIKE, JOAN), speakers=speakers)).spoken[0])


def test_what_the_writer_said_of_a_quotation_wins_and_is_sure() -> None:
    found = corrected({1: "joan"})
    assert found[1] == Spoken(1, "joan", "named", 1.0)


def test_what_the_writer_said_is_a_turn_for_those_beside_it() -> None:
    assert [one.speaker for one in corrected({})] == ["ada", "pike", "ada", "pike", "ada"]
    assert [one.speaker for one in corrected({2: "pike"})][2:] == ["pike", "ada", "pike"]


def test_a_quotation_that_she_said_is_nobodys_is_nobodys() -> None:
    found = corrected({2: ""})
    assert found[2] == Spoken(2, None, "none", 1.0)
    assert [one.speaker for one in found][:2] == ["ada", "pike"]


def test_two_quotations_of_one_paragraph_may_be_given_to_two_people() -> None:
    facts = scene("“Sit,” said Ada. “No.”")
    said = {(0, 0, facts.quotes[1].start): "pike"}
    found = read_book([facts], Given((ADA, PIKE), speakers=said)).spoken[0]
    assert [one.speaker for one in found] == ["ada", "pike"]


def test_somebody_who_is_not_of_the_cast_speaks_nothing() -> None:
    assert [one.speaker for one in corrected({1: "gone"})][1] == "pike"


def test_what_was_said_of_another_scene_says_nothing_of_this() -> None:
    given = Given(speakers={(1, 0, 4): "ada", (2, 0, 0): "pike"})
    assert said_of(1, given) == {(0, 4): "ada"}


ANIMAL = ("“Who?” said the Owl.", "“Oh,” said the Owl.", "So the Owl sat.")


def test_an_animal_speaks_as_people_do() -> None:
    found = who("“Who goes?” said the Owl.", "“I,” said Ada.", "“Why?”", "“Oh.”", known=ANIMAL)
    assert found == ["owl", "ada", "owl", "ada"]


def test_a_letter_that_is_read_out_is_one_persons_to_its_end() -> None:
    letter = ("Pike wrote: “My dear Ada,", "“I am well.", "“Yours, Pike.”")
    assert who(*letter, "“Well,” said Ada.", known=PAIR) == ["pike", "pike", "pike", "ada"]


def test_a_diary_without_marks_has_nobody_speaking() -> None:
    facts = scene("3 May. I saw Ada and she asked me to sit.", "I said no.")
    assert speakers(facts, find_cast([facts, *scenes([PAIR])])) == ()


def test_dialogue_by_dashes_goes_by_turns() -> None:
    assert who("— Sit, said Ada.", "— No, said Pike.", "— Why?", "— Because.") == ["ada", "pike", "ada", "pike"]


def test_a_quotation_within_a_quotation_is_its_speakers() -> None:
    assert who("“He said ‘Never,’ and went,” said Ada.", "“No,” said Pike.") == ["ada", "pike"]


def test_a_wife_is_not_the_husband_whose_name_she_bears() -> None:
    facts = scene("“Sit,” said John Lamb.", "“No,” said Mrs. John Lamb.", "“Why?” said John Lamb.")
    cast = find_cast([facts])
    only_john = replace(cast, by_form={form: who for form, who in cast.by_form.items() if form == "john lamb"})
    named = {one.form: who for one, who in zip(facts.mentions, meant(facts, only_john), strict=True)}
    assert (named["john lamb"], named["mrs john lamb"]) == (cast.by_form["john lamb"], None)
