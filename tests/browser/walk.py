"""Steps that several browser tests take, each as a person takes it."""

import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from afterdraft import demodata
from tests.server import afterdraft

MANUSCRIPT = Path(demodata.__file__).parent / "manuscript.docx"
PATIENT = 20_000  # milliseconds: reading a book in may take a while on a busy machine; how long is for the bench


def bring_in(page: Page, *files: Path) -> None:
    """From Books: choose files, arrive at the split. Without files it is a book that the demonstration's manuscript was
    brought into before, which is quicker."""
    page.get_by_label("Choose the file of your draft").set_input_files(files or (begun(),))
    expect(page.get_by_role("heading", name="The split")).to_be_visible(timeout=PATIENT)
    page.wait_for_load_state("load")  # keys are listened to from then on


@pytest.fixture
def opens(home: Path) -> Path:
    """That book, where books are kept: a window stands at its split from the first."""
    file = home / "Books" / begun().name
    file.parent.mkdir()
    shutil.copyfile(begun(), file)
    return file


@contextmanager
def anew(page: Page) -> Iterator[None]:
    """What is done within leads to another page, or to this one loaded anew: wait until that is there with its scripts.
    To look for what the page before had as well would tell nothing."""
    page.evaluate("document.documentElement.dataset.before = ''")
    yield
    expect(page.locator("html:not([data-before])")).to_be_attached(timeout=PATIENT)
    page.wait_for_load_state("load")


@cache
def begun() -> Path:
    """A book of the demonstration's manuscript, just brought in; one for all tests of this process."""
    folder = Path(_kept().name)
    book = folder / "Tare.afterdraft"
    made = afterdraft("begin", MANUSCRIPT, "-o", book, home=folder)
    assert made.returncode == 0, made.stderr
    return book


@cache
def _kept() -> "tempfile.TemporaryDirectory[str]":
    """Gone with the process."""
    return tempfile.TemporaryDirectory(prefix="afterdraft-begun-")


def saved(page: Page) -> None:
    """Wait until the card says that it is saved."""
    expect(page.get_by_role("status").get_by_text("Saved", exact=True)).to_be_visible()


def summary(page: Page) -> Locator:
    return page.get_by_label("What happens here, and what changes?")
