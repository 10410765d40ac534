"""The kinds of file that are read, as a person is told of them."""

from collections.abc import Mapping
from typing import Final

READS: Final = ".docx, .odt, .rtf, .epub, .html, .txt, .md"
TABLES: Final = ".xlsx, .csv, .docx"
TABLE_ENDINGS: Final = (".xlsx", ".xlsm", ".csv", ".tsv", ".txt", ".docx")
TABLE_TYPES: Final[Mapping[str, str]] = {  # media types, as registered with IANA (from memory)
    "xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    "csv": "text/csv; charset=utf-8",
    "docx": "application/vnd.openxmlformats-officedocument.wordprocessingml.document",
}
