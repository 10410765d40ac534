"""Margin comments and notes, which stand in parts of their own."""

from collections.abc import Mapping

from afterdraft.formats.asides import Comment
from afterdraft.formats.docx.inline import Inline
from afterdraft.formats.docx.names import W14, W15, Node, P, W

_COMMENT, _STATE = f"{W}comment", f"{W15}commentEx"


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
