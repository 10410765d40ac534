"""Whose a verb is, by parses written by hand: word, part of speech, relation, head."""

import pytest

from afterdraft.reading.analysed import Analysed
from afterdraft.reading.grammar import grammar
from afterdraft.reading.mentions import mentions
from afterdraft.reading.tag_subjects import aside, denied, subject, told

Word = tuple[str, str, str, int]


def parsed(*words: Word) -> Analysed:
    starts, text = [], ""
    for word, *_ in words:
        starts.append(len(text))
        text += f"{word} "
    return Analysed(
        text.rstrip(),
        tuple(word for word, *_ in words),
        tuple(starts),
        tuple(pos for _, pos, _, _ in words),
        tuple(dep for *_, dep, _ in words),
        tuple(head for *_, head in words),
        (0,) * len(words),
        ("",) * len(words),
    )


def who(verb: int, *words: Word) -> str | None:
    analysed = parsed(*words)
    within = told(grammar(analysed, ()), mentions(analysed, 0, ()))
    found = subject(within, verb)
    return None if found is None else within.mentions[found].form


def test_a_verb_behind_others_has_the_first_ones_subject() -> None:  # Ada turned to Pike and said
    assert (
        who(
            5,
            ("Ada", "PROPN", "nsubj", 1),
            ("turned", "VERB", "ROOT", 1),
            ("to", "ADP", "prep", 1),
            ("Pike", "PROPN", "pobj", 2),
            ("and", "CCONJ", "cc", 1),
            ("said", "VERB", "conj", 1),
        )
        == "ada"
    )


def test_who_is_heard_to_say_it_says_it() -> None:  # she heard Pike say
    assert (
        who(
            3,
            ("she", "PRON", "nsubj", 1),
            ("heard", "VERB", "ROOT", 1),
            ("Pike", "PROPN", "nsubj", 3),
            ("say", "VERB", "ccomp", 1),
        )
        == "pike"
    )


@pytest.mark.parametrize(
    "words",
    [
        (  # cried the voice of Ada Lamb
            ("cried", "VERB", "ROOT", 0),
            ("the", "DET", "det", 2),
            ("voice", "NOUN", "nsubj", 0),
            ("of", "ADP", "prep", 2),
            ("Ada", "PROPN", "compound", 5),
            ("Lamb", "PROPN", "pobj", 3),
        ),
        (  # cried Ada Lamb 's voice
            ("cried", "VERB", "ROOT", 0),
            ("Ada", "PROPN", "compound", 2),
            ("Lamb", "PROPN", "poss", 4),
            ("'s", "PART", "case", 2),
            ("voice", "NOUN", "nsubj", 0),
        ),
    ],
)
def test_a_voice_is_its_owners(words: tuple[Word, ...]) -> None:
    assert who(0, *words) == "ada lamb"


def test_who_says_in_a_clause_of_its_own_is_whom_it_describes() -> None:  # she saw Pike , who said
    assert (
        who(
            5,
            ("she", "PRON", "nsubj", 1),
            ("saw", "VERB", "ROOT", 1),
            ("Pike", "PROPN", "dobj", 1),
            (",", "PUNCT", "punct", 2),
            ("who", "PRON", "nsubj", 5),
            ("said", "VERB", "relcl", 2),
        )
        == "pike"
    )


def test_a_verb_may_say_that_nothing_is_said() -> None:
    silent = parsed(("Ada", "PROPN", "nsubj", 1), ("said", "VERB", "ROOT", 1), ("nothing", "PRON", "dobj", 1))
    speaking = parsed(("Ada", "PROPN", "nsubj", 1), ("said", "VERB", "ROOT", 1), ("so", "ADV", "advmod", 1))
    beginning = parsed(("Ada", "PROPN", "nsubj", 1), ("began", "VERB", "ROOT", 1), ("to", "PART", "aux", 1))
    assert [denied(told(grammar(one, ()), ()), 1) for one in (silent, speaking, beginning)] == [True, False, True]


def test_a_clause_that_only_accompanies_another_is_an_aside() -> None:  # cried Ada , as he finished
    words = parsed(
        ("cried", "VERB", "ROOT", 0),
        ("Ada", "PROPN", "nsubj", 0),
        (",", "PUNCT", "punct", 0),
        ("as", "SCONJ", "mark", 5),
        ("he", "PRON", "nsubj", 5),
        ("finished", "VERB", "advcl", 0),
    )
    within = told(grammar(words, ()), mentions(words, 0, ()))
    assert [aside(within, verb) for verb in (0, 5)] == [False, True]
