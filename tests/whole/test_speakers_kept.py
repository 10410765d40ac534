"""Who speaks, remembered: told as though it were worked out anew, whatever changed since."""

import json
from dataclasses import replace

from hypothesis import given as over
from hypothesis import settings
from hypothesis import strategies as st

from afterdraft.questions.seen import Seen
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import key
from afterdraft.whole.book import read_book
from afterdraft.whole.given import NOTHING, Given, GivenPerson
from afterdraft.whole.speakers_kept import KeptSpeakers
from afterdraft.whole.told import RECIPE
from tests.reading.hand import scene

PARAGRAPHS = (
    "“Sit,” said Ada.",
    "“No,” said Mr. Pike.",
    "“Why?” she asked.",
    "“Because.” He turned.",
    "“Where is it, Pike?”",
    "“Gone, Miss Lamb,” said the captain.",
    "“I saw Joan,” said Ada Lamb. “Look.”",
    "Joan came in. She smiled.",
    "I looked at my hat, and I turned to Ada.",
    "“Oh,” I said.",
    "Pike rose. He nodded.",
    "“First this.",
    "So Joan, Ada and the captain looked at Mr. Pike, and at Pike.",
)
Scene = tuple[str, ...]
SCENES: dict[Scene, SceneFacts] = {}
pools = st.lists(st.lists(st.sampled_from(PARAGRAPHS), min_size=3, max_size=9).map(tuple), min_size=3, max_size=3)
orders = st.lists(st.integers(0, 2), min_size=1, max_size=4)
genders = st.sampled_from(("f", "m"))
ada = st.builds(GivenPerson, st.just("p1"), st.just("Ada"), st.just(("ada", "ada lamb")), genders, st.booleans())
pike = st.builds(
    GivenPerson, st.just("p2"), st.just("Pike"), st.sampled_from((("pike",), ("pike", "mr pike"))), genders
)
said = st.dictionaries(
    st.tuples(st.integers(0, 1), st.integers(0, 3), st.just(1)), st.sampled_from(("p1", "p2", "gone", "")), max_size=1
)
hers = st.builds(Given, st.tuples(ada, pike), speakers=st.one_of(st.just({}), said))


def facts(book: list[Scene]) -> list[SceneFacts]:
    for texts in book:
        if texts not in SCENES:
            SCENES[texts] = scene(*texts)
    return [SCENES[texts] for texts in book]


def remembering(book: list[Scene], form: str = "") -> KeptSpeakers:
    return KeptSpeakers([key(texts, model="by hand") for texts in book], form, recipe=1)


@over(pools, st.lists(st.tuples(orders, hers), min_size=4, max_size=8))
@settings(max_examples=40, deadline=None)
def test_remembered_or_worked_out_it_is_the_same(pool: list[Scene], times: list[tuple[list[int], Given]]) -> None:
    form = ""
    for order, given in times:
        book = [pool[number] for number in order]
        anew, speak = read_book(facts(book), given), remembering(book, form)
        assert read_book(facts(book), given, speak) == anew
        form = speak.form or form
        again = remembering(book, form)
        assert read_book(facts(book), given, again) == anew
        assert again.form == ""


def test_a_scene_is_worked_out_again_only_where_it_or_its_people_changed() -> None:
    book = [("“Sit,” said Ada.",), ("“No,” said Mr. Pike.",), ("“Oh,” said Ada.", "“Gone.”")]
    first = remembering(book)
    read_book(facts(book), NOTHING, first)
    marked = {one: [[*row[:3], 0.123] for row in rows] for one, rows in json.loads(first.form).items()}

    def kept(now: list[Scene], given: Given = NOTHING) -> list[bool]:
        told = read_book(facts(now), given, remembering(now, json.dumps(marked)))
        return [any(one.sure == 0.123 for one in scene) for scene in told.spoken]

    assert kept(book) == [True, True, True]
    assert kept([*book[:2], ("“Oh,” said Ada.",)]) == [True, True, False]
    assert kept(book, Given((GivenPerson("p2", "Pike", ("mr pike",), "m"),))) == [True, False, True]
    assert kept(book, Given(speakers={(2, 1, 1): "read:ada"})) == [True, True, False]


def test_checks_are_told_the_same() -> None:
    book = [("“Sit,” said Ada.", "“No,” said Mr. Pike.", "“Why?” she asked."), ("Joan came in.", "“Oh,” she said.")]
    keys = tuple(key(texts, model="by hand") for texts in book)
    speak = KeptSpeakers(keys, recipe=RECIPE)
    anew = read_book(facts(book), NOTHING, speak)
    seen = Seen(texts=tuple(book), facts=tuple(facts(book)), keys=keys)
    assert seen.book == replace(seen, speakers=speak.form).book == anew
