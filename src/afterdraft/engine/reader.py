"""`read_scenes`: the facts of each scene, taken from a store of kept ones where its words were read before."""

from collections.abc import Iterator, MutableMapping, Sequence

from afterdraft.engine.pipeline import MODEL, analyse
from afterdraft.reading.analysed import Analyse
from afterdraft.reading.facts import SceneFacts
from afterdraft.reading.keeping import key, packed, unpacked
from afterdraft.reading.scene import scene_facts

Kept = MutableMapping[str, str]  # facts as text, by key


def read_scenes(
    scenes: Sequence[Sequence[str]], kept: Kept | None = None, *, analyse: Analyse = analyse
) -> Iterator[SceneFacts]:
    """One value a scene, in order, each made when asked for; `scenes` are their story paragraphs."""
    for paragraphs in scenes:
        yield _kept(paragraphs, kept, analyse) if kept is not None else scene_facts(analyse(paragraphs))


def _kept(paragraphs: Sequence[str], kept: Kept, analyse: Analyse) -> SceneFacts:
    name = key(paragraphs, model=MODEL)
    known = kept.get(name)
    if known is not None:
        return unpacked(known)
    facts = scene_facts(analyse(paragraphs))
    kept[name] = packed(facts)
    return facts
