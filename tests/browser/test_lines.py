"""Threads, setups, reveals, links, cast and places in the browser: marked, taken off, undone, there after a reload."""

import re
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, opens
from tests.server import Server

__all__ = ["opens"]
pytestmark = pytest.mark.browser


@pytest.fixture
def scene(page: Page) -> Iterator[Page]:
    """The first scene of a book that nothing is marked in yet."""
    page.get_by_role("link", name="Go on to the scenes").first.click()
    expect(page.get_by_role("heading", name="Scene 1", exact=True)).to_be_visible()
    return page  # type: ignore[return-value]


def runs(page: Page) -> Locator:
    return page.locator("#runs")


def marked(page: Page) -> Locator:
    return runs(page).get_by_role("listitem")


def press(page: Page, key: str) -> None:
    """Press a key, once the page is there with its scripts."""
    page.wait_for_load_state("load")
    page.keyboard.press(key)


def unfold(page: Page, part: str) -> None:
    """Open a part beside the card, unless it is open."""
    details = page.locator(part)
    if details.get_attribute("open") is None:
        details.locator("> summary").click()


def row_of(page: Page, name: str) -> Locator:
    return page.locator("details.line").filter(has_text=name)


def test_a_thread_is_marked_carried_taken_off_and_undone_by_keyboard(scene: Page) -> None:
    page = scene
    press(page, "l")
    expect(page.get_by_label("Thread", exact=True)).to_be_focused()
    page.keyboard.type("The lost sugar")
    press(page, "Enter")  # a new name: it opens here
    expect(marked(page)).to_contain_text("The lost sugar opens")
    expect(page.get_by_label("Thread", exact=True)).to_be_focused()  # ready for the next
    press(page, "Escape")
    press(page, "]")
    expect(page.get_by_role("heading", name="Scene 2", exact=True)).to_be_visible()
    press(page, "l")
    page.keyboard.type("the lost sugar")
    press(page, "Enter")  # known, and opened already: it is carried
    expect(marked(page)).to_contain_text("The lost sugar carries on")
    page.reload()
    press(page, "l")
    take_off = marked(page).get_by_role("button", name="Take off: The lost sugar: carries on")
    take_off.focus()
    press(page, "Enter")
    expect(marked(page)).to_have_count(0)
    press(page, "Control+z")
    expect(page.get_by_role("status").get_by_text("Taken back: Take off a mark")).to_be_visible()
    press(page, "l")
    expect(marked(page)).to_have_count(1)
    press(page, "Escape")
    press(page, "h")
    expect(page.get_by_role("heading", name="Threads", exact=True).first).to_be_visible()
    row = row_of(page, "The lost sugar")
    expect(row).to_contain_text("opened, no close marked yet")
    expect(row).to_contain_text("2 scenes")


def test_words_chosen_in_the_text_are_what_a_setup_is_fastened_to(scene: Page) -> None:
    page = scene
    paragraphs = page.get_by_role("article").locator("p")
    words = paragraphs.nth(0).inner_text()[-12:]
    paragraphs.nth(0).evaluate(
        "(p, next) => { const last = document.createTreeWalker(p, NodeFilter.SHOW_TEXT); let node, at;"
        "while ((node = last.nextNode())) at = node;"
        "const range = document.createRange(); range.setStart(at, at.length - 12);"
        "range.setEnd(document.querySelectorAll('article p')[1].firstChild, 4);"
        "getSelection().removeAllRanges(); getSelection().addRange(range); }",
    )
    press(page, "l")
    expect(page.get_by_label("On these words of the scene")).to_have_value(re.compile(re.escape(words)))
    page.get_by_label("Setup", exact=True).fill("The second sack")
    runs(page).get_by_role("button", name="setup", exact=True).click()
    expect(marked(page)).to_contain_text(words)
    expect(page.get_by_role("article").locator(".lined").first).to_have_text(words)
    page.get_by_role("article").get_by_role("link", name="The second sack: setup").click()
    expect(marked(page)).to_be_in_viewport()
    link = marked(page).get_by_role("link", name=re.compile(re.escape(words)))
    expect(link).to_have_attribute("href", re.compile(r"^#p\d+$"))
    press(page, "Escape")
    press(page, "h")
    row_of(page, "The second sack").locator("summary").first.click()
    expect(page.get_by_role("link", name=re.compile(re.escape(words)))).to_be_visible()


def test_words_typed_that_are_not_there_are_told_and_nothing_is_marked(scene: Page) -> None:
    page = scene
    press(page, "l")
    page.get_by_label("Setup", exact=True).fill("The second sack")
    page.get_by_label("On these words of the scene").fill("words that nobody wrote")
    runs(page).get_by_role("button", name="setup", exact=True).click()
    expect(page.get_by_text("These words are not in the text of this scene.")).to_be_visible()
    page.go_back()
    page.reload()
    expect(marked(page)).to_have_count(0)


def test_a_reveal_is_learned_by_the_reader_and_by_a_person(scene: Page) -> None:
    page = scene
    for who in ("", "Edwin Wragg"):
        press(page, "l")
        page.get_by_label("Reveal", exact=True).fill("She was sent")
        page.get_by_label("Who learns it").fill(who)
        page.get_by_role("button", name="learns it here").click()
        expect(marked(page).filter(has_text=f"{who or 'The reader'} learns it")).to_be_visible()
        press(page, "Escape")
    expect(marked(page).nth(0)).to_contain_text("The reader learns it")
    expect(marked(page).nth(1)).to_contain_text("Edwin Wragg learns it")
    press(page, "w")
    expect(row_of(page, "Edwin Wragg")).to_be_visible()


def test_a_scene_follows_from_another_chosen_by_its_code(scene: Page) -> None:
    page = scene
    code = page.locator(".card-top .code").inner_text()
    press(page, "]")
    expect(page.get_by_role("heading", name="Scene 2", exact=True)).to_be_visible()
    press(page, "f")
    expect(page.get_by_label("This scene follows from")).to_be_focused()
    page.keyboard.type(code.lower())
    page.get_by_label("because").fill("She was good at it.")
    press(page, "Enter")
    links = page.locator("#follows")
    expect(links.get_by_label("Why")).to_have_value("She was good at it.")
    links.get_by_label("Why").fill("She was too good at it.")
    links.get_by_label("Why").blur()
    expect(links.get_by_text("Saved", exact=True)).to_be_visible()
    press(page, "Escape")
    press(page, "[")
    expect(page.get_by_role("heading", name="Scene 1", exact=True)).to_be_visible()
    unfold(page, "#follows")
    expect(page.locator("#follows")).to_contain_text("She was too good at it.")
    page.get_by_role("navigation", name="Screens").get_by_role("link", name="Threads").click()
    page.get_by_role("button", name=re.compile("does not follow from")).click()
    expect(page.get_by_role("status").get_by_text("not linked any more")).to_be_visible()


def test_who_is_in_a_scene_and_where_and_what_they_carry(scene: Page) -> None:
    page = scene
    press(page, "i")
    page.keyboard.type("Gwenda Pask")
    press(page, "Enter")
    here = page.get_by_role("group", name="Gwenda Pask in this scene")
    expect(here.get_by_role("button", name="on the page")).to_have_attribute("aria-pressed", "true")
    here.get_by_role("button", name="viewpoint").click()
    expect(here.get_by_role("button", name="viewpoint")).to_have_attribute("aria-pressed", "true")
    page.get_by_label("Place", exact=True).fill("The tare house")
    press(page, "Enter")
    expect(page.locator("#who").get_by_role("link", name="The tare house")).to_be_visible()
    page.get_by_text("What one of them comes in with").click()
    carry = page.locator("#carry")
    carry.get_by_label("Person").fill("Gwenda Pask")
    carry.get_by_label("comes in with").fill("her father’s tickets")
    carry.get_by_role("button", name="Keep it").click()
    expect(page.locator(".linked").get_by_label("comes in with")).to_have_value("her father’s tickets")
    press(page, "Escape")
    press(page, "w")
    row = row_of(page, "Gwenda Pask")
    row.locator("summary").first.click()
    expect(row).to_contain_text("her father’s tickets")
    for _ in range(4):
        with anew(page):
            page.get_by_role("button", name="Undo").click()
    expect(page.get_by_text("Type a name here, or beside a scene’s card")).to_be_visible()


def test_cast_is_added_asked_about_named_joined_and_removed(scene: Page) -> None:
    page = scene
    press(page, "w")
    for name in ("Mrs Capp", "Bernice"):
        page.get_by_label("A new person").fill(name)
        press(page, "Enter")
        expect(row_of(page, name)).to_be_visible()
    page.get_by_label("A new person").fill("mrs capp")
    press(page, "Enter")
    expect(page.get_by_role("alert")).to_contain_text("There is somebody called “mrs capp” already.")
    page.get_by_role("button", name="Add another of this name").click()
    expect(page.get_by_text("1 other has this name")).to_have_count(2)
    with anew(page):
        page.get_by_role("button", name="Undo").click()
    row = row_of(page, "Bernice")
    row.locator("summary").first.click()
    row.get_by_label("Mark").fill("✣")
    row.get_by_label("Mark").blur()
    expect(row.get_by_text("Saved", exact=True)).to_be_visible()
    row.get_by_role("link", name="Join to another…").click()
    page.get_by_role("button", name="Join them").click()
    expect(page.locator("details.line")).to_have_count(1)
    expect(page.locator("details.line")).to_contain_text("✣")
    expect(page.locator("details.line")).to_contain_text("Bernice")  # among the other names now
    page.locator("details.line summary").first.click()
    page.get_by_text("Remove…").click()
    page.get_by_role("button", name="Remove Mrs Capp").click()
    expect(page.locator("details.line")).to_have_count(0)
    page.get_by_role("button", name="Undo").click()
    expect(page.locator("details.line")).to_have_count(1)


def test_a_line_is_renamed_lettered_ordered_and_removed_with_a_word_on_what_goes(scene: Page) -> None:
    page = scene
    press(page, "l")
    page.keyboard.type("The slate")
    press(page, "Enter")
    expect(marked(page)).to_have_count(1)
    press(page, "Escape")
    press(page, "h")
    page.get_by_label("A new thread").fill("The goose")
    press(page, "Enter")
    row = row_of(page, "The goose")
    row.get_by_label("Letter", exact=True).fill("x")
    press(page, "Enter")
    expect(row.locator("summary .letter")).to_have_text("X")
    row.get_by_role("button", name="Move The goose up").click()
    expect(page.locator("details.line .name").first).to_contain_text("The goose")
    row.get_by_label("Name").fill("Mowle’s goose")
    row.get_by_label("Name").blur()
    expect(row.get_by_text("Saved", exact=True)).to_be_visible()
    slate = row_of(page, "The slate")
    slate.locator("summary").first.click()
    slate.get_by_text("Remove…").click()
    expect(slate).to_contain_text("1 mark will go with it. Undo brings all of it back.")
    slate.get_by_role("button", name="Remove The slate").click()
    expect(page.locator("details.line")).to_have_count(1)
    expect(page.locator("details.line .name").first).to_contain_text("Mowle’s goose")
    page.get_by_role("button", name="Undo").click()
    expect(row_of(page, "The slate")).to_contain_text("1 scene")


def test_marks_stand_in_the_reverse_outline_and_are_found_by_search(scene: Page) -> None:
    page = scene
    press(page, "l")
    page.keyboard.type("The lost sugar")
    press(page, "Enter")
    expect(marked(page)).to_have_count(1)
    press(page, "Escape")
    press(page, "t")
    expect(page.get_by_role("heading", name="Reverse outline")).to_be_visible()
    expect(page.get_by_role("group", name="Runs through here")).to_contain_text("The lost sugar: opens")
    press(page, "/")
    page.keyboard.type("lost sugar")
    press(page, "Enter")
    page.get_by_role("link", name="Thread, setup or reveal").click()
    expect(page.locator("details.line[open]")).to_contain_text("The lost sugar")


def test_several_cards_are_marked_at_once_and_it_is_one_edit(page: Page, server: Server) -> None:
    page.goto(server.origin)
    page.get_by_role("button", name="Open the demonstration book").click()
    page.get_by_role("navigation", name="Screens").get_by_role("link", name="Cards").click()
    boxes = page.get_by_role("checkbox", name=re.compile("^Choose "))
    for box in (boxes.nth(0), boxes.nth(1), boxes.nth(3)):
        box.check()
    page.get_by_role("button", name="Mark…").click()
    expect(page.get_by_role("heading", name="Mark 3 cards")).to_be_visible()
    clean(page, "marking several cards")
    page.get_by_label("Thread", exact=True).fill("The wet autumn")
    press(page, "Enter")
    expect(page.get_by_role("status").get_by_text("“The wet autumn” opens in 3 scenes")).to_be_visible()
    page.get_by_label("Person", exact=True).fill("The lorry driver")
    with anew(page):
        page.get_by_role("button", name="mentioned").click()
    page.get_by_role("link", name="Back to the cards").click()
    expect(page.get_by_text("The wet autumn: opens")).to_have_count(3)
    press(page, "h")
    expect(row_of(page, "The wet autumn")).to_contain_text("3 scenes")
    for _ in range(2):
        with anew(page):
            page.get_by_role("button", name="Undo").click()
    expect(row_of(page, "The wet autumn")).to_have_count(0)


def test_all_of_it_without_scripts(browser: Browser, server: Server) -> None:
    context = browser.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(server.address)
    page.goto(server.origin)
    page.get_by_role("button", name="Open the demonstration book").click()
    unfold(page, "#runs")
    page.get_by_label("Setup", exact=True).fill("A new matter")
    with anew(page):
        press(page, "Enter")
    unfold(page, "#runs")
    expect(marked(page).filter(has_text="A new matter")).to_contain_text("setup")
    unfold(page, "#who")
    page.get_by_label("Person", exact=True).first.fill("Somebody New")
    with anew(page):
        press(page, "Enter")
    unfold(page, "#who")
    group = page.get_by_role("group", name="Somebody New in this scene")
    with anew(page):
        group.get_by_role("button", name="Take Somebody New off").click()
    page.get_by_role("navigation", name="Screens").get_by_role("link", name="Threads").click()
    page.get_by_label("A new strand").fill("Afterwards")
    press(page, "Enter")
    row = row_of(page, "Afterwards")
    row.get_by_label("Name").fill("Long afterwards")
    row.get_by_role("button", name="Save").click()
    expect(row_of(page, "Long afterwards")).to_be_visible()
    context.close()


def test_access_of_every_state(page: Page) -> None:
    screens = page.get_by_role("navigation", name="Screens")
    with anew(page):
        screens.get_by_role("link", name="Threads").click()
    clean(page, "threads, empty")
    with anew(page):
        page.get_by_role("link", name="People and places").click()
    clean(page, "people, empty")
    with anew(page):
        screens.get_by_role("link", name="Scenes").click()
    for part in ("#runs", "#follows", "#who"):
        page.locator(f"{part} > summary").click()
    clean(page, "scene, nothing marked, all unfolded")
    screens.get_by_role("link", name="Books").click()
    with anew(page):
        page.get_by_role("button", name="Open the demonstration book").click()
    for part in ("#runs", "#follows", "#who", "#carry"):
        page.locator(f"{part} > summary").click()
    clean(page, "scene, marked, all unfolded")
    for screen in ("Threads", "People and places"):
        with anew(page):
            (screens if screen == "Threads" else page).get_by_role("link", name=screen).click()
        clean(page, screen)
        page.locator("details.line > summary").first.click()
        page.locator("details.line .fold > summary").first.click()
        clean(page, f"{screen}, one open, about to be removed")
    with anew(page):
        page.get_by_role("link", name="Join to another…").first.click()
    clean(page, "people, one to be joined")
    page.get_by_label("A new person").fill("Gwenda Pask")
    press(page, "Enter")
    expect(page.get_by_role("alert")).to_be_visible()
    clean(page, "people, a name that is taken")
