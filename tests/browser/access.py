"""axe-core over the page as it stands, light and dark: WCAG 2.0 to 2.2, A and AA, target size included, no rule left
out."""

import json
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

OPTIONS = {
    "runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]},
    "rules": {"target-size": {"enabled": True}},
    "resultTypes": ["violations"],  # of what passes the rule is told, not every element: five times as quick
}

# What lies half under the bar is not smaller for it. A page that was led to a place in it arrives there some frames
# after it is loaded, so the way to the top is gone until it stays.
TO_THE_TOP = """async () => {
  for (let still = 0; still < 3; still = scrollY === 0 ? still + 1 : 0) {
    scrollTo({ top: 0, behavior: "instant" });
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20)));
  }
}"""

# Where the look changes under a page that stands, colours would be on their way for a while, and what is out of sight
# would keep those it had.
SETTLED = """() => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync("* { transition: none !important; content-visibility: visible !important; }");
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}"""
UNSETTLED = "() => { document.adoptedStyleSheets = document.adoptedStyleSheets.slice(0, -1); }"
RUN = f"""() => axe.run({json.dumps(OPTIONS)}).then((found) => ({{
  passes: found.passes.length, violations: found.violations, dark: matchMedia("(prefers-color-scheme: dark)").matches,
}}))"""


def clean(page: Page, what: str) -> None:
    """No finding on this page in either look; `what` names screen and state in the message. It is left light."""
    page.wait_for_load_state("load")
    page.evaluate(TO_THE_TOP)
    page.evaluate(Axe().axe_script)
    with _settled(page):
        for dark in (False, True):
            page.emulate_media(color_scheme="dark" if dark else "light")
            found = page.evaluate(RUN)
            said = f"{what}, {'dark' if dark else 'light'}"
            assert found["dark"] == dark
            assert found["passes"], f"{said}: nothing was checked"
            assert not found["violations"], f"{said}: {[_told(one) for one in found['violations']]}"
        page.emulate_media(color_scheme="light")


@contextmanager
def _settled(page: Page) -> Iterator[None]:
    page.evaluate(SETTLED)
    yield
    page.evaluate(UNSETTLED)


def _told(violation: dict[str, Any]) -> str:
    nodes = [(node["html"][:160], node["failureSummary"][:300]) for node in violation["nodes"][:3]]
    return f"{violation['id']}: {violation['help']} {nodes}"
