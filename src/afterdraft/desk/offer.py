"""A margin comment in the writer's own file, offered to become a note."""

from dataclasses import dataclass

from afterdraft.manuscript.blocks import Aside


@dataclass(frozen=True, slots=True)
class Offer:
    aside: int  # its number among the asides of the draft
    comment: Aside
    answers: tuple[tuple[int, Aside], ...] = ()  # comments that answer it, with their numbers

    @property
    def text(self) -> str:
        """What it says, and what was answered."""
        answers = [f"{one.author}: {one.text}" if one.author else one.text for _, one in self.answers]
        return "\n".join([self.comment.text, *answers])

    @property
    def numbers(self) -> tuple[int, ...]:
        return (self.aside, *(number for number, _ in self.answers))
