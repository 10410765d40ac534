"""axe finds nothing on any screen in any state, light and dark (quality: WCAG 2.2 AA), and finds what is planted."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, bring_in, saved
from tests.server import Server, running

pytestmark = pytest.mark.browser


def test_books_without_and_with_a_book_and_with_one_that_is_gone(page: Page, home: Path) -> None:
    clean(page, "books, empty")
    bring_in(page)
    page.get_by_role("link", name="Books").click()
    expect(page.get_by_role("heading", name="Books")).to_be_visible()
    clean(page, "books")
    for book in (home / "Books").glob("*.afterdraft"):
        book.rename(book.with_suffix(".moved"))
    page.reload()
    expect(page.get_by_text("It is not there any more.")).to_be_visible()
    clean(page, "books, one gone")


def test_the_folder_of_books(page: Page, home: Path, server: Server) -> None:
    server.stop()
    with running(home, variables={"AFTERDRAFT_HOME": ""}) as chosen:
        page.goto(chosen.address)
        page.get_by_role("link", name="change").click()
        expect(page.get_by_role("heading", name="Where books are kept")).to_be_visible()
        clean(page, "folder")
        page.get_by_label("Folder").fill(str(home / "Other place"))
        page.get_by_role("button", name="Keep books there").click()
        expect(page.get_by_text("New books go into")).to_be_visible()
        clean(page, "books, folder chosen")


def test_the_split_closed_open_and_with_its_acts(page: Page) -> None:
    bring_in(page)
    clean(page, "split")
    page.get_by_role("link", name=re.compile("^Split…")).nth(1).click()
    expect(page.get_by_role("list", name="Paragraphs")).to_be_visible()
    clean(page, "split, a scene opened")
    page.get_by_text("Mend", exact=True).first.click()
    clean(page, "split, a chapter's acts")


def test_scenes_in_every_state(page: Page) -> None:
    bring_in(page)
    page.get_by_role("link", name="Go on to the scenes").first.click()
    expect(page.get_by_role("heading", name="Scene 1", exact=True)).to_be_visible()
    clean(page, "scene, unwritten")
    page.get_by_label("What happens here, and what changes?").fill("She weighs her first sack.")
    saved(page)
    for unfolded in ("More on the page", "Notes on this scene", "Title of this scene"):
        page.get_by_text(unfolded).click()
    clean(page, "scene, all unfolded")
    page.get_by_role("link", name="Note", exact=True).click()
    clean(page, "scene, loose note open")


def test_the_other_screens_of_a_book(page: Page) -> None:
    bring_in(page)
    for opened, heading in (("Notes", "Notes"), ("Scenes", "Scene 1")):
        page.get_by_role("navigation", name="Screens").get_by_role("link", name=opened).click()
        expect(page.get_by_role("heading", name=heading, exact=True)).to_be_visible()
        clean(page, f"{opened}, empty")
    outline = page.get_by_role("link", name="Reverse outline")
    outline.click()
    expect(outline).to_have_attribute("aria-current", "page")
    clean(page, "reverse outline")
    for wanted in ("beet", "zzzz"):
        page.get_by_role("searchbox").fill(wanted)
        with anew(page):
            page.keyboard.press("Enter")
        expect(page.get_by_role("heading", name="Search")).to_be_visible()
        clean(page, f"search for {wanted}")
    page.get_by_role("link", name="Keys").click()
    expect(page.get_by_role("heading", name="Keys")).to_be_visible()
    clean(page, "keys")


def test_the_book_itself_and_its_backups(page: Page) -> None:
    bring_in(page)
    page.get_by_role("banner").get_by_role("paragraph").get_by_role("link").click()
    expect(page.get_by_role("heading", name="Backups")).to_be_visible()
    clean(page, "the book itself")
    with anew(page):
        page.get_by_role("button", name="Make one now").click()
    page.get_by_text("Go back to this…").first.click()
    clean(page, "backups, one chosen")
    page.get_by_role("button", name="Check the file").click()
    expect(page.get_by_text("All is well.")).to_be_visible()
    clean(page, "checked")


def test_pages_that_say_what_went_wrong(page: Page, server: Server, tmp_path: Path) -> None:
    picture = tmp_path / "holiday.docx"
    picture.write_bytes(b"\x89PNG\r\n\x1a\n" + bytes(range(256)))
    page.get_by_label("Choose the file of your draft").set_input_files(picture)
    expect(page.get_by_role("heading", name="This file could not be read")).to_be_visible()
    clean(page, "a file that cannot be read")
    page.get_by_role("button", name="Close").click()
    expect(page.get_by_role("heading", name="Afterdraft is closed")).to_be_visible()
    clean(page, "closed")


def test_plain_reading_and_what_is_wrong_in_it_in_one_look_only_and_out_of_sight(page: Page) -> None:
    bring_in(page)
    page.get_by_role("link", name="Go on to the scenes").first.click()
    with anew(page):
        page.get_by_role("link", name="Plain reading").click()
    expect(page.get_by_role("link", name="Plain reading")).to_have_attribute("aria-current", "page")
    clean(page, "plain reading")
    page.evaluate(PLANTED)
    with pytest.raises(AssertionError, match=r"plain reading, dark: .*color-contrast"):
        clean(page, "plain reading")


PLANTED = """() => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync("@media (prefers-color-scheme: dark) { .manuscript section:last-of-type p { color: #333; } }");
  document.adoptedStyleSheets = [sheet];
}"""
