"""What was set apart: margin comments, notes, tracked changes, text boxes, pictures, tables.

A comment whose range goes over several paragraphs is kept once, at the first paragraph it covers any text of,
and ends there with that paragraph. A comment that stands nowhere in the final text is kept at the very beginning.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from afterdraft.formats.making import Placed
from afterdraft.manuscript.blocks import Aside


@dataclass(frozen=True, slots=True)
class Comment:
    text: str
    author: str
    when: str
    answers: str | None  # id of the comment it replies to
    done: bool


@dataclass(frozen=True, slots=True)
class Parts:
    """Texts that stand in parts of their own, by the ids that the document refers to them with."""

    comments: Mapping[str, Comment]
    footnotes: Mapping[str, str]
    endnotes: Mapping[str, str]


def asides(placed: Iterable[Placed], parts: Parts) -> tuple[Aside, ...]:
    """All that was set apart, in order of place."""
    comments: dict[str, Placed] = {}
    found: list[Aside] = []
    for each in placed:
        kind, key = each.mark.kind, each.mark.key
        if kind == "comment":
            if key not in comments or comments[key].start == comments[key].end < each.end:
                comments[key] = each
        elif kind in ("footnote", "endnote"):
            texts = parts.footnotes if kind == "footnote" else parts.endnotes
            found += [_aside(each, texts[key])] if key in texts else []
        else:
            found.append(_aside(each, each.mark.text))
    for key, comment in parts.comments.items():
        found.append(_of_comment(comments.get(key) or comments.get(comment.answers or ""), comment))
    return tuple(sorted(found, key=lambda aside: (aside.block, aside.start)))


def _aside(at: Placed, text: str) -> Aside:
    return Aside(at.mark.kind, at.block, at.start, at.end, text, at.mark.author, at.mark.when)


def _of_comment(at: Placed | None, comment: Comment) -> Aside:
    block, start, end = (at.block, at.start, at.end) if at else (0, 0, 0)
    reply = comment.answers is not None
    return Aside("comment", block, start, end, comment.text, comment.author, comment.when, reply, comment.done)
