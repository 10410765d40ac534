"""The facts of scenes from their words. What keeps them, and reads only what is new, is `afterdraft.alongside`."""

from collections.abc import Iterator, Mapping, Sequence

from afterdraft.engine.pipeline import MODEL, analyse
from afterdraft.reading.analysed_form import key, packed, unpacked
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.scene import scene_facts


def read_scenes(scenes: Sequence[Sequence[str]]) -> Iterator[SceneFacts]:
    """One value a scene, in order, each made when asked for; `scenes` are their story paragraphs."""
    for paragraphs in scenes:
        yield scene_facts(analyse(paragraphs))


def read_again(paragraphs: Sequence[str], known: Mapping[str, str]) -> tuple[SceneFacts, dict[str, str]]:
    """The facts of one scene, and the analyses of its new paragraphs, packed, by `paragraph_key`.

    Paragraphs whose analyses are `known` are not analysed; where all are, no pipeline is loaded.
    """
    keys = [paragraph_key(text) for text in paragraphs]
    new = {one: text for one, text in zip(keys, paragraphs, strict=True) if one not in known}
    fresh = dict(zip(new, analyse(list(new.values())), strict=True)) if new else {}
    analysed = [
        fresh[one] if one in fresh else unpacked(text, known[one]) for one, text in zip(keys, paragraphs, strict=True)
    ]
    made = {one: form for one, words in fresh.items() if (form := packed(words))}
    return scene_facts(analysed), made


def paragraph_key(text: str) -> str:
    """Under which the analysis of a paragraph is kept."""
    return key(text, model=MODEL)
