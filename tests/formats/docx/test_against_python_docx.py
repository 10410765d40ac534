"""Plain documents written by python-docx, a general-purpose library, say the same to it and to us."""

import io

import docx
from docx.enum.text import WD_ALIGN_PARAGRAPH
from docx.shared import Pt

from afterdraft.formats.docx.read import read

TEXTS = [
    "The ferry came in at noon.",
    "“Late,” said Maren—again.",
    "Ärger über Ölfässer, naïve café.",
    "One\ttab\nand a line.",
]


def written() -> tuple[bytes, list[tuple[str, str]]]:
    document = docx.Document()
    document.add_heading("The Ferry", level=1)
    document.add_heading("At noon", level=3)
    for text in TEXTS:
        document.add_paragraph(text)
    quoted = document.add_paragraph("A set-in line.", style="Intense Quote")
    quoted.alignment = WD_ALIGN_PARAGRAPH.CENTER
    quoted.paragraph_format.space_before = Pt(18)
    quoted.paragraph_format.first_line_indent = Pt(-12)
    target = io.BytesIO()
    document.save(target)
    said = docx.Document(io.BytesIO(target.getvalue())).paragraphs
    return target.getvalue(), [(paragraph.text, paragraph.style.name if paragraph.style else "") for paragraph in said]


def test_text_and_style_names_are_the_same() -> None:
    data, expected = written()
    assert [(block.text, block.look.style) for block in read(data, "plain.docx").blocks] == expected


def test_levels_alignment_and_lengths_are_read() -> None:
    looks = [block.look for block in read(written()[0], "plain.docx").blocks]
    assert [look.level for look in looks] == [1, 3, None, None, None, None, None]
    last = looks[-1]
    assert (last.align, last.space_before, last.indent) == ("center", 18.0, -12.0)
    assert last.bold and last.italic  # the template's "Intense Quote" is both
    assert looks[0].bold and looks[0].size == 14.0  # as is stated in the template's styles.xml
