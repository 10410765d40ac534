"""Text as a form sends it, made fit to keep."""


def plain(text: str) -> str:
    """Line ends as newlines (forms send CR LF); without what is no text: NUL, halves of surrogate pairs."""
    lines = text.replace("\r\n", "\n").replace("\r", "\n").replace("\0", "")
    return lines.encode("utf-8", "replace").decode("utf-8")


def line(text: str) -> str:
    """The same on one line, white space evened out."""
    return " ".join(plain(text).split())
