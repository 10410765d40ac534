"""The places of a paragraph, with what the pipeline takes them for written beside each word: `word/POS/KIND`."""

from afterdraft.reading.analysed import Analysed
from afterdraft.reading.place import Place
from afterdraft.reading.places import places
from afterdraft.reading.times import times


def analysed(row: str) -> Analysed:
    words, pos, kinds = zip(*((f"{word}//".split("/")[:3]) for word in row.split()), strict=True)
    starts = [sum(len(word) + 1 for word in words[:place]) for place in range(len(words))]
    nothing = tuple(0 for _ in words)
    return Analysed(
        " ".join(words),
        words,
        tuple(starts),
        pos,
        tuple("dep" for _ in words),
        tuple(range(len(words))),
        nothing,
        kinds,
    )


def found(row: str, *speech: tuple[int, int]) -> tuple[Place, ...]:
    paragraph = analysed(row)
    return places(paragraph, 0, speech, times(paragraph.text, 0))


def said(row: str) -> list[tuple[str, str, bool]]:
    return [(one.form, one.sign, one.name) for one in found(row)]


def test_a_town_by_name() -> None:
    row = "She/PRON lived/VERB in/ADP Harrow/PROPN/GPE Quay/PROPN/GPE then/ADV"
    assert said(row) == [("harrow quay", "in", True)]


def test_a_room_by_its_kind() -> None:
    row = "She/PRON went/VERB into/ADP the/DET ferry/NOUN house/NOUN kitchen/NOUN"
    assert said(row) == [("ferry house kitchen", "to", False)]


def test_people_and_days_are_no_places() -> None:
    assert said("at/ADP Ada/PROPN/PERSON on/ADP Monday/PROPN/DATE in/ADP Easter/PROPN/DATE") == []


def test_a_kind_without_a_preposition_says_little() -> None:
    assert said("She/PRON painted/VERB the/DET kitchen/NOUN") == [("kitchen", "", False)]


def test_what_stands_beside_a_dateline_is_where_it_was_written() -> None:
    assert said("3/NUM May/PROPN/DATE ./PUNCT Harrow/PROPN/GPE ./PUNCT") == [("harrow", "heads", True)]


def test_speech_is_marked() -> None:
    (one,) = found("“/PUNCT In/ADP Harrow/PROPN/GPE ”/PUNCT", (1, 13))
    assert one.spoken
