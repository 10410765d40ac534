"""Where passages of one draft are in the next."""

from collections.abc import Callable

from afterdraft.comparison.carrying import Carrier
from afterdraft.desk.anchor import Anchor, anchor
from afterdraft.work.drafts.compared import Compared


def placing(found: Compared) -> Callable[[Anchor], Anchor | None]:
    """A function from a passage of the old draft to the same, or what is left of it, in the new one; None where it is
    gone. What stands in no story paragraph is looked for among paragraphs with the same words."""
    carrier = Carrier(found.found)
    old, new = found.old, found.new

    def place(one: Anchor) -> Anchor | None:
        story = old.story_index.get(one.paragraph)
        if story is None:
            return _beside_the_story(one, old.texts, new.texts, new.draft)
        now = carrier.carried(story, one.start, one.end)
        if now.paragraph is None:
            return None
        number = new.paragraphs[now.paragraph]
        return anchor(draft=new.draft, paragraph=number, text=new.texts[number], start=now.start, end=now.end)

    return place


def _beside_the_story(one: Anchor, old: tuple[str, ...], new: tuple[str, ...], draft: str) -> Anchor | None:
    text = old[one.paragraph]
    if text.strip() and new.count(text) == 1:
        return anchor(draft=draft, paragraph=new.index(text), text=text, start=one.start, end=one.end)
    return None
