"""The sentences of questions about the cast."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say, listed, scene


def _spelling(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    return f"“{words['rare']}” stands in {scene(titles, one.evidence[0].scene)}. Is {words['usual']} meant?"


def _names_alike(one: Finding, titles: Sequence[str]) -> str:
    here = list(dict.fromkeys(scene(titles, span.scene) for span in one.evidence))
    where = here[0] if len(here) == 1 else f"{here[0]} and {here[1]}, next to each other"
    return f"{one.words['one']} and {one.words['other']} are named in {where}. Will a reader keep the two names apart?"


def _left_over(one: Finding, titles: Sequence[str]) -> str:
    return f"{one.words['name']} is named in {scene(titles, one.evidence[0].scene)} and nowhere else. Who is that?"


def _promised(one: Finding, titles: Sequence[str]) -> str:
    here = scene(titles, one.evidence[0].scene)
    return f"“{one.words['said']}”, says {one.words['name']} in {here}, and is not met again. Does anyone ever hear it?"


def _late(one: Finding, titles: Sequence[str]) -> str:
    here = scene(titles, one.evidence[0].scene)
    name = one.words["name"]
    return f"{name} is named for the first time in {here}, near the end. Is there a place for {name} before that?"


def _introduced(one: Finding, titles: Sequence[str]) -> str:
    first, again = (scene(titles, span.scene) for span in one.evidence[:2])
    return f"{one.words['name']} is met in {first} and brought in as somebody new in {again}. Is that meant?"


def _given_name(one: Finding, titles: Sequence[str]) -> str:
    words, here = one.words, scene(titles, one.evidence[0].scene)
    return f"{words['rare']} {words['surname']} in {here}: is that {words['usual']} {words['surname']}?"


def _name_drift(one: Finding, titles: Sequence[str]) -> str:
    where = listed([scene(titles, number) for number in dict.fromkeys(span.scene for span in one.evidence[1:])])
    return f"“{one.words['other']}” stands in {where} and nowhere else. Is {one.words['usual']} meant?"


CAST: Mapping[str, Say] = {
    "spelling": _spelling,
    "names alike": _names_alike,
    "late": _late,
    "introduced": _introduced,
    "promised": _promised,
    "left over": _left_over,
    "given name": _given_name,
    "name drift": _name_drift,
}
