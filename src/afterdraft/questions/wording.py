"""The sentences of questions: about the passages, never about her; each can be answered.

One function a check, in a file a family; here they are brought together.
"""

from collections.abc import Mapping, Sequence

from afterdraft.questions.question import Finding
from afterdraft.questions.wording_accidents import ACCIDENTS
from afterdraft.questions.wording_cast import CAST
from afterdraft.questions.wording_continuity import CONTINUITY
from afterdraft.questions.wording_kit import Say
from afterdraft.questions.wording_lines import LINES
from afterdraft.questions.wording_opening import OPENING
from afterdraft.questions.wording_viewpoint import VIEWPOINT

WORDS: Mapping[str, Say] = {**CONTINUITY, **CAST, **VIEWPOINT, **LINES, **OPENING, **ACCIDENTS}  # by id of the check


def worded(check: str, finding: Finding, titles: Sequence[str]) -> str:
    """What is asked, with a capital in front: ‘the narrator’ may begin it. `titles` are what scenes are called."""
    asks = WORDS[check](finding, titles)
    return asks[0].upper() + asks[1:]
