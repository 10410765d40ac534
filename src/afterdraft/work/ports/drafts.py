"""Drafts one behind the other: read from an open book, changed in an edit."""

from collections.abc import Callable, Mapping, Sequence
from contextlib import AbstractContextManager
from typing import Protocol

from afterdraft.desk.anchor import Anchor
from afterdraft.desk.draft import Became, DraftState, NoteWas, SaidOfScenes

Place = Callable[[Anchor], Anchor | None]  # where a passage of the old draft is in the new one; None where it is gone


class DraftsBook(Protocol):
    """For `Book`."""

    def texts(self, draft: str) -> tuple[str, ...]:
        """Every paragraph of the draft, over the whole file. Raises `Missing`."""
        ...

    def all_drafts(self) -> tuple[DraftState, ...]:
        """In order, those too that gave way to the same draft brought in again; not those taken back."""
        ...

    def said_of(self, old: str, new: str) -> SaidOfScenes:
        """What she says became of the scenes of draft `old` in draft `new`."""
        ...

    def kept_comparison(self, old: str, new: str) -> tuple[str, str] | None:
        """Key and form of the comparison of two drafts as it was kept."""
        ...

    def keep_comparison(self, old: str, new: str, key: str, form: str) -> None: ...
    def notes_then(self, draft: str) -> tuple[NoteWas, ...]:
        """Notes that were on a draft when the next one came in, in the order they were made."""
        ...

    def taken_from(self) -> Mapping[str, str]:
        """By id of what was taken over into a draft (a point, a place of a change…): the same in the draft before."""
        ...

    def kept_cards(self) -> Mapping[str, tuple[str, ...]]:
        """By id of a card that was carried: the scenes, of the draft before, whose cards it was."""
        ...

    def rounds(self) -> Mapping[str, str]:
        """By draft: how notes and changes stood when it came in (JSON)."""
        ...


class DraftsDesk(Protocol):
    """For `Desk`."""

    def unlogged(self) -> AbstractContextManager[None]:
        """What is changed in here cannot be taken back: only for what a hidden draft brings with it."""
        ...

    def show_draft(self, draft: str, *, before: str | None = None, part_way: bool = False) -> None:
        """A draft that was taken in is one of the book's from now on: the last, or right `before` another."""
        ...

    def texts(self, draft: str) -> tuple[str, ...]: ...
    def all_drafts(self) -> tuple[DraftState, ...]: ...
    def said_of(self, old: str, new: str) -> SaidOfScenes: ...
    def recode(self, draft: str, codes: Mapping[str, str]) -> None:
        """Scenes of a draft that is still hidden, by id, are known by these codes; those they had are free again."""
        ...

    def carry_over(
        self,
        old: str,
        new: str,
        scenes: Mapping[str, Sequence[str]],
        *,
        chapters: Mapping[str, str],
        place: Place,
    ) -> None:
        """Notes and marks of scenes of draft `old` go on in those of draft `new` that they became (the one with most of
        the words first). The old ones stay as they were, for reading; open notes go over."""
        ...

    def take_back(self, old: str, new: str) -> None:
        """What scene `new` took over from scene `old` goes from it, unless it was changed since; notes go back."""
        ...

    def take_over(
        self, old: str, new: str, scenes: Mapping[str, str], *, chapters: Mapping[str, str], place: Place
    ) -> None:
        """Draft `new` takes the place of `old`: scenes and chapters (by their ids in `old`, then in `new`) stay the
        same ones, with all that is on them, and only the text changes. What has no successor is loosened."""
        ...

    def settle_again(self, draft: str) -> None:
        """Doubts and margin comments that were answered in an earlier draft, where the same words stand in this one,
        are not asked about again."""
        ...

    def say_became(self, scene: str, became: Became | None) -> None:
        """None: as if nothing had been said."""
        ...

    def say_lives_on(self, old: str, new: str, *, so: bool | None) -> None: ...
    def kept_card(self, card: str, sources: Sequence[str]) -> None:
        """It is written down that a card was carried; with no sources, that it was not."""
        ...

    def begin_round(self, draft: str, form: str) -> None: ...
