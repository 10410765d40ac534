"""Figures, and the two files they are written to: `RESULTS.md` (the last run) and `history.md` (all runs)."""

import math
import os
import subprocess
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

HERE = Path(__file__).parent


@dataclass(frozen=True, slots=True)
class Figure:
    """One measured value beside what it should be."""

    name: str
    value: float
    unit: str = ""
    target: float | None = None
    at_most: bool = True  # whether the target is a ceiling or a floor
    reference: str = ""  # what else does the same, or where the target is from
    note: str = ""

    @property
    def met(self) -> bool | None:
        if self.target is None:
            return None
        return self.value <= self.target if self.at_most else self.value >= self.target


@dataclass(frozen=True, slots=True)
class Section:
    """What one bench found."""

    title: str
    corpus: str  # what was measured on, in words
    figures: tuple[Figure, ...]
    lines: tuple[str, ...] = ()  # Markdown below the table: worst cases with their reasons, tables of detail


def write(sections: Sequence[Section]) -> None:
    """The results of a whole run, and a line for each of its figures that has a target in the history."""
    now = datetime.now(UTC)
    (HERE / "RESULTS.md").write_text(results(sections, now), encoding="utf-8")
    history = HERE / "history.md"
    old = history.read_text("utf-8") if history.exists() else "# Every run of the bench\n"
    history.write_text(old + _entry(sections, now), encoding="utf-8")


def rewrite(section: Section) -> None:
    """One section of the results measured anew, dated under its heading; the others stay as they are."""
    place = HERE / "RESULTS.md"
    old = place.read_text("utf-8") if place.exists() else results((), datetime.now(UTC))
    heading = f"\n## {section.title}\n"
    before, _, rest = old.partition(heading)
    _, more, after = rest.partition("\n## ")
    dated = f"Measured on its own on {datetime.now(UTC):%Y-%m-%d %H:%M} UTC, {_machine()}, {_commit()}. "
    lines = "\n".join(_section(replace(section, corpus=dated + section.corpus)))
    place.write_text(before.rstrip("\n") + "\n" + lines + "\n" + more + after, encoding="utf-8")


def results(sections: Sequence[Section], now: datetime) -> str:
    head = [
        "# What was measured",
        "",
        f"`make bench` on {now:%Y-%m-%d %H:%M} UTC, {_machine()}, {_commit()}. Nothing here is typed by hand.",
    ]
    return "\n".join([*head, *(line for section in sections for line in _section(section))]) + "\n"


def shown(figure: Figure) -> str:
    """The value with its unit, as precise as it is worth."""
    return f"{_number(figure.value, figure.unit)}{_unit(figure.unit)}"


def _section(section: Section) -> Iterable[str]:
    yield from ("", f"## {section.title}", "", section.corpus, "")
    yield "| figure | measured | target | met | reference |"
    yield "|---|---:|---:|---|---|"
    for figure in section.figures:
        met = {True: "yes", False: "**no**", None: ""}[figure.met]
        aside = "; ".join(filter(None, (figure.reference, figure.note)))
        yield f"| {figure.name} | {shown(figure)} | {_target(figure)} | {met} | {aside} |"
    if section.lines:
        yield from ("", *section.lines)


def _entry(sections: Sequence[Section], now: datetime) -> str:
    figures = [figure for section in sections for figure in section.figures if figure.target is not None]
    row = "; ".join(f"{figure.name} {shown(figure)}{'' if figure.met else ' (missed)'}" for figure in figures)
    return f"\n- {now:%Y-%m-%d %H:%M} UTC, {_commit()}, {_machine()}: {row}\n"


def _target(figure: Figure) -> str:
    if figure.target is None:
        return ""
    return f"{'≤' if figure.at_most else '≥'} {_number(figure.target, figure.unit)}{_unit(figure.unit)}"


def _number(value: float, unit: str) -> str:
    if unit == "":  # a share: cut, not rounded, so that 1.0000 is the whole
        return f"{math.floor(value * 10_000 + 1e-6) / 10_000:.4f}"
    return f"{value:.2f}" if unit == "s" else f"{value:.0f}" if value >= 100 or value == int(value) else f"{value:.1f}"


def _unit(unit: str) -> str:
    return f" {unit}" if unit else ""


def _machine() -> str:
    """In words of cores, and how busy it was: times mean little where others work beside."""
    busy = f", load {os.getloadavg()[1]:.1f} over five minutes" if hasattr(os, "getloadavg") else ""
    return f"{os.cpu_count()} cores{busy}"


def _commit() -> str:
    commit = _git("rev-parse", "--short", "HEAD")
    changed = _git("status", "--porcelain", "--", "../src")
    return f"commit {commit or 'none'}{' with changes since' if changed else ''}"


def _git(*asked: str) -> str:
    done = subprocess.run(["git", *asked], cwd=HERE, capture_output=True, encoding="utf-8", check=False)
    return done.stdout.strip() if done.returncode == 0 else ""
