"""The sentences of questions about viewpoint, person and tense."""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_kit import Say, scene


def _tense(one: Finding, titles: Sequence[str]) -> str:
    words, here = one.words, scene(titles, one.evidence[0].scene)
    single, whole = one.numbers["sentences"] == 1, one.numbers["whole"]
    what = "A sentence" if single else "A whole paragraph" if whole else "Some sentences"
    stands = "stands" if single or whole else "stand"
    return f"{what} in {here}, which is told in the {words['told']}, {stands} in the {words['tense']}. Is that meant?"


def _person(one: Finding, titles: Sequence[str]) -> str:
    here = scene(titles, one.evidence[0].scene)
    if "said" in one.words:
        said = one.words["said"]
        return f"{here} is told by an I, and nobody is near who this “{said}” may be. Is it the I?"
    if "name" in one.words:
        name = one.words["name"]
        return f"{here} is told by {name}, and this passage tells of {name} by name. Is it the I?"
    return f"{here} is told in the third person, and this passage says “I”. Is that meant?"


def _viewpoint(one: Finding, titles: Sequence[str]) -> str:
    here, words = scene(titles, one.evidence[0].scene), one.words
    if not words["viewpoint"]:
        return f"This tells what {words['other']} thinks, in {here} and in no other scene. Is that meant?"
    return f"In {here} we are with {words['viewpoint']}, and this tells what {words['other']} thinks. Is that meant?"


VIEWPOINT: Mapping[str, Say] = {
    "tense": _tense,
    "person": _person,
    "viewpoint": _viewpoint,
}
