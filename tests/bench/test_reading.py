import pytest

from bench.reading.by_hand import Result, figures, listed, rows
from bench.reading.halves import Half, halves
from bench.reading.score import b_cubed, calibration, f1, found, surest_half
from bench.structure.halves import half


def test_halves_do_not_depend_on_the_order_of_titles() -> None:
    titles = ["Emma", "Hard Times", "Daisy Miller", "The Gambler"]
    assert halves(titles) == halves(reversed(titles))
    assert sorted(halves(titles).values()) == ["report", "report", "tune", "tune"]


def test_half_of_a_span_finds_it() -> None:
    result = found([(0, 10), (20, 30)], [(0, 5), (24, 25), (50, 60)])
    assert (result.recall, result.precision) == (0.5, 2 / 3)


def test_nested_spans_add_up() -> None:
    assert found([(0, 10)], [(0, 3), (5, 8)]).recall == 1.0


def test_b_cubed_of_a_worked_example() -> None:
    # Bagga & Baldwin (1998): five items as {1..5}, {6, 7}, {8..12} against {1..5}, {6..12}; P 0.76, R 1.0
    known = {str(n): "a" if n <= 5 else "b" if n <= 7 else "c" for n in range(1, 13)}
    shown = {str(n): "x" if n <= 5 else "y" for n in range(1, 13)}
    precision, recall = b_cubed(known, shown)
    assert precision == pytest.approx(0.7619, abs=1e-4)
    assert recall == 1.0
    assert f1(precision, recall) == pytest.approx(0.8649, abs=1e-4)


def test_calibration_is_the_mean_distance_from_what_is_right() -> None:
    assert calibration([(0.9, True)] * 9 + [(0.9, False)]) == pytest.approx(0.0)
    assert calibration([(1.0, False)] * 4) == pytest.approx(1.0)


def test_the_surest_half_is_by_what_is_claimed() -> None:
    assert surest_half([(0.9, True), (0.8, True), (0.4, False), (0.1, False)]) == 1.0


@pytest.mark.parametrize("side", ["tune", "report"])
def test_people_listed_by_hand_are_of_their_half(side: Half) -> None:
    novels = list(listed(side))
    assert {half(one.title) for one in novels} == {side}
    assert all(one.mattering for one in novels)


def test_a_list_made_by_hand_is_read() -> None:
    novel = next(one for one in listed("tune") if one.title == "Treasure Island")
    assert novel.narrator is not None
    teller = novel.people[novel.narrator]
    assert (teller.aliases[:2], teller.gender, teller.category) == (("Jim", "Hawkins"), "M", "major")
    assert "yo" in novel.nobody


def test_casts_are_counted_over_the_novels_and_who_is_nobody_for_the_tuning_half_alone() -> None:
    ferry = Result("The Ferry", (3, 4), (1.0, 0.5), (2, 2), narrator=True, nobodies=1, faults=())
    frost = Result("Frost", (5, 6), (1.0, 1.0), (1, 2), narrator=False, nobodies=0, faults=())
    people, aliases, genders, narrators, nobodies = [one.value for one in figures([ferry, frost], "tune")]
    assert (people, genders, narrators, nobodies) == (0.8, 0.75, 0.5, 0.5)
    assert aliases == pytest.approx((2 / 3 + 1) / 2)
    assert [one.value for one in figures([ferry, frost], "report")] == [people, aliases, genders, narrators]
    assert rows([ferry], "tune")[-1] == "| The Ferry (tune) | 3 of 4 | 1.000 | 0.500 | 0.667 | 2 of 2 | right | 1 |"
    assert rows([frost], "report")[-1].endswith("| 1 of 2 | wrong | – |")
