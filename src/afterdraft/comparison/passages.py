"""Whether the text changed where something was planned, or guarded; and what changed without being planned."""

from collections.abc import Set as AbstractSet

from afterdraft.comparison.carrying import Carried, Carrier
from afterdraft.comparison.comparison import Comparison, Fate

Passage = tuple[int, int, int]  # story paragraph of the old draft, start, end: half-open, characters


def fate_of(found: Comparison, old_scene: int) -> Fate:
    """What became of a scene. Raises `LookupError` where the old draft has none of this index."""
    fate = next((fate for fate in found.scenes if old_scene in fate.old), None)
    if fate is None:
        raise LookupError(old_scene)
    return fate


def text_changed(found: Comparison, old_scene: int) -> bool | None:
    """False where the scene stands as it was, wherever it stands: to the letter, white space aside. None: not reached.

    Split or joined, it has changed.
    """
    fate = fate_of(found, old_scene)
    if fate.became == "not reached":
        return None
    if len(fate.old) != 1 or len(fate.new) != 1:
        return True
    old, new = found.old.scenes[fate.old[0]], found.new.scenes[fate.new[0]]
    texts = found.old.paragraphs[old.start : old.end], found.new.paragraphs[new.start : new.end]
    return [text.split() for text in texts[0]] != [text.split() for text in texts[1]]


def followed(found: Comparison, carrier: Carrier, passage: Passage) -> Carried | None:
    """A passage in the new draft: there, changed, gone. None where it was not reached. `carrier` is of `found`."""
    carried = carrier.carried(*passage)
    if carried.state == "gone" and fate_of(found, found.old.scene_at()[passage[0]]).became == "not reached":
        return None
    return carried


def passage_changed(found: Comparison, carrier: Carrier, passage: Passage) -> bool | None:
    """False where the passage stands word for word, wherever it stands. None: not reached."""
    carried = followed(found, carrier, passage)
    return None if carried is None else carried.state != "there"


def unplanned(found: Comparison, planned_old_scenes: AbstractSet[int]) -> tuple[Fate, ...]:
    """What is not as it was and not planned for any of its old scenes; new scenes too. In the new draft's order."""
    return tuple(
        fate
        for fate in found.scenes
        if (fate.moved or fate.became not in ("same", "not reached")) and planned_old_scenes.isdisjoint(fate.old)
    )
