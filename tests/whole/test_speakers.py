from afterdraft.whole.cast import find_cast
from afterdraft.whole.speakers import Spoken, speakers
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
