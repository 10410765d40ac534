"""What was set apart: margin comments, notes, tracked changes, text boxes, pictures, tables.

A comment whose range goes over several paragraphs is kept once, at the first paragraph it covers any text of,
and ends there with that paragraph. A comment that stands nowhere in the final text is kept at the very beginning.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from afterdraft.formats.docx.inline import Inline
from afterdraft.formats.docx.making import Placed
from afterdraft.formats.docx.names import W14, W15, Node, P, W
from afterdraft.manuscript.blocks import Aside

_COMMENT, _STATE = f"{W}comment", f"{W15}commentEx"


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


def read_comments(root: Node | None, states: Node | None, inline: Inline) -> dict[str, Comment]:
    """Read comments.xml; replies and 'resolved' stand in commentsExtended.xml, `states`."""
    if root is None:
        return {}
    known = {node.get(f"{W15}paraId", ""): node for node in states.iter(_STATE)} if states is not None else {}
    ids = {_mark(node): node.get(f"{W}id", "") for node in root.iter(_COMMENT)}
    return {node.get(f"{W}id", ""): _comment(node, known, ids, inline) for node in root.iter(_COMMENT)}


def _mark(comment: Node) -> str:
    """The id of its last paragraph, by which commentsExtended.xml knows a comment."""
    return next((paragraph.get(f"{W14}paraId", "") for paragraph in comment.iterchildren(P, reversed=True)), "")


def _comment(node: Node, states: Mapping[str, Node], ids: Mapping[str, str], inline: Inline) -> Comment:
    state = states.get(_mark(node))
    return Comment(
        inline.plain(node),
        node.get(f"{W}author", ""),
        node.get(f"{W}date", ""),
        answers=ids.get(state.get(f"{W15}paraIdParent", "-")) if state is not None else None,
        done=state is not None and state.get(f"{W15}done", "0") in ("1", "true"),
    )


def read_notes(root: Node | None, name: str, inline: Inline) -> dict[str, str]:
    """Read footnotes.xml or endnotes.xml (`name` "footnote" or "endnote"), separator lines left out."""
    if root is None:
        return {}
    return {
        node.get(f"{W}id", ""): inline.plain(node).strip()
        for node in root.iter(W + name)
        if node.get(f"{W}type", "normal") == "normal"
    }


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
