"""What checks found as plain JSON, so that it can be kept with the book under `asking.key`."""

from collections.abc import Mapping, Sequence
from dataclasses import asdict
from typing import Any

from afterdraft.questions.question import Finding, Span

Form = dict[str, Any]  # JSON


def findings_form(found: Mapping[str, Sequence[Finding]]) -> Form:
    """By key; `findings_of` gives the same back."""
    return {key: [asdict(one) for one in some] for key, some in found.items()}


def findings_of(form: Form) -> dict[str, tuple[Finding, ...]]:
    return {key: tuple(map(_finding, some)) for key, some in form.items()}


def _finding(row: Form) -> Finding:
    spans = tuple(Span(**span) for span in row["evidence"])
    return Finding(
        **{**row, "evidence": spans, "people": tuple(row["people"]), "scenes": tuple(row["scenes"])},
    )
