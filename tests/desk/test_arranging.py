"""Acts on an arrangement, against a plain model: rows as lists of codes."""

from itertools import count

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.desk import arranging
from afterdraft.desk.arrangement import Arrangement, Laid, Next, Row
from afterdraft.desk.arranging import everything
from afterdraft.errors import Missing, NotPossible
from afterdraft.manuscript.division import Chapter, Division, Scene

Model = dict[str | None, list[str]]


def chapter(n: int, at: int, part: str | None = None) -> Chapter:
    return Chapter(f"c{n}", at, part, "chapter", n, "")


DIVISION = Division(
    chapters=(chapter(1, 0), chapter(2, 3), chapter(3, 5)),
    scenes=tuple(
        Scene(f"s{n}", at, code) for n, (at, code) in enumerate(zip((0, 1, 2, 3, 4, 5), "ABCDEF", strict=True))
    ),
    roles=("story",) * 6,
)


def own_order() -> Arrangement:
    return arranging.drafts_order("d", DIVISION)


def codes(arrangement: Arrangement) -> Model:
    """Codes by row; under None those set aside."""
    rows: Model = {row.id: [card.code for card in row.cards] for row in arrangement.rows}
    return rows | {None: [card.code for card in arrangement.aside]}


def ids(arrangement: Arrangement, letters: str) -> list[str]:
    return [arranging.by_code(arrangement, letter).id for letter in letters]


def new_ids(prefix: str = "n") -> arranging.NewId:
    numbers = count()
    return lambda kind: f"{prefix}{kind}{next(numbers)}"


def in_keyed_order(arrangement: Arrangement) -> bool:
    """Whether reading the cards back by their keys would give the same order."""
    lines = [row.cards for row in arrangement.rows] + [arrangement.aside]
    placed = [[card.place for card in line] for line in lines] + [[row.place for row in arrangement.rows]]
    return all(keys == sorted(set(keys)) for keys in placed) and all(
        card.row == row.id for row in arrangement.rows for card in row.cards
    )


def test_the_drafts_own_order_is_chapters_and_scenes() -> None:
    assert codes(own_order()) == {"c1": ["A", "B", "C"], "c2": ["D", "E"], "c3": ["F"], None: []}
    assert in_keyed_order(own_order())


@pytest.mark.parametrize(
    ("moved", "row", "before", "now"),
    [
        ("A", "c2", "E", {"c1": ["B", "C"], "c2": ["D", "A", "E"]}),
        ("A", "c2", None, {"c1": ["B", "C"], "c2": ["D", "E", "A"]}),
        ("AF", "c2", "D", {"c1": ["B", "C"], "c2": ["A", "F", "D", "E"], "c3": []}),
        ("AB", "c1", "B", {}),  # before one that is itself on the move: they stay where they are
        ("C", "c1", "A", {"c1": ["C", "A", "B"]}),
        ("B", "c1", "C", {}),
        ("BD", None, None, {"c1": ["A", "C"], "c2": ["E"], None: ["B", "D"]}),
    ],
)
def test_cards_are_moved(moved: str, row: str | None, before: str | None, now: Model) -> None:
    stands = own_order()
    done = arranging.put(stands, ids(stands, moved), row=row, before=before and ids(stands, before)[0])
    assert codes(done) == codes(stands) | now
    assert (done is stands) == (not now)
    assert in_keyed_order(done)


def test_what_is_gone_is_told() -> None:
    stands = own_order()
    for act in (
        lambda: arranging.put(stands, ["s9"], row="c1"),
        lambda: arranging.put(stands, ["s0"], row="c9"),
        lambda: arranging.put(stands, ["s0"], row="c2", before="s1"),  # lies in another row
        lambda: arranging.by_code(stands, "Z"),
    ):
        with pytest.raises(Missing):
            act()


def test_cards_are_joined_and_taken_apart_again() -> None:
    stands = arranging.change(
        own_order(), ["s1"], lambda card: Laid("s1", "B", ("s1",), "c1", card.place, next=Next("b"))
    )
    stands = arranging.change(
        stands, ["s3"], lambda card: Laid("s3", "D", ("s3",), "c2", card.place, next=Next("d", "I"))
    )
    done = arranging.joined(stands, ["s3", "s1"])
    whole = arranging.by_code(done, "B")
    assert (whole.scenes, whole.next, whole.intent) == (("s1", "s3"), Next("b\nd", "I"), "join")
    assert codes(done) == {"c1": ["A", "B", "C"], "c2": ["E"], "c3": ["F"], None: []}
    parted = arranging.apart(done, "s1", codes={"s1": "B", "s3": "D"}, new_id=new_ids())
    assert codes(parted)["c1"] == ["A", "B", "D", "C"]
    assert (arranging.by_code(parted, "B").intent, arranging.by_code(parted, "B").next.what) == (None, "b\nd")
    for few in ([], ["s1"]):
        with pytest.raises(NotPossible):
            arranging.joined(stands, few)
    with pytest.raises(NotPossible):
        arranging.apart(stands, "s1", codes={}, new_id=new_ids())


def test_a_card_is_split_and_its_pieces_joined_again() -> None:
    stands = own_order()
    done = arranging.split(stands, "s1", id="l1", code="B2")
    assert codes(done)["c1"] == ["A", "B", "B2", "C"]
    assert {card.intent for card in everything(done) if card.scenes == ("s1",)} == {"split"}
    again = arranging.joined(done, ["s1", "l1"])
    assert (codes(again)["c1"], arranging.by_code(again, "B").scenes) == (["A", "B", "C"], ("s1",))
    with pytest.raises(NotPossible):
        arranging.split(arranging.joined(stands, ["s0", "s1"]), "s0", id="l1", code="B2")


def test_rows_come_move_and_go() -> None:
    stands = arranging.add_row(own_order(), Row("r1", "", "Frost", None, None), before="c2")
    assert [row.id for row in stands.rows] == ["c1", "r1", "c2", "c3"]
    moved = arranging.move_row(stands, "c1")
    assert [row.id for row in moved.rows] == ["r1", "c2", "c3", "c1"]
    assert arranging.move_row(stands, "c1", before="r1") is stands
    assert arranging.move_row(stands, "c1", before="c1") is stands
    assert in_keyed_order(moved)
    assert [row.id for row in arranging.remove_row(stands, "r1").rows] == ["c1", "c2", "c3"]
    with pytest.raises(NotPossible, match="There are cards in this chapter"):
        arranging.remove_row(stands, "c1")


def test_a_new_or_moved_row_comes_into_the_part_of_the_row_before() -> None:
    division = Division(
        chapters=(chapter(1, 0, "p1"), chapter(2, 1, "p2")),
        scenes=(Scene("s0", 0, "A"), Scene("s1", 1, "B")),
        roles=("story",) * 2,
    )
    stands = arranging.drafts_order("d", division)
    assert arranging.add_row(stands, Row("r1", "", "", None, None), before="c2").rows[1].part == "p1"
    assert arranging.move_row(stands, "c1").rows[1].part == "p2"


@pytest.mark.parametrize(
    ("lines", "stay", "now"),
    [
        (["FA", "BC", "DE"], False, {"c1": ["F", "A"], "c2": ["B", "C"], "c3": ["D", "E"]}),
        (["C"], False, {"c1": ["C"], "c2": [], "c3": [], None: ["A", "B", "D", "E", "F"]}),
        (["C", "A"], True, {"c1": ["B", "C"], "c2": ["D", "E", "A"], "c3": ["F"]}),
        (["AFB"], True, {"c1": ["A", "F", "B", "C"], "c3": []}),
        (["ABC", "DE", "", "F"], False, {"c3": [], "nrow0": ["F"]}),
    ],
)
def test_cards_are_laid_by_codes(lines: list[str], stay: bool, now: Model) -> None:
    stands = own_order()
    done = arranging.relaid(stands, [ids(stands, line) for line in lines], stay=stay, new_id=new_ids())
    assert codes(done) == codes(stands) | now
    assert in_keyed_order(done)


def test_laying_them_as_they_lie_changes_nothing() -> None:
    stands = own_order()
    assert arranging.relaid(stands, [["s0", "s1", "s2"], ["s3", "s4"], ["s5"]], stay=False, new_id=new_ids()) == stands


def test_a_copy_has_the_same_codes_and_texts_under_other_ids() -> None:
    stands = arranging.with_intent(own_order(), ["s0"], "cut")
    stands = arranging.put(stands, ["s5"], row=None)
    made = arranging.copied(stands, id="a2", name="Other", place="h", new_id=new_ids())
    assert list(codes(made).values()) == list(codes(stands).values())
    assert (arranging.by_code(made, "A").intent, [row.chapter for row in made.rows]) == ("cut", ["c1", "c2", "c3"])
    assert not {card.id for card in everything(made)} & {card.id for card in everything(stands)}
    assert in_keyed_order(made)


def test_names_are_told_apart() -> None:
    assert arranging.free_name(["Frost", "Frost 2"], "Frost") == "Frost 3"
    assert arranging.free_name([], "Frost") == "Frost"


places = st.integers(0, 9)


@given(st.lists(st.tuples(st.lists(st.sampled_from("ABCDEF"), min_size=1, unique=True), places, places), max_size=12))
def test_any_moves_are_as_on_plain_lists(moves: list[tuple[list[str], int, int]]) -> None:
    stands = own_order()
    model = codes(stands)
    rows: list[str | None] = ["c1", "c2", "c3", None]
    for letters, to, at in moves:
        row = rows[to % 4]
        rest = [code for code in model[row] if code not in letters]
        before = rest[at] if at < len(rest) else None
        stands = arranging.put(stands, ids(stands, "".join(letters)), row=row, before=before and ids(stands, before)[0])
        model = {own: [code for code in line if code not in letters] for own, line in model.items()}
        spot = model[row].index(before) if before else len(model[row])
        model[row][spot:spot] = letters
        assert codes(stands) == model
        assert in_keyed_order(stands)
