"""What is read off the page as a writer meets it: read by the real child, put right, read again, and still right."""

import re
import time
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

from tests.browser.access import clean
from tests.browser.walk import PATIENT, anew, bring_in
from tests.server import Server, afterdraft, running

pytestmark = [pytest.mark.browser, pytest.mark.slow]

BOOK = """THE LOW BOAT

by Perrin Vane


CHAPTER ONE

Odile Farrant came down to the slip before it was light, and she saw the low boat lying where nobody had left it.

“You are late,” said the Skipper.

“I am early,” said Odile. She felt the cold in her teeth. “It is you who never went home.”

“A man can sleep in his own boat,” the Skipper said. He coiled the line and did not look at her.

***

Bram Teal shut the ledger. “She asked about the boat,” said Bram.

“They all ask,” said Hester Quill. She turned the lamp down. “What did you say, Bram?”

“Nothing,” said Bram Teal. “I said nothing, Hester.”

***

On the Friday Odile walked to the lock. “Hester,” said Odile, “who paid for it?”

“Ask Bram,” said Hester Quill, and she shut the door.
"""


ON = {"AFTERDRAFT_READING": "on"}


@pytest.fixture
def server(home: Path) -> Iterator[Server]:
    """With reading on."""
    with running(home, variables=ON, forked=True) as server:
        yield server


@pytest.fixture
def book(page: Page, tmp_path: Path) -> str:
    """The address of a book of three scenes that has been read."""
    file = tmp_path / "low boat.afterdraft"
    file.write_bytes(read_already())
    bring_in(page, file)
    address = page.url.partition("/split")[0]
    read(page, address, rest=0)
    return address


@cache
def read_already() -> bytes:
    """The file of that book, read and told by the real child; once for all tests of this process."""
    with TemporaryDirectory() as folder:
        home = Path(folder)
        file, book = home / "low boat.txt", home / "low boat.afterdraft"
        file.write_text(BOOK, encoding="utf-8")
        assert afterdraft("begin", file, "-o", book, home=home).returncode == 0
        with running(home, book, variables=ON, forked=True) as server, server.client() as client:
            address = str(client.get(server.address, follow_redirects=True).url).rpartition("/")[0]
            for _ in range(PATIENT // 100):
                if client.get(f"{address}/read").json()["state"] == "done":
                    break
                time.sleep(0.1)
            server.stop()
        return book.read_bytes()


def read(page: Page, address: str, *, rest: float = 900) -> None:
    """Wait until all is read and told, as a page that is looked at again. Meanwhile no page of the book is shown: one
    that is would load itself anew at the end. `rest`: milliseconds that reading takes before it looks at a change."""
    page.goto(f"{address}/people")
    page.wait_for_timeout(rest)
    for _ in range(PATIENT // 100):
        told = page.goto(f"{address}/read")
        assert told
        if told.json()["state"] == "done":
            break
        page.wait_for_timeout(100)
    page.goto(f"{address}/people")
    page.wait_for_load_state("load")


def person(page: Page, name: str) -> Locator:
    row = page.locator("details.line.known").filter(has=page.locator(".name", has_text=re.compile(f"^\\s*{name}")))
    expect(row).to_be_attached()
    if not row.is_visible():
        page.get_by_text(re.compile(r"^\d+ more who (is|are) named seldom$")).click()
    if row.get_attribute("open") is None:
        row.locator("> summary").click()
    return row


def who(page: Page, address: str, scene: int) -> Locator:
    """The panel beside a scene's card, open."""
    page.goto(f"{address}/outline")
    page.locator("main a[href*='/scenes/']").nth(scene).click()
    page.wait_for_load_state("load")
    panel = page.locator("#who")
    if panel.get_attribute("open") is None:
        panel.locator("> summary").click()
    return panel


def here(page: Page, name: str) -> Locator:
    return page.get_by_role("group", name=f"{name} in this scene")


def pressed(page: Page, name: str, how: str) -> None:
    expect(here(page, name).get_by_role("button", name=how, exact=True)).to_have_attribute("aria-pressed", "true")


def test_corrections_outlive_reading_again(page: Page, book: str) -> None:
    # two names of one man are joined
    skipper = person(page, "the Skipper")
    skipper.get_by_role("link", name="Join to another…").click()
    skipper.get_by_label("The same as").select_option(label="Bram Teal")
    skipper.get_by_role("button", name="Join them").click()
    expect(page.get_by_text("Join “the Skipper” to “Bram Teal”")).to_be_visible()
    # a viewpoint and a time are put right
    who(page, book, 0)
    pressed(page, "Odile Farrant", "on the page")
    here(page, "Odile Farrant").get_by_role("button", name="viewpoint", exact=True).click()
    pressed(page, "Odile Farrant", "viewpoint")
    page.get_by_label("When").fill("Tuesday 4 May, before light")
    page.get_by_role("button", name="It happens then").click()
    expect(page.get_by_label("When")).to_have_value("Tuesday 4 May, before light")
    pressed(page, "Bram Teal", "on the page")  # the Skipper is he, at once
    # the last two scenes are joined: their words are read anew
    page.goto(f"{book}/split")
    scenes = page.get_by_role("article", name=re.compile("^Scene "))
    with anew(page):
        scenes.nth(2).get_by_role("button", name=re.compile("^Join")).click()
    expect(scenes).to_have_count(2)
    read(page, book)
    bram = person(page, "Bram Teal")
    expect(bram.get_by_label("Other names")).to_have_value(re.compile("the Skipper"))
    expect(bram).to_contain_text("2 scenes")
    expect(page.locator(".line.read .name", has_text="Skipper")).to_have_count(0)
    who(page, book, 0)
    pressed(page, "Odile Farrant", "viewpoint")
    pressed(page, "Bram Teal", "on the page")
    expect(page.get_by_label("When")).to_have_value("Tuesday 4 May, before light")


def test_names_are_parted_denied_and_let_be_again(page: Page, book: str) -> None:
    odile = person(page, "Odile Farrant")
    with anew(page):
        odile.get_by_role("button", name="Odile is somebody apart from Odile Farrant").click()
    expect(page.locator(".line.known .name", has_text=re.compile("^\\s*Odile\\s*$"))).to_have_count(1)
    with anew(page):
        page.get_by_role("button", name="Undo").click()
    read(page, book)
    hester = person(page, "Hester Quill")
    with anew(page):
        hester.get_by_role("button", name="Hester Quill is not a person").click()
    read(page, book)
    expect(page.locator(".line.read .name", has_text="Hester")).to_have_count(0)
    page.get_by_text("1 name that is no person’s").click()
    with anew(page):
        page.get_by_role("button", name="hester quill: a person after all").click()
    read(page, book)
    expect(page.locator(".line.read .name", has_text="Hester")).to_have_count(1)


def test_what_was_read_shows_in_the_text_and_whose_speech_it_is(page: Page, book: str) -> None:
    odile = person(page, "Odile Farrant")
    with anew(page):
        odile.get_by_role("button", name="Speech of Odile Farrant: show it in the text").click()
    read(page, book)
    who(page, book, 0)
    page.get_by_role("switch", name="who speaks").click()
    expect(page.locator(".read-said").first).to_have_text("You are late,")
    spoken = page.locator(".read-who")
    expect(spoken).to_have_count(2)
    expect(spoken.first).to_have_attribute("data-who", "Odile Farrant")
    page.locator("#who > summary").click()
    page.get_by_role("switch", name="who is named").click()
    expect(page.locator(".read-person").first).to_have_text("Odile Farrant")
    page.get_by_role("link", name="Next scene").first.click()
    expect(page.locator(".read-person").first).to_have_text("Bram Teal")


def test_axe_finds_nothing(page: Page, book: str) -> None:
    for name in ("Odile Farrant", "Bram Teal"):
        person(page, name)
    clean(page, "people as read")
    with anew(page):
        person(page, "Bram Teal").get_by_role("button", name="Keep").click()
    clean(page, "a person kept")
    who(page, book, 0)
    page.get_by_role("switch", name="who speaks").click()
    page.locator("#who > summary").click()
    clean(page, "a scene with what was read, and speech shown")
    page.goto(f"{book}/questions/shown")
    expect(page.get_by_role("rowheader")).to_have_count(3)
    page.get_by_text("How bright or dark").click()
    clean(page, "what is shown and never asked")
    page.goto(f"{book}/questions")
    expect(page.get_by_text("Nothing to ask")).to_be_visible(timeout=PATIENT)  # by the real child, with all facts
    clean(page, "no questions")


def test_all_of_it_by_forms_without_scripts(browser: Browser, page: Page, server: Server, book: str) -> None:
    context = browser.new_context(java_script_enabled=False)
    plain = context.new_page()
    plain.goto(server.address)
    plain.goto(f"{book}/people")
    person(plain, "Hester Quill").get_by_role("button", name="Keep").click()
    expect(plain.get_by_text("Keep “Hester Quill”")).to_be_visible()
    person(plain, "Hester Quill").get_by_label("Pronouns").select_option("she")
    plain.get_by_role("button", name="Set").first.click()
    expect(plain.get_by_text("Pronouns of “Hester Quill”")).to_be_visible()
    context.close()


def test_reading_says_how_far_it_is_and_can_be_stopped(page: Page, tmp_path: Path) -> None:
    file = tmp_path / "long boat.txt"
    scene = BOOK.partition("CHAPTER ONE")[2].partition("***")[0]
    told = [f"CHAPTER {n}\n\n{scene.replace('slip', f'slip number {n}') * (5 + n % 7)}" for n in range(1, 60)]
    file.write_text("THE LONG BOAT\n\nby Perrin Vane\n\n\n" + "\n\n".join(told), encoding="utf-8")
    bring_in(page, file)
    address = page.url.partition("/split")[0]
    page.goto(f"{address}/people")
    expect(page.get_by_text(re.compile(r"Reading the draft: \d+ of \d+ scenes"))).to_be_visible(timeout=PATIENT)
    expect(page.get_by_role("progressbar", name="Words read")).to_be_visible()
    page.get_by_role("button", name="Stop reading").click()
    expect(page.get_by_text("What was read stays.").first).to_be_visible()
    page.get_by_role("button", name="Go on reading").click()
    expect(page.get_by_text("Reading goes on.")).to_be_visible()
