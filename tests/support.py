"""What tests need from their surroundings, and what follows when it is not there."""

import os

import pytest

STRICT = os.environ.get("AFTERDRAFT_STRICT") == "1"


def need(condition: object, reason: str) -> None:
    """Go on only if `condition` holds: else skip, or fail where skips are failures."""
    if condition:
        return
    if STRICT:
        pytest.fail(f"needed here: {reason}")
    pytest.skip(reason)
