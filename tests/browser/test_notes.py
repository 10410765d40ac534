"""Notes and guarded passages in the browser: words chosen by mouse and by key, inks by their digits, all taken back."""

import json
import random
import re
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Locator, Page, expect

from tests.browser.access import clean
from tests.browser.walk import anew, bring_in

pytestmark = pytest.mark.browser


@pytest.fixture
def scene(page: Page) -> Page:
    """The first scene of a book with the four starting inks."""
    bring_in(page)
    notes(page)
    page.get_by_role("button", name="Begin with Motive, Timeline, Voice, Pace").click()
    expect(page.get_by_label("Name of the ink Motive")).to_be_visible()
    page.get_by_role("link", name="Scenes", exact=True).click()
    expect(page.get_by_role("heading", name="Scene 1", exact=True)).to_be_visible()
    page.wait_for_load_state("load")
    return page


def notes(page: Page) -> None:
    page.get_by_role("navigation", name="Screens").get_by_role("link", name="Notes").click()
    expect(page.get_by_role("heading", name="Notes", exact=True)).to_be_visible()
    page.wait_for_load_state("load")


def article(page: Page) -> Locator:
    return page.get_by_role("article")


def note_box(page: Page) -> Locator:
    return page.get_by_label("A note on this scene")


def chosen_words(page: Page) -> Locator:
    return page.locator("#note-words")


def choose_by_mouse(page: Page) -> str:
    """Drag over part of the first line; what the browser says is chosen."""
    box = article(page).locator("p").first.bounding_box()
    assert box
    page.mouse.move(box["x"] + 60, box["y"] + 14)
    page.mouse.down()
    page.mouse.move(box["x"] + 260, box["y"] + 14, steps=4)
    page.mouse.up()
    words: str = page.evaluate("getSelection().toString()")
    assert words.strip()
    return words


def test_words_chosen_by_mouse_are_noted_in_the_second_ink_and_stay(scene: Page) -> None:
    page = scene
    words = choose_by_mouse(page)
    page.keyboard.press("2")
    expect(note_box(page)).to_be_focused()
    expect(page.locator("#notes").get_by_role("radio", name="Timeline")).to_be_checked()
    expect(chosen_words(page)).to_have_value(words)
    page.keyboard.type("Is it still Tuesday?")
    page.keyboard.press("Control+Enter")
    marked = article(page).locator(".noted")
    expect(marked).to_have_text(words)
    expect(article(page).get_by_role("link", name="Note, Timeline: Is it still Tuesday?")).to_be_visible()
    page.reload()
    expect(marked).to_have_count(1)
    article(page).get_by_role("link", name="Note, Timeline: Is it still Tuesday?").click()
    expect(page).to_have_url(re.compile(r"#note-"))
    quote = page.locator("#notes").get_by_role("link", name=re.compile(re.escape(words.strip())))
    quote.click()
    expect(page).to_have_url(re.compile(r"#p\d+$"))
    page.keyboard.press("Control+z")
    expect(page.get_by_role("status").get_by_text(re.compile("^Taken back: Note on a passage"))).to_be_visible()
    expect(marked).to_have_count(0)


def test_words_chosen_further_by_key_are_guarded_by_one_key_and_let_go(scene: Page) -> None:
    page = scene
    article(page).locator("p").first.dblclick(position={"x": 60, "y": 14})
    word: str = page.evaluate("getSelection().toString()")
    for _ in range(12):
        page.keyboard.press("Shift+ArrowRight")
    words: str = page.evaluate("getSelection().toString()")
    assert len(words) == len(word) + 12
    page.keyboard.press("k")
    marked = article(page).locator(".guarded")
    expect(marked).to_have_text(words, use_inner_text=False)
    page.reload()
    expect(marked).to_have_count(1)
    why = page.get_by_label("Why it is guarded")
    why.fill("It rings.")
    why.press("Tab")
    expect(page.locator("#guarded").get_by_role("status")).to_have_text("Saved")
    page.reload()
    expect(why).to_have_value("It rings.")
    page.get_by_role("button", name=re.compile("^Let go")).click()
    expect(marked).to_have_count(0)
    page.wait_for_load_state("load")
    page.keyboard.press("Control+z")
    expect(marked).to_have_count(1)
    expect(why).to_have_value("It rings.")


def test_words_chosen_are_noted_and_guarded_by_pointer_alone(scene: Page) -> None:
    page = scene
    note, guard = (page.get_by_role("button", name=re.compile(f"^{act}")) for act in ("Note these words", "Guard them"))
    expect(note).to_be_hidden()
    words = choose_by_mouse(page)
    clean(page, "scene, words chosen")
    note.click()
    expect(note_box(page)).to_be_focused()
    expect(chosen_words(page)).to_have_value(words)
    expect(note).to_be_hidden()
    note_box(page).fill("Whose are these?")
    page.get_by_role("button", name="Keep the note").click()
    expect(article(page).locator(".noted")).to_have_text(words)
    page.wait_for_load_state("load")
    choose_by_mouse(page)
    guard.click()
    expect(article(page).locator(".guarded").first).to_be_visible()


def test_the_key_for_guarding_asks_for_words_where_none_are_chosen(scene: Page) -> None:
    scene.keyboard.press("k")
    expect(scene.get_by_text("Choose the words in the text first")).to_be_visible()
    expect(article(scene).locator(".guarded")).to_have_count(0)


def test_a_digit_without_chosen_words_is_a_note_on_the_scene(scene: Page) -> None:
    page = scene
    page.keyboard.press("4")
    expect(note_box(page)).to_be_focused()
    page.keyboard.type("Slow from here on.")
    page.keyboard.press("Control+Enter")
    line = page.locator("#notes").get_by_role("listitem").filter(has_text="Slow from here on.")
    expect(line.locator(".tick")).to_have_text("P")
    expect(article(page).locator(".noted")).to_have_count(0)
    page.wait_for_load_state("load")
    page.keyboard.press("9")  # there is no ninth ink
    expect(note_box(page)).not_to_be_focused()


def test_words_are_noted_without_a_mouse_by_typing_them(scene: Page) -> None:
    page = scene
    words = article(page).locator("p").nth(1).inner_text()[:9]
    page.keyboard.press("a")
    expect(note_box(page)).to_be_focused()
    page.keyboard.type("Who says so?")
    fold = page.locator("#notes .on-words summary").last
    for _ in range(4):
        if fold.evaluate("one => one === document.activeElement"):
            break
        page.keyboard.press("Tab")
    expect(fold).to_be_focused()
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    expect(chosen_words(page)).to_be_focused()
    page.keyboard.type(words)
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(article(page).locator(".noted").first).to_have_text(words.strip())


TRICKY = (
    "<p>Plain <em>wave \U0001f30a of</em> <b>bold</b> words, e\u0301t\u00e9, and so on to the end of it.</p>",
    '<p>Then <span style="font-variant: small-caps">Small Caps \U0001d4aa</span> stood there,<br>on a second line.</p>',
    "<p>\U0001f468\u200d\U0001f469\u200d\U0001f467 went <i><b>both</b> ways</i> home.</p>",
)
CHOOSE = """async ([from, at, to, until]) => {
  const find = (number, offset) => {
    const walker = document.createTreeWalker(document.querySelectorAll("article p")[number], NodeFilter.SHOW_TEXT);
    let node = walker.nextNode(), left = offset;
    while (left > node.length) { left -= node.length; node = walker.nextNode(); }
    return [node, left];
  };
  const [a, i] = find(from, at), [b, j] = find(to, until);
  getSelection().setBaseAndExtent(a, i, b, j);
  await new Promise((done) => setTimeout(done, 30));
  return document.querySelector("#notes [data-passage]").value;
}"""


def test_places_are_counted_in_code_points_whatever_the_text(page: Page, tmp_path: Path) -> None:
    """Against Python's own strings; what the browser counts in is UTF-16, and Python's codec says how many units."""
    file = tmp_path / "tricky.html"
    file.write_text(f"<!doctype html><meta charset=utf-8><title>T</title>{''.join(TRICKY)}", "utf-8")
    bring_in(page, file)
    page.get_by_role("link", name="Go on to the scenes").first.click()
    expect(article(page)).to_be_visible()
    page.wait_for_load_state("load")
    texts: list[str] = article(page).locator("p").evaluate_all("all => all.map((p) => p.textContent)")
    numbers: list[int] = article(page).locator("p").evaluate_all("all => all.map((p) => Number(p.id.slice(1)))")
    assert len(texts) == len(TRICKY)
    choice = random.Random(5)  # noqa: S311 places to try
    for _ in range(40):
        start, end = sorted((n, choice.randint(0, len(texts[n]))) for n in (choice.randrange(3), choice.randrange(3)))
        passage: str = page.evaluate(CHOOSE, [start[0], units(texts, *start), end[0], units(texts, *end)])
        assert (json.loads(passage) if passage else []) == expected(texts, numbers, start, end)


def units(texts: list[str], paragraph: int, offset: int) -> int:
    return len(texts[paragraph][:offset].encode("utf-16-le")) // 2


def expected(texts: list[str], numbers: list[int], start: tuple[int, int], end: tuple[int, int]) -> list[Any]:
    found = []
    for n in range(start[0], end[0] + 1):
        first = start[1] if n == start[0] else 0
        last = end[1] if n == end[0] else len(texts[n])
        if first < last:
            found.append({"paragraph": numbers[n], "start": first, "end": last})
    return found


def test_axe_finds_nothing_with_notes_in_all_inks(scene: Page) -> None:
    page = scene
    for ink in (1, 2, 3, 4):
        choose_by_mouse(page)
        page.keyboard.press(str(ink))
        expect(note_box(page)).to_be_focused()
        page.keyboard.type(f"Note {ink}.")
        page.keyboard.press("Control+Enter")
        expect(page.locator("#notes").get_by_role("listitem")).to_have_count(ink)
        page.wait_for_load_state("load")
    choose_by_mouse(page)
    page.keyboard.press("k")
    expect(article(page).locator(".guarded").first).to_be_visible()
    clean(page, "scene with notes and guarded words")
    page.locator(".note-more summary").first.click()
    page.locator("#notes .on-words summary").click()
    clean(page, "scene, a note's acts open")
    notes(page)
    clean(page, "notes in four inks")
    page.locator("#inks > summary").click()
    clean(page, "notes, the inks open")
    page.locator("#comments > summary").click()
    expect(page.get_by_role("button", name=re.compile("^Keep as a note")).first).to_be_visible()
    clean(page, "notes, the comments of the file open")
    with anew(page):
        page.get_by_role("navigation", name="Which notes").get_by_role("link", name=re.compile("^Done")).click()
    clean(page, "notes, none of this kind")
