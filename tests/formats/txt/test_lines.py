"""Lines: every kind of line end, blank lines, indents, form feeds."""

import pytest

from afterdraft.formats.txt.lines import Line, lines


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r", "\x85", "\u2029", "\v", "\u2028"])
def test_every_line_end_ends_a_line(end: str) -> None:
    found = lines(f"One{end}Two{end}{end}Three{end}")
    assert [(line.text, line.blanks) for line in found] == [("One", 0), ("Two", 0), ("Three", 1)]
    assert [line.number for line in found] == [0, 1, 3]


@pytest.mark.parametrize("soft", ["\v", "\u2028"])
def test_a_soft_line_end_beside_hard_ones_stays_within_its_line(soft: str) -> None:
    assert [line.text for line in lines(f"Dear Ann,{soft}I am well.\nNext.\n")] == ["Dear Ann,\nI am well.", "Next."]


def test_indents_are_columns_and_a_tab_is_half_an_inch() -> None:
    assert [line.indent for line in lines("a\n  b\n\tc\n \td\n")] == [0, 2, 5, 5]


@pytest.mark.parametrize("text", ["One\n\fTwo\n", "One\n\f\nTwo\n", "One\fTwo\n", "One\n\f\n\f\nTwo"])
def test_a_form_feed_turns_the_page_for_the_next_line(text: str) -> None:
    found = lines(text)
    assert [(line.text, line.turn, line.blanks) for line in found] == [("One", False, 0), ("Two", True, 0)]


def test_a_double_spaced_file_reads_as_a_single_spaced_one() -> None:
    single = [f"the line numbered {i} goes on" for i in range(40)]
    found = lines("\n\n".join(single))
    assert found == [Line(text, 2 * i) for i, text in enumerate(single)]
