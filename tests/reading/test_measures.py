from afterdraft.reading.analysed import Analysed
from afterdraft.reading.counted import Counted
from afterdraft.reading.grammar import grammar
from afterdraft.reading.keeping import packed, unpacked
from afterdraft.reading.measures import counted
from tests.reading.hand import scene
from tests.reading.rows import parsed


def test_words_speech_sentences_and_pronouns_outside_speech() -> None:
    one = parsed(
        "“/PUNCT/punct/2 I/PRON/nsubj/2 wait/VERB/ccomp/5 ,/PUNCT/punct/5 ”/PUNCT/punct/5 said/VERB/ROOT/5"
        " she/PRON/nsubj/5 to/ADP/prep/5 me/PRON/pobj/7 ./PUNCT/punct/5",
        "You/PRON/nsubj/11 know/VERB/ROOT/11 them/PRON/dobj/11 ./PUNCT/punct/11",
        "./PUNCT/ROOT/14",
        speech=[(2, 8)],
    )
    found = counted(one)
    assert (found.words, found.sentences, found.spoken) == (9, 2, 2)
    assert (found.first, found.second, found.third) == (1, 1, 2)
    assert (found.past, found.present) == (1, 1)


def test_valence_is_that_of_the_sentences_by_their_words() -> None:
    good, plain = "All/DET/nsubj/1 is/AUX/ROOT/1 good/ADJ/acomp/1", "It/PRON/nsubj/4 rained/VERB/ROOT/4 here/ADV/x/4"
    alone, both = counted(parsed(good)).valence, counted(parsed(good, plain)).valence
    assert alone == 0.4404  # vaderSentiment 3.3.2 of 'All is good'
    assert both == 0.2202


def test_a_paragraph_too_long_to_analyse_keeps_its_words() -> None:
    assert counted(grammar(Analysed("One two."), ())) == Counted(2, 0, 0, 0, 0, 0, 0, 0, 0.0)


def test_they_are_facts_of_the_scene_and_are_kept() -> None:
    facts = scene("“Go,” said Ada.", "Pike came. He sat.")
    assert [one.words for one in facts.counted] == [3, 4]
    assert unpacked(packed(facts)) == facts
