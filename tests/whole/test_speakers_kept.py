"""Who speaks, remembered: told as though it were worked out anew, whatever changed since."""

import json

from hypothesis import given as over
from hypothesis import settings
from hypothesis import strategies as st

from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import key
from afterdraft.whole.book import read_book
from afterdraft.whole.given import NOTHING, Given, GivenPerson
from afterdraft.whole.speakers_kept import KeptSpeakers
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
)
Scene = tuple[str, ...]
SCENES: dict[Scene, SceneFacts] = {}
books = st.lists(st.lists(st.sampled_from(PARAGRAPHS), max_size=9).map(tuple), min_size=1, max_size=4)
said = st.dictionaries(
    st.tuples(st.integers(0, 3), st.integers(0, 8), st.just(1)), st.sampled_from(("p1", "p2", "gone", "")), max_size=3
)
people = st.lists(
    st.sampled_from(
        (
            GivenPerson("p1", "Ada", ("ada", "ada lamb"), "f"),
            GivenPerson("p1", "Ada", ("ada",), "m"),
            GivenPerson("p1", "Ada", ("ada", "miss lamb"), "f", narrator=True),
            GivenPerson("p2", "Pike", ("pike", "captain"), ""),
            GivenPerson("p2", "Pike", ("mr pike", "joan"), "m"),
        )
    ),
    max_size=2,
    unique_by=lambda one: one.id,
).map(tuple)
hers = st.builds(Given, people, st.sampled_from((frozenset(), frozenset({"joan"}))), said)


def facts(book: list[Scene]) -> list[SceneFacts]:
    for texts in book:
        if texts not in SCENES:
            SCENES[texts] = scene(*texts)
    return [SCENES[texts] for texts in book]


def remembering(book: list[Scene], form: str = "") -> KeptSpeakers:
    return KeptSpeakers([key(texts, model="by hand") for texts in book], form, recipe=1)


@over(st.lists(st.tuples(books, hers), min_size=2, max_size=4))
@settings(max_examples=60)
def test_remembered_or_worked_out_it_is_the_same(times: list[tuple[list[Scene], Given]]) -> None:
    form = ""
    for book, given in times:
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
