"""What is set apart lies at its place, with its author and date, and is never in the text."""

from afterdraft.formats.docx.read import read
from afterdraft.manuscript.blocks import Aside
from tests.formats.docx.test_inline import BOX, CHOICE, DRAWN, PICT
from tests.specimens.docx import br, deleted, docx, ins, p, r, table

WHEN = "2026-03-01T10:00:00Z"


def found(*body: str, **parts: str) -> list[Aside]:
    return list(read(docx(*body, **parts), "specimen.docx").asides)


def comment(id: int, text: str, para: str = "", author: str = "Bea") -> str:
    inside = f'<w:p w14:paraId="{para}"><w:r><w:annotationRef/></w:r>{r(text)}</w:p>'
    return f'<w:comment w:id="{id}" w:author="{author}" w:date="{WHEN}">{inside}</w:comment>'


def begin(id: int) -> str:
    return f'<w:commentRangeStart w:id="{id}"/>'


def end(id: int) -> str:
    return f'<w:commentRangeEnd w:id="{id}"/><w:r><w:commentReference w:id="{id}"/></w:r>'


def test_a_comment_has_its_range() -> None:
    body = p(r("The ") + begin(0) + r("ferry") + end(0) + r(" came."))
    assert found(body, comments=comment(0, "Which?")) == [Aside("comment", 0, 4, 9, "Which?", "Bea", WHEN)]


def test_a_comment_over_paragraphs_is_kept_once_to_the_end_of_its_first() -> None:
    body = p(r("One ") + begin(0) + r("two")), p("three"), p(r("four") + end(0) + r(" five"))
    assert found(*body, comments=comment(0, "Long?")) == [Aside("comment", 0, 4, 7, "Long?", "Bea", WHEN)]


def test_a_comment_that_begins_at_a_paragraphs_end_belongs_to_the_next() -> None:
    body = p(r("One") + begin(0)), p(), p(r("two") + end(0))
    assert found(*body, comments=comment(0, "Here")) == [Aside("comment", 1, 0, 3, "Here", "Bea", WHEN)]


def test_a_comments_boundary_may_stand_between_paragraphs() -> None:
    body = p("One"), begin(0), p("two"), '<w:commentRangeEnd w:id="0"/>', p("three")
    assert found(*body, comments=comment(0, "All of it"))[0].block == 1


def test_a_comment_on_deleted_text_is_a_point_and_one_without_place_stands_first() -> None:
    body = p("One"), p(r("two") + begin(0) + deleted("gone") + end(0))
    assert [
        (each.kind, each.block, each.start, each.end)
        for each in found(*body, comments=comment(0, "a") + comment(7, "b"))
    ] == [
        ("comment", 0, 0, 0),
        ("deleted", 1, 3, 3),
        ("comment", 1, 3, 3),
    ]


def test_replies_follow_what_they_answer_and_resolved_ones_are_marked() -> None:
    states = '<w15:commentEx w15:paraId="0A" w15:done="1"/><w15:commentEx w15:paraId="0B" w15:paraIdParent="0A"/>'
    both = comment(0, "Why?", "0A") + comment(1, "Because.", "0B", "Cy")
    body = p("One"), p(begin(0) + r("two") + end(0))
    assert found(*body, comments=both, commentsExtended=states) == [
        Aside("comment", 1, 0, 3, "Why?", "Bea", WHEN, done=True),
        Aside("comment", 1, 0, 3, "Because.", "Cy", WHEN, reply=True),
    ]


def test_notes_stand_at_their_reference() -> None:
    note = '<w:footnote w:id="2"><w:p><w:r><w:footnoteRef/></w:r>{}</w:p>{}</w:footnote>'.format(
        r(" See there."), p("And here.")
    )
    line = '<w:footnote w:id="0" w:type="separator"><w:p><w:r><w:separator/></w:r></w:p></w:footnote>'
    last = f'<w:endnote w:id="1">{p("At the end.")}</w:endnote>'
    body = p(
        r("A word")
        + '<w:r><w:footnoteReference w:id="2"/></w:r>'
        + r(" more")
        + '<w:r><w:endnoteReference w:id="1"/></w:r>'
    )
    assert found(body, footnotes=line + note, endnotes=last) == [
        Aside("footnote", 0, 6, 6, "See there.\nAnd here."),
        Aside("endnote", 0, 11, 11, "At the end."),
    ]


def test_a_notes_own_mark_is_not_text() -> None:
    mark = '<w:r><w:footnoteReference w:id="2" w:customMarkFollows="1"/><w:t>*</w:t></w:r>'
    blocks = read(
        docx(p(r("A word") + mark), footnotes=f'<w:footnote w:id="2">{p("See.")}</w:footnote>'), "n.docx"
    ).blocks
    assert [block.text for block in blocks] == ["A word"]


def test_tracked_changes_are_kept_and_those_in_pieces_joined() -> None:
    body = p(r("It ") + ins(r("really ")) + ins(r("did ")) + deleted("didn’t ") + r("rain."))
    assert found(body) == [
        Aside("inserted", 0, 3, 14, "really did ", "Ann", WHEN),
        Aside("deleted", 0, 14, 14, "didn’t ", "Ann", WHEN),
    ]


def test_changes_of_two_people_stay_apart() -> None:
    body = p(r("It ") + ins(r("a")) + ins(r("b"), author="Bea"))
    assert [(each.text, each.author) for each in found(body)] == [("a", "Ann"), ("b", "Bea")]


def test_a_paragraph_deleted_whole_is_kept_at_its_neighbour() -> None:
    gone = p(deleted("Nobody came."), '<w:rPr><w:del w:id="5" w:author="Ann" w:date="2026-03-01T10:00:00Z"/></w:rPr>')
    assert found(p("One."), gone, p("Two.")) == [Aside("deleted", 1, 0, 0, "Nobody came.\n", "Ann", WHEN)]


def test_a_text_box_is_set_apart_once() -> None:
    assert found(p(f"<w:r>{CHOICE.format('wps', DRAWN, PICT)}</w:r>" + r("kept"))) == [
        Aside("text box", 0, 0, 0, "boxed")
    ]
    assert found(p(r("kept") + f"<w:r>{PICT}</w:r>")) == [Aside("text box", 0, 4, 4, "boxed")]


def test_where_all_text_is_in_boxes_they_are_the_text() -> None:
    two = BOX.replace("boxed", "also")
    whole = read(docx(p(f"<w:r>{DRAWN}</w:r>"), p(f"<w:r>{PICT.replace(BOX, two)}</w:r>")), "boxes.docx")
    assert [block.text for block in whole.blocks] == ["boxed", "also"]
    assert whole.asides == ()


def test_a_picture_gives_its_alternative_text() -> None:
    drawing = (
        '<w:r><w:drawing><wp:inline><wp:docPr id="1" name="P" descr="A map"/><a:blip/></wp:inline></w:drawing></w:r>'
    )
    vml = '<w:r><w:pict><v:shape alt="A key"><v:imagedata/></v:shape></w:pict></w:r>'
    assert found(p(r("See ") + drawing + vml)) == [
        Aside("picture", 0, 4, 4, "A map"),
        Aside("picture", 0, 4, 4, "A key"),
    ]


def test_a_table_is_told_of_and_a_deleted_row_kept() -> None:
    gone = table([p("x"), p("y")]).replace("<w:tr>", '<w:tr><w:trPr><w:del w:id="1" w:author="Ann"/></w:trPr>')
    both = table([p("a"), p("b")], [p("c"), p("d")]).replace("</w:tbl>", gone.removeprefix("<w:tbl>"))
    assert found(p("Before"), both) == [
        Aside("table", 1, 0, 3, "3 rows, 2 columns"),
        Aside("deleted", 2, 3, 3, "x\ny", "Ann"),
    ]


def test_marks_of_a_paragraph_in_pieces_go_to_their_piece() -> None:
    body = p(r("one") + br() + r("***") + br() + r("two ") + begin(0) + r("three") + end(0))
    assert found(body, comments=comment(0, "?")) == [Aside("comment", 2, 4, 9, "?", "Bea", WHEN)]
