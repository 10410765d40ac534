"""The kinds of file that are read, as a person is told of them."""

from typing import Final

READS: Final = ".docx, .odt, .rtf, .epub, .html, .txt, .md"
