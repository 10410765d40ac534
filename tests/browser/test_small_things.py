"""Notes reworded and ticked, first words put away, a very long scene, a page that is not there, no scripts at all."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.walk import MANUSCRIPT, anew, bring_in, saved, summary
from tests.server import Server, running

pytestmark = pytest.mark.browser


def test_a_note_is_written_reworded_done_and_opened_again(page: Page) -> None:
    bring_in(page)
    page.get_by_role("navigation", name="Screens").get_by_role("link", name="Notes").click()
    page.get_by_label("A note", exact=True).fill("Who winds the clock?")
    page.get_by_role("button", name="Keep the note").first.click()
    page.get_by_label("More for the note Who winds the clock?").click()
    page.get_by_label("Words of the note").fill("Who wound the clock in June?")
    page.get_by_role("button", name="Keep the words").click()
    note = page.get_by_role("listitem").filter(has_text="Who wound the clock in June?")
    ways = page.get_by_role("navigation", name="Which notes")
    note.get_by_role("button", name="Done").click()
    expect(note).to_have_count(0)  # of the open ones
    ways.get_by_role("link", name="Done").click()
    note.get_by_role("button", name="Open again").click()
    expect(note).to_have_count(0)
    ways.get_by_role("link", name="Open").click()
    expect(note.get_by_role("button", name="Done")).to_be_visible()


def test_first_words_are_put_away_and_brought_back(page: Page) -> None:
    bring_in(page, MANUSCRIPT)
    words = page.get_by_text("Look down the beginnings")
    expect(words).to_be_visible()
    page.get_by_role("button", name="Put away").click()
    expect(words).not_to_be_visible()
    page.get_by_role("link", name="Keys").click()
    with anew(page):
        page.get_by_role("button", name="Bring them back").click()
    page.get_by_role("link", name="Back").click()
    expect(words).to_be_visible()


def test_a_scene_of_a_thousand_paragraphs(page: Page, tmp_path: Path) -> None:
    file = tmp_path / "long.txt"
    lines = [f"Paragraph {number} says that the river rose by an inch, and goes on." for number in range(1000)]
    file.write_text("CHAPTER ONE\n\n" + "\n\n".join(lines), encoding="utf-8")
    bring_in(page, file)
    page.get_by_role("link", name="Go on to the scenes").first.click()
    expect(page.get_by_role("article").get_by_text("Paragraph 0 says")).to_be_visible()
    page.keyboard.press("End")
    expect(page.get_by_role("article").get_by_text("Paragraph 999 says")).to_be_in_viewport()


def test_a_scene_that_is_not_there_says_so_and_leads_on(page: Page) -> None:
    bring_in(page)
    page.goto(page.url.replace("/split", "/scenes/Z11"))  # no code has the figure 1
    expect(page.get_by_role("heading", name="Not there")).to_be_visible()
    page.get_by_role("main").get_by_role("link", name="Books").click()
    expect(page.get_by_role("heading", name="Books")).to_be_visible()


def test_everything_can_be_done_without_scripts(browser: Browser, server: Server) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(server.address)
    page.get_by_role("button", name="Open the demonstration book").click()
    page.get_by_role("link", name="The split").click()
    for act in ("Join", "Undo"):
        with anew(page):
            page.get_by_role("button", name=act).first.click()
    page.get_by_role("navigation", name="Screens").get_by_role("link", name="Scenes").click()
    summary(page).fill("Without scripts.")
    page.get_by_role("button", name="Save the card").click()
    saved_message = page.get_by_role("status").get_by_text("The card is saved.")
    expect(saved_message).to_be_visible()
    expect(summary(page)).to_have_value("Without scripts.")
    context.close()


def test_undo_and_redo_across_a_restart(page: Page, server: Server, home: Path) -> None:
    bring_in(page)
    page.get_by_role("link", name="Go on to the scenes").first.click()
    summary(page).fill("One.")
    saved(page)
    summary(page).blur()
    server.stop()
    with running(home) as again:
        page.goto(again.address)
        page.get_by_role("main").get_by_role("link").first.click()
        expect(summary(page)).to_have_value("One.")
        page.get_by_role("button", name="Undo").click()
        expect(summary(page)).to_have_value("")
        page.get_by_role("button", name="Redo").click()
        expect(summary(page)).to_have_value("One.")


def test_a_code_copied_from_paper_leads_to_its_scene(page: Page) -> None:
    bring_in(page)
    code = page.get_by_role("article", name=re.compile("^Scene ")).nth(4).get_by_role("link").first.inner_text()
    page.keyboard.press("/")
    page.keyboard.type(code.lower())
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", name="Scene 5", exact=True)).to_be_visible()
