"""The child that reads: what it answers, that it is ended where it is, that what is known needs no pipeline."""

import json
import subprocess
import sys

import pytest

from afterdraft.alongside import KEEP, TOLD, Reader, _packed, answers, wanted
from afterdraft.reading.keeping import packed
from afterdraft.whole.given import Given, GivenPerson
from afterdraft.whole.speakers_kept import SPEAKERS
from afterdraft.whole.task import Task, given_form, given_of, task
from tests.reading.hand import scene

TEXTS = (
    ("Ada Lamb came in.", "“Sit,” said Ada.", "“No,” said Miss Lamb.", "So Ada sat."),
    ("“Who goes?” said the Owl.", "“I,” said Ada.", "“Why?” said the Owl."),
)
GIVEN = Given((GivenPerson("p1", "Ada", ("ada", "ada lamb"), "f"),), frozenset({"owl"}), {(1, 1, 1): "p1"})


def asked(given: Given = GIVEN) -> Task:
    places, at = [], 0
    for texts in TEXTS:
        starts = []
        for text in texts:
            starts.append(at)
            at += len(text) + 2
        places.append(starts)
    return task(["s1", "s2"], TEXTS, places, given, model="by hand")


def known(of: Task) -> dict[str, str]:
    return {key: packed(scene(*texts)) for key, texts in zip(of.keys, TEXTS, strict=True)}


def test_what_she_said_goes_and_comes_as_json() -> None:
    assert given_of(given_form(GIVEN)) == GIVEN


def test_the_key_changes_with_what_she_said_and_with_nothing_else() -> None:
    assert asked().key == asked().key
    assert asked().key != asked(Given()).key


def test_what_is_known_is_told_at_once_and_the_pipeline_stays_away() -> None:
    reader, heard = Reader(), []
    told = reader.run(asked(), known(asked()), on_scene=lambda key, _: heard.append(key))
    assert heard == []
    assert told is not None
    assert '"id":"p1","name":"Ada"' in told
    assert '"scenes":["s1","s2"]' in told
    code = "import afterdraft.web.reading, sys; print('spacy' in sys.modules, 'numpy' in sys.modules)"
    seen = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert seen.stdout.split() == ["False", "False"]


def test_the_last_line_tells_the_whole() -> None:
    of = asked()
    (kept, line) = answers(of, known(of))
    assert line.startswith(TOLD)
    assert kept.startswith(KEEP)


def test_one_that_is_stopped_before_it_begins_reads_nothing() -> None:
    reader = Reader()
    reader.stop()
    assert reader.run(asked(), {}, on_scene=lambda *_: pytest.fail("nothing was to be read")) is None
    assert reader.stopped


def test_a_fault_in_the_child_is_no_answer() -> None:
    of = asked()
    assert Reader().run(of, dict.fromkeys(of.keys, "no facts"), on_scene=lambda *_: None) is None


@pytest.mark.parametrize("status", [0, 1, -9])
def test_one_that_ends_in_the_middle_of_a_line_has_told_what_came_before(
    monkeypatch: pytest.MonkeyPatch, status: int
) -> None:
    end = f"os._exit({status})" if status >= 0 else "os.kill(os.getpid(), 9)"
    code = f"""import os, sys; sys.stdin.read(); os.write(1, b'["k1", "f1"]\\n["k2", "f'); {end}"""
    monkeypatch.setattr(
        "afterdraft.alongside._spawned",
        lambda: subprocess.Popen([sys.executable, "-c", code], stdin=subprocess.PIPE, stdout=subprocess.PIPE),
    )
    heard: list[tuple[str, str]] = []
    assert Reader().run(asked(), {}, on_scene=lambda key, facts: heard.append((key, facts))) is None
    assert heard == [("k1", "f1")]


@pytest.mark.slow
def test_the_real_child_reads_scene_by_scene_and_can_be_ended_between_two() -> None:
    of, reader, heard = asked(), Reader(), []

    def first(key: str, facts: str) -> None:
        heard.append((key, facts))
        if len(heard) == 1:
            reader.stop()

    assert reader.run(of, {}, on_scene=first) is None
    assert heard[0][0] == of.keys[0]
    kept = dict(heard[:1])
    more: list[str] = []
    told = Reader().run(of, kept, on_scene=lambda key, _: more.append(key), keep=kept.update)
    assert more == list(of.keys[1:])
    assert told is not None
    assert '"name":"Ada"' in told
    again = Reader().run(of, {key: kept[key] for key in wanted(of, {}) if key in kept}, on_scene=kept.__setitem__)
    assert again == told
    assert set(of.keys) <= set(kept)


def test_of_what_is_kept_only_what_is_wanted_goes_to_the_child() -> None:
    of = asked()
    (kept, _) = answers(of, known(of))
    everything = known(of) | json.loads(kept.removeprefix(KEEP)) | {"of another draft": "facts"}
    sent = _packed(of, everything)["known"]
    assert set(sent) == {*of.keys, SPEAKERS}
    assert [line[:5] for line in answers(of, sent)] == [TOLD]
