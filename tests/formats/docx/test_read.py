"""The reader as a whole: properties that hold for every document, and files that were damaged."""

import io
import random
import zipfile

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from lxml import etree

from afterdraft.errors import UnreadableManuscript
from afterdraft.formats.docx.read import read
from afterdraft.manuscript.blocks import Blocks
from tests.formats.docx.test_asides import begin, comment, end
from tests.formats.docx.test_inline import CHOICE, DRAWN, PICT
from tests.formats.docx.test_numbering import OUTLINE, item, number
from tests.specimens.docx import br, deleted, docx, ins, p, pack, r, section, style, styled, table, unpack

PARAGRAPH = "{http://schemas.openxmlformats.org/wordprocessingml/2006/main}p"
TEXT = "{http://schemas.openxmlformats.org/wordprocessingml/2006/main}t"

WORDS = st.text(st.sampled_from("abcdé“” —…*#\u00a0"), min_size=0, max_size=12)
PROPS = st.sampled_from(["", "<w:i/>", "<w:b/>", "<w:caps/>", '<w:sz w:val="30"/>'])
RUNS = st.builds(r, WORDS, PROPS)
BITS = st.one_of(
    RUNS,
    st.builds(ins, RUNS),
    st.builds(deleted, WORDS),
    st.sampled_from([br(), br("page"), f"<w:r>{CHOICE.format('wps', DRAWN, PICT)}</w:r>", r("***")]),
)
MARKS = st.sampled_from(["", "", "", section(), "<w:pageBreakBefore/>", '<w:jc w:val="center"/>'])
PARAGRAPHS = st.builds(p, st.lists(BITS, max_size=6).map("".join), MARKS)
TABLES = st.builds(table, st.lists(PARAGRAPHS, min_size=1, max_size=3))
BODIES = st.lists(st.one_of(PARAGRAPHS, PARAGRAPHS, TABLES), max_size=8)


def letters(text: str) -> str:
    return "".join(text.split())


def stated(node: etree._Element) -> str:
    """The letters that stand in the XML, those of text boxes left out."""
    box = PARAGRAPH[:-1] + "txbxContent"
    return letters("".join(text.text or "" for text in node.iter(TEXT) if next(text.iterancestors(box), None) is None))


def original(data: bytes, part: str) -> list[etree._Element]:
    return list(etree.fromstring(unpack(data)[part]).iter(PARAGRAPH))


@given(BODIES)
def test_every_block_is_found_again_by_its_source(body: list[str]) -> None:
    data = docx(*body, p("last"))
    for block in read(data, "found.docx").blocks:
        node = original(data, block.source.part)[block.source.ordinal]
        row = next((above for above in node.iterancestors() if above.tag.endswith("}tr")), node)
        assert letters(block.text) in stated(row)


@given(BODIES)
def test_no_letter_is_lost_or_doubled(body: list[str]) -> None:
    data = docx(*body, p("last"))
    root = etree.fromstring(unpack(data)["word/document.xml"])
    assert letters("".join(block.text for block in read(data, "whole.docx").blocks)) == stated(root)


@given(BODIES)
def test_runs_and_asides_lie_within_their_blocks(body: list[str]) -> None:
    whole = read(docx(*body, p("last")), "within.docx")
    for block in whole.blocks:
        assert all(0 <= run.start < run.end <= len(block.text) for run in block.runs)
        assert not block.text.startswith("\n") and not block.text.endswith("\n")
    for aside in whole.asides:
        assert 0 <= aside.start <= aside.end <= len(whole.blocks[aside.block].text)


@given(BODIES)
def test_pieces_are_counted_from_nought_within_each_paragraph(body: list[str]) -> None:
    expected, last = 0, -1
    for block in read(docx(*body, p("last")), "pieces.docx").blocks:
        expected = expected + 1 if block.source.ordinal == last else 0
        last = block.source.ordinal
        assert block.source.piece == expected


def test_the_heads_of_a_file() -> None:
    data = docx(p("One."), title=" The Ferry ", author="Ann Bell")
    whole = read(data, "ferry.docx")
    assert (whole.name, whole.format, whole.size) == ("ferry.docx", "docx", len(data))
    assert (whole.title, whole.author, whole.language) == ("The Ferry", "Ann Bell", "")
    assert len(whole.sha256) == 64 and whole.notices == ()


def specimen() -> bytes:
    """One of everything."""
    return docx(
        styled("H", "The Ferry"),
        item(1),
        p(r("It ") + r("rained", "<w:i/>") + begin(0) + r(" on") + end(0) + br() + r("***") + br() + r("and on.")),
        p(ins(r("New. ")) + deleted("Old. ") + '<w:r><w:footnoteReference w:id="2"/></w:r>'),
        p("joined ", '<w:rPr><w:del w:id="5" w:author="Ann"/></w:rPr>'),
        table([p("a"), p("b")], [p("c") + p("d"), p("e")]),
        p(f"<w:r>{CHOICE.format('wps', DRAWN, PICT)}</w:r>" + r("x", "<w:vanish/>") + br("page"), section("oddPage")),
        p('<w:r><w:fldChar w:fldCharType="begin"/></w:r><w:r><w:sym w:font="Symbol" w:char="F0B7"/></w:r>'),
        p("The end.", '<w:ind w:left="720"/>'),
        section(),
        styles=style("H", "heading 1", '<w:pPr><w:jc w:val="center"/></w:pPr><w:rPr><w:b/></w:rPr>'),
        numbering=OUTLINE + number(1, 0),
        comments=comment(0, "Why?", "0A"),
        commentsExtended='<w15:commentEx w15:paraId="0A" w15:done="1"/>',
        footnotes=f'<w:footnote w:id="2">{p("See.")}</w:footnote>',
    )


def read_or_refuse(data: bytes) -> Blocks | None:
    try:
        return read(data, "damaged.docx")
    except UnreadableManuscript:
        return None


def spoiled(text: bytes, chance: random.Random) -> bytes:
    """A few random changes: bytes replaced, stretches dropped, doubled or moved."""
    data = bytearray(text)
    for _ in range(chance.randint(1, 4)):
        start = chance.randrange(max(1, len(data)))
        stretch = data[start : start + chance.choice((1, 1, 2, 8, 40, 200))]
        match chance.randrange(4):
            case 0:
                data[start : start + 1] = bytes([chance.randrange(256)])
            case 1:
                del data[start : start + len(stretch)]
            case 2:
                data[start:start] = stretch
            case _:
                to = chance.randrange(max(1, len(data)))
                data[to:to] = stretch
    return bytes(data)


def test_a_damaged_archive_is_read_or_refused() -> None:
    good, chance = specimen(), random.Random(1)  # noqa: S311 - a fixed sequence of damages
    assert read(good, "good.docx").asides
    for _ in range(200):
        read_or_refuse(spoiled(good, chance))


def test_a_damaged_part_is_read_or_refused() -> None:
    files, chance = unpack(specimen()), random.Random(2)  # noqa: S311
    outcomes = []
    for _ in range(400):
        part = chance.choice(sorted(files))
        outcomes.append(read_or_refuse(pack(files | {part: spoiled(files[part], chance)})))
    assert any(outcomes) and not all(outcomes)


def test_elements_in_wrong_places_are_read_or_refused() -> None:
    """Well-formed but senseless: elements take each other's names, attributes take other values."""
    files, chance = unpack(specimen()), random.Random(3)  # noqa: S311
    names = ["p", "r", "t", "pPr", "rPr", "ins", "del", "sdt", "sdtContent", "tbl", "tr", "tc", "num", "lvl", "style"]
    values = ["", "-1", "999999999999", "x", "0", "9", "%1%2%9", "true", "\u00b2", "1e9", "F0B7"]
    read_some = 0
    for _ in range(300):
        part = chance.choice([name for name in sorted(files) if name.startswith("word/") and name.endswith(".xml")])
        root = etree.fromstring(files[part])
        for node in chance.sample(list(root.iter()), min(6, len(list(root.iter())))):
            if chance.random() < 0.5 and node is not root:
                node.tag = PARAGRAPH[:-1] + chance.choice(names)
            for key in list(node.attrib):
                node.set(key, chance.choice(values))
        read_some += read_or_refuse(pack(files | {part: etree.tostring(root)})) is not None
    assert read_some > 100


@pytest.mark.parametrize("part", sorted(unpack(specimen())))
def test_a_part_that_is_missing_or_empty_is_borne_or_refused(part: str) -> None:
    files = unpack(specimen())
    read_or_refuse(pack({name: data for name, data in files.items() if name != part}))
    read_or_refuse(pack(files | {part: b""}))
    read_or_refuse(pack(files | {part: b"<x/>"}))


@settings(max_examples=50)
@given(st.binary(max_size=400))
def test_any_bytes_are_refused(data: bytes) -> None:
    assert read_or_refuse(data) is None
    assert read_or_refuse(b"PK\x03\x04" + data) is None


def test_names_with_any_compression_are_read() -> None:
    files = unpack(specimen())
    for method in (zipfile.ZIP_STORED, zipfile.ZIP_BZIP2, zipfile.ZIP_LZMA):
        target = io.BytesIO()
        with zipfile.ZipFile(target, "w", method) as archive:
            for name, data in files.items():
                archive.writestr(name, data)
        assert read(target.getvalue(), "good.docx").blocks == read(specimen(), "good.docx").blocks
