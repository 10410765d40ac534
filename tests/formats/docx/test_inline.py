"""Within paragraphs: the final text counts, and nothing is doubled. Elements as ECMA-376 part 1, §17.3 and §17.13."""

import pytest

from afterdraft.formats.docx.read import read
from afterdraft.manuscript.blocks import Blocks
from tests.specimens.docx import br, deleted, docx, ins, p, r, style

KEPT = r("kept")


def final(*body: str, **parts: str) -> Blocks:
    return read(docx(*body, **parts), "specimen.docx")


def texts(*body: str, **parts: str) -> list[str]:
    return [block.text for block in final(*body, **parts).blocks]


def field(*parts: str) -> str:
    """A complex field: parts "begin", "separate", "end", or XML."""
    marks = ("begin", "separate", "end")
    return "".join(f'<w:r><w:fldChar w:fldCharType="{part}"/></w:r>' if part in marks else part for part in parts)


def instr(text: str) -> str:
    return f"<w:r><w:instrText>{text}</w:instrText></w:r>"


BOX = "<w:txbxContent><w:p><w:r><w:t>boxed</w:t></w:r></w:p></w:txbxContent>"
DRAWN = f"<w:drawing><wp:inline><a:graphic><wps:txbx>{BOX}</wps:txbx></a:graphic></wp:inline></w:drawing>"
PICT = f"<w:pict><v:shape><v:textbox>{BOX}</v:textbox></v:shape></w:pict>"
CHOICE = (
    "<mc:AlternateContent><mc:Choice Requires='{}'>{}</mc:Choice><mc:Fallback>{}</mc:Fallback></mc:AlternateContent>"
)

CONTENT = {
    "insertion": (ins(r("new ")) + KEPT, "new kept"),
    "deletion": (deleted("old ") + KEPT, "kept"),
    "insertion deleted again": (f"<w:ins w:id='1' w:author='A'>{deleted('x')}</w:ins>{KEPT}", "kept"),
    "move away": (f"<w:moveFrom w:id='1' w:author='A'>{r('away')}</w:moveFrom>{KEPT}", "kept"),
    "move here": (f"<w:moveTo w:id='1' w:author='A'>{r('here ')}</w:moveTo>{KEPT}", "here kept"),
    "deleted text outside a deletion": (f"<w:r><w:delText>lost</w:delText></w:r>{KEPT}", "kept"),
    "soft return": (r("one") + br() + r("two"), "one\ntwo"),
    "carriage return": (r("one") + "<w:r><w:cr/></w:r>" + r("two"), "one\ntwo"),
    "tab": (r("one") + "<w:r><w:tab/></w:r>" + r("two"), "one\ttwo"),
    "last rendered page break": ("<w:r><w:lastRenderedPageBreak/></w:r>" + KEPT, "kept"),
    "no-break hyphen": (r("twenty") + "<w:r><w:noBreakHyphen/></w:r>" + r("one"), "twenty\u2011one"),
    "soft hyphen": (r("twi") + "<w:r><w:softHyphen/></w:r>" + r("li\u00adght"), "twilight"),
    "symbol": ("<w:r><w:sym w:font='Wingdings' w:char='F0AB'/></w:r>", "★"),
    "symbol of a text font": ("<w:r><w:sym w:font='Georgia' w:char='2014'/></w:r>", "—"),
    "line end in the XML": (r("one\ntwo"), "one two"),
    "hyperlink": (f"<w:hyperlink r:id='rId9'>{r('a link')}</w:hyperlink>", "a link"),
    "smart tag": (f"<w:smartTag w:element='place'>{KEPT}</w:smartTag>", "kept"),
    "custom element": (f"<w:customXml w:element='x'>{KEPT}</w:customXml>", "kept"),
    "right to left": (f"<w:bdo w:val='rtl'>{KEPT}</w:bdo>", "kept"),
    "simple field": (f"<w:fldSimple w:instr='PAGE'>{r('12')}</w:fldSimple>", "12"),
    "field": (field("begin", instr("DATE"), "separate", r("1 May"), "end") + KEPT, "1 Maykept"),
    "field without result": (field("begin", instr("XE term"), "end") + KEPT, "kept"),
    "field in a field's instruction": (
        field(
            "begin", instr("IF "), field("begin", instr("A"), "separate", r("no"), "end"), "separate", r("yes"), "end"
        ),
        "yes",
    ),
    "field that never ends": (field("begin", instr("PAGE")) + KEPT, "kept"),
    "end of a field that never began": (field("end") + KEPT, "kept"),
    "content control": (f"<w:sdt><w:sdtPr/><w:sdtContent>{KEPT}</w:sdtContent></w:sdt>", "kept"),
    "content control in one": (
        f"<w:sdt><w:sdtContent><w:sdt><w:sdtContent>{KEPT}</w:sdtContent></w:sdt></w:sdtContent></w:sdt>",
        "kept",
    ),
    "prompt of an empty control": (
        f"<w:sdt><w:sdtPr><w:showingPlcHdr/></w:sdtPr><w:sdtContent>{r('Click')}</w:sdtContent></w:sdt>{KEPT}",
        "kept",
    ),
    "prompt prepared by a template": (
        f"<w:sdt><w:sdtPr><w:placeholder/><w:temporary/><w:showingPlcHdr/></w:sdtPr>"
        f"<w:sdtContent>{r('Click')}</w:sdtContent></w:sdt>{KEPT}",
        "kept",
    ),
    "choice understood": (f"<w:r>{CHOICE.format('w14', '<w:t>new</w:t>', '<w:t>old</w:t>')}</w:r>", "new"),
    "choice not understood": (f"<w:r>{CHOICE.format('x99', '<w:t>new</w:t>', '<w:t>old</w:t>')}</w:r>", "old"),
    "choice of runs": (CHOICE.format("w14", r("new"), r("old")), "new"),
    "ruby": (
        f"<w:r><w:ruby><w:rt>{r('kan')}</w:rt><w:rubyBase>{r('漢')}</w:rubyBase></w:ruby></w:r>",
        "漢",
    ),
    "equation": (f"{r('so ')}<m:oMath><m:r><m:t>a=b</m:t></m:r></m:oMath>", "so a=b"),
    "hidden": (r("secret", "<w:vanish/>") + KEPT, "kept"),
    "text box": (f"<w:r>{CHOICE.format('wps', DRAWN, PICT)}</w:r>{KEPT}", "kept"),
}


@pytest.mark.parametrize(("content", "text"), CONTENT.values(), ids=CONTENT)
def test_content_of_a_paragraph(content: str, text: str) -> None:
    assert texts(p(content)) == [text]


def test_a_field_over_several_paragraphs_shows_its_result() -> None:
    contents = p(field("begin", instr("TOC"), "separate") + r("One\t3")), p(r("Two\t9") + field("end")), p("One")
    assert texts(*contents) == ["One\t3", "Two\t9", "One"]


def test_a_field_ended_in_a_deletion_hides_nothing_after_it() -> None:
    end = "<w:del w:id='1' w:author='A'><w:r><w:fldChar w:fldCharType='end'/></w:r></w:del>"
    assert texts(p(field("begin", instr("PAGE")) + end), p("after")) == ["after"]


def test_runs_of_one_emphasis_are_joined_and_may_overlap_others() -> None:
    content = r("all ") + r("in", "<w:i/>") + r("to", "<w:i/><w:b/>") + r(" it", "<w:b/>")
    assert [(run.start, run.end, run.kind) for run in final(p(content)).blocks[0].runs] == [
        (4, 8, "italic"),
        (6, 11, "bold"),
    ]


@pytest.mark.parametrize(
    ("props", "kind"),
    [
        ("<w:i/>", "italic"),
        ("<w:b/>", "bold"),
        ('<w:u w:val="single"/>', "underline"),
        ("<w:strike/>", "strike"),
        ("<w:dstrike/>", "strike"),
        ("<w:smallCaps/>", "small caps"),
        ('<w:vertAlign w:val="superscript"/>', "superscript"),
        ('<w:vertAlign w:val="subscript"/>', "subscript"),
    ],
)
def test_every_kind_of_emphasis(props: str, kind: str) -> None:
    block = final(p(r("a ") + r("word", props))).blocks[0]
    assert [(run.start, run.end, run.kind) for run in block.runs] == [(2, 6, kind)]


@pytest.mark.parametrize(
    "props", ['<w:i w:val="0"/>', '<w:b w:val="false"/>', '<w:u w:val="none"/>', '<w:vertAlign w:val="baseline"/>', ""]
)
def test_emphasis_switched_off_is_none(props: str) -> None:
    assert final(p(r("word", props))).blocks[0].runs == ()


def test_a_links_underline_is_not_emphasis_but_the_writers_is() -> None:
    sheet = style("Link", "Hyperlink", '<w:rPr><w:u w:val="single"/></w:rPr>', kind="character")
    linked, own = '<w:rStyle w:val="Link"/>', '<w:rStyle w:val="Link"/><w:u w:val="single"/>'
    blocks = final(p(r("word", linked)), p(r("word", own)), styles=sheet).blocks
    assert [len(block.runs) for block in blocks] == [0, 1]


def test_hidden_text_and_outside_parts_are_told() -> None:
    read_ = final(p(KEPT + r("a", "<w:vanish/>")), "<w:altChunk r:id='rId7'/>", p("<w:subDoc r:id='rId8'/>"))
    assert len(read_.notices) == 2
    assert "hidden" in read_.notices[0] and "one place" in read_.notices[0]
    assert "other documents" in read_.notices[1]
