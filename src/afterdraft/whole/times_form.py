"""The keys `times` and `scene_times` of the published form `read/1` with `--facts`, and rows of times for screens.

`places` and `texts` say, for each scene, where each of its story paragraphs begins in the story text and what it says.
What stands in a heading lies outside the story text: it is read for `scene_times`, and is no entry of `times`.
"""

from collections.abc import Sequence

from afterdraft.reading.facts import SceneFacts
from afterdraft.whole.facts_form import Form
from afterdraft.whole.story_points import Said
from afterdraft.whole.story_time import StoryTime

Row = list[int | str]


def times_form(
    scenes: Sequence[SceneFacts], *, places: Sequence[Sequence[int]], texts: Sequence[Sequence[str]]
) -> list[Form]:
    """One entry a time, in the order of the text."""
    return [
        {
            "scene": number,
            "at": places[number][one.paragraph] + one.start,
            "text": texts[number][one.paragraph][one.start : one.end],
            "kind": one.kind,
            "value": one.value,
        }
        for number, scene in enumerate(scenes)
        for one in scene.times
    ]


def scene_times_form(story: StoryTime, *, places: Sequence[Sequence[int]]) -> list[Form]:
    """One entry a scene, in order; null where nothing binds it."""
    return [
        {
            "scene": number,
            "earliest": one.earliest or None,
            "latest": one.latest or None,
            "part_of_day": one.part_of_day or None,
            "from": [at for said in one.rests_on if (at := _at(said, places)) is not None],
            "flashback": one.flashback,
            "days": list(one.days),
        }
        for number, one in enumerate(story.scenes)
    ]


def contradictions_form(story: StoryTime, *, places: Sequence[Sequence[int]]) -> list[Form]:
    """What is said of time that cannot all be true, each with the scenes and the offsets of the words."""
    return [
        {
            "what": one.what,
            "scenes": sorted({said.scene for said in one.said}),
            "at": [at for said in one.said if (at := _at(said, places)) is not None],
        }
        for one in story.contradictions
    ]


def time_rows(scene: SceneFacts) -> list[Row]:
    """Of one scene: paragraph, start, end, kind, value."""
    return [[one.paragraph, one.start, one.end, one.kind, one.value] for one in scene.times]


def _at(said: Said, places: Sequence[Sequence[int]]) -> int | None:
    """None for what stands in a heading or is the writer's own."""
    return places[said.scene][said.paragraph] + said.start if said.paragraph >= 0 else None
