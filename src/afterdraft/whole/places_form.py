"""The keys `places` and `settings` of the published form `read/1` with `--facts`."""

from collections.abc import Mapping, Sequence

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.facts_form import Form
from afterdraft.whole.places import Places


def places_form(found: Places, written: Mapping[str, str]) -> list[Form]:
    """One entry a place; `written` has forms as the text writes them."""
    return [
        {
            "id": one.id,
            "name": written.get(one.name, one.name),
            "scenes": list(one.scenes),
            "settings": [n for n, setting in enumerate(found.settings) if setting and setting.place == one.id],
        }
        for one in found.places
    ]


def settings_form(found: Places) -> list[Form | None]:
    """One entry a scene: which place, and how sure that is; null where nothing tells."""
    return [{"place": one.place, "sure": one.sure} if one else None for one in found.settings]


def place_spellings(scenes: Sequence[SceneFacts], texts: Sequence[Sequence[str]]) -> dict[str, str]:
    """A form as the text first writes it; 'the' before a kind of place."""
    written: dict[str, str] = {}
    for scene, paragraphs in zip(scenes, texts, strict=True):
        for one in scene.places:
            words = " ".join(paragraphs[one.paragraph][one.start : one.end].split())
            written.setdefault(one.form, words if one.name else f"the {words}")
    return written
