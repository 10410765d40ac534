"""How far reading is, in words."""

from collections.abc import Mapping

from afterdraft.web.reading import Progress, State
from afterdraft.web.render import many


def told(progress: Progress) -> str:
    """In one sentence; "" where there is nothing to say."""
    scenes = f"{progress.scenes_done:,} of {many(progress.scenes, 'scene')}"
    if progress.state == "reading":
        words = f"{progress.words_done:,} of {many(progress.words, 'word')}"
        return f"Reading the draft: {scenes}, {words}{_left(progress.seconds_left)}."
    if progress.state == "stopped" and progress.scenes:
        return f"Reading is stopped at {scenes}. What was read stays."
    return _SENTENCES[progress.state]


_SENTENCES: Mapping[State, str] = {
    "off": "Reading is off.",
    "waiting": "The draft is about to be read.",
    "reading": "",
    "stopped": "Reading is stopped.",
    "done": "",
    "trouble": "The draft could not be read to its end. Nothing of yours is lost, and what was read stays.",
    "other language": "This draft says that it is not in English, so people, speech, places and times are not read off "
    "the page. Scenes, words, cards and notes work as always.",
}


def _left(seconds: float | None) -> str:
    if seconds is None:
        return ""
    if seconds < 60:
        return f"; about {max(5, round(seconds / 5) * 5)} seconds left"
    return f"; about {many(round(seconds / 60), 'minute')} left"
