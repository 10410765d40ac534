"""What style sheets say of an element, as far as manuscripts need it.

Of CSS 2.2: rules for an element's name, class, name with class, and id, one alone or in a list; the style attribute
over all, the align attribute over all but that. Rules that depend on what stands around an element are left out.
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from afterdraft.formats.html.document import tag
from afterdraft.formats.markup import Node

Said = Mapping[str, str]  # property → value, both in small letters

_COMMENT = re.compile(r"/\*.*?\*/|/\*.*", re.S)
_SIMPLE = re.compile(r"([a-z][a-z0-9]*)?(?:([.#])([a-z0-9_-]+))?")
_MOST = 4_000_000  # characters of style sheets that are read


@dataclass(slots=True)
class Sheet:
    """All rules read so far; later ones go over earlier ones."""

    _rules: dict[str, dict[str, str]] = field(default_factory=dict)  # selector → what it says
    _room: int = _MOST

    def read(self, text: str) -> None:
        """Take in a style sheet."""
        text, self._room = text[: self._room], max(0, self._room - len(text))
        for rule in _COMMENT.sub("", text).lower().split("}"):
            before, _, said = rule.rpartition("{")
            names = before.rpartition("{")[2]  # a rule within @media counts like any other
            for name in names.split(","):
                if (name := name.strip()) and _SIMPLE.fullmatch(name):
                    self._rules.setdefault(name, {}).update(declared(said))

    def of(self, node: Node) -> Said:
        """What is said of an element, the most particular last."""
        own, align = node.get("style"), node.get("align")
        if not self._rules and not own and not align:
            return {}
        said: dict[str, str] = {}
        for selector in _selectors(node):
            said.update(self._rules.get(selector, {}))
        if align:  # browsers hold it below style sheets; LibreOffice writes it against its own
            said["text-align"] = align.lower()
        return said | declared(own.lower()) if own else said


def declared(text: str) -> dict[str, str]:
    """The declarations of a rule or a style attribute."""
    pairs = (part.partition(":") for part in text.split(";"))
    return {name.strip(): value.replace("!important", "").strip() for name, _, value in pairs if value.strip()}


def _selectors(node: Node) -> Iterable[str]:
    name, classes = tag(node), node.get("class", "").lower().split()
    yield name
    yield from (f".{each}" for each in classes)
    yield from (f"{name}.{each}" for each in classes)
    if own := node.get("id", "").lower():
        yield from (f"#{own}", f"{name}#{own}")
