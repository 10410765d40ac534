"""axe-core over the page as it stands: WCAG 2.0 to 2.2, A and AA, target size included, no rule left out."""

from typing import Any

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

OPTIONS = {
    "runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]},
    "rules": {"target-size": {"enabled": True}},
}

# What lies half under the bar is not smaller for it. A page that was led to a place in it arrives there some frames
# after it is loaded, so the way to the top is gone until it stays.
TO_THE_TOP = """async () => {
  for (let still = 0; still < 3; still = scrollY === 0 ? still + 1 : 0) {
    scrollTo({ top: 0, behavior: "instant" });
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 20)));
  }
}"""


def clean(page: Page, what: str) -> None:
    """No finding on this page; `what` names screen and state in the message."""
    page.wait_for_load_state("load")
    page.evaluate(TO_THE_TOP)
    found = Axe().run(page, options=OPTIONS).response
    assert found["passes"], f"{what}: nothing was checked"
    assert not found["violations"], f"{what}: {[_told(one) for one in found['violations']]}"


def _told(violation: dict[str, Any]) -> str:
    nodes = [(node["html"][:160], node["failureSummary"][:300]) for node in violation["nodes"][:3]]
    return f"{violation['id']}: {violation['help']} {nodes}"
