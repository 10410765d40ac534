"""Names as the pipeline's tokens have them: it parts 'Peel-Swynnerton' in three, and 'Pike—“not' not at all."""

import pytest

from afterdraft.reading.analysed import Analysed
from afterdraft.reading.mentions import hides, mentions, names_within
from tests.reading.rows import parsed


def analysed(text: str, *tokens: str) -> Analysed:
    starts, at = [], 0
    for token in tokens:
        starts.append(text.index(token, at))
        at = starts[-1] + len(token)
    pos = tuple("PROPN" if token[0].isupper() else "PUNCT" if not token.isalpha() else "X" for token in tokens)
    same = tuple(range(len(tokens)))
    return Analysed(
        text, tokens, tuple(starts), pos, ("dep",) * len(tokens), same, (0,) * len(tokens), ("",) * len(tokens)
    )


@pytest.mark.parametrize(
    ("text", "tokens", "expected"),
    [
        ("saw Matthew Peel-Rayne there", "saw Matthew Peel - Rayne there", ["matthew peel-rayne"]),
        ("saw Peel-Rayne there", "saw Peel - Rayne there", ["peel-rayne"]),
        ("saw Peel - Rayne there", "saw Peel - Rayne there", ["peel", "rayne"]),
        ("so Peel-like a thing", "so Peel - like a thing", ["peel"]),
        ("so Mr. Pike—“not now", "so Mr. Pike—“not now", ["mr pike"]),
        ("with the Chief Inspector Heath here", "with the Chief Inspector Heath here", ["chief inspector heath"]),
        ("with the Dowager Duchess here", "with the Dowager Duchess here", ["dowager duchess"]),
    ],
)
def test_names_by_tokens(text: str, tokens: str, expected: list[str]) -> None:
    found = mentions(analysed(text, *tokens.split()), 0, [])
    assert [one.form for one in found] == expected
    assert all(text[one.start : one.end].lower().replace(".", "") == one.form for one in found)


def test_a_known_name_that_is_a_word_besides_is_a_name_where_it_begins_a_sentence() -> None:
    gold = parsed("Gold/NOUN/nsubj/1 blinked/VERB/ROOT/1").of
    met = "Then/ADV/advmod/2 Gold/PROPN/nsubj/2 blinked/VERB/ROOT/2"
    known = names_within(mentions(parsed(met).of, 0, ()))
    assert known == {"gold"}
    assert [one.form for one in mentions(gold, 0, (), known)] == ["gold"]
    assert hides(gold, known)
    assert not hides(parsed("Brass/NOUN/nsubj/1 shone/VERB/ROOT/1").of, known)
    assert not mentions(gold, 0, ())
    assert not names_within(mentions(parsed("Gold/PROPN/nsubj/1 blinked/VERB/ROOT/1").of, 0, ()))
