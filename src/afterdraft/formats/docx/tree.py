"""Ways through the XML of a text: which of its elements count, in order."""

from collections.abc import Iterator

from afterdraft.formats.docx.names import MC, PPR, Node, P, W

# Extensions read here, by the beginning of their names.
_KNOWN = ("http://schemas.microsoft.com/office/", "http://schemas.openxmlformats.org/")


def paragraphs(container: Node) -> Iterator[Node]:
    """The w:p within, in order: through content controls, tables and the one chosen branch, not into paragraphs."""
    for child in container:
        if child.tag == P:
            yield child
        elif child.tag == f"{MC}AlternateContent":
            branch = chosen(child)
            yield from paragraphs(branch) if branch is not None else ()
        elif child.tag not in (PPR, f"{W}sdtPr"):
            yield from paragraphs(child)


def boxes(container: Node) -> Iterator[Node]:
    """The content of each text box within, as a container of paragraphs."""
    return (node for node in elements(container) if node.tag == f"{W}txbxContent")


def chosen(alternatives: Node) -> Node | None:
    """The one branch of mc:AlternateContent to read (ECMA-376 part 3): the first choice understood, or the fallback."""
    for choice in alternatives.iterfind(f"{MC}Choice"):
        needs = choice.get("Requires", "").split()
        if needs and all((choice.nsmap.get(prefix) or "").startswith(_KNOWN) for prefix in needs):
            return choice
    return alternatives.find(f"{MC}Fallback")


def controlled(control: Node) -> Node | None:
    """What a content control (w:sdt) holds; None for a prompt that waits to be replaced, not the writer's text."""
    said = control.find(f"{W}sdtPr")
    prompts = said is not None and said.find(f"{W}showingPlcHdr") is not None and not _keeps_a_place(said)
    return None if prompts else control.find(f"{W}sdtContent")


def _keeps_a_place(said: Node) -> bool:
    """A place kept for a word ("name to come"), as LibreOffice writes it: it names no prepared prompt."""
    return said.find(f"{W}temporary") is not None and said.find(f"{W}placeholder") is None


def elements(node: Node) -> Iterator[Node]:
    """All elements of a drawing, one branch of alternatives only, not into text boxes."""
    yield node
    if node.tag == f"{W}txbxContent":
        return
    if node.tag == f"{MC}AlternateContent":
        branch = chosen(node)
        yield from elements(branch) if branch is not None else ()
        return
    for child in node:
        yield from elements(child)


def unclosed_fields(root: Node) -> frozenset[Node]:
    """Beginnings of fields without an end in the same text: damage, and the text behind them must not vanish."""
    open_: list[Node] = []
    for mark in root.iter(f"{W}fldChar"):
        kind = mark.get(f"{W}fldCharType")
        if kind == "begin":
            open_.append(mark)
        elif kind == "end" and open_:
            open_.pop()
    return frozenset(open_)
