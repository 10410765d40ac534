"""When a scene happens, in words; dates as EDTF has them."""

import pytest

from afterdraft.web.told import When
from afterdraft.web.when import day_told, when_told


@pytest.mark.parametrize(
    ("when", "told"),
    [
        (When(), ""),
        (When("1893-05-03", "1893-05-03"), "3 May 1893"),
        (When("XXXX-05-03", "XXXX-05-03", "morning"), "3 May, morning"),
        (When("XXXX-05-03", "XXXX-05-09"), "between 3 May and 9 May"),
        (When("XXXX-05-03", ""), ""),
        (When("", "XXXX-05-03", "night"), "night"),
        (When("", "", "evening"), "evening"),
        (When("1893-05", "1893-05", "", flashback=True), "May 1893; told back"),
    ],
)
def test_when_a_scene_happens(when: When, told: str) -> None:
    assert when_told(when) == told


@pytest.mark.parametrize(("date", "told"), [("1893-05-03", "3 May 1893"), ("1893-21", "1893-21"), ("1893", "1893")])
def test_a_date(date: str, told: str) -> None:
    assert day_told(date) == told
