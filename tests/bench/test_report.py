"""What was measured is written down as it is, with what it should have been."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from bench import report
from bench.report import Figure, Section, results, shown

NOW = datetime(2026, 1, 2, 3, 4, tzinfo=UTC)
SECTION = Section(
    "Speed",
    "A novel.",
    (
        Figure("bring in", 0.614, "s", 2.0, note="worst 1.01 s"),
        Figure("memory", 71.26, "MB", 60),
        Figure("chapter F1", 0.99956, "", 0.97, at_most=False, reference="corpus"),
        Figure("break F1", 0.9, "", 0.95, at_most=False),
        Figure("answers", 120, "pages"),
    ),
    ("- one line below",),
)


def test_each_figure_stands_beside_its_target() -> None:
    lines = results([SECTION], NOW).splitlines()
    assert "2026-01-02 03:04 UTC" in lines[2]
    assert lines[lines.index("|---|---:|---:|---|---|") + 1 :] == [
        "| bring in | 0.61 s | ≤ 2.00 s | yes | worst 1.01 s |",
        "| memory | 71.3 MB | ≤ 60 MB | **no** |  |",
        "| chapter F1 | 0.9995 | ≥ 0.9700 | yes | corpus |",
        "| break F1 | 0.9000 | ≥ 0.9500 | **no** |  |",
        "| answers | 120 pages |  |  |  |",
        "",
        "- one line below",
    ]


@pytest.mark.parametrize(
    ("value", "at_most", "met"), [(1.0, True, True), (1.1, True, False), (1.0, False, True), (0.9, False, False)]
)
def test_a_target_is_a_ceiling_or_a_floor(value: float, at_most: bool, met: bool) -> None:
    assert Figure("x", value, target=1.0, at_most=at_most).met is met


def test_what_is_shown_is_never_rounded_into_its_target() -> None:
    assert shown(Figure("x", 0.99999, target=1.0, at_most=False)) != shown(Figure("x", 1.0))


def test_the_last_run_replaces_the_results_and_every_run_stays_in_the_history(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(report, "HERE", tmp_path)
    report.write([SECTION])
    report.write([SECTION])
    assert (tmp_path / "RESULTS.md").read_text("utf-8").count("## Speed") == 1
    history = (tmp_path / "history.md").read_text("utf-8")
    assert history.count("bring in 0.61 s") == 2
    assert "memory 71.3 MB (missed)" in history
    assert "answers" not in history


def test_one_section_is_measured_anew_and_the_others_stay(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(report, "HERE", tmp_path)
    report.write([SECTION, Section("Kills", "A small book.", ()), Section("Fuzz", "Files.", ())])
    report.rewrite(Section("Kills", "A large book.", (), ("- a line",)))
    text = (tmp_path / "RESULTS.md").read_text("utf-8")
    assert [line for line in text.splitlines() if line.startswith("## ")] == ["## Speed", "## Kills", "## Fuzz"]
    assert ("A small book." in text, text.count("A large book."), text.count("- a line")) == (False, 1, 1)
    assert text.count("Measured on its own on ") == 1
