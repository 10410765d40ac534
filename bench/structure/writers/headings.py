"""The lines that name a chapter, as each habit writes them; none where it names it in no way."""

from bench.corpus import Chapter, Novel
from bench.structure.writers.plan import Line, cardinal, pick, roman, word

Lines = tuple[Line, ...]
NOUNS = ("Weir", "Lamp", "Orchard", "Ferry", "Letter", "Quarry", "Bell", "Saltings", "Attic", "Causeway", "Ledger")
ABOUT = ("", " at Night", " Again", " in Winter", " by the River", " and the Key", " Without a Name", " Remembered")


def depth(novel: Novel) -> int:
    """How many levels of parts stand above the chapters."""
    if not novel.parts:
        return 0
    return 2 if any(part.parent is not None for part in novel.parts) else 1


def full_title(chapter: Chapter) -> str:
    return f"{chapter.title}: {chapter.subtitle}" if chapter.subtitle else chapter.title


def styled(novel: Novel, chapter: Chapter) -> Lines:
    """Heading styles: "Chapter 3: The Ferry", "3. The Ferry", or both on two lines of one paragraph."""
    look, title = f"chapter {1 + depth(novel)}", full_title(chapter)
    if chapter.number is None:
        return (Line("chapter", title, look),) if title else ()
    form = pick(("{word} {n}: {title}", "{n}. {title}", "{word} {n}\n{title}"), novel.title, "styled heading")
    if not title:
        form = "{word} {n}"
    elif chapter.label not in ("", "Chapter"):
        form = "{word} {n}: {title}"
    return (Line("chapter", form.format(word=word(chapter), n=chapter.number, title=title), look),)


def spelled(_: Novel, chapter: Chapter) -> Lines:
    """ "CHAPTER TWENTY-ONE", bold and centred, the title under it."""
    title = (Line("chapter", chapter.title, "bold"),) if chapter.title else ()
    under = (Line("chapter", chapter.subtitle, "bold"),) if chapter.subtitle else ()
    if chapter.number is None:
        return title + under
    return (Line("chapter", f"{word(chapter)} {cardinal(chapter.number)}".upper(), "bold"), *title)


def numbered(novel: Novel, chapter: Chapter) -> Lines:
    """The title alone; the number comes from an automatic list."""
    look = f"numbered {1 + depth(novel)}" if pick((True, False), novel.title, "numbering") else "numbered bold"
    title = full_title(chapter)
    if chapter.number is None:
        return (Line("chapter", title, look),) if title else ()
    return (Line("chapter", title, look, label=word(chapter), number=chapter.number),)


def bare_number(_: Novel, chapter: Chapter) -> Lines:
    """ "21" and nothing else."""
    if chapter.number is None:
        return tuple(Line("chapter", text) for text in (chapter.title, chapter.subtitle) if text)
    text = str(chapter.number) if chapter.label in ("", "Chapter") else f"{chapter.label} {chapter.number}"
    return (Line("chapter", text, "number"),)


def in_roman(novel: Novel, chapter: Chapter) -> Lines:
    """ "CHAPTER XXI", "XXI.", with the title after it or under it."""
    title = tuple(Line("chapter", text, blanks=1) for text in (chapter.title, chapter.subtitle) if text)
    if chapter.number is None:
        return title
    # An author whose sections are numbered in roman does not number chapters by bare roman numerals as well.
    sections = any(b.kind == "section" and set(b.heading) <= set("IVX") for c in novel.chapters for b in c.breaks)
    long = ("CHAPTER {n}", "CHAPTER {n}. {title}")
    forms = long if sections else (long[0], "{n}.", long[1], "{n}. {title}")
    form = pick(forms, novel.title, "roman heading")
    if chapter.label not in ("", "Chapter"):
        form = chapter.label.upper() + " {n}"
    elif not chapter.title:
        form = form.replace(" {title}", "")
    text = form.format(n=roman(chapter.number), title=chapter.title)
    return (Line("chapter", text),) if "{title}" in form else (Line("chapter", text), *title)


def capitals(_: Novel, chapter: Chapter) -> Lines:
    """The title in capitals, centred, without its number; the number in words where there is no title."""
    title = full_title(chapter)
    if title:
        return (Line("chapter", title.upper(), "centred"),)
    return (Line("chapter", _in_words(chapter).upper(), "centred"),) if chapter.number is not None else ()


def nothing(_: Novel, __: Chapter) -> Lines:
    return ()


def centred(novel: Novel, chapter: Chapter) -> Lines:
    """ "Chapter 3", or "Chapter 3: The Ferry", centred and plain."""
    title = full_title(chapter)
    if chapter.number is None:
        return (Line("chapter", title, "centred"),) if title else ()
    text = f"{word(chapter)} {chapter.number}"
    return (Line("chapter", f"{text}: {title}" if title else text, "centred"),)


def under(_: Novel, chapter: Chapter) -> Lines:
    """ "Chapter Three", and the title on a line of its own in another style."""
    title = full_title(chapter)
    if chapter.number is None:
        return (Line("chapter", title, "centred"),) if title else ()
    named = (Line("chapter", title, "another style"),) if title else ()
    return (Line("chapter", f"{word(chapter)} {_in_words(chapter, alone=True)}", "centred"), *named)


def dashed(_: Novel, chapter: Chapter) -> Lines:
    """ "Chapter 3 - The Ferry", bold, at the left."""
    title = full_title(chapter)
    if chapter.number is None:
        return (Line("chapter", title, "bold left"),) if title else ()
    text = f"{word(chapter)} {chapter.number}"
    return (Line("chapter", f"{text} - {title}" if title else text, "bold left"),)


def run_in(_: Novel, chapter: Chapter) -> Lines:
    """ "3. The Ferry", in the type of the text."""
    title = full_title(chapter)
    label = f"{chapter.label} " if chapter.label not in ("", "Chapter") else ""
    if chapter.number is None:
        return (Line("chapter", title),) if title else ()
    return (Line("chapter", f"{label}{chapter.number}. {title}" if title else f"{label}{chapter.number}."),)


def named(novel: Novel, chapter: Chapter) -> Lines:
    """A name, bold and centred, and no number; one is invented where the chapter has none."""
    return (Line("chapter", given_name(novel, chapter), "bold"),)


def given_name(novel: Novel, chapter: Chapter) -> str:
    """The chapter's title, or an invented one, no two alike in a book."""
    if chapter.title:
        return full_title(chapter)
    place = novel.chapters.index(chapter)
    return f"The {NOUNS[place % len(NOUNS)]}{ABOUT[place // len(NOUNS) % len(ABOUT)]}"


def _in_words(chapter: Chapter, *, alone: bool = False) -> str:
    label = f"{chapter.label} " if chapter.label not in ("", "Chapter") and not alone else ""
    return label + cardinal(chapter.number or 0).title()
