"""Sentences that tell of a death for certain, and others. Wordings from memory of novels and newspapers."""

import pytest

from afterdraft.questions.deaths import is_gone


def gone(said: str) -> bool:
    """Of Tom, as a sentence tells it."""
    before, behind = said.split("Tom", 1)
    return is_gone(before, behind)


@pytest.mark.parametrize(
    "said",
    [
        "By evening Tom had ceased to breathe.",
        "Tom did not live to see the spring.",
        "They laid Tom in the churchyard on the Friday.",
        "Tom’s funeral was on the Thursday.",
        "Tom’s body was found in the weir.",
        "Tom was lost with the ship that winter.",
        "Tom was shot through the heart.",
        "Tom hanged himself in the barn.",
        "Tom drowned in the mill-race that night.",
        "That evening Tom put a bullet through his head.",
        "Tom never recovered consciousness.",
        "So died Tom.",
        "Tom succumbed to the fever at last.",
        "Tom was laid to rest beside his mother.",
        "Tom bled to death on the stairs.",
        "Tom was found hanged in the stable.",
        "Tom, poor soul, died in the night.",
        "Tom himself was killed by the same shell.",
        "Tom and the child died in the night.",
        "Tom, who had been ailing since the autumn, died on the Monday.",
        "Tom then died.",
        "At last Tom slept, and did not wake again.",
    ],
)
def test_tells_a_death(said: str) -> None:
    assert gone(said)


@pytest.mark.parametrize(
    "said",
    [
        "Tom ceased to speak.",
        "Tom, when his father died, was ten.",
        "Tom, whose father died, was ten.",
        "Tom’s father’s funeral was on the Thursday.",
        "Tom’s body was cold with the rain.",
        "They laid Tom on the bed.",
        "Tom shot the bolt.",
        "Tom was lost in thought.",
        "Tom drowned the kittens.",
        "Tom drowned in laughter.",
        "Tom hanged the picture himself.",
        "Tom nearly bled to death on the stairs.",
        "Tom was never found dead.",
        "Tom slept, and did not wake.",
        "Tom and the rest laughed till they died.",
        "Tom said that his brother, who was ill, died on the Monday.",
        "Tom succumbed to the temptation.",
        "Tom was bored to death.",
        "Tom, it seemed, died of envy.",
        "Ada conjectured that Tom was dead.",
        "Had Tom died in his bed, she would have wept.",
        "It was probable that, had Tom died, she would have wept.",
    ],
)
def test_tells_none(said: str) -> None:
    assert not gone(said)
