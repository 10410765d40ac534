"""What the next draft is to do with a scene."""

from typing import Literal, get_args

Intent = Literal[
    "keep",
    "light work",
    "rewrite",
    "expand",
    "tighten",
    "change viewpoint",
    "move",
    "cut",
    "join",
    "split",
    "new",
]
INTENTS: tuple[Intent, ...] = get_args(Intent)
