import pytest

from afterdraft.engine.pipeline import analyse
from afterdraft.engine.reader import read_scenes


@pytest.mark.slow
def test_the_model_gives_plain_values_that_run_beside_one_another() -> None:
    (one,) = analyse(["“Sit down--now,” said Ada Lamb,  and she turned."])
    assert [one.text[start : start + len(word)] for start, word in zip(one.starts, one.words, strict=True)][:3] == [
        "“",
        "Sit",
        "down",
    ]
    columns = (one.starts, one.pos, one.deps, one.heads, one.sentences, one.kinds)
    assert {len(column) for column in columns} == {len(one.words)}
    assert {type(word) for column in columns for word in column} <= {str, int}
    assert "Ada" in one.words


@pytest.mark.slow
def test_the_model_and_the_readers_together() -> None:
    told = ["Ada Lamb came in. Mr. Pike rose.", "“Sit down,” said Ada.", "“No,” he said.", "“Why?”"]
    (facts,) = read_scenes([told])
    tags = [facts.mentions[quote.tag].form if quote.tag is not None else None for quote in facts.quotes]
    assert tags == ["ada", "he", None]


@pytest.mark.slow
def test_an_endless_paragraph_keeps_its_text_and_gets_no_analysis() -> None:
    (one,) = analyse(["a " * 60_000])
    assert len(one.text) == 120_000
    assert one.words == ()
