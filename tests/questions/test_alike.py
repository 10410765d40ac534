"""Places far apart that say nearly the same: what they share, and where it stands."""

from hypothesis import given
from hypothesis import strategies as st

from afterdraft.questions.alike import Place, alike
from tests.questions.test_said_twice import BETWEEN, REMARK, REMARK_AGAIN, far


def words(texts: list[list[str]], place: Place) -> str:
    """From the first to the last that is shared, of one paragraph."""
    (paragraph, start), (_, end) = place.begins, place.ends
    return texts[place.scene][paragraph][start:end]


def test_tells_where_the_shared_words_stand() -> None:
    texts = [["It rained.", f"“Well.” {REMARK} Nobody spoke.", *BETWEEN], [f"Mr. Ott sat. {REMARK_AGAIN}"]]
    (one,) = alike(texts, 20)
    assert words(texts, one.first) == REMARK.removeprefix("A ").removesuffix(" it badly.") + " it badly"
    assert words(texts, one.again) == REMARK_AGAIN.removeprefix("A ").removesuffix(".")
    assert [texts[1][0][start:end] for _, start, end in one.again.sentences] == [REMARK_AGAIN]


def test_counts_what_is_the_same() -> None:
    (one,) = alike([["Rust ate the old red harbour crane slowly.", *BETWEEN], ["Rust ate our red harbour crane."]], 10)
    assert (one.run, one.shorter, one.longer) == (3, 6, 7)  # red harbour crane; from 'rust' to 'crane'
    assert one.same == 5


def test_what_overlaps_is_one_place() -> None:
    first = "Rust ate the harbour crane. Rust ate the chain beside. A gull screamed over the slack chain."
    again = "Rust ate a harbour crane. Rust ate some chain beside. The gull screamed above that slack chain."
    assert len(alike([[first, *BETWEEN], [again]], 10)) == 1


def test_names_alone_lead_nowhere() -> None:
    first = "So Augusta Pell sat by Rufus Dray and Tobias Orme."
    again = "Then Augusta Pell stood by Rufus Dray and Tobias Orme."
    assert not alike([[first, *BETWEEN], [again]], 1)


@given(st.lists(st.lists(st.text("aab.!?\n “”é’A ", max_size=40), max_size=6), max_size=5))
def test_any_text_is_read(texts: list[list[str]]) -> None:
    assert alike(texts, 0) == []  # never so long that two places are far apart


@given(st.integers(0, 12), st.integers(0, 5))
def test_is_found_wherever_it_stands(before: int, behind: int) -> None:
    texts = [[*BETWEEN[:before], REMARK, *BETWEEN[before:]], [*far(1)[:behind], REMARK_AGAIN]]
    assert any(REMARK_AGAIN in texts[1][one.again.ends[0]] for one in alike(texts, 15))
