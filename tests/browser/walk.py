"""Steps that several browser tests take, each as a person takes it."""

from pathlib import Path

from playwright.sync_api import Locator, Page, expect

from afterdraft import demodata

MANUSCRIPT = Path(demodata.__file__).parent / "manuscript.docx"


PATIENT = 20_000  # milliseconds: reading a book in may take a while on a busy machine; how long is for the bench


def bring_in(page: Page, *files: Path) -> None:
    """From Books: choose files, arrive at the split."""
    page.get_by_label("Choose the file of your draft").set_input_files(files or (MANUSCRIPT,))
    expect(page.get_by_role("heading", name="The split")).to_be_visible(timeout=PATIENT)
    page.wait_for_load_state("load")  # keys are listened to from then on


def saved(page: Page) -> None:
    """Wait until the card says that it is saved."""
    expect(page.get_by_role("status").get_by_text("Saved", exact=True)).to_be_visible()


def summary(page: Page) -> Locator:
    return page.get_by_label("What happens here, and what changes?")
