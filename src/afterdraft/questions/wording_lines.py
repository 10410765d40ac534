"""The sentences of questions about setups, reveals, threads and cause."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say, many, scene


def _setup_open(one: Finding, titles: Sequence[str]) -> str:
    here = _at(one, titles, "scene")
    return f"“{one.words['name']}” is set up in {here}, and no payoff is marked. Where does it pay off?"


def _payoff_alone(one: Finding, titles: Sequence[str]) -> str:
    return (
        f"“{one.words['name']}” pays off in {_at(one, titles, 'scene')}, and no setup is marked. Where is it prepared?"
    )


def _payoff_first(one: Finding, titles: Sequence[str]) -> str:
    payoff, setup = _at(one, titles, "payoff"), _at(one, titles, "setup")
    return f"“{one.words['name']}” pays off in {payoff}, before it is set up in {setup}. Is that the order meant?"


def _setup_silent(one: Finding, titles: Sequence[str]) -> str:
    between = many(one.numbers["between"], "scene")
    return f"Nothing is heard of “{one.words['name']}” for {between} between these two. Will a reader still have it?"


def _learned_twice(one: Finding, titles: Sequence[str]) -> str:
    who, first, again = one.words["who"], _at(one, titles, "first"), _at(one, titles, "again")
    return f"“{one.words['name']}”: {who} learns it in {first} and again in {again}. Which is the first time?"


def _known_early(one: Finding, titles: Sequence[str]) -> str:
    early, learns = _at(one, titles, "early"), _at(one, titles, "learns")
    knows = f"{one.words['who']} {one.words['does']} “{one.words['name']}” in {early}"
    return f"{knows} and learns it in {learns}. How is it known?"


def _thread_open(one: Finding, titles: Sequence[str]) -> str:
    here = _at(one, titles, "last")
    return f"“{one.words['name']}” is last heard of in {here}, and no close is marked. Where does it end?"


def _thread_silent(one: Finding, titles: Sequence[str]) -> str:
    between = many(one.numbers["between"], "scene")
    where = f"between {_at(one, titles, 'from')} and {_at(one, titles, 'to')}"
    return f"Nothing is heard of “{one.words['name']}” for {between}, {where}. Is that meant?"


def _loose_scene(one: Finding, titles: Sequence[str]) -> str:
    return f"Nothing marked hangs on {scene(titles, one.scenes[0])}. What would be lost without it?"


def _no_cause(one: Finding, titles: Sequence[str]) -> str:
    first, last = _at(one, titles, "first"), _at(one, titles, "last")
    return (
        f"From {first} to {last}, {many(one.numbers['scenes'], 'scene')}, none follows from another. What joins them?"
    )


def _carried(one: Finding, titles: Sequence[str]) -> str:
    words = one.words
    first, second = (scene(titles, number) for number in one.scenes)
    leaves, comes = (words[name].rstrip(".") for name in ("leaves", "comes"))
    return f"{words['name']} leaves {first} with “{leaves}” and comes into {second} with “{comes}”. What came between?"


def _thing_open(one: Finding, titles: Sequence[str]) -> str:
    here, thing = scene(titles, one.evidence[0].scene), one.words["thing"]
    return f"{here} makes much of the {thing}, and it does not come back. Is it meant to be left?"


def _charge(one: Finding, titles: Sequence[str]) -> str:
    here, thing = scene(titles, one.evidence[0].scene), one.words["thing"]
    charge = one.words["charge"]
    return (
        f"“{charge}”: that is said of the {thing} in {here}, and nothing more is heard of it. Is it meant to be left?"
    )


def _thing_late(one: Finding, titles: Sequence[str]) -> str:
    here, thing = scene(titles, one.evidence[0].scene), one.words["thing"]
    return f"The {thing} comes first in {here}, and much turns on it. Should we have seen it before?"


def _at(one: Finding, titles: Sequence[str], name: str) -> str:
    return scene(titles, int(one.numbers[name]))


LINES: Mapping[str, Say] = {
    "setup open": _setup_open,
    "payoff alone": _payoff_alone,
    "payoff first": _payoff_first,
    "setup silent": _setup_silent,
    "learned twice": _learned_twice,
    "known early": _known_early,
    "thread open": _thread_open,
    "thread silent": _thread_silent,
    "loose scene": _loose_scene,
    "no cause": _no_cause,
    "thing open": _thing_open,
    "charge": _charge,
    "thing late": _thing_late,
    "carried": _carried,
}
