"""A comparison kept as JSON comes back as it was; its key tells everything apart that it is made from."""

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from afterdraft.comparison import kept_form
from afterdraft.comparison.compare import compare
from afterdraft.comparison.kept_form import from_form, key, to_form
from afterdraft.comparison.said import Said, overruled
from afterdraft.comparison.told import Told
from tests.comparison.test_compare import A, B, draft, drawn, texts


@given(texts, texts, st.booleans(), st.booleans())
def test_what_is_kept_comes_back(one: list[list[int]], other: list[list[int]], part_way: bool, denied: bool) -> None:
    old, new = drawn(one), drawn(other)
    found = compare(old, new, part_way=part_way)
    if denied:
        found = overruled(found, Said(linked=frozenset({(0, 0)}), unreached=frozenset({1})))
    form = json.loads(json.dumps(to_form(found)))
    back = from_form(form, old, new)
    assert back == found
    assert repr(back) == repr(found)  # whole numbers, fractions and tuples too


def test_no_text_is_kept() -> None:
    old, new = draft(A, B), draft(B)
    assert not any(text[:20] in json.dumps(to_form(compare(old, new))) for text in old.paragraphs)


def changed(told: Told, **to: object) -> Told:
    """With its first scene changed."""
    return replace(told, scenes=(replace(told.scenes[0], **to), *told.scenes[1:]))  # type: ignore[arg-type]


def test_the_key_tells_apart_all_that_a_comparison_is_made_from() -> None:
    told, other = draft(A, B), draft(B)
    words = told.paragraphs
    drafts = [
        told,
        replace(told, paragraphs=(words[0] + "!", *words[1:])),
        replace(told, paragraphs=(words[0] + words[1], "", *words[2:])),
        replace(told, scenes=(replace(told.scenes[0], end=5), replace(told.scenes[1], start=5))),
        replace(told, chapters=2),
        changed(told, chapter=1),
        changed(told, bookmark="K22"),
        changed(told, cast=frozenset({"Ada"})),
        changed(told, places=frozenset({"Ada"})),
    ]
    keys = {key(one, other, part_way=False) for one in drafts} | {key(other, one, part_way=False) for one in drafts}
    keys.add(key(told, other, part_way=True))
    assert len(keys) == 2 * len(drafts) + 1
    assert all(len(one) == 64 and set(one) <= set("0123456789abcdef") for one in keys)


def test_the_key_changes_with_the_recipe_and_takes_any_text(monkeypatch: pytest.MonkeyPatch) -> None:
    told = draft(["One \ud800 \0 🦉."])
    first = key(told, told, part_way=False)
    monkeypatch.setattr(kept_form, "RECIPE", kept_form.RECIPE + 1)
    assert key(told, told, part_way=False) != first
