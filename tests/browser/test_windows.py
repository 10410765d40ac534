"""Two windows on one book, a server that goes away and comes back: nothing is overwritten, nothing is lost."""

from pathlib import Path

import pytest
from playwright.sync_api import BrowserContext, Page, expect

from tests.browser.walk import anew, opens, saved, summary
from tests.server import Server, running

__all__ = ["opens"]
pytestmark = pytest.mark.browser


def test_the_same_summary_changed_in_two_windows_shows_both_texts(page: Page, context: BrowserContext) -> None:
    with anew(page):
        page.get_by_role("link", name="Go on to the scenes").first.click()
    other = context.new_page()
    other.goto(page.url)
    summary(page).fill("What the first window says.")
    saved(page)
    summary(other).fill("What the second window says.")
    expect(other.get_by_text("This was changed in another window. There it says:")).to_be_visible()
    expect(other.get_by_text("What the first window says.")).to_be_visible()
    expect(summary(other)).to_have_value("What the second window says.")
    other.get_by_role("button", name="Keep both, one under the other").click()
    expect(summary(other)).to_have_value("What the first window says.\nWhat the second window says.")
    saved(other)
    page.reload()
    expect(summary(page)).to_have_value("What the first window says.\nWhat the second window says.")


def test_different_fields_changed_in_two_windows_do_not_meet(page: Page, context: BrowserContext) -> None:
    with anew(page):
        page.get_by_role("link", name="Go on to the scenes").first.click()
    other = context.new_page()
    other.goto(page.url)
    summary(page).fill("What happens.")
    saved(page)
    other.get_by_text("More on the page").click()
    other.get_by_label("Needed for").fill("The ending.")
    saved(other)
    expect(other.get_by_text("This was changed in another window.")).not_to_be_visible()
    page.reload()
    expect(summary(page)).to_have_value("What happens.")
    page.get_by_text("More on the page").click()
    expect(page.get_by_label("Needed for")).to_have_value("The ending.")


def test_a_window_that_comes_to_the_front_shows_what_the_other_did(page: Page, context: BrowserContext) -> None:
    with anew(page):
        page.get_by_role("link", name="Go on to the scenes").first.click()
    other = context.new_page()
    other.goto(page.url)
    summary(other).fill("Written in the second window.")
    saved(other)
    page.evaluate("dispatchEvent(new Event('focus'))")  # what the browser does when the window comes to the front
    expect(summary(page)).to_have_value("Written in the second window.")


def test_words_typed_while_the_program_is_gone_are_saved_when_it_is_back(
    page: Page, server: Server, home: Path
) -> None:
    with anew(page):
        page.get_by_role("link", name="Go on to the scenes").first.click()
    server.kill()
    summary(page).fill("Typed into the void.")
    expect(page.get_by_text("Afterdraft is not answering. Your words are kept in this window")).to_be_visible()
    expect(page.get_by_text("Not saved yet")).to_be_visible()
    with running(home, port=server.port) as again:
        page.context.add_cookies([{"name": f"afterdraft-{again.port}", "value": again.key, "url": again.origin}])
        saved(page)
        page.reload()
        expect(summary(page)).to_have_value("Typed into the void.")


def test_leaving_the_page_at_once_saves_what_was_typed(page: Page) -> None:
    with anew(page):
        page.get_by_role("link", name="Go on to the scenes").first.click()
    summary(page).fill("Typed and left.")
    page.get_by_role("link", name="Next scene").first.click()
    expect(page.get_by_role("heading", name="Scene 2", exact=True)).to_be_visible()
    with anew(page):
        page.get_by_role("link", name="Previous scene").click()
    expect(summary(page)).to_have_value("Typed and left.")


def test_an_undo_button_that_is_out_of_date_changes_nothing(page: Page, context: BrowserContext) -> None:
    with anew(page):
        page.get_by_role("link", name="Go on to the scenes").first.click()
    summary(page).fill("First.")
    saved(page)
    other = context.new_page()
    other.goto(page.url)
    summary(page).fill("Second.")
    saved(page)
    summary(page).blur()
    with anew(page):
        page.get_by_role("link", name="Next scene").first.click()
    summary(page).fill("Of the second scene.")
    saved(page)
    other.get_by_role("button", name="Undo").click()
    expect(other.get_by_role("alert")).to_contain_text("Nothing was taken back")
    page.reload()
    expect(summary(page)).to_have_value("Of the second scene.")
