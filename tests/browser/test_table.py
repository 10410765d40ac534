"""Tables in and out: the scene list of another novel read in as a user would, the outline taken along. All invented."""

import csv
import io
from pathlib import Path

import pytest
from docx import Document
from openpyxl import Workbook
from openpyxl.worksheet.worksheet import Worksheet
from playwright.sync_api import Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, bring_in

pytestmark = pytest.mark.browser

# One thing for each scene, by which a person would know it again: twelve chapters of five.
THINGS = (
    *("kettle", "ferry", "mandolin", "ledger", "orchard", "lantern", "compass", "wedding", "avalanche", "beehive"),
    *("pigeon", "quarry", "telescope", "blizzard", "anchor", "violin", "cellar", "harvest", "mirror", "windmill"),
    *("gallows", "thimble", "carousel", "monastery", "herring", "umbrella", "saddle", "tunnel", "fever", "glacier"),
    *("oyster", "parrot", "scaffold", "sermon", "tannery", "urn", "vineyard", "wagon", "abacus", "bakery"),
    *("chimney", "donkey", "eclipse", "forge", "goblet", "hammock", "icehouse", "jetty", "kiln", "lighthouse"),
    *("marsh", "nettle", "oven", "pulpit", "quilt", "raft", "spindle", "trapdoor", "viaduct", "workhouse"),
)
OPENINGS = ("In the morning", "Towards evening", "When the rain stopped", "Before anybody was up", "On the way home")
UNLISTED = THINGS.index("scaffold")  # a scene of the seventh chapter that the list does not know
EXTRA = "A comet is seen and nobody believes Osk."  # a scene of the ninth that the draft does not have


def manuscript(path: Path) -> None:
    document = Document()
    for chapter in range(12):
        document.add_heading(f"Chapter {chapter + 1}", level=1)
        for n, opening in enumerate(OPENINGS):
            thing, who = THINGS[chapter * 5 + n], ("Marit", "Osk")[n % 2]
            if n:
                document.add_paragraph("* * *")
            document.add_paragraph(f"{opening} {who} stood before the {thing} and could not say what had changed.")
            document.add_paragraph(f"“Leave it,” said the other one, and so the {thing} stayed where it was until May.")
    document.save(str(path))


def scene_list() -> Workbook:
    """Sixty rows with title rows above, names merged over two rows, blank rows, a row for each chapter, numbers that
    begin anew and skip nothing, and columns that no card has."""
    book = Workbook()
    sheet = book.active
    assert isinstance(sheet, Worksheet)
    sheet.append(["The Salt Road: where things stand"])
    sheet.merge_cells("A1:F1")
    sheet.append(["green is fine, red is not"])
    sheet.append([])
    sheet.append(["Scene", None, "POV", "What goes on", "Mood", "To fix"])
    sheet.merge_cells("A4:B4")
    for column in "CDEF":
        sheet.merge_cells(f"{column}4:{column}5")
    sheet.append(["No.", "Title"])
    for chapter in range(12):
        sheet.append([])
        sheet.append([f"Chapter {chapter + 1}"])
        sheet.merge_cells(f"A{sheet.max_row}:F{sheet.max_row}")
        number = 0
        for n in range(5):
            at = chapter * 5 + n
            if at == UNLISTED:
                continue
            number += 1
            title = f"The {THINGS[at]}" if n == 0 else None
            fix = "is this needed?" if at == 7 else None
            told = f"The business of the {THINGS[at]} comes to a head."
            sheet.append([number, title, ("Marit", "Osk")[n % 2], told, "grim", fix])
        if chapter == 8:
            sheet.append([number + 1, None, "Osk", EXTRA])
    return book


@pytest.fixture
def book(page: Page, tmp_path: Path) -> Page:
    """A book of sixty scenes, at its reverse outline."""
    draft = tmp_path / "salt.docx"
    manuscript(draft)
    bring_in(page, draft)
    expect(page.get_by_text("60 scenes").first).to_be_visible()
    with anew(page):
        page.keyboard.press("t")
    expect(page.get_by_role("heading", name="Reverse outline")).to_be_visible()
    return page


@pytest.fixture
def file(tmp_path: Path) -> Path:
    path = tmp_path / "where things stand.xlsx"
    scene_list().save(path)
    return path


def to_columns(page: Page, file: Path) -> None:
    page.get_by_role("link", name="As a table, or from one").click()
    page.get_by_label("Choose the file of your scene list").set_input_files(file)
    page.get_by_role("button", name="Look at its columns").click()
    expect(page.get_by_role("heading", name="What the columns are")).to_be_visible()


def taken_along(page: Page) -> list[dict[str, str]]:
    """The reverse outline as the browser saves it."""
    page.goto(page.url.partition("/books/")[0] + "/books/" + page.url.partition("/books/")[2].split("/")[0] + "/table")
    with page.expect_download() as saving:
        page.get_by_role("link", name="Text with commas").click()
    assert saving.value.suggested_filename.endswith("reverse outline.csv")
    text = saving.value.path().read_text("utf-8-sig")
    return list(csv.DictReader(io.StringIO(text, newline="")))


def test_the_scene_list_of_another_novel_is_read_in(book: Page, file: Path) -> None:
    to_columns(book, file)
    expect(book.get_by_label("The row with the names of the columns")).to_have_value("3")  # blank ones left out
    for column, kind in (("No.", "number"), ("Title", "title"), ("POV", "viewpoint"), ("Mood", ""), ("To fix", "note")):
        expect(book.get_by_label(f"{column} is", exact=True)).to_have_value(kind)
    expect(book.get_by_label("What goes on is")).to_have_value("")
    book.get_by_label("What goes on is").select_option(label="Summary")
    book.get_by_role("button", name="See the rows beside the scenes").click()
    expect(book.get_by_text("60 rows: 59 meet a scene, 1 none")).to_be_visible()
    extra = book.get_by_role("listitem").filter(has_text=EXTRA)
    expect(extra.get_by_text("no scene", exact=True)).to_be_visible()
    book.get_by_role("button", name="Read them in").click()
    said = book.get_by_role("status")
    expect(said.get_by_text("59 scenes took words from the table. 1 row became a loose note.")).to_be_visible()
    rows = taken_along(book)
    assert len(rows) == 60
    for thing, row in zip(THINGS, rows, strict=True):
        assert thing in row["First words"]
        assert row["Summary"] == ("" if thing == "scaffold" else f"The business of the {thing} comes to a head.")
    assert [row["Title"] for row in rows[:7]] == ["The kettle", "", "", "", "", "The lantern", ""]
    assert [row["Viewpoint"] for row in rows[:3]] == ["Marit", "Osk", "Marit"]
    book.get_by_role("navigation", name="Screens").get_by_role("link", name="Notes").click()
    for note in ("is this needed?", "A comet is seen"):
        expect(book.get_by_role("main").get_by_text(note).first).to_be_visible()
    book.get_by_role("button", name="Undo").click()
    expect(book.get_by_text("Taken back: Read in")).to_be_visible()
    assert all(row["Summary"] == row["Title"] == "" and "Viewpoint" not in row for row in taken_along(book))


def test_a_row_is_given_another_scene_and_what_stands_is_kept_or_not(book: Page, file: Path) -> None:
    codes = [link.inner_text() for link in book.locator(".outline-chapter a.code").all()]
    book.locator(".outline-chapter a.code").first.click()
    book.get_by_label("What happens here, and what changes?").fill("They wait.")
    expect(book.get_by_text("Saved", exact=True)).to_be_visible()
    book.keyboard.press("Escape")
    with anew(book):
        book.keyboard.press("t")
    to_columns(book, file)
    book.get_by_label("What goes on is").select_option(label="Summary")
    book.get_by_role("button", name="See the rows beside the scenes").click()
    expect(book.get_by_text("60 rows: 59 meet a scene, 1 none · 1 differ")).to_be_visible()
    first = book.get_by_role("listitem").filter(has_text="The business of the kettle")
    expect(first.get_by_text("Summary on the card: They wait.")).to_be_visible()
    first.get_by_role("combobox", name="What becomes of it").select_option(label="keep both")
    extra = book.get_by_role("listitem").filter(has_text=EXTRA)
    extra.get_by_role("combobox").fill("Z11")
    expect(extra.get_by_text("no scene of this code")).to_be_visible()
    book.get_by_role("button", name="Read them in").click()
    expect(extra.get_by_text("There is no scene with the code Z11.")).to_be_visible()
    extra.get_by_role("combobox").fill(codes[UNLISTED].lower())
    book.get_by_role("button", name="Look again").click()
    expect(book.get_by_text("60 rows: 60 meet a scene · 1 differ")).to_be_visible()
    book.get_by_role("button", name="Read them in").click()
    expect(book.get_by_role("status").get_by_text("60 scenes took words from the table.")).to_be_visible()
    rows = taken_along(book)
    assert rows[0]["Summary"] == "They wait.\nThe business of the kettle comes to a head."
    assert rows[UNLISTED]["Summary"] == EXTRA


def test_what_is_taken_along_and_read_in_again_is_nothing_new(book: Page, tmp_path: Path) -> None:
    book.get_by_role("link", name="As a table, or from one").click()
    for form in ("Spreadsheet", "Table in a document"):
        with book.expect_download() as saving:
            book.get_by_role("link", name=form).click()
        path = tmp_path / saving.value.suggested_filename
        saving.value.save_as(path)
        book.get_by_label("Choose the file of your scene list").set_input_files(path)
        book.get_by_role("button", name="Look at its columns").click()
        book.get_by_role("button", name="See the rows beside the scenes").click()
        expect(book.get_by_text("60 rows: 60 meet a scene", exact=True)).to_be_visible()
        book.get_by_role("button", name="Read them in").click()
        expect(book.get_by_role("status").get_by_text("Nothing is new.")).to_be_visible()
        expect(book.get_by_role("button", name="Undo")).to_be_disabled()
        book.get_by_role("link", name="As a table, or from one").click()


def test_a_file_that_is_no_table_is_told(book: Page, tmp_path: Path) -> None:
    book.get_by_role("link", name="As a table, or from one").click()
    picture = tmp_path / "list.xlsx"
    picture.write_bytes(b"\x89PNG\r\n\x1a\n")
    book.get_by_label("Choose the file of your scene list").set_input_files(picture)
    book.get_by_role("button", name="Look at its columns").click()
    expect(book.get_by_text("“list.xlsx” cannot be read as a table")).to_be_visible()


def test_axe_finds_nothing(book: Page, file: Path) -> None:
    book.get_by_role("link", name="As a table, or from one").click()
    expect(book.get_by_role("heading", name="Tables in and out")).to_be_visible()
    clean(book, "tables in and out")
    with anew(book):
        book.keyboard.press("t")
    to_columns(book, file)
    clean(book, "columns of a table")
    book.get_by_label("What goes on is").select_option(label="Summary")
    book.get_by_role("button", name="See the rows beside the scenes").click()
    expect(book.get_by_role("heading", name="Rows and scenes")).to_be_visible()
    clean(book, "rows of a table")
