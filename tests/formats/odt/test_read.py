"""Every trap of OpenDocument text (ODF 1.3 part 3) has its specimen, written by hand."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from lxml import etree

from afterdraft.errors import DamagedFile, EmptyManuscript, LockedFile, TooLarge, UnreadableManuscript
from afterdraft.formats.odt.read import read
from afterdraft.manuscript.blocks import Align, Aside, Block, Blocks, Gap, Look, Run
from tests.specimens.docx import pack, unpack
from tests.specimens.odt import (
    changed,
    h,
    info,
    item,
    level,
    list_style,
    listed,
    odt,
    p,
    parts,
    span,
    style,
    table,
)

HEADING = style("Heading_20_1", more='style:display-name="Heading 1" style:default-outline-level="1"')
ITALIC = style("I", family="text", txt='fo:font-style="italic"')
BOLD = style("B", family="text", txt='fo:font-weight="bold"')
TEXT = "{urn:oasis:names:tc:opendocument:xmlns:text:1.0}"
PARAGRAPH = f"{TEXT}p"
APART = f"{TEXT}note", "{urn:oasis:names:tc:opendocument:xmlns:office:1.0}annotation"


def whole(*body: str, automatic: str = "", styles: str = "") -> Blocks:
    return read(odt(*body, automatic=automatic, styles=styles), "draft.odt")


def blocks(*body: str, automatic: str = "", styles: str = "") -> tuple[Block, ...]:
    return whole(*body, automatic=automatic, styles=styles).blocks


def texts(*body: str) -> list[str]:
    return [block.text for block in blocks(*body)]


@pytest.mark.parametrize(
    ("content", "expected"),
    [
        ("It   rained.\n  On.", "It rained. On."),  # §6.1.2: white space in the file is one space
        ("  It rained.", "It rained."),
        ('It<text:s text:c="3"/>rained.', "It   rained."),
        ("<text:s/>It rained.", " It rained."),
        ("One<text:tab/>two<text:line-break/>three", "One\ttwo\nthree"),
        ("One <text:soft-page-break/>two", "One two"),
        ("soft\u00adhyphen", "softhyphen"),
        ('<text:bookmark text:name="x"/>It', "It"),
        ('Page <text:page-number text:select-page="current">4</text:page-number>.', "Page 4."),
        ('<text:a xlink:href="http://example.org/">there</text:a> and', "there and"),
        ("<text:ruby><text:ruby-base>base</text:ruby-base><text:ruby-text>above</text:ruby-text></text:ruby>", "base"),
        (span("one ", "I") + span(" two", "I"), "one two"),
        ("الباب الأول", "الباب الأول"),
    ],
)
def test_what_stands_in_a_paragraph(content: str, expected: str) -> None:
    assert texts(p(content)) == [expected]


def test_emphasis_in_spans_within_spans() -> None:
    inner = span("hard", "B")
    [block] = blocks(p(f"It {span(f'rained {inner}', 'I')}."), automatic=ITALIC + BOLD)
    assert block.runs == (Run(3, 14, "italic"), Run(10, 14, "bold"))


@pytest.mark.parametrize(
    ("said", "kind"),
    [
        ('style:text-underline-style="solid"', "underline"),
        ('style:text-line-through-style="solid"', "strike"),
        ('fo:font-variant="small-caps"', "small caps"),
        ('style:text-position="super 58%"', "superscript"),
        ('style:text-position="33% 80%"', "superscript"),
        ('style:text-position="-33% 80%"', "subscript"),
        ('fo:font-weight="700"', "bold"),
        ('fo:font-weight="400"', None),
        ('style:text-position="0% 100%"', None),
        ('style:text-underline-style="none"', None),
    ],
)
def test_kinds_of_emphasis(said: str, kind: str | None) -> None:
    [block] = blocks(p(f"a{span('b', 'X')}c"), automatic=style("X", family="text", txt=said))
    assert [(run.start, run.end, run.kind) for run in block.runs] == ([(1, 2, kind)] if kind else [])


def test_the_underline_of_a_link_is_no_emphasis() -> None:
    link = style("Internet_20_link", family="text", txt='style:text-underline-style="solid"',
                 more='style:display-name="Internet link"')  # fmt: skip
    [block] = blocks(p('<text:a text:style-name="Internet_20_link">there</text:a>'), styles=link)
    assert block.runs == ()


def test_looks_are_inherited_and_undone() -> None:
    styles = (
        '<style:default-style style:family="paragraph"><style:text-properties fo:font-size="12pt"/>'
        "</style:default-style>"
        + style("Base", par='fo:text-align="center" fo:margin-left="1cm"', txt='fo:font-weight="bold"')
        + style("Child", parent="Base", par='fo:text-indent="0.5in"', txt='fo:font-size="150%"')
    )
    automatic = style("P1", parent="Child", par='fo:text-align="start"', txt='fo:font-weight="normal"')
    child, by_hand = blocks(p("x", "Child"), p("x", "P1"), styles=styles, automatic=automatic)
    assert child.look == Look(style="Child", align="center", bold=True, size=18.0, indent=36.0, left=28.35)
    assert (by_hand.look.style, by_hand.look.align, by_hand.look.bold) == ("Child", "left", False)


def test_styles_based_on_each_other_in_a_ring_end() -> None:
    ring = style("A", parent="B", par='fo:text-align="center"') + style("B", parent="A")
    assert blocks(p("x", "B"), styles=ring)[0].look.align == "center"


@pytest.mark.parametrize(
    ("said", "align"),
    [("start", "left"), ("end", "right"), ("center", "center"), ("justify", "justify"), ("odd", "left")],
)
def test_alignment(said: str, align: Align) -> None:
    assert blocks(p("x", "P1"), automatic=style("P1", par=f'fo:text-align="{said}"'))[0].look.align == align


def test_outline_levels() -> None:
    body = style("Chapter", parent="Heading_20_1") + style(
        "Plain", parent="Heading_20_1", more='style:default-outline-level=""'
    )
    found = blocks(h(1, "a"), h(3, "b", "Odd"), p("c", "Chapter"), p("d", "Plain"), p("e"), styles=HEADING + body)
    assert [block.look.level for block in found] == [1, 3, 1, None, None]


OUTLINE = (
    "<text:outline-style>"
    + level(1, "1", 'style:num-prefix="Chapter " loext:num-list-format="Chapter %1%"', of="outline-level-style")
    + level(2, "I", 'style:num-suffix="." text:display-levels="2"', of="outline-level-style")
    + "</text:outline-style>"
)


def test_numbers_of_the_outline() -> None:
    found = blocks(
        h(1), h(2, "a"), h(2, "b"), h(1, "Preface", more='text:is-list-header="true"'), h(1, "c"), h(2, "d"),
        h(1, "e", more='text:restart-numbering="true" text:start-value="9"'), h(1, "f", "None"),
        styles=OUTLINE + style("None", more='style:list-style-name=""'),
    )  # fmt: skip
    assert [block.look.label for block in found] == [
        "Chapter 1", "1.I.", "1.II.", "", "Chapter 2", "2.I.", "Chapter 9", ""
    ]  # fmt: skip


NUMBERS = list_style("N", level(1, "1", 'style:num-suffix="."'), level(2, "a", 'style:num-suffix=")"'))


def test_numbers_of_lists_go_on_where_the_file_says_so() -> None:
    found = blocks(
        listed(item(p("a")), item(p("b"), p("still b")), style="N", more='xml:id="one"'),
        p("between"),
        listed(item(listed(item(p("c")), item(p("d")))), style="N", more='text:continue-numbering="true"'),
        listed(item(p("e")), style="N"),
        listed(item(p("f")), style="N", more='text:continue-list="one"'),
        listed(item(p("g"), more='text:start-value="7"'), style="N"),
        listed("<text:list-header>" + p("h") + "</text:list-header>", item(p("i")), style="N"),
        automatic=NUMBERS,
    )
    assert [(block.text, block.look.label) for block in found] == [
        ("a", "1."), ("b", "2."), ("still b", ""), ("between", ""), ("c", "a)"), ("d", "b)"), ("e", "1."),
        ("f", "3."), ("g", "7."), ("h", ""), ("i", "1."),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("format", "third"),
    [("1", "3"), ("A", "C"), ("i", "iii"), ("I", "III"), ("01, 02, 03, ...", "03"), ("One, Two, Three, ...", "Three"),
     ("First", "Third"), ("1st, 2nd, 3rd, ...", "3rd"), ("", "")],
)  # fmt: skip
def test_formats_of_numbers(format: str, third: str) -> None:
    """LibreOffice's own names are as its 7.4 writes them."""
    found = blocks(listed(*[item(p("x"))] * 3, style="N"), automatic=list_style("N", level(1, format)))
    assert found[2].look.label == third


def test_bullets_are_no_numbers() -> None:
    bullet = '<text:list-level-style-bullet text:level="1" text:bullet-char="•"/>'
    assert blocks(listed(item(p("x")), style="N"), automatic=list_style("N", bullet))[0].look.label == ""


def test_gaps() -> None:
    automatic = (
        style("Page", par='fo:break-before="page"')
        + style("After", par='fo:break-after="page"')
        + style("First", more='style:master-page-name="First_20_Page"')
        + style("Line", par='fo:border-bottom="0.06pt solid #000000"')
        + style("Box", par='fo:border="0.06pt solid #000000"')
    )
    found = blocks(
        p("a", "First"), p(), p(), p("b"), p("c", "Page"), p("d", "After"), p("e"), p("", "Page"), p("f"),
        p("g", "First"), p("", "Line"), p("h"), p("", "Box"), p("i"), automatic=automatic,
    )  # fmt: skip
    assert {block.text: block.gap for block in found if block.gap != Gap()} == {
        "b": Gap(blanks=2),
        "c": Gap(turn="page"),
        "e": Gap(turn="page"),
        "f": Gap(turn="page"),
        "g": Gap(turn="section"),
        "h": Gap(rule=True),
        "i": Gap(blanks=1),
    }


def frame(inside: str, more: str = "") -> str:
    return f'<draw:frame svg:height="2in" {more}>{inside}</draw:frame>'


IMAGE = '<draw:image xlink:href="Pictures/1.png"/>'


def test_drawn_rules_pictures_and_boxes() -> None:
    found = whole(
        p("a"),
        p('<draw:line svg:x1="0in" svg:x2="5in"/>'),
        p("b" + frame(f"<draw:text-box>{p('Notice')}{p('board')}</draw:text-box>") + "c"),
        p(f'<draw:frame svg:height="0.3in">{IMAGE}</draw:frame>'),
        p("d" + frame(f"{IMAGE}<svg:desc>A ferry</svg:desc>")),
        frame(f"<draw:text-box>{p('On the page')}</draw:text-box>"),
    )
    assert [(block.text, block.gap.rule) for block in found.blocks] == [("a", False), ("bc", True), ("d", True)]
    assert list(found.asides) == [
        Aside("text box", 1, 1, 1, "Notice\nboard"),
        Aside("picture", 1, 2, 2, ""),
        Aside("picture", 2, 1, 1, "A ferry"),
        Aside("text box", 2, 1, 1, "On the page"),
    ]


def test_a_text_all_in_boxes_is_read() -> None:
    assert texts(p(frame(f"<draw:text-box>{p('One')}{p('Two')}</draw:text-box>"))) == ["One", "Two"]


def note(kind: str, text: str) -> str:
    return f'<text:note text:note-class="{kind}"><text:note-citation>1</text:note-citation><text:note-body>{p(text)}</text:note-body></text:note>'  # noqa: E501


def test_notes_and_comments_are_set_apart() -> None:
    comment = f'<office:annotation office:name="c">{info()}{p("Why?")}</office:annotation>'
    answer = f'<office:annotation office:name="d" loext:parent-name="c" loext:resolved="true">{info("Bo")}{p("So.")}</office:annotation>'  # noqa: E501
    end = '<office:annotation-end office:name="c"/>'
    found = whole(p(f"It{note('footnote', 'Rain.')} {comment}rained{end}{answer} on{note('endnote', 'So said.')}."))
    day = "2026-03-01T10:00:00"
    assert found.blocks[0].text == "It rained on."
    assert list(found.asides) == [
        Aside("footnote", 0, 2, 2, "Rain."),
        Aside("comment", 0, 3, 9, "Why?", "Ann", day),
        Aside("comment", 0, 9, 9, "So.", "Bo", day, reply=True, done=True),
        Aside("endnote", 0, 12, 12, "So said."),
    ]


def test_a_comment_over_paragraphs_is_kept_once() -> None:
    comment = f'<office:annotation office:name="c">{info()}{p("Why?")}</office:annotation>'
    found = whole(p(f"One {comment}two."), p('Three<office:annotation-end office:name="c"/> four.'))
    assert [(a.kind, a.block, a.start, a.end) for a in found.asides] == [("comment", 0, 4, 8)]


def test_tracked_changes_are_accepted_and_set_apart() -> None:
    changes = (
        changed("i", "insertion") + changed("d", "deletion", p("old ")) + changed("f", "format-change")
        + changed("q", "deletion", p("Gone.") + p())
    )  # fmt: skip
    found = whole(
        f"<text:tracked-changes>{changes}</text:tracked-changes>",
        p('A <text:change-start text:change-id="i"/>new'),
        p('and <text:change-end text:change-id="i"/><text:change text:change-id="d"/>good day.'),
        p(
            '<text:change-start text:change-id="f"/>Plain<text:change-end text:change-id="f"/> '
            '<text:change text:change-id="q"/>text.'
        ),
    )
    assert [block.text for block in found.blocks] == ["A new", "and good day.", "Plain text."]
    assert [(a.kind, a.block, a.start, a.end, a.text, a.author) for a in found.asides] == [
        ("inserted", 0, 2, 5, "new\n", "Ann"),
        ("inserted", 1, 0, 4, "and ", "Ann"),
        ("deleted", 1, 4, 4, "old ", "Ann"),
        ("deleted", 2, 6, 6, "Gone.\n", "Ann"),
    ]


def test_tables_are_read_in_order() -> None:
    long = "word " * 40
    found = whole(p("a"), table([p("Ebb"), p("ten")], [p(long), p("b")], [p("c") + p("d"), p("e")]), p("f"))
    assert [block.text for block in found.blocks] == ["a", "Ebb\tten", long, "b", "c", "d", "e", "f"]
    assert list(found.asides) == [Aside("table", 1, 0, 7, "3 rows, 2 columns")]


def test_sections_and_contents_are_read_and_hidden_text_is_told() -> None:
    hidden = style("Gone", family="text", txt='text:display="none"')
    found = whole(
        f"<text:section>{p('a')}</text:section>",
        f'<text:section text:display="none">{p("gone")}</text:section>',
        "<text:table-of-content><text:table-of-content-source><text:index-title-template>no</text:index-title-template>"
        f"</text:table-of-content-source><text:index-body><text:index-title>{p('Contents')}</text:index-title>"
        f"{p('One 1')}</text:index-body></text:table-of-content>",
        p(f"b{span('gone', 'Gone')}"),
        automatic=hidden,
    )
    assert [block.text for block in found.blocks] == ["a", "Contents", "One 1", "b"]
    assert found.notices == ("Text formatted as hidden was left out in 2 places. It is still in your file.",)


def test_an_ornament_within_a_paragraph_parts_it() -> None:
    found = blocks(p("It rained.<text:line-break/>***<text:line-break/>It stopped."))
    assert [(block.text, block.source.ordinal, block.source.piece) for block in found] == [
        ("It rained.", 0, 0), ("***", 0, 1), ("It stopped.", 0, 2)
    ]  # fmt: skip


BITS = st.sampled_from([
    "It rained. ", span("on", "I"), "<text:s/>", "<text:line-break/>", "<text:tab/>", note("footnote", "n"), "***",
    frame(IMAGE), f"<office:annotation>{info()}{p('c')}</office:annotation>",
])  # fmt: skip
PARAGRAPHS = st.lists(BITS, max_size=5).map(lambda bits: p("".join(bits)))
BODIES = st.lists(
    st.one_of(
        PARAGRAPHS, PARAGRAPHS, PARAGRAPHS.map(lambda one: listed(item(one))), PARAGRAPHS.map(lambda one: table([one]))
    ),
    max_size=8,
)


def stated(node: etree._Element) -> str:
    """The letters that stand in the XML of a paragraph, those of notes and comments left out."""
    inside = ("" if child.tag in APART else stated(child) for child in node)
    parts = (node.text or "", *(text + (child.tail or "") for text, child in zip(inside, node, strict=True)))
    return "".join("".join(parts).split())


@given(BODIES)
def test_every_block_is_found_again_and_no_letter_is_lost(body: list[str]) -> None:
    data = odt(*body, p("last"), automatic=ITALIC)
    nodes = list(etree.fromstring(unpack(data)["content.xml"]).iter(PARAGRAPH))
    found: dict[int, str] = {}
    for block in read(data, "found.odt").blocks:
        found[block.source.ordinal] = found.get(block.source.ordinal, "") + "".join(block.text.split())
    in_text = [node for node in nodes if next(node.iterancestors(*APART), None) is None]
    assert list(found.values()) == [stated(node) for node in in_text if stated(node)]
    assert list(found) == [nodes.index(node) for node in in_text if stated(node)]


@given(BODIES)
def test_runs_and_asides_lie_within_their_blocks(body: list[str]) -> None:
    found = read(odt(*body, p("last"), automatic=ITALIC), "within.odt")
    for block in found.blocks:
        assert all(0 <= run.start < run.end <= len(block.text) for run in block.runs)
        assert not block.text.startswith("\n") and not block.text.endswith("\n")
    for aside in found.asides:
        assert 0 <= aside.start <= aside.end <= len(found.blocks[aside.block].text)


@pytest.mark.parametrize(
    ("data", "error", "match"),
    [
        (b"", DamagedFile, "it is empty"),
        (b"\x89PNG\r\n\x1a\n" + bytes(50), DamagedFile, "not an OpenDocument text"),
        (odt(p("x"))[:-40], DamagedFile, "cut short or damaged"),
        (odt(p("x"))[:200], DamagedFile, "cut short or damaged"),
        (odt(), EmptyManuscript, "holds no text"),
        (odt(p(" ")), EmptyManuscript, "holds no text"),
        (pack({"mimetype": "x"}), DamagedFile, "no text part"),
        (pack({"META-INF/container.xml": "<x/>"}), DamagedFile, r"give it the ending \.epub"),
        (pack(parts(p("x")) | {"content.xml": "<x/>"}), DamagedFile, "no text body"),
        (pack(parts(p("x")) | {"content.xml": "<x"}), DamagedFile, "“content.xml” is damaged"),
        (pack(parts(p("x")) | {"../evil": "x"}), DamagedFile, "lead out of it"),
        (pack({"content.xml": b" " * 30_000_000}), TooLarge, "unpack to"),
    ],
)
def test_what_is_no_odt_is_refused_in_words(data: bytes, error: type[Exception], match: str) -> None:
    with pytest.raises(error, match=f"{match}.*Nothing was changed"):
        read(data, "draft.odt")


def test_a_spreadsheet_is_told() -> None:
    content = parts()["content.xml"].replace("office:text", "office:spreadsheet")
    with pytest.raises(DamagedFile, match="it is a spreadsheet"):
        read(pack(parts() | {"content.xml": content}), "sums.odt")


def test_a_password_is_told() -> None:
    """As ODF 1.3 part 2, §3.4 marks parts that are encrypted."""
    entry = "<manifest:file-entry manifest:full-path='content.xml'><manifest:encryption-data/></manifest:file-entry>"
    manifest = parts()["META-INF/manifest.xml"].replace("/>", f">{entry}</manifest:manifest>")
    with pytest.raises(LockedFile, match="password"):
        read(pack(parts(p("x")) | {"META-INF/manifest.xml": manifest, "content.xml": bytes(range(200))}), "a.odt")


BOMB = '<!DOCTYPE x [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;&a;"><!ENTITY f SYSTEM "file:///etc/passwd">]>'


@pytest.mark.parametrize("entity", ["&b;", "&f;"])
def test_entities_are_not_followed(entity: str) -> None:
    content = BOMB + parts(p(f"It rained {entity}<text:s/>"))["content.xml"]
    with pytest.raises(UnreadableManuscript, match="declarations"):
        read(pack(parts() | {"content.xml": content}), "bomb.odt")


def test_depth_without_end_is_refused() -> None:
    with pytest.raises(DamagedFile):
        whole("<text:section>" * 5000 + p("x") + "</text:section>" * 5000)
