"""Builds small e-books from pages written by hand. Imports nothing of the program."""

from collections.abc import Mapping

from tests.specimens.docx import pack

_CONTAINER = (
    '<container xmlns="urn:oasis:names:tc:opendocument:xmlns:container" version="1.0"><rootfiles>'
    '<rootfile full-path="OPS/book.opf" media-type="application/oebps-package+xml"/></rootfiles></container>'
)
_ENCRYPTION = (
    '<encryption xmlns="urn:oasis:names:tc:opendocument:xmlns:container" xmlns:enc="http://www.w3.org/2001/04/xmlenc#">'
    '<enc:EncryptedData><enc:EncryptionMethod Algorithm="{}"/><enc:CipherData><enc:CipherReference URI="OPS/1.xhtml"/>'
    "</enc:CipherData></enc:EncryptedData></encryption>"
)


def page(body: str, head: str = "") -> str:
    """A page of XHTML."""
    return (
        '<?xml version="1.0" encoding="utf-8"?><!DOCTYPE html><html xmlns="http://www.w3.org/1999/xhtml"'
        f' xmlns:epub="http://www.idpf.org/2007/ops"><head><title/>{head}</head><body>{body}</body></html>'
    )


def encryption(way: str) -> str:
    return _ENCRYPTION.format(way)


def epub(*pages: str, more: Mapping[str, str] | None = None) -> bytes:
    """An e-book of these pages in this order; `more` are further parts, or others in the place of these."""
    return pack(parts(*pages) | dict(more or {}))


def parts(*pages: str, hrefs: Mapping[int, str] | None = None) -> dict[str, str]:
    """The parts of an e-book, by name; the parts of the pages are called 1.xhtml, 2.xhtml, …"""
    numbers = range(1, len(pages) + 1)
    named = {number: (hrefs or {}).get(number, f"{number}.xhtml") for number in numbers}
    items = "".join(
        f'<item id="p{number}" href="{named[number]}" media-type="application/xhtml+xml"/>' for number in numbers
    )
    spine = "".join(f'<itemref idref="p{number}"/>' for number in numbers)
    opf = (
        '<package xmlns="http://www.idpf.org/2007/opf" version="3.0">'
        '<metadata xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title>The Salt Stair</dc:title>'
        "<dc:creator>Brona Aske</dc:creator><dc:language>en-GB</dc:language></metadata>"
        f"<manifest>{items}</manifest><spine>{spine}</spine></package>"
    )
    return {
        "mimetype": "application/epub+zip",
        "META-INF/container.xml": _CONTAINER,
        "OPS/book.opf": opf,
        **{f"OPS/{number}.xhtml": text for number, text in enumerate(pages, 1)},
    }
