"""Set the chapters as a typescript, in the mixed habits in which authors really type.

Some headings use a style and some are bold centred lines; some chapters indent by format and some by
a typed tab; breaks are `#` or `***`, and one was forgotten.
"""

import datetime as dt
import io
from copy import deepcopy

from docx import Document
from docx.document import Document as Typescript
from docx.enum.style import WD_STYLE_TYPE
from docx.enum.text import WD_ALIGN_PARAGRAPH, WD_BREAK
from docx.oxml import parse_xml
from docx.oxml.ns import nsdecls, qn
from docx.oxml.xmlchemy import BaseOxmlElement
from docx.shared import Inches, Pt, RGBColor
from docx.text.paragraph import Paragraph
from docx.text.run import Run

from demo.source import Line, SourceChapter

TITLE = "TARE"
AUTHOR = "Ursula Tennick"
ADDRESS = ("Ursula Tennick", "The Old Pound", "Nether Harrow", "Sallow Levels")
LANGUAGE = "en-GB"
TYPED = dt.datetime(2025, 1, 6, 9, 0, tzinfo=dt.UTC)  # any fixed time
STAMP = "%Y-%m-%dT%H:%M:%SZ"
DEDICATION = "For those on nights"
WHOLE = 11  # chapters of the finished book
UNUSED = ("/thumbnail", "/stylesWithEffects", "/customXml")  # kinds of parts of the template
TITLE_DROP = Pt(220)  # the title stands half-way down its page


def typescript(chapters: tuple[SourceChapter, ...], *, words: int) -> bytes:
    """A docx of the whole book. `words` goes on the title page, to the nearest hundred."""
    document = _blank()
    _front(document, chapters, words)
    for chapter in chapters:
        _chapter(document, chapter)
    if len(chapters) == WHOLE:
        _centred(document, "THE END")
    _fix_times(document)
    out = io.BytesIO()
    document.save(out)
    return out.getvalue()


def _blank() -> Typescript:
    document = Document()
    normal = document.styles["Normal"]
    normal.font.name, normal.font.size = "Times New Roman", Pt(12)
    normal.paragraph_format.line_spacing = 2
    normal.paragraph_format.space_after = Pt(0)
    for lang in document.styles.element.iter(qn("w:lang")):
        lang.set(qn("w:val"), LANGUAGE)
    heading = document.styles["Heading 1"]
    heading.font.color.rgb = RGBColor(0, 0, 0)
    heading.font.size = Pt(14)
    heading.paragraph_format.page_break_before = True
    _running_head(document)
    _properties(document)
    _slim(document)
    return document


def _running_head(document: Typescript) -> None:
    section = document.sections[0]
    section.different_first_page_header_footer = True
    head = section.header.paragraphs[0]
    head.alignment = WD_ALIGN_PARAGRAPH.RIGHT
    head.add_run(f"Tennick / {TITLE} / ")
    head._p.append(parse_xml(f'<w:fldSimple {nsdecls("w")} w:instr="PAGE"><w:r><w:t>1</w:t></w:r></w:fldSimple>'))


def _properties(document: Typescript) -> None:
    properties = document.core_properties
    properties.title, properties.author, properties.last_modified_by = "Tare", AUTHOR, AUTHOR
    properties.language, properties.comments, properties.revision = LANGUAGE, "", 1
    properties.created = properties.modified = TYPED


def _slim(document: Typescript) -> None:
    """Drop what the template brings along and a typescript has no use for."""
    for rels in (document.part.package.rels, document.part.rels):
        for key in [key for key, rel in rels.items() if rel.reltype.endswith(UNUSED)]:
            del rels[key]
    for style in [style for style in document.styles if style.type == WD_STYLE_TYPE.TABLE]:
        if style.name != "Normal Table":
            style.delete()


def _front(document: Typescript, chapters: tuple[SourceChapter, ...], words: int) -> None:
    about = f"about {round(words, -2):,} words"
    for line in (*ADDRESS, "", about):
        document.add_paragraph(line).paragraph_format.line_spacing = 1
    _centred(document, TITLE).paragraph_format.space_before = TITLE_DROP
    for line in ("a novel", "by", AUTHOR):
        _centred(document, line)
    if len(chapters) < WHOLE:
        _centred(document, f"(first {len(chapters)} chapters)")
    document.add_paragraph().add_run().add_break(WD_BREAK.PAGE)
    _centred(document, DEDICATION).runs[0].italic = True


def _chapter(document: Typescript, chapter: SourceChapter) -> None:
    if chapter.heading == "styled":
        document.add_heading(chapter.line, level=1)
    else:
        document.add_paragraph().add_run().add_break(WD_BREAK.PAGE)
        _centred(document, chapter.line).runs[0].bold = True
    for line in chapter.lines:
        _line(document, line, chapter.tabs)


def _line(document: Typescript, line: Line, tabs: bool) -> None:
    if line.kind == "mark":
        if line.mark != "missing":
            _centred(document, line.mark)
        return
    paragraph = document.add_paragraph()
    if line.kind == "letter":
        paragraph.paragraph_format.left_indent = Inches(0.5)
    elif tabs:
        paragraph.add_run("\t")
    else:
        paragraph.paragraph_format.first_line_indent = Inches(0.5)
    _pieces(document, paragraph, line)


def _pieces(document: Typescript, paragraph: Paragraph, line: Line) -> None:
    for piece in line.pieces:
        run = paragraph.add_run(piece.text)
        if piece.italic:
            run.italic = True
        if piece.remark:
            _remark(document, run, piece.remark, piece.by or AUTHOR)
        if piece.instead is not None:
            _change(document, run, piece.instead, piece.by)


def _remark(document: Typescript, run: Run, remark: str, author: str) -> None:
    initials = "".join(word[0] for word in author.split())
    document.add_comment(run, text=remark, author=author, initials=initials)


def _change(document: Typescript, run: Run, instead: str, author: str) -> None:
    """Track that `author` would have `instead` for the words of `run` (ECMA-376 part 1, 17.13.5: `w:ins`, `w:del`)."""
    inserted = deepcopy(run._r)
    run._r.addprevious(struck := _tracked(document, "del", author))
    struck.append(run._r)
    for text in run._r.findall(qn("w:t")):
        text.tag = qn("w:delText")
        text.set(qn("xml:space"), "preserve")
    if instead:
        Run(inserted, run._parent).text = instead
        struck.addnext(added := _tracked(document, "ins", author))
        added.append(inserted)


def _tracked(document: Typescript, kind: str, author: str) -> BaseOxmlElement:
    number = 1 + len(document.element.xpath("//w:ins | //w:del"))
    return parse_xml(
        f'<w:{kind} {nsdecls("w")} w:id="{number}" w:author="{author}" w:date="{TYPED:{STAMP}}"/>',
    )


def _centred(document: Typescript, text: str) -> Paragraph:
    paragraph = document.add_paragraph(text)
    paragraph.alignment = WD_ALIGN_PARAGRAPH.CENTER
    return paragraph


def _fix_times(document: Typescript) -> None:
    for comment in document.comments:
        comment._comment_elm.set(qn("w:date"), f"{TYPED:{STAMP}}")
