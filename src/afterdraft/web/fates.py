"""What became of scenes, in words: fates of a comparison as a list shows them."""

from collections.abc import Mapping
from dataclasses import dataclass

from afterdraft.comparison.comparison import Became, Comparison, Fate, Reason
from afterdraft.web.two_drafts import Named, TwoDrafts

DOUBTFUL = 0.75  # a fate less sure than this is asked about until she has said what it is
WORDS: Mapping[Became, str] = {
    "same": "as it was",
    "revised": "revised",
    "rewritten": "rewritten",
    "split": "split",
    "joined": "joined",
    "cut": "cut",
    "new": "new",
    "not reached": "not reached yet",
}
RESTS: Mapping[Reason, str] = {
    "words": "its words",
    "bookmark": "its code in the file",
    "cast": "who is in it",
    "place": "where it happens",
    "position": "its place in the order",
    "said": "what you said",
}


@dataclass(frozen=True, slots=True)
class FateRow:
    """What became of scenes that hang together, or of one that was cut or is new."""

    fate: Fate
    olds: tuple[Named, ...]
    news: tuple[Named, ...]
    confirmed: bool  # she has said so

    @property
    def key(self) -> str:
        """Names it in addresses: the draft's side and the code of its first scene."""
        return f"1-{self.olds[0].code}" if self.olds else f"2-{self.news[0].code}"

    @property
    def scenes(self) -> tuple[str, ...]:
        """Ids of those that she says it of: the old ones, or the new where there is none."""
        return tuple(one.id for one in self.olds or self.news)

    @property
    def doubtful(self) -> bool:
        return self.fate.sure < DOUBTFUL and not self.confirmed

    @property
    def became(self) -> str:
        """ "revised, moved", "split in 3"."""
        words = WORDS[self.fate.became]
        if self.fate.became == "split" and len(self.olds) == 1:
            words = f"split in {len(self.news)}"
        return f"{words}, moved" if self.fate.moved else words

    @property
    def kept(self) -> str:
        """How much of its words lives on; "" where it is all or nothing."""
        if not (self.olds and self.news) or self.fate.became == "same":
            return ""
        return f"{part_of(self.fate.kept)} of the words kept"

    @property
    def rests_on(self) -> str:
        if self.fate.why == ("said",):
            return "you said so"
        if self.fate.why:
            return ", ".join(RESTS[reason] for reason in self.fate.why)
        if self.fate.became == "not reached":
            return "the new draft has not come to it"
        return f"nothing like it in the {'new' if self.olds else 'old'} draft"

    @property
    def told(self) -> str:
        """How much was kept, and what that rests on."""
        rests = f"by {self.rests_on}" if self.fate.why and self.fate.why != ("said",) else self.rests_on
        return " · ".join(piece for piece in (self.kept, rests, "confirmed" if self.asked else "") if piece)

    @property
    def asked(self) -> bool:
        """Not sure by itself; she has said that it is so."""
        return self.confirmed and self.fate.sure < DOUBTFUL

    @property
    def called(self) -> str:
        """On one line, for labels."""
        return " and ".join(one.name for one in self.olds or self.news)


def fate_rows(two: TwoDrafts) -> tuple[FateRow, ...]:
    """In the new draft's order, what is gone after what stood before it."""
    return tuple(fate_row(two, fate) for fate in two.compared.found.scenes)


def chapter_rows(two: TwoDrafts) -> tuple[FateRow, ...]:
    """The same of chapters, which go by words alone."""
    return tuple(
        FateRow(fate, tuple(two.old_chapters[n] for n in fate.old), tuple(two.new_chapters[n] for n in fate.new), False)
        for fate in two.compared.found.chapters
    )


def fate_row(two: TwoDrafts, fate: Fate) -> FateRow:
    olds = tuple(two.olds[n] for n in fate.old)
    news = tuple(two.news[n] for n in fate.new)
    return FateRow(fate, olds, news, all(one.id in two.said.became for one in olds or news))


def words_not_reached(found: Comparison) -> int:
    """Words of scenes that a part-way draft has not come to, but for those that went elsewhere from them."""
    scenes = {n for fate in found.scenes if fate.became == "not reached" for n in fate.old}
    homes = found.old.scene_at() if scenes else []
    elsewhere = sum(pair.kept for pair in found.pairs if scenes and homes[pair.old] in scenes)
    return sum(found.old_words[n] for n in scenes) - elsewhere


def part_of(share: float) -> str:
    """ "nearly all", "83%", "hardly any": a share as a person reads it."""
    if share >= 0.995:
        return "nearly all"
    return f"{share:.0%}" if share >= 0.01 else "hardly any"
