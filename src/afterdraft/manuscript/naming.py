"""What chapters and scenes are called wherever a person reads about them."""

from afterdraft.manuscript.division import Chapter, ChapterKind, Scene

FIRST_WORDS = 48  # characters of a scene's opening that stand in for a title; fits one line of a narrow list

KINDS: dict[ChapterKind, str] = {
    "chapter": "Chapter",
    "prologue": "Prologue",
    "epilogue": "Epilogue",
    "interlude": "Interlude",
    "letter": "Letter",
    "other": "",
}


def shortened(text: str, limit: int = FIRST_WORDS) -> str:
    """`text` on one line, cut at a word and closed with an ellipsis where it is longer than `limit`."""
    line = " ".join(text.split())
    if len(line) <= limit:
        return line
    cut = line[: limit + 1].rsplit(" ", 1)[0] if " " in line[: limit + 1] else line[:limit]
    return cut.rstrip(" ,;:.–—-") + "…"


def scene_name(scene: Scene, first_words: str) -> str:
    """Its title; else its first words; else its code."""
    return scene.title or shortened(first_words) or scene.code


def chapter_name(chapter: Chapter) -> str:
    """As a person says it: "Chapter 3: The Mill", "Prologue"; "Unnamed chapter" where nothing is printed."""
    kind = KINDS[chapter.kind]
    label = f"{kind or 'Section'} {chapter.number}" if chapter.number is not None else ""
    if not label and kind and chapter.kind != "chapter" and kind.casefold() not in chapter.title.casefold():
        label = kind
    return ": ".join(piece for piece in (label, chapter.title) if piece) or "Unnamed chapter"
